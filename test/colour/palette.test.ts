import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  accentOf,
  COLOUR_NAMES,
  colourFindings,
  contrastOf,
  DICHROMACIES,
  differenceOf,
  fitHueTemplate,
  hardToTellApart,
  isNeutral,
  onSurface,
  PALETTE_SCHEMES,
  PAPER_DARK,
  PAPER_LIGHT,
  paletteReport,
  relate,
  seenWith,
  strayFromMood,
  suggestPalettes,
  suggestPalettesFrom,
  whatColourDoes,
} from '../../lib/colour/index.ts';
import { FABRICS } from '../../lib/vocabulary/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { colour, piece } from './pieces.ts';

const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const anyName = fc.constantFrom(...COLOUR_NAMES);

const CAPSULE = [
  piece('white-shirt', 'top', ['white']),
  piece('rust-knit', 'top', ['rust']),
  piece('cream-knit', 'top', ['cream']),
  piece('navy-trousers', 'bottom', ['navy']),
  piece('camel-skirt', 'bottom', ['camel']),
  piece(
    'print-skirt',
    'bottom',
    [
      ['navy', 0.6],
      ['rust', 0.25],
      ['cream', 0.15],
    ],
    'floral',
  ),
  piece('navy-coat', 'outer layer', ['navy']),
  piece('teal-scarf', 'scarf', ['teal']),
];

