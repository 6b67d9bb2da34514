import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as carry from '../../../lib/draw/carry/index.ts';
import type { Detail } from '../../../lib/draw/drawing.ts';
import { KIND_IDS, KINDS } from '../../../lib/vocabulary/index.ts';
import {
  bytesOf,
  expectSound,
  leastDifference,
  lightnessSpan,
  marksOf,
  medianDifference,
  pieceOf,
} from '../feet/look.ts';

const { BAGS } = carry;
type BagId = keyof typeof BAGS;
const BAG_IDS = KIND_IDS.filter((id): id is BagId => KINDS[id].group === 'bags');
const draw = (kind: BagId, hex = '#7a4a2c', detail: Detail = 'full', more: Parameters<typeof pieceOf>[2] = {}) =>
  BAGS[kind](pieceOf(kind, [hex], more), detail);

describe('bags', () => {
  test('the room offers its kinds and nothing else', () => {
    expect(Object.keys(carry).sort()).toEqual(['BAGS', 'bagLength']);
    expect(carry.bagLength(pieceOf('tote', ['#7a4a2c'], { lengthCm: 300 }))).toEqual({ cm: 40, clamped: true });
    expect(carry.bagLength(pieceOf('clutch', ['#7a4a2c'], { lengthCm: 300 }))).toBeUndefined();
    expect(Object.keys(BAGS).sort()).toEqual([...BAG_IDS].sort());
  });

  test.each(BAG_IDS)('a %s keeps to the contract, the same every time', (kind) => {
    expectSound(draw(kind));
    expectSound(draw(kind, '#7a4a2c', 'small'));
    expect(draw(kind)).toEqual(draw(kind));
    expect(draw(kind, '#7a4a2c', 'full', { id: 'another' }).marks).not.toEqual(draw(kind).marks);
  });

  test.each(BAG_IDS)('a %s is drawn small with less', (kind) => {
    const [full, small] = [draw(kind), draw(kind, '#7a4a2c', 'small')];
    expect(marksOf(small).length).toBeLessThan(marksOf(full).length);
    expect(bytesOf(small)).toBeLessThan(bytesOf(full) * 0.7);
    expect(bytesOf(full)).toBeLessThan(45_000);
  });

  test.each(BAG_IDS)('a %s keeps the colour of the piece', (kind) => {
    for (const hex of ['#7d2430', '#22211f', '#e9e1d2', '#4f6371'])
      expect(medianDifference(draw(kind, hex), hex), hex).toBeLessThan(6);
  });

  test.each(BAG_IDS)('a %s in near black keeps its form', (kind) => {
    expect(lightnessSpan(draw(kind, '#22211f'), 300)).toBeGreaterThan(9);
    expect(lightnessSpan(draw(kind, '#22211f', 'small'), 80)).toBeGreaterThan(6);
  });

  test('handles are as long as the stylist measured, within what a card can hold', () => {
    for (const kind of ['tote', 'shoulder bag', 'flap bag', 'basket bag', 'canvas shopper'] as const) {
      const top = (lengthCm: number): number => draw(kind, '#7a4a2c', 'full', { lengthCm }).box.y;
      expect(top(12) - top(24), kind).toBeGreaterThan(10);
      expect(top(12) - top(24), kind).toBeLessThan(14);
    }
    fc.assert(
      fc.property(fc.constantFrom(...BAG_IDS), fc.oneof(fc.double(), fc.constantFrom(-9, 1e9)), (kind, lengthCm) => {
        const drawing = draw(kind, '#7a4a2c', 'small', { lengthCm });
        expectSound(drawing);
        expect(drawing.box.height).toBeLessThan(90);
      }),
      { numRuns: 40 },
    );
  });

  test('a second colour of a canvas shopper is a block at its foot', () => {
    const fills = marksOf(BAGS['canvas shopper'](pieceOf('canvas shopper', ['#e8dfcc', '#35527a']), 'full')).map(
      (mark) => mark.fill,
    );
    expect(fills).toContain('#35527a');
  });

  test('no two kinds look alike at 80 px in the same leather', () => {
    const drawings = Object.fromEntries(
      BAG_IDS.map((kind) => [kind, draw(kind, '#7a4a2c', 'small', { fabric: 'leather' })]),
    );
    const { pair, share } = leastDifference(drawings);
    expect(share, pair).toBeGreaterThan(0.06);
  });
});
