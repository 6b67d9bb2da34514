import { describe, expect, it } from 'vitest';
import { lookClo } from '../../lib/comfort/index.ts';
import { estimateClo, KINDS, type KindId, type Slot } from '../../lib/vocabulary/index.ts';
import { pieceOfKind } from './garments.ts';
import { number, table } from './table.ts';

type Row = Readonly<Record<string, string>>;
type Worn = readonly [kind: KindId, slot: Slot];
interface Outfit {
  readonly worn: readonly Worn[];
  /** What the published outfit has under our look, which no look lists: rows of the garment tables. */
  readonly under?: readonly (readonly [standard: 'ashrae' | 'iso9920', category: string, garment: string])[];
}

const T_SHIRT = ['ashrae', 'underwear', 'T-shirt'] as const;
const SHOES: Worn = ['loafers', 'shoes'];
const SOCKS: Worn = ['socks', 'legwear'];
const TIGHTS: Worn = ['tights', 'legwear'];
const SHIRT: Worn = ['dress shirt', 'top'];
const SHORT_SLEEVES: Worn = ['short-sleeved shirt', 'top'];
const TROUSERS: Worn = ['suit trousers', 'bottom'];
const KNEE_SKIRT: Worn = ['pencil skirt', 'bottom'];
const JACKET: Worn = ['suit jacket', 'mid layer'];
const JACKET_OVER: Worn = ['blazer', 'outer layer'];

/** The published outfits in our kinds. Thick trousers and skirts and a thin jacket are the choice of the table's own sums. */
const ASHRAE: Readonly<Record<string, Outfit>> = {
  'Walking shorts, short-sleeved shirt': { worn: [SHORT_SLEEVES, ['tailored shorts', 'bottom'], SHOES] },
  'Trousers, short-sleeved shirt': { worn: [SHORT_SLEEVES, ['chinos', 'bottom'], SOCKS, SHOES] },
  'Trousers, long-sleeved shirt, suit jacket': { worn: [SHIRT, TROUSERS, JACKET, SOCKS, SHOES] },
  'Trousers, long-sleeved shirt, suit jacket, vest, T-shirt': {
    worn: [SHIRT, TROUSERS, ['waistcoat', 'mid layer'], JACKET_OVER, SOCKS, SHOES],
    under: [T_SHIRT],
  },
  'Trousers, long-sleeved shirt, long-sleeved sweater, T-shirt, suit jacket, long underwear bottoms': {
    worn: [SHIRT, TROUSERS, ['v-neck jumper', 'mid layer'], JACKET_OVER, ['thermal leggings', 'leg layer'], SHOES],
    under: [T_SHIRT],
  },
  'Sweat pants, sweat shirt': { worn: [['sweatshirt', 'top'], ['joggers', 'bottom'], SOCKS, ['trainers', 'shoes']] },
  'Knee-length skirt, short-sleeved shirt, panty hose, sandals': { worn: [SHORT_SLEEVES, KNEE_SKIRT, TIGHTS, SHOES] },
  'Knee-length skirt, long-sleeved shirt, full slip, panty hose': {
    worn: [SHIRT, KNEE_SKIRT, TIGHTS, SHOES],
    under: [['ashrae', 'underwear', 'full slip']],
  },
  'Knee-length skirt, long-sleeved shirt, half slip, panty hose, suit jacket': {
    worn: [SHIRT, KNEE_SKIRT, JACKET, TIGHTS, SHOES],
    under: [['ashrae', 'underwear', 'half slip']],
  },
  'Ankle-length skirt, long-sleeved shirt, suit jacket, panty hose': {
    worn: [SHIRT, ['maxi skirt', 'bottom'], JACKET, TIGHTS, SHOES],
  },
  // a dress form of ours has no shirt of its own
  'Overalls, long-sleeved shirt, T-shirt': {
    worn: [['dungarees', 'one-piece'], SOCKS, ['walking shoes', 'shoes']],
    under: [['ashrae', 'shirts and blouses', 'long-sleeve dress shirt'], T_SHIRT],
  },
};

const ISO: Readonly<Record<string, Outfit>> = {
  'Panties, T-shirt, shorts, light socks, sandals': {
    worn: [['t-shirt', 'top'], ['shorts', 'bottom'], SOCKS, ['canvas shoes', 'shoes']],
  },
  'Underpants, shirt with short sleeves, light trousers, light socks, shoes': {
    worn: [SHORT_SLEEVES, ['walking trousers', 'bottom'], SOCKS, SHOES],
  },
  // which dress is not said: the winter one, since a light one comes to 0.47
  'Panties, petticoat, stockings, dress, shoes': {
    worn: [['knitted dress', 'one-piece'], TIGHTS, SHOES],
    under: [['iso9920', 'underwear tops', 'half-slip, nylon']],
  },
  'Underwear, shirt, trousers, socks, shoes': { worn: [SHIRT, TROUSERS, SOCKS, SHOES], under: [T_SHIRT] },
  'Panties, shirt, trousers, jacket, socks, shoes': { worn: [SHIRT, TROUSERS, JACKET, SOCKS, SHOES] },
  'Panties, stockings, blouse, long skirt, jacket, shoes': {
    worn: [['blouse', 'top'], ['maxi skirt', 'bottom'], JACKET, TIGHTS, SHOES],
  },
  'Underwear with long sleeves and legs, shirt, trousers, V-neck sweater, jacket, socks, shoes': {
    worn: [SHIRT, TROUSERS, ['v-neck jumper', 'mid layer'], JACKET_OVER, ['leggings', 'legwear'], SHOES],
    under: [['iso9920', 'underwear tops', 'long-sleeve shirt']],
  },
  'Underwear with short sleeves and legs, shirt, trousers, vest, jacket, coat, socks, shoes': {
    worn: [SHIRT, TROUSERS, JACKET, ['wool coat', 'outer layer'], SOCKS, SHOES],
    under: [
      ['iso9920', 'underwear tops', 'T-shirt'],
      ['iso9920', 'jackets', 'vest'],
    ],
  },
};

