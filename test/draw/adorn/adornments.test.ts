import { describe, expect, test } from 'vitest';
import * as adorn from '../../../lib/draw/adorn/index.ts';
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
  shareNear,
} from '../feet/look.ts';

const { ACCESSORIES, JEWELLERY, SMALL_JEWELLERY_SCALE } = adorn;
const ALL = { ...JEWELLERY, ...ACCESSORIES };
type Id = keyof typeof ALL;
const IDS = KIND_IDS.filter((id): id is Id => KINDS[id].group === 'jewellery' || KINDS[id].group === 'accessories');
const draw = (kind: Id, hex = '#7a4a2c', detail: Detail = 'full', more: Parameters<typeof pieceOf>[2] = {}) =>
  ALL[kind](pieceOf(kind, [hex], more), detail);

const HATS = ['beret', 'beanie', 'cap', 'flat cap', 'bucket hat', 'sun hat', 'felt hat', 'hair band'] as const;

describe('jewellery and accessories', () => {
  test('the room offers its kinds, the enlargement and nothing else', () => {
    expect(Object.keys(adorn).sort()).toEqual([
      'ACCESSORIES',
      'JEWELLERY',
      'SMALL_JEWELLERY_SCALE',
      'adornmentLength',
      'drawnLarger',
    ]);
    expect(Object.keys(ALL).sort()).toEqual([...IDS].sort());
  });

  test.each(IDS)('%s: sound, the same every time, less of it when small', (kind) => {
    const [full, small] = [draw(kind), draw(kind, '#7a4a2c', 'small')];
    expectSound(full);
    expectSound(small);
    expect(draw(kind)).toEqual(full);
    expect(bytesOf(small)).toBeLessThanOrEqual(bytesOf(full) * 1.01);
    expect(marksOf(small).length).toBeLessThanOrEqual(marksOf(full).length);
    expect(bytesOf(full)).toBeLessThan(45_000);
  });

  test.each(HATS)('a %s keeps the colour of the piece', (kind) => {
    for (const hex of ['#7d2430', '#22211f', '#e9e1d2', '#4f6371'])
      expect(medianDifference(draw(kind, hex), hex), hex).toBeLessThan(6);
  });

  test.each(IDS)('%s shows the colour of the piece', (kind) => {
    for (const hex of ['#7d2430', '#4f6371']) expect(shareNear(draw(kind, hex), hex, 7), hex).toBeGreaterThan(0.06);
  });

  test.each(HATS)('a %s in near black keeps its form', (kind) => {
    expect(lightnessSpan(draw(kind, '#22211f'), 300)).toBeGreaterThan(8);
  });

  // common practice, no source: heads of 55 to 60 cm round are 17 to 20 cm across
  test.each(['beanie', 'cap', 'bucket hat', 'felt hat', 'sun hat', 'beret', 'flat cap'] as const)(
    'a %s would go on a head',
    (kind) => {
      expect(draw(kind).box.width).toBeGreaterThan(18);
      expect(draw(kind).box.width).toBeLessThan(46);
    },
  );

  // ISO 12870 and common practice: spectacle fronts measure 12 to 15 cm across; from memory
  test.each(['sunglasses', 'spectacles'] as const)('%s are as broad as a face', (kind) => {
    expect(draw(kind).box.width).toBeGreaterThan(12);
    expect(draw(kind).box.width).toBeLessThan(16);
  });

  test('only small jewellery is enlarged, and by the stated factor', () => {
    // common practice, no source: ring sizes of adults have an outer diameter of about 1.9 to 2.4 cm
    const ring = draw('ring').box.width / SMALL_JEWELLERY_SCALE;
    expect(ring).toBeGreaterThan(1.9);
    expect(ring).toBeLessThan(2.8);
    // a bangle is drawn true: 6.0 to 7.5 cm inside for adults
    expect(draw('bangle').box.width).toBeGreaterThan(6.5);
    expect(draw('bangle').box.width).toBeLessThan(8.5);
    expect(SMALL_JEWELLERY_SCALE).toBeLessThanOrEqual(2);
  });

  test('a longer scarf hangs lower', () => {
    const height = (lengthCm: number): number => draw('scarf', '#7a4a2c', 'full', { lengthCm }).box.height;
    expect(height(200) - height(140)).toBeGreaterThan(8);
    expect(height(1e6)).toBeLessThan(75);
    expect(adorn.adornmentLength(pieceOf('tie', ['#7a4a2c'], { lengthCm: 9 }))).toEqual({ cm: 84, clamped: true });
    expect(adorn.adornmentLength(pieceOf('ring', ['#7a4a2c'], { lengthCm: 9 }))).toBeUndefined();
  });

  test('a stone, a bobble and a border are drawn in the second colour', () => {
    for (const kind of ['ring', 'drop earrings', 'beanie', 'silk scarf', 'neckerchief', 'mittens', 'watch'] as const) {
      const marks = marksOf(ALL[kind](pieceOf(kind, ['#c39a4e', '#2f6b5a']), 'full'));
      expect(
        marks.some(({ fill, stroke }) => fill === '#2f6b5a' || stroke === '#2f6b5a'),
        kind,
      ).toBe(true);
    }
  });

  test('no two kinds look alike at 80 px in the same colour', () => {
    const drawings = Object.fromEntries(IDS.map((kind) => [kind, draw(kind, '#7a4a2c', 'small')]));
    const { pair, share } = leastDifference(drawings);
    expect(share, pair).toBeGreaterThan(0.04);
  });
});
