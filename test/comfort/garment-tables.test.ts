import { describe, expect, it } from 'vitest';
import { SOCKS_CLO, UNDERTHINGS_CLO } from '../../lib/comfort/index.ts';
import { estimateClo, type FabricId, KINDS, type KindId } from '../../lib/vocabulary/index.ts';
import { number, table } from './table.ts';

type Row = Readonly<Record<string, string>>;
const TABLES = { ashrae: table('garment_clo_ashrae'), iso: table('garment_clo_iso9920') } as const;
type Standard = keyof typeof TABLES;

const keyOf = (row: Row): string => `${row.category}: ${row.garment}`;

/** The one row of a table that a name means: `garment`, or `category: garment` where a garment stands in two categories. */
const rowNamed = (standard: Standard, name: string): Row => {
  const rows = TABLES[standard].filter((row) => row.garment === name || keyOf(row) === name);
  const [row] = rows;
  if (row === undefined || rows.length > 1) throw new Error(`${rows.length} rows of ${standard} are called "${name}"`);
  return row;
};

const cited = Object.entries(KINDS).flatMap(([kind, { clo }]) => {
  const [standard, name] = clo[1].split(/: (.*)/);
  return standard === 'ashrae' || standard === 'iso'
    ? [{ kind, standard: standard as Standard, name: name ?? '', clo: clo[0] }]
    : [];
});

/**
 * Garments that a kind of ours is, though its figure comes from the other table: what ours is compared with, and how far
 * the two tables stand apart on it, or our cloth from theirs.
 */
const ALSO_OURS: Readonly<Record<Standard, Readonly<Record<string, readonly [KindId, FabricId | 'usual', number]>>>> = {
  ashrae: {
    'short shorts': ['shorts', 'usual', 0.005],
    'long-sleeve shirtdress (thick)': ['shirt dress', 'flannel', 0.05],
    'double-breasted (thick)': ['double-breasted blazer', 'tweed', 0.02],
    // cloth of ours changes less from thin to thick than these two rows do
    'suit jackets and vests (lined): sleeveless vest (thick)': ['waistcoat', 'tweed', 0.06],
    'sweaters: sleeveless vest (thin)': ['slipover', 'fine wool', 0.06],
  },
  iso: {
    pantyhose: ['tights', 'usual', 0.005],
    'T-shirt': ['t-shirt', 'usual', 0.015],
    'normal, long sleeves': ['shirt', 'usual', 0.005],
    'flannel shirt, long sleeves': ['flannel shirt', 'usual', 0.045],
    'turtleneck blouse, long sleeves': ['roll-neck', 'usual', 0.035],
    'walking shorts': ['tailored shorts', 'usual', 0.035],
    'normal trousers': ['chinos', 'usual', 0.015],
    overalls: ['dungarees', 'usual', 0.025],
    'daily wear, belted': ['jumpsuit', 'usual', 0.005],
    'thick sweater': ['crew-neck jumper', 'usual', 0.015],
    vest: ['waistcoat', 'usual', 0.035],
    socks: ['socks', 'usual', 0.005],
    'thin-soled shoes': ['loafers', 'usual', 0.005],
    // the ASHRAE table, read in more places, has 0.10
    boots: ['ankle boots', 'usual', 0.055],
    'heavy skirt, knee length': ['pencil skirt', 'usual', 0.025],
    'light dress, sleeveless': ['sundress', 'usual', 0.025],
    'sweaters: sleeveless vest': ['slipover', 'cotton jersey', 0.065],
  },
};

const NOT_WORN_OUT = 'nightwear and dressing gowns are not part of a look';
const WORK = 'work and protective clothing is no kind of ours';
const SLIP = 'nobody lists a slip; where a published outfit has one, its own figure is added';
const UNSEEN = 'underwear nobody lists, see the underthings';

/** Garments no kind of ours is, and why. */
const NO_KIND: Readonly<Record<Standard, Readonly<Record<string, string>>>> = {
  ashrae: {
    'full slip': SLIP,
    'half slip': SLIP,
    "men's briefs": UNSEEN,
    panties: UNSEEN,
    bra: UNSEEN,
    'slippers (quilted, pile lined)': NOT_WORN_OUT,
    'skirt (thin)': 'our skirts of knee length are of denim, twill and wool, as thick as the trousers of that cloth',
    'sleeveless short gown (thin)': NOT_WORN_OUT,
    'short-sleeve hospital gown': NOT_WORN_OUT,
    'long-sleeve long gown (thick)': NOT_WORN_OUT,
    'long-sleeve pajamas (thick)': NOT_WORN_OUT,
    'short-sleeve pajamas (thin)': NOT_WORN_OUT,
    'long-sleeve long wrap robe (thick)': NOT_WORN_OUT,
    'long-sleeve short wrap robe (thick)': NOT_WORN_OUT,
    'short-sleeve short robe (thin)': NOT_WORN_OUT,
  },
  iso: {
    panties: UNSEEN,
    briefs: UNSEEN,
    bra: UNSEEN,
    'pants 1/2 long legs, wool': UNSEEN,
    'half-slip, nylon': SLIP,
    'short sleeve': 'the table marks its own row as suspect: 0.09 beside 0.19 in the same line',
    work: WORK,
    'multi-component with filling': WORK,
    'fibre pelt': WORK,
    'overalls multi-component': WORK,
    'quilted fleece slippers': NOT_WORN_OUT,
  },
};

describe('insulation of single garments', () => {
  it.each(cited)('$kind is as printed: $name', ({ standard, name, clo }) => {
    // Exact: these are the published figures themselves.
    expect(clo).toBe(number(rowNamed(standard, name), 'iclu_clo'));
  });

  for (const standard of ['ashrae', 'iso'] as const) {
    it.each(Object.entries(ALSO_OURS[standard]))(
      `the %s of the ${standard} table is near ours`,
      (name, [id, cloth, apart]) => {
        const kind = KINDS[id];
        const ours = estimateClo(kind, cloth === 'usual' ? kind.fabric : cloth).value;
        expect(Math.abs(ours - number(rowNamed(standard, name), 'iclu_clo'))).toBeLessThanOrEqual(apart);
      },
    );

    it(`leaves no row of the ${standard} table out without a reason`, () => {
      const named = [
        ...cited.filter((row) => row.standard === standard).map(({ name }) => name),
        ...Object.keys(ALSO_OURS[standard]),
      ].map((name) => keyOf(rowNamed(standard, name)));
      const excluded = Object.keys(NO_KIND[standard]).map((name) => keyOf(rowNamed(standard, name)));
      expect(excluded.filter((row) => named.includes(row))).toEqual([]);
      expect(TABLES[standard].map(keyOf).filter((row) => !named.includes(row) && !excluded.includes(row))).toEqual([]);
    });
  }

  it('assumes the underthings of the tables, his and hers, and thin socks or stockings', () => {
    for (const [standard, his] of [
      ['ashrae', "men's briefs"],
      ['iso', 'briefs'],
    ] as const) {
      const clo = (name: string): number => number(rowNamed(standard, name), 'iclu_clo');
      expect(UNDERTHINGS_CLO).toBe(clo(his));
      expect(UNDERTHINGS_CLO).toBeCloseTo(clo('panties') + clo('bra'), 6);
    }
    expect(SOCKS_CLO).toBe(number(rowNamed('ashrae', 'ankle-length athletic socks'), 'iclu_clo'));
    expect(SOCKS_CLO).toBe(number(rowNamed('ashrae', 'panty hose'), 'iclu_clo'));
    expect(SOCKS_CLO).toBe(number(rowNamed('iso', 'socks'), 'iclu_clo'));
  });
});
