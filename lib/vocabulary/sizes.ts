import type { Kind, KindGroup } from './kinds.ts';

/**
 * Girth of the chest in the middle of each letter's range, centimetres. Source: EN 13402-3, women's bust girths; the men's
 * chest girths of the same letters stand in nearly the same ratios. from memory
 */
const GIRTH_CM: Readonly<Record<string, number>> = {
  XXS: 70,
  XS: 78,
  S: 86,
  M: 94,
  L: 102.5,
  XL: 113,
  XXL: 125,
  XXXL: 137,
};
const SAME_LETTER: Readonly<Record<string, string>> = { '2XS': 'XXS', '2XL': 'XXL', '3XL': 'XXXL' };

/** The sizes for which a kind's usual figures stand. Own choice. */
const USUAL_LETTER = 'M';
const USUAL_EU_SHOE = 41;
const SHOE_SIZES = { least: 30, most: 52 } as const;

const MADE_TO_THE_BODY: ReadonlySet<KindGroup> = new Set([
  'tops',
  'knits',
  'bottoms',
  'one-pieces',
  'swimwear',
  'layers',
  'coats',
  'legwear',
]);

/** The shoe size as a number of Paris points; the usual one when none is written that can be read: `39`, `EU 39.5`. */
export const euShoeSize = (size: string | undefined): number => {
  const found = Number(/^(?:EU\s*)?(\d{2}(?:\.5)?)$/i.exec(size?.trim() ?? '')?.[1]);
  return found >= SHOE_SIZES.least && found <= SHOE_SIZES.most ? found : USUAL_EU_SHOE;
};

const girthOf = (size: string): number | undefined => {
  const girths = size
    .toUpperCase()
    .split('/')
    .map((letter) => GIRTH_CM[SAME_LETTER[letter.trim()] ?? letter.trim()]);
  const known = girths.filter((girth) => girth !== undefined);
  return known.length < girths.length ? undefined : known.reduce((sum, girth) => sum + girth, 0) / known.length;
};

/**
 * How much heavier and bulkier a piece is for its size than its kind's usual figure. Cloth grows with the girth it goes
 * round (letters, `S/M` too), a shoe with the area of its sole. 1 for any other size and for what is not cut to the body.
 */
export const sizeFactor = ({ group }: Pick<Kind, 'group'>, size: string | undefined): number => {
  if (size === undefined) return 1;
  if (group === 'shoes') return (euShoeSize(size) / USUAL_EU_SHOE) ** 2;
  const girth = MADE_TO_THE_BODY.has(group) ? girthOf(size) : undefined;
  return girth === undefined ? 1 : girth / (GIRTH_CM[USUAL_LETTER] ?? girth);
};
