import Color from 'colorjs.io';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  COLOUR_NAMES,
  colourNamed,
  differenceOf,
  nearestColourNames,
  parseColour,
  parseCssColour,
} from '../../lib/colour/index.ts';
import { CLOTH_COLOURS } from '../../lib/colour/names/index.ts';
import { table } from '../reference/table.ts';
import { colour } from './pieces.ts';

describe('the dictionary', () => {
  test('has at least 150 names, each with a value inside sRGB that is what is shown', () => {
    expect(COLOUR_NAMES.length).toBeGreaterThanOrEqual(150);
    for (const name of COLOUR_NAMES) {
      const [l, c, h] = CLOTH_COLOURS[name] ?? [0, 0, 0];
      const outside = new Color('oklch', [l, c, h]);
      expect(outside.inGamut('srgb', { epsilon: 0.01 }), name).toBe(true);
      expect(differenceOf(colour(name).hex, outside.to('srgb').toString({ format: 'hex' })), name).toBeLessThan(0.6);
    }
  });

  test('reads a name whatever its capitals, hyphens and spelling of grey', () => {
    expect(parseColour('  Bottle-GREEN ')).toEqual(parseColour('bottle green'));
    expect(parseColour('light gray')?.name).toBe('light grey');
  });

  // The words of the trade: a fact about dyed cloth, not about screens. common practice, no source
  test('means the cloth where CSS has the same word', () => {
    expect(colour('navy').oklch.c).toBeLessThan(0.1);
    expect(parseCssColour('navy')?.hex).toBe('#000080');
  });

  test('takes a shade before a name', () => {
    expect(colour('dark rust').oklch.l).toBeLessThan(colour('rust').oklch.l);
    expect(colour('pale rust').oklch.l).toBeGreaterThan(colour('rust').oklch.l);
    expect(colour('muted rust').oklch.c).toBeLessThan(colour('rust').oklch.c);
    expect(colour('dark rust').name).toBe('dark rust');
    expect(parseColour('angry rust')).toBeUndefined();
  });

  test('carries a display name and an override beside a value', () => {
    expect(colourNamed('wet slate', '#4a5560', true)).toMatchObject({
      name: 'wet slate',
      hex: '#4a5560',
      neutral: true,
    });
    expect(colourNamed('wet slate', 'wet')).toBeUndefined();
  });
});

describe('misspellings', () => {
  test.each([
    ['oxblod', 'oxblood'],
    ['bottel green', 'bottle green'],
    ['muster', 'mustard'],
    ['navvy', 'navy'],
    ['dark oxblod', 'dark oxblood'],
    ['terracota', 'terracotta'],
    ['fuschia', 'fuchsia'],
  ])('%s suggests %s first', (wrong, right) => {
    expect(nearestColourNames(wrong)[0]).toBe(right);
  });

  test('what is like no name suggests nothing', () => {
    expect(nearestColourNames('xyzzyq')).toEqual([]);
    expect(nearestColourNames('')).toEqual([]);
    expect(nearestColourNames('q'.repeat(5000))).toEqual([]);
  });

  test('every suggestion is a colour', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 30 }), (text) => {
        for (const name of nearestColourNames(text)) expect(parseColour(name)).toBeDefined();
      }),
    );
  });
});

describe('CSS Color 4', () => {
  // test/reference/css_named_colours.csv
  test('reads every named colour', () => {
    for (const row of table('css_named_colours')) {
      expect(parseCssColour(row.name ?? '')?.hex, row.name).toBe(row.hex);
      expect(parseCssColour((row.name ?? '').toUpperCase())?.hex, row.name).toBe(row.hex);
    }
  });

  // colorjs.io as a second reader of the same text. Of rec2020 only white: the two libraries follow different editions of
  // its transfer curve (BT.2020 camera curve, and the plain 2.4 power of the newer draft)
  test.each([
    '#f80',
    '#F80C',
    '#a0522d',
    '#a0522d80',
    'rgb(160 82 45)',
    'rgb(160, 82, 45)',
    'rgba(160, 82, 45, 0.5)',
    'rgb(62% 32% 18% / 50%)',
    'rgb(none 82 45)',
    'hsl(19.3deg 56% 40%)',
    'hsl(0.25turn 56% 40%)',
    'hsla(200, 50%, 50%, 1)',
    'hwb(120 10% 20%)',
    'lab(50% 40 20)',
    'lab(50 -20 30)',
    'lch(50% 30 200)',
    'lch(50 30 none)',
    'oklab(0.6 0.1 0.05)',
    'oklab(60% 25% 10%)',
    'oklch(0.5 0.1 200)',
    'oklch(50% 25% 200deg)',
    'color(srgb 0.6 0.3 0.2)',
    'color(srgb-linear 0.3 0.1 0.05)',
    'color(display-p3 0.6 0.4 0.3)',
    'color(a98-rgb 0.5 0.4 0.3)',
    'color(prophoto-rgb 0.4 0.4 0.3)',
    'color(rec2020 1 1 1)',
    'color(xyz 0.3 0.3 0.3)',
    'color(xyz-d50 0.3 0.3 0.2)',
    'color(xyz-d65 0.3 0.3 0.3)',
  ])('%s', (text) => {
    const other = new Color(text).to('srgb');
    const alpha = Number(other.alpha ?? 1);
    const onWhite = other.coords.map((channel) => Number(channel ?? 0) * alpha + 1 - alpha);
    const [r = 0, g = 0, b = 0] = onWhite;
    const expected = new Color('srgb', [r, g, b]).toString({ format: 'hex', collapse: false });
    expect(differenceOf(colour(text).hex, expected)).toBeLessThan(0.6);
  });

  test.each([
    'transparent',
    'rgb(0 0 0 / 0)',
    'currentcolor',
    'Canvas',
    '',
    'abc',
    'decade',
    '#12',
    '#12345',
    'rgb(1 2)',
    'url(x)',
    'rgb(1e999 0 0)',
    '#abc'.repeat(40),
  ])('%s is no colour of cloth', (text) => {
    expect(parseColour(text)).toBeUndefined();
  });

  // CSS Color 4, section 13.2: lightness and hue are kept as far as can be, chroma gives way
  test('maps what a screen cannot show', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 0.9, noNaN: true }),
        fc.double({ min: 0.25, max: 0.4, noNaN: true }),
        fc.integer({ min: 0, max: 359 }),
        (l, c, h) => {
          const mapped = colour(`oklch(${l} ${c} ${h})`);
          const other = new Color('oklch', [l, c, h])
            .toGamut({ space: 'srgb', method: 'css' })
            .to('srgb')
            .toString({ format: 'hex', collapse: false });
          expect(differenceOf(mapped.hex, other)).toBeLessThan(3);
        },
      ),
      { numRuns: 300, seed: 4 },
    );
    expect(colour('rgb(300 0 0)').hex).toBe('#ff0000');
  });

  test('nothing makes it throw', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        const found = parseColour(text);
        if (found !== undefined) expect(found.hex).toMatch(/^#[0-9a-f]{6}$/);
      }),
    );
  });
});
