import { describe, expect, test } from 'vitest';
import { LOWER, sideLength, skirtLength } from '../../../lib/draw/lower/index.ts';
import { type Cut, LENGTHS } from '../../../lib/vocabulary/index.ts';
import { familyTests } from './family.ts';
import { drawn, paintedSize, pieceOf } from './picture.ts';

familyTests(LOWER, 'bottoms', { kilobytes: 64, alike: 0.012, lengths: [50, 74] });

describe('proportions', () => {
  test('a skirt of 78 cm beside one of 45 differs by 33 cm in the picture', () => {
    for (const kind of ['midi skirt', 'pleated skirt', 'wrap skirt', 'pencil skirt'] as const) {
      const [long, short] = [78, 45].map((lengthCm) => paintedSize(drawn(LOWER, pieceOf(kind, { lengthCm }))).height);
      expect((long ?? 0) - (short ?? 0), kind).toBeCloseTo(33, -0.5);
      expect(Math.abs((long ?? 0) - 79.5), kind).toBeLessThan(2.5);
    }
  });

  test('trousers are as long as they were measured', () => {
    for (const lengthCm of [48, 92, 108])
      expect(Math.abs(paintedSize(drawn(LOWER, pieceOf('chinos', { lengthCm }))).height - lengthCm - 2.4)).toBeLessThan(
        2,
      );
  });

  test('the cut is seen at the hem', () => {
    const hem = (kind: 'jeans' | 'midi skirt', cut: Cut): number => {
      const points = drawn(LOWER, pieceOf(kind, { cut })).outline.flat();
      const low = Math.max(...points.map(([, y]) => y));
      const near = points.filter(([, y]) => y > low - 5).map(([x]) => x);
      return Math.max(...near) - Math.min(...near);
    };
    const rising = (kind: 'jeans' | 'midi skirt', cuts: readonly Cut[]) => {
      const widths = cuts.map((cut) => hem(kind, cut));
      for (const [i, width] of widths.entries())
        if (i > 0) expect(width, `${kind} ${cuts[i]}`).toBeGreaterThan((widths[i - 1] ?? 0) + 1);
    };
    rising('jeans', ['fitted', 'slim', 'straight', 'bootcut', 'wide', 'full']);
    rising('midi skirt', ['slim', 'regular', 'a-line', 'flared']);
  });

  test('words for lengths run from high to low', () => {
    for (const lengthOf of [sideLength, skirtLength]) {
      const order = ['mini', 'knee', 'midi', 'calf', 'ankle', 'full', 'floor'] as const;
      const cm = order.map((length) => lengthOf({ length }).cm);
      expect(cm).toEqual([...cm].sort((a, b) => a - b));
      expect(new Set(cm).size).toBe(cm.length);
    }
  });

  test('lengths fall where the body has its joints', () => {
    // Drillis and Contini 1966: knee at 0.285 and ankle at 0.039 of stature (from memory); the waist at about 0.62 of
    // stature and a stature of 168 cm are common practice, no source
    const stature = 168;
    const below = (share: number): number => stature * (0.62 - share);
    expect(Math.abs(skirtLength({ length: 'knee' }).cm - below(0.285))).toBeLessThan(4);
    expect(Math.abs(skirtLength({ length: 'ankle' }).cm - below(0.039))).toBeLessThan(5);
    expect(Math.abs(sideLength({ length: 'knee' }).cm - below(0.285))).toBeLessThan(4);
    expect(Math.abs(sideLength({ length: 'floor' }).cm - below(0))).toBeLessThan(8);
  });

  test('absurd lengths are brought within reason, and it is said', () => {
    for (const lengthOf of [sideLength, skirtLength])
      for (const lengthCm of [900, 1, -40, 0, Number.NaN, Number.POSITIVE_INFINITY]) {
        const { cm, clamped } = lengthOf({ length: 'knee', lengthCm });
        expect(clamped, String(lengthCm)).toBe(true);
        expect(cm).toBeGreaterThan(20);
        expect(cm).toBeLessThan(125);
      }
    for (const length of LENGTHS) expect(skirtLength({ length }).clamped).toBe(false);
    expect(skirtLength({ length: 'knee', lengthCm: 61 })).toEqual({ cm: 61, clamped: false });
  });
});

describe('what was written in the front matter', () => {
  test('a pleated or wrapped cut changes the skirt, whatever its kind', () => {
    const as = (cut: Cut) => JSON.stringify(drawn(LOWER, pieceOf('midi skirt', { cut })));
    expect(new Set([as('a-line'), as('pleated'), as('wrap')]).size).toBe(3);
  });

  test('colour block uses the second colour on the cloth itself', () => {
    for (const kind of ['joggers', 'a-line skirt'] as const) {
      const block = drawn(
        LOWER,
        pieceOf(kind, { hex: ['#3b5876', '#c5673c'], pattern: { type: 'colour block', scale: 'medium' } }),
      );
      expect(JSON.stringify(block.marks)).toContain('#c5673c');
    }
  });

  test('jeans that are not blue carry no tobacco thread', () => {
    const threads = (hex: string) =>
      JSON.stringify(drawn(LOWER, pieceOf('jeans', { hex: [hex] })).marks).includes('#c98f4e');
    expect(threads('#3b5876')).toBe(true);
    expect(threads('#f1ebde')).toBe(false);
    expect(threads('#2a2a2c')).toBe(false);
  });
});