describe('the palette of a capsule', () => {
  const report = paletteReport(CAPSULE);

  test('gives roles with shares that add up to one', () => {
    expect(report.colours.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    const roleOf = (name: string) => report.colours.find(({ colour: { name: is } }) => is === name)?.role;
    expect(roleOf('navy')).toBe('base');
    expect(roleOf('rust')).toBe('support');
    expect(roleOf('teal')).toBe('accent');
    expect(report.colours.find(({ colour: { name } }) => name === 'navy')?.pieces).toContain('navy-coat');
  });

  test('counts the pairs of top and bottom that go, as counted by hand', () => {
    expect(report.pairs).toHaveLength(9);
    expect(report.pairsGoing).toBe(9);
    expect(report.lonely).toEqual([]);
    expect(report.relations).toHaveLength((report.colours.length * (report.colours.length - 1)) / 2);
  });

  test('every sentence can be said', () => {
    const said = [
      ...report.summary,
      ...report.relations.map(({ said: it }) => it),
      ...report.additions.map(({ reason }) => reason),
    ];
    for (const sentence of said) expect(say(english, formats, sentence)).toMatch(/^\p{Lu}.*\.$/u);
  });

  test('what is suggested goes, and is new to its place', () => {
    expect(report.additions.length).toBeGreaterThan(0);
    for (const addition of report.additions) {
      expect(addition.goesWith.length).toBeGreaterThan(0);
      const there = CAPSULE.filter(({ places }) => places.includes(addition.as)).map(
        ({ colours }) => colours[0]?.hex ?? '',
      );
      for (const hex of there) expect(differenceOf(hex, addition.colour.hex)).toBeGreaterThan(10);
    }
  });

  test('counts no pair as going that the check criticises as nearly matching', () => {
    const dark = [piece('black-knit', 'top', ['black']), piece('white-shirt', 'top', ['white'])];
    const found = paletteReport([...dark, piece('navy-trousers', 'bottom', ['navy'])]);
    const criticised = colourFindings(dark.concat(piece('navy-trousers', 'bottom', ['navy']))).filter(
      ({ rule }) => rule === 'colour-near-miss',
    );
    expect(criticised).toHaveLength(1);
    const said = found.summary.map((sentence) => say(english, formats, sentence)).join(' ');
    expect(said).toContain(
      '1 of 2 pairs of top and bottom go together by colour. 1 more nearly matches, which shows by daylight.',
    );
    expect(said).not.toContain('Every top');
  });

  test('every swatch is named once in the summary, metal as metal and cloth as cloth', () => {
    const pieces = [
      ...CAPSULE,
      piece('copper-silk', 'one-piece', ['copper'], 'plain', { fabric: 'satin' }),
      piece('gold-cuff', 'jewellery', ['gold'], 'plain', { fabric: 'metal' }),
    ].map((each) => ({ ...each, colours: each.colours.map((one) => onSurface(one, FABRICS[each.fabric].surface)) }));
    const found = paletteReport(pieces);
    const parts = found.summary.filter(({ key }) => /^palette (base|support|neutrals|accent|metal)$/.test(key));
    const named = parts.flatMap(({ values }) => values.colours as readonly string[]);
    expect([...named].sort()).toEqual(found.colours.map(({ colour: { name } }) => name).sort());
    expect(parts.find(({ key }) => key === 'palette metal')?.values.colours).toEqual(['gold']);
  });

  test('what is suggested keeps to the mood', () => {
    const mood = [colour('rust'), colour('teal'), colour('cream')];
    const { additions } = paletteReport(CAPSULE, mood);
    expect(additions.length).toBeGreaterThan(0);
    for (const { colour: added } of additions) {
      expect(Math.min(...mood.map(({ hex }) => differenceOf(hex, added.hex))), added.name).toBeLessThan(14);
    }
  });

  test('an added colour brings as many pairs as the report then counts', () => {
    fc.assert(
      fc.property(anyName, fc.constantFrom('top', 'bottom'), (name, as) => {
        const place = as === 'top' ? ('top' as const) : ('bottom' as const);
        const addition = whatColourDoes(CAPSULE, colour(name), place);
        const after = paletteReport([...CAPSULE, piece('new', place, [name])]);
        expect(after.pairsGoing - report.pairsGoing).toBe(addition.goesWith.length);
      }),
      { numRuns: 6, seed: 4 },
    );
  });

  test('does not depend on the order of the pieces', () => {
    const back = paletteReport([...CAPSULE].reverse());
    expect(back.colours.map(({ colour: { hex }, role }) => [hex, role]).sort()).toEqual(
      report.colours.map(({ colour: { hex }, role }) => [hex, role]).sort(),
    );
    expect(back.pairsGoing).toBe(report.pairsGoing);
  });

  test('an empty capsule is no trouble', () => {
    expect(paletteReport([])).toMatchObject({ colours: [], pairs: [], lonely: [], template: { type: 'N' } });
    expect(colourFindings([])).toEqual([]);
  });
});

describe('findings', () => {
  const rules = (pieces: Parameters<typeof colourFindings>[0], wishes = {}) =>
    colourFindings(pieces, wishes).map(({ rule, about }) => [rule, ...about].join(' '));

  test('a piece that goes with nothing', () => {
    const found = rules([
      piece('pink-top', 'top', ['hot pink']),
      piece('white', 'top', ['white']),
      piece('orange', 'bottom', ['orange']),
    ]);
    expect(found).toContain('colour-belongs-to-no-one pink-top');
    expect(found).toContain('colour-no-neutral-bottom orange');
  });

  test('colours too alike in one place, not across places', () => {
    const found = rules([
      piece('one', 'top', ['rust']),
      piece('two', 'top', ['#a64b2c']),
      piece('three', 'bottom', ['navy']),
    ]);
    expect(found).toContain('colour-too-alike one two');
    expect(rules([piece('one', 'top', ['rust']), piece('two', 'scarf', ['#a64b2c'])]).join()).not.toContain(
      'too-alike',
    );
    expect(
      rules([piece('one', 'top', ['rust']), piece('two', 'top', ['rust', 'cream'], 'stripe')]).join(),
    ).not.toContain('too-alike');
  });

  test('black with navy is advice', () => {
    const found = colourFindings([piece('black', 'top', ['black']), piece('navy', 'bottom', ['navy'])]);
    expect(found).toContainEqual(expect.objectContaining({ rule: 'colour-near-miss', level: 'advice' }));
  });

  test('refused colours, by shade and by family', () => {
    const pieces = [piece('mustard', 'top', ['mustard']), piece('navy', 'bottom', ['navy'])];
    expect(rules(pieces, { avoid: [colour('yellow')] })).toContain('colour-refused mustard');
    expect(rules(pieces, { avoid: [colour('lemon')] }).join()).not.toContain('refused');
  });

  test('what is outside the mood', () => {
    const pieces = [piece('lime', 'top', ['lime']), piece('navy', 'bottom', ['navy'])];
    expect(rules(pieces, { mood: [colour('rust'), colour('cream')] })).toContain('colour-outside-mood lime');
  });

  test('a quiet tint or shade of a colour of the mood belongs to it, and so does a metal', () => {
    const of = (name: string, ...mood: readonly string[]): boolean =>
      strayFromMood(piece(name, 'top', [name]), mood.map(colour)) === undefined;
    expect(of('pale blue', 'petrol', 'rust')).toBe(true);
    expect(of('dusty rose', 'burgundy')).toBe(true);
    expect(of('sage', 'bottle green')).toBe(true);
    expect(of('gold', 'petrol')).toBe(true);
    // a louder one of the family does not, nor a tint of another; greys have no family
    expect(of('hot pink', 'burgundy')).toBe(false);
    expect(of('pale blue', 'rust', 'charcoal')).toBe(false);
    expect(of('powder pink', 'petrol')).toBe(false);
    expect(of('lime')).toBe(true);
  });

  test('say what they mean', () => {
    const pieces = [
      piece('Pink top', 'top', ['hot pink']),
      piece('White shirt', 'top', ['white']),
      piece('Orange skirt', 'bottom', ['orange']),
    ];
    for (const { message, reason, mend } of colourFindings(pieces, {
      avoid: [colour('orange')],
      mood: [colour('navy')],
    })) {
      for (const phrase of [message, reason, mend])
        if (phrase) expect(say(english, formats, phrase)).toMatch(/^\p{Lu}.*\.$/u);
    }
  });
});

const fitted = (...names: string[]) =>
  fitHueTemplate(names.map((name) => ({ colour: colour(name), share: 1 / names.length })));

describe('hue templates', () => {
  test.each([
    [['navy', 'cream', 'camel'], 'N'],
    [['rust', 'navy'], 'i'],
    [['#cc3333', '#33cccc'], 'I'],
    [['#cc3333', '#cc9933'], 'V'],
  ])('%s is %s', (names, type) => {
    expect(fitted(...names).type).toBe(type);
    expect(fitted(...names).outside).toEqual([]);
  });
});

describe('how hue templates are said', () => {
  test('every colour that is no neutral is in one group or outside', () => {
    fc.assert(
      fc.property(fc.uniqueArray(anyName, { minLength: 1, maxLength: 7 }), (names) => {
        const swatches = names.map((name) => ({ colour: colour(name), share: 1 / names.length }));
        const { groups, outside, type } = fitHueTemplate(swatches);
        const coloured = names.filter((name) => !isNeutral(colour(name)));
        expect([...groups.flat(), ...outside].map(({ name }) => name).sort()).toEqual([...coloured].sort());
        if (groups.length === 2) for (const group of groups) expect(group.length, type).toBeGreaterThan(0);
      }),
      { numRuns: 200, seed: 4 },
    );
  });

  test('colours that stand a third of the wheel apart are not called close', () => {
    const { type } = fitted('terracotta', 'sage');
    expect(relate(colour('terracotta'), colour('sage')).relation).toBe('triad');
    expect(type).not.toBe('i');
  });

  test('one colour among neutrals is said so', () => {
    const one = paletteReport([piece('navy', 'bottom', ['navy']), piece('rose', 'top', ['dusty rose'])]);
    expect(one.summary.map((sentence) => say(english, formats, sentence))).toContain(
      'Dusty rose is the one colour among neutrals.',
    );
  });
});

describe('suggested palettes', () => {
  test('every two colours go together and are clearly apart', () => {
    fc.assert(
      fc.property(anyName, (name) => {
        for (const { scheme, colours, score } of suggestPalettes(colour(name))) {
          expect(PALETTE_SCHEMES).toContain(scheme);
          expect(score).toBeGreaterThan(0.5);
          expect(colours.some(({ role, colour: base }) => role === 'base' && isNeutral(base))).toBe(true);
          colours.forEach(({ colour: one }, index) => {
            for (const { colour: two } of colours.slice(index + 1)) {
              expect(relate(one, two).goes, `${one.name} ${two.name}`).toBe(true);
              expect(differenceOf(one.hex, two.hex)).toBeGreaterThan(6);
            }
          });
        }
      }),
      { numRuns: 25, seed: 4 },
    );
  });

  test('a strong seed gives a palette in most schemes, a photo one round its strongest colour', () => {
    expect(suggestPalettes(colour('rust')).length).toBeGreaterThanOrEqual(4);
    const found = suggestPalettesFrom([
      { ...colour('oatmeal'), share: 0.7 },
      { ...colour('teal'), share: 0.3 },
    ]);
    expect(found[0]?.colours.map(({ colour: { name } }) => name)).toEqual(expect.arrayContaining(['teal', 'oatmeal']));
    expect(suggestPalettesFrom([])).toEqual([]);
  });
});

describe('two-cone vision', () => {
  // Viénot, Brettel and Mollon 1999, linear-light matrices for protanopia and deuteranopia; from memory, as a second
  // opinion: the two methods agree on which colours run together, not on every shade
  const VIENOT = {
    protanopia: [
      [0.11238, 0.88762, 0],
      [0.11238, 0.88762, 0],
      [0.00401, -0.00401, 1],
    ],
    deuteranopia: [
      [0.29275, 0.70725, 0],
      [0.29275, 0.70725, 0],
      [-0.02234, 0.02234, 1],
    ],
  } as const;
  const linear = (hex: string) =>
    [1, 3, 5].map((at) => {
      const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
      return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
    });
  const hexOf = (light: readonly number[]) =>
    `#${light
      .map((value) => {
        const inside = Math.min(1, Math.max(0, value));
        const coded = inside <= 0.0031308 ? inside * 12.92 : 1.055 * inside ** (1 / 2.4) - 0.055;
        return Math.round(coded * 255)
          .toString(16)
          .padStart(2, '0');
      })
      .join('')}`;

  test('is near another published model on the dictionary', () => {
    for (const vision of ['protanopia', 'deuteranopia'] as const) {
      const away = COLOUR_NAMES.map((name) => {
        const light = linear(colour(name).hex);
        const other = hexOf(
          VIENOT[vision].map((row) => row.reduce<number>((sum, value, index) => sum + value * (light[index] ?? 0), 0)),
        );
        return differenceOf(seenWith(vision, colour(name).hex), other);
      });
      expect(away.reduce((sum, value) => sum + value, 0) / away.length).toBeLessThan(7);
    }
  });

  test('leaves greys grey', () => {
    for (const vision of DICHROMACIES) {
      for (const grey of ['#000000', '#808080', '#ffffff'])
        expect(differenceOf(seenWith(vision, grey), grey)).toBeLessThan(1);
    }
  });

  test('red and green of one lightness run together, blue and yellow do not', () => {
    const looks = hardToTellApart([
      piece('red', 'top', ['#a85a3c']),
      piece('green', 'bottom', ['#6b7536']),
      piece('blue', 'shoes', ['cobalt']),
    ]);
    expect(looks.map(({ one, two }) => `${one} ${two}`)).toEqual(['red green']);
    expect(looks[0]?.visions).toContain('deuteranopia');
  });
});

describe('the accent', () => {
  // WCAG 2.2, 1.4.3
  test('can be read on both papers, whatever the capsule', () => {
    fc.assert(
      fc.property(fc.array(anyName, { maxLength: 5 }), (names) => {
        const accent = accentOf(names.map((name, index) => piece(`p${index}`, 'top', [name])));
        expect(contrastOf(accent.light, PAPER_LIGHT)).toBeGreaterThanOrEqual(4.5);
        expect(contrastOf(accent.dark, PAPER_DARK)).toBeGreaterThanOrEqual(4.5);
      }),
      { numRuns: 150, seed: 4 },
    );
  });

  test('is the telling colour, of its own hue', () => {
    const accent = colour(accentOf(CAPSULE).light);
    expect(Math.abs(accent.oklch.h - colour('rust').oklch.h)).toBeLessThan(8);
  });
});
