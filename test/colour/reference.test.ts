import Color from 'colorjs.io';
import { converter, differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  contrastOf,
  differenceOf,
  differenceWord,
  HUE_TEMPLATES,
  ouLuoHarmony,
  parseCssColour,
} from '../../lib/colour/index.ts';
import { linearPlanes, oklabPlanes } from '../../lib/colour/pixels.ts';
import { table } from '../reference/table.ts';
import { colour } from './pieces.ts';

const number = (row: Readonly<Record<string, string>>, key: string): number => Number(row[key]);
const hex = fc.integer({ min: 0, max: 0xffffff }).map((value) => `#${value.toString(16).padStart(6, '0')}`);
const RUNS = { numRuns: 3000, seed: 4 };

describe('against published values', () => {
  // Sharma, Wu and Dalal 2005, table 1, in Lab under D65
  test('CIEDE2000', () => {
    const difference = differenceCiede2000();
    for (const row of table('ciede2000')) {
      const found = difference(
        { mode: 'lab65', l: number(row, 'L1'), a: number(row, 'a1'), b: number(row, 'b1') },
        { mode: 'lab65', l: number(row, 'L2'), a: number(row, 'a2'), b: number(row, 'b2') },
      );
      expect(found, `pair ${row.pair}`).toBeCloseTo(number(row, 'dE00_published'), 4);
    }
  });

  // Ottosson's published values
  test('OKLab', () => {
    for (const row of table('oklab_reference')) {
      const found = parseCssColour(row.css_name ?? '');
      if (found === undefined) throw new Error(row.css_name);
      const rgba = Uint8Array.of(...[1, 3, 5].map((at) => Number.parseInt(found.hex.slice(at, at + 2), 16)), 255);
      const planes = oklabPlanes(linearPlanes({ width: 1, height: 1, rgba }));
      const [l, a, b] = [planes.one[0], planes.two[0], planes.three[0]];
      expect(l, row.css_name).toBeCloseTo(number(row, 'ok_L'), 4);
      expect(a, row.css_name).toBeCloseTo(number(row, 'ok_a'), 4);
      expect(b, row.css_name).toBeCloseTo(number(row, 'ok_b'), 4);
      expect(found.oklch.c, row.css_name).toBeCloseTo(Math.hypot(number(row, 'ok_a'), number(row, 'ok_b')), 3);
    }
  });

  // Ottosson 2020, table of XYZ examples
  test('OKLab of XYZ', () => {
    const toOklab = converter('oklab');
    for (const row of table('oklab_xyz_reference')) {
      const xyz = { x: number(row, 'X_D65'), y: number(row, 'Y_D65'), z: number(row, 'Z_D65') };
      const found = toOklab({ mode: 'xyz65', ...xyz });
      expect(found.l).toBeCloseTo(number(row, 'ok_L'), 2);
      expect(found.a).toBeCloseTo(number(row, 'ok_a'), 2);
      expect(found.b).toBeCloseTo(number(row, 'ok_b'), 2);
    }
  });

  // WCAG 2.1 relative luminance
  test('contrast', () => {
    for (const row of table('wcag_contrast')) {
      expect(contrastOf(row.fg ?? '', row.bg ?? '')).toBeCloseTo(number(row, 'contrast_expected'), 3);
    }
  });

  // Ou and Luo 2006, computed from the published constants
  test('harmony of two colours', () => {
    for (const row of table('ou_luo_2006_computed')) {
      const one = { l: number(row, 'L1'), a: number(row, 'a1'), b: number(row, 'b1') };
      const two = { l: number(row, 'L2'), a: number(row, 'a2'), b: number(row, 'b2') };
      expect(ouLuoHarmony(one, two)).toBeCloseTo(number(row, 'CH'), 5);
      expect(ouLuoHarmony(two, one)).toBeCloseTo(number(row, 'CH'), 5);
    }
  });

  // Cohen-Or et al. 2006, figure 2, after Matsuda
  test('hue templates', () => {
    const rows = table('matsuda_templates').filter(({ type }) => type !== 'N');
    const sectors = HUE_TEMPLATES.flatMap(({ type, sectors: of }) =>
      of.map(({ centre, width }, index) => ({
        type: type.replace(' mirrored', '_mirror'),
        sector: index + 1,
        centre,
        width,
      })),
    );
    expect(sectors).toHaveLength(rows.length);
    for (const row of rows) {
      expect(sectors).toContainEqual({
        type: row.type,
        sector: number(row, 'sector'),
        centre: number(row, 'centre_deg_relative'),
        width: number(row, 'width_deg'),
      });
    }
  });
});

describe('against colorjs.io on random colours', () => {
  test('CIEDE2000', () => {
    fc.assert(
      fc.property(hex, hex, (a, b) => {
        // colorjs.io takes Lab under D50, so both are handed over in Lab under D65 coordinates
        const other = new Color(a).to('lab-d65').coords.map(Number);
        const two = new Color(b).to('lab-d65').coords.map(Number);
        const expected = new Color('lab', [other[0] ?? 0, other[1] ?? 0, other[2] ?? 0]).deltaE2000(
          new Color('lab', [two[0] ?? 0, two[1] ?? 0, two[2] ?? 0]),
        );
        expect(differenceOf(a, b)).toBeCloseTo(expected, 2);
      }),
      RUNS,
    );
  });

  test('OKLCH and contrast', () => {
    fc.assert(
      fc.property(hex, hex, (a, b) => {
        const [l = 0, c = 0, h = 0] = new Color(a).to('oklch').coords.map((value) => Number(value ?? 0));
        const found = colour(a).oklch;
        expect(found.l).toBeCloseTo(l, 3);
        expect(found.c).toBeCloseTo(c, 3);
        if (c > 0.02) expect(Math.abs(((found.h - h + 540) % 360) - 180)).toBeLessThan(0.1);
        expect(contrastOf(a, b)).toBeCloseTo(new Color(a).contrastWCAG21(new Color(b)), 2);
      }),
      RUNS,
    );
  });
});

test('difference words rise with the difference', () => {
  expect([0, 1.9, 2, 5.9, 6, 13, 14, 34, 35, 100].map(differenceWord)).toEqual([
    'same to the eye',
    'same to the eye',
    'nearly the same',
    'nearly the same',
    'a shade apart',
    'a shade apart',
    'clearly different',
    'clearly different',
    'far apart',
    'far apart',
  ]);
});
