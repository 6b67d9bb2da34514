import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  COLOUR_NAMES,
  hueFamily,
  isMetal,
  isNeutral,
  onSurface,
  RELATIONS,
  relate,
  relatePieces,
} from '../../lib/colour/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { colour, piece } from './pieces.ts';

const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const between = (a: string, b: string) => relate(colour(a), colour(b));
const anyName = fc.constantFrom(...COLOUR_NAMES);

// What a stylist calls neutral. common practice, no source
describe('neutrals', () => {
  test.each([
    'black',
    'white',
    'charcoal',
    'dove grey',
    'cream',
    'ecru',
    'sand',
    'beige',
    'navy',
    'denim',
    'dark denim',
    'light denim',
    'camel',
    'tan',
    'tan leather',
    'cognac',
    'chocolate',
    'olive',
    'khaki',
    'burgundy',
    'oxblood',
    'bottle green',
    'taupe',
    'nude',
    'gold',
    'silver',
  ])('%s is neutral', (name) => {
    expect(isNeutral(colour(name))).toBe(true);
    expect(hueFamily(colour(name))).toBe('neutral');
  });

  test.each([
    ['red', 'red'],
    ['scarlet', 'red'],
    ['rust', 'orange'],
    ['terracotta', 'orange'],
    ['mustard', 'yellow'],
    ['butter', 'yellow'],
    ['emerald', 'green'],
    ['sage', 'green'],
    ['teal', 'teal'],
    ['petrol', 'teal'],
    ['cobalt', 'blue'],
    ['sky blue', 'blue'],
    ['royal blue', 'blue'],
    ['violet', 'purple'],
    ['lilac', 'purple'],
    ['plum', 'purple'],
    ['hot pink', 'pink'],
    ['dusty pink', 'pink'],
    ['fuchsia', 'pink'],
  ])('%s is a colour of the family %s', (name, family) => {
    expect(isNeutral(colour(name))).toBe(false);
    expect(hueFamily(colour(name))).toBe(family);
  });

  test("the stylist's word overrides the computation", () => {
    expect(isNeutral({ ...colour('rust'), neutral: true })).toBe(true);
    expect(isNeutral({ ...colour('camel'), neutral: false })).toBe(false);
    expect(between('rust', 'hot pink').relation).not.toBe('neutral');
    expect(relate({ ...colour('rust'), neutral: true }, colour('hot pink')).relation).toBe('neutral');
  });
});

// Pairs a stylist would say so of. common practice, no source; opposites by Itten's wheel, from memory
describe('words for metal', () => {
  test.each([
    ['copper', 'satin', false],
    ['gold', 'fine knit', false],
    ['gold', 'leather', true],
    ['silver', 'metal', true],
    ['silver', 'sequin', true],
  ] as const)('%s on %s is metal: %s', (name, surface, metal) => {
    expect(isMetal(onSurface(colour(name), surface))).toBe(metal);
  });
});

describe('relations', () => {
  test.each([
    ['navy', 'rust', 'neutral', true],
    ['charcoal', 'camel', 'neutral', true],
    ['gold', 'fuchsia', 'metal', true],
    ['rust', 'rust', 'same', true],
    ['rust', 'terracotta', 'tone on tone', true],
    ['hot pink', 'red', 'neighbouring', true],
    ['sky blue', 'emerald', 'neighbouring', true],
    ['red', 'green', 'opposite', true],
    ['orange', 'blue', 'opposite', true],
    ['yellow', 'purple', 'opposite', true],
    ['rust', 'teal', 'opposite', true],
    ['berry', 'mustard', 'triad', true],
    ['sage', 'dusty pink', 'split', true],
    ['lavender', 'mint', 'contrast', true],
    ['hot pink', 'orange', 'clash', false],
    ['scarlet', '#00a000', 'clash', false],
    ['royal blue', 'cobalt', 'near miss', false],
    ['black', 'navy', 'near miss', true],
    ['white', 'off-white', 'near miss', true],
    ['charcoal', 'black', 'neutral', true],
  ] as const)('%s with %s: %s', (a, b, relation, goes) => {
    expect(between(a, b)).toMatchObject({ relation, goes });
  });

  test('are symmetric, bounded, named from the closed list and can be said', () => {
    fc.assert(
      fc.property(anyName, anyName, (a, b) => {
        const found = between(a, b);
        const back = between(b, a);
        expect([back.relation, back.goes, back.score]).toEqual([found.relation, found.goes, found.score]);
        expect(RELATIONS).toContain(found.relation);
        expect(found.score).toBeGreaterThanOrEqual(0);
        expect(found.score).toBeLessThanOrEqual(1);
        if (!found.goes) expect(found.score).toBeLessThan(0.5);
        expect(say(english, formats, found.reason).toLowerCase()).toContain(a.toLowerCase());
      }),
      { numRuns: 1000, seed: 4 },
    );
  });

  test('a neutral never clashes', () => {
    const neutrals = COLOUR_NAMES.filter((name) => isNeutral(colour(name)));
    fc.assert(
      fc.property(fc.constantFrom(...neutrals), anyName, (a, b) => {
        expect(between(a, b).relation).not.toBe('clash');
      }),
      { numRuns: 1000, seed: 4 },
    );
  });
});

describe('pieces', () => {
  const rust = piece('rust-shirt', 'top', ['rust']);
  const print = piece(
    'print-skirt',
    'bottom',
    [
      ['navy', 0.6],
      ['rust', 0.25],
      ['cream', 0.15],
    ],
    'floral',
  );

  test('a print that holds the colour of a plain piece is tied to it', () => {
    expect(relatePieces(rust, print)).toMatchObject({ relation: 'shared colour', goes: true });
    expect(relatePieces(rust, print).score).toBeGreaterThan(
      relatePieces(rust, piece('navy', 'bottom', ['navy'])).score,
    );
  });

  test('a strong motif that clashes is not overlooked, a speck is', () => {
    const strong = piece(
      'loud',
      'bottom',
      [
        ['black', 0.6],
        ['orange', 0.4],
      ],
      'floral',
    );
    const speck = piece(
      'quiet',
      'bottom',
      [
        ['black', 0.96],
        ['orange', 0.04],
      ],
      'floral',
    );
    const pink = piece('pink', 'top', ['hot pink']);
    expect(relatePieces(pink, strong).goes).toBe(false);
    expect(relatePieces(pink, speck).goes).toBe(true);
  });

  test('a pinstripe is its ground', () => {
    const suit = piece(
      'suit',
      'bottom',
      [
        ['charcoal', 0.7],
        ['orange', 0.3],
      ],
      'pinstripe',
    );
    expect(relatePieces(piece('pink', 'top', ['hot pink']), suit).relation).toBe('neutral');
  });

  test('metal goes whatever its colour is called', () => {
    const cuff = piece('cuff', 'jewellery', ['orange'], 'plain', { fabric: 'metal' });
    expect(relatePieces(cuff, piece('pink', 'top', ['hot pink'])).goes).toBe(true);
  });

  test('are symmetric', () => {
    fc.assert(
      fc.property(anyName, anyName, anyName, anyName, (a, b, c, d) => {
        const one = piece(
          'one',
          'top',
          [
            [a, 0.6],
            [b, 0.4],
          ],
          'check',
        );
        const two = piece(
          'two',
          'bottom',
          [
            [c, 0.7],
            [d, 0.3],
          ],
          'floral',
        );
        const found = relatePieces(one, two);
        const back = relatePieces(two, one);
        expect([back.relation, back.goes, back.score]).toEqual([found.relation, found.goes, found.score]);
      }),
      { numRuns: 500, seed: 4 },
    );
  });
});