/** A long skirt that goes with a jacket is of its cloth. */
const inItsCloth = (kind: KindId) =>
  kind === 'maxi skirt'
    ? pieceOfKind(kind, { fabric: 'wool cloth', clo: estimateClo(KINDS[kind], 'wool cloth') })
    : pieceOfKind(kind);

const garmentClo = (standard: string, category: string, garment: string): number => {
  const rows = table(`garment_clo_${standard}`).filter((row) => row.category === category && row.garment === garment);
  expect(rows, garment).toHaveLength(1);
  return number(rows[0] ?? {}, 'iclu_clo');
};

const cloOf = ({ worn, under = [] }: Outfit): number =>
  lookClo(
    worn.map(([kind]) => inItsCloth(kind)),
    worn.map(([, slot]) => slot),
  ).on + under.reduce((sum, [standard, category, garment]) => sum + garmentClo(standard, category, garment), 0);

const NO_KIND_OF_OURS = ['Insulated coveralls, long-sleeved thermal underwear, long underwear bottoms'];

const comparedWith = (rows: readonly Row[], outfits: Readonly<Record<string, Outfit>>, column: string) =>
  rows.flatMap((row) => {
    const outfit = outfits[row.ensemble ?? ''];
    return outfit === undefined
      ? []
      : [{ ensemble: row.ensemble ?? '', row, ours: cloOf(outfit), published: number(row, column) }];
  });

const ashrae = comparedWith(table('ensemble_clo_ashrae'), ASHRAE, 'icl_clo_published');
const iso = comparedWith(table('ensemble_clo_iso7730_c1'), ISO, 'icl_clo');
const mean = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0) / numbers.length;

describe('insulation of whole outfits', () => {
  it('has every published outfit but those no kind of ours makes', () => {
    const left = (rows: readonly Row[], outfits: Readonly<Record<string, Outfit>>) =>
      rows.map(({ ensemble = '' }) => ensemble).filter((ensemble) => outfits[ensemble] === undefined);
    expect(left(table('ensemble_clo_ashrae'), ASHRAE)).toEqual(NO_KIND_OF_OURS);
    expect(left(table('ensemble_clo_iso7730_c1'), ISO)).toEqual([]);
    expect(ashrae).toHaveLength(Object.keys(ASHRAE).length);
    expect(iso).toHaveLength(Object.keys(ISO).length);
  });

  // The handbook gives itself about a quarter either way; ours are held to a fifth, and to 0.1 clo, the spread of its
  // two formulas, where that is more.
  it.each([...ashrae, ...iso])('$ensemble', ({ ours, published }) => {
    expect(Math.abs(ours - published)).toBeLessThanOrEqual(Math.max(0.1, published * 0.2));
  });

  it.each(ashrae.filter(({ row }) => row.sum_iclu_eq43 !== ''))('$ensemble, by both formulas', ({ ours, row }) => {
    // equation 43 with garments of the same names: a bra, or panties for briefs, make the hundredths
    expect(Math.abs(ours - number(row, 'sum_iclu_eq43'))).toBeLessThanOrEqual(0.015);
    expect(Math.abs(ours - number(row, 'icl_eq42_0.835sum+0.161'))).toBeLessThanOrEqual(0.105);
  });

  it('errs to the low side for light outfits by no more than a pair of thin socks and a vest', () => {
    // Equation 42 adds 0.161 and multiplies by 0.835: a plain sum is low below 1 clo and high above it, which is why the
    // heavier outfits are not asked here.
    const light = [...ashrae, ...iso].filter(({ published }) => published <= 1);
    expect(light.length).toBeGreaterThan(10);
    const low = mean(light.map(({ ours, published }) => ours - published));
    // Source: ISO 9920, socks 0.02 and sleeveless shirt 0.06
    expect(Math.abs(low)).toBeLessThanOrEqual(0.08);
  });

  it('errs to neither side', () => {
    const errors = (compared: typeof iso): readonly number[] => compared.map(({ ours, published }) => ours - published);
    expect(Math.abs(mean(errors(ashrae)))).toBeLessThanOrEqual(0.03);
    expect(Math.abs(mean(errors(iso)))).toBeLessThanOrEqual(0.03);
    // Root mean square within the 0.1 to 0.15 by which whole outfits differ from their sums in both tables.
    expect(Math.sqrt(mean(errors(ashrae).map((error) => error ** 2)))).toBeLessThanOrEqual(0.08);
    expect(Math.sqrt(mean(errors(iso).map((error) => error ** 2)))).toBeLessThanOrEqual(0.15);
  });
});
