import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Detail } from '../../../lib/draw/drawing.ts';
import * as feet from '../../../lib/draw/feet/index.ts';
import { KIND_IDS, KINDS, type KindId } from '../../../lib/vocabulary/index.ts';
import {
  bytesOf,
  expectSound,
  leastDifference,
  lightnessSpan,
  marksOf,
  medianDifference,
  pieceOf,
  shareNear,
} from './look.ts';

const { SHOES } = feet;
type ShoeId = keyof typeof SHOES;
const SHOE_IDS = KIND_IDS.filter((id): id is ShoeId => KINDS[id].group === 'shoes');
const draw = (kind: ShoeId, hex = '#6d4a34', detail: Detail = 'full', more: Parameters<typeof pieceOf>[2] = {}) =>
  SHOES[kind](pieceOf(kind, [hex], more), detail);

/** Shoes whose foot bed or sole shows more than their straps: their colour is looked for, not their median. */
const OPEN: readonly KindId[] = ['heeled sandals', 'wedge sandals', 'sandals'];

describe('shoes', () => {
  test('the room offers its kinds and nothing else', () => {
    expect(Object.keys(feet).sort()).toEqual(['SHOES', 'shoeLength']);
    expect(Object.keys(SHOES).sort()).toEqual([...SHOE_IDS].sort());
  });

  test.each(SHOE_IDS)('%s keep to the contract of a drawing, in both details', (kind) => {
    expectSound(draw(kind));
    expectSound(draw(kind, '#6d4a34', 'small'));
  });

  test.each(SHOE_IDS)('%s are the same every time and sway with the piece', (kind) => {
    expect(draw(kind)).toEqual(draw(kind));
    expect(draw(kind, '#6d4a34', 'full', { id: 'another' }).box).not.toEqual(draw(kind).box);
  });

  test.each(SHOE_IDS)('%s are drawn small with fewer marks', (kind) => {
    const [full, small] = [draw(kind), draw(kind, '#6d4a34', 'small')];
    expect(marksOf(small).length).toBeLessThan(marksOf(full).length * 0.9);
    expect(bytesOf(small)).toBeLessThan(bytesOf(full) * 0.75);
    expect(bytesOf(full)).toBeLessThan(80_000);
  });

  // Outer length of adults' shoes: foot of 22 to 30 cm (ISO 9407, Mondopoint) with 1 to 3 cm of allowance; from memory.
  test.each(SHOE_IDS)('%s have the length of a shoe', (kind) => {
    const near = draw(kind).outline.at(-1) ?? [];
    expect(near.length).toBeGreaterThan(0);
    const { width } = draw(kind).box;
    expect(width).toBeGreaterThan(25);
    expect(width).toBeLessThan(41);
  });

  test('a heel is as much higher as the stylist says', () => {
    for (const kind of [
      'pumps',
      'block heels',
      'heeled sandals',
      'slingbacks',
      'ankle boots',
      'wedge sandals',
    ] as const) {
      const [low, high] = [3, 8].map((heelCm) => draw(kind, '#6d4a34', 'full', { heelCm }).box.height);
      const gained = (high ?? 0) - (low ?? 0);
      expect(gained, kind).toBeGreaterThan(3.4);
      expect(gained, kind).toBeLessThan(6);
    }
  });

  test('a shaft is as tall as the stylist measured', () => {
    for (const kind of [
      'knee boots',
      'rain boots',
      'chelsea boots',
      'lace-up boots',
      'snow boots',
      'ankle boots',
    ] as const) {
      const [short, tall] = [16, 34].map((lengthCm) => draw(kind, '#6d4a34', 'full', { lengthCm }).box.height);
      expect((tall ?? 0) - (short ?? 0), kind).toBeGreaterThan(15);
      expect((tall ?? 0) - (short ?? 0), kind).toBeLessThan(20);
    }
  });

  test('says when a shaft is held', () => {
    const held = (kind: ShoeId, lengthCm: number) => feet.shoeLength(pieceOf(kind, ['#6d4a34'], { lengthCm }));
    expect(held('knee boots', 400)).toEqual({ cm: 60, clamped: true });
    expect(held('knee boots', 40)).toEqual({ cm: 40, clamped: false });
    expect(held('loafers', 40)).toBeUndefined();
  });

  test('absurd measures are drawn as the nearest that can be worn', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SHOE_IDS),
        fc.oneof(fc.double(), fc.constantFrom(-40, 1e9, Number.NaN, Number.POSITIVE_INFINITY)),
        fc.oneof(fc.double(), fc.constantFrom(-40, 1e9, Number.NaN, Number.NEGATIVE_INFINITY)),
        (kind, heelCm, lengthCm) => {
          const drawing = draw(kind, '#6d4a34', 'small', { heelCm, lengthCm });
          expectSound(drawing);
          expect(drawing.box.height).toBeLessThan(90);
        },
      ),
      { numRuns: 60 },
    );
  });

  const GROUNDS = ['#7d2430', '#22211f', '#4f6371'];
  test.each(SHOE_IDS.filter((kind) => !OPEN.includes(kind)))('%s keep the colour of the piece', (kind) => {
    for (const hex of GROUNDS) expect(medianDifference(draw(kind, hex), hex), hex).toBeLessThan(6);
  });
  test.each(SHOE_IDS)('%s show the colour of the piece', (kind) => {
    for (const hex of GROUNDS) expect(shareNear(draw(kind, hex), hex, 7), hex).toBeGreaterThan(0.06);
  });

  test.each(SHOE_IDS)('%s in near black keep their form at both sizes', (kind) => {
    expect(lightnessSpan(draw(kind, '#22211f'), 300)).toBeGreaterThan(12);
    expect(lightnessSpan(draw(kind, '#22211f', 'small'), 80)).toBeGreaterThan(12);
  });

  test('no two kinds look alike at 80 px in the same leather', () => {
    const drawings = Object.fromEntries(
      SHOE_IDS.map((kind) => [kind, draw(kind, '#7a4a2c', 'small', { fabric: 'leather', heelCm: 2 })]),
    );
    const { pair, share } = leastDifference(drawings);
    expect(share, pair).toBeGreaterThan(0.025);
  });
});
