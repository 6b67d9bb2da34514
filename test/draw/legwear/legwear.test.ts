import { describe, expect, test } from 'vitest';
import { LEGWEAR, legwearLength } from '../../../lib/draw/legwear/index.ts';
import { familyTests } from '../lower/family.ts';
import { drawn, pieceOf } from '../lower/picture.ts';

familyTests(LEGWEAR, 'legwear', { kilobytes: 45, alike: 0.02, lengths: [40, 80] });

describe('legwear', () => {
  test('socks are a pair', () => {
    for (const kind of ['socks', 'dress socks', 'walking socks', 'knee socks'] as const)
      expect(
        drawn(LEGWEAR, pieceOf(kind)).outline.filter((ring) => ring.length > 20),
        kind,
      ).toHaveLength(2);
  });

  test('knee socks stand higher than socks for the calf, and those higher than ankle socks', () => {
    const heights = (['ankle', 'calf', 'knee'] as const).map(
      (length) => drawn(LEGWEAR, pieceOf('dress socks', { length })).box.height,
    );
    expect((heights[1] ?? 0) - (heights[0] ?? 0)).toBeGreaterThan(8);
    expect((heights[2] ?? 0) - (heights[1] ?? 0)).toBeGreaterThan(8);
  });

  test('thick tights lie with one shin folded over the other, and keep their length', () => {
    for (const lengthCm of [90, 104]) {
      const { outline } = drawn(LEGWEAR, pieceOf('wool tights', { lengthCm }));
      const points = outline.flat();
      const across = (from: number, to: number): number => {
        const xs = points.filter(([, y]) => y >= from && y <= to).map(([x]) => x);
        return Math.max(...xs) - Math.min(...xs);
      };
      expect(across(lengthCm - 8, lengthCm)).toBeLessThan(0.75 * across(30, 50));
      expect(Math.max(...points.map(([, y]) => y))).toBeCloseTo(lengthCm, 0);
    }
  });

  test('absurd lengths are brought within reason, and it is said', () => {
    for (const kind of Object.keys(LEGWEAR) as (keyof typeof LEGWEAR)[])
      expect(legwearLength(pieceOf(kind, { lengthCm: 2000 })).clamped, kind).toBe(true);
    expect(legwearLength(pieceOf('knee socks', { lengthCm: 40 }))).toEqual({ cm: 40, clamped: false });
  });
});
