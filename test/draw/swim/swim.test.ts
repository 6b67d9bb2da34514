import { describe, expect, test } from 'vitest';
import { SWIM, swimLength } from '../../../lib/draw/swim/index.ts';
import { familyTests } from '../lower/family.ts';
import { drawn, paintedSize, pieceOf } from '../lower/picture.ts';

familyTests(SWIM, 'swimwear', { kilobytes: 70, alike: 0.05, lengths: [60, 84] });

describe('swimwear', () => {
  test('a bikini is two parts with a gap between them', () => {
    const rows = drawn(SWIM, pieceOf('bikini'))
      .outline.flat()
      .map(([, y]) => y);
    const between = rows.filter((y) => y > 31 && y < 37);
    expect(between).toEqual([]);
    expect(Math.min(...rows)).toBeLessThan(10);
    expect(Math.max(...rows)).toBeGreaterThan(50);
  });

  test('a second colour is seen in the panels of a rash suit and the border of a kaftan', () => {
    for (const kind of ['rash suit', 'kaftan'] as const)
      expect(JSON.stringify(drawn(SWIM, pieceOf(kind, { hex: ['#28323f', '#d9764a'] })).marks)).toContain('#d9764a');
  });

  test('a kaftan of 130 cm beside one of 90', () => {
    const [long, short] = [130, 90].map((lengthCm) => paintedSize(drawn(SWIM, pieceOf('kaftan', { lengthCm }))).height);
    expect(Math.abs((long ?? 0) - (short ?? 0) - 40)).toBeLessThan(2);
  });

  test('absurd lengths are brought within reason, and it is said', () => {
    for (const kind of Object.keys(SWIM) as (keyof typeof SWIM)[]) {
      const { length } = pieceOf(kind);
      for (const lengthCm of [2000, Number.NaN]) {
        const held = swimLength({ kind, length, lengthCm });
        if (held !== undefined) expect(held.clamped, kind).toBe(true);
      }
    }
    expect(swimLength({ kind: 'kaftan', length: 'calf', lengthCm: 118 })).toEqual({ cm: 118, clamped: false });
    expect(swimLength({ kind: 'bikini', length: 'none', lengthCm: 30 })).toBeUndefined();
  });
});
