import type { PatternScale, PatternType } from '../../vocabulary/index.ts';
import type { Detail, Matrix, Tile } from '../drawing.ts';
import type { Cloth } from './cloth.ts';
import { abstract, animal, dot, floral, geometric, paisley } from './figured-prints.ts';
import { check, gingham, herringbone, houndstooth, pinstripe, stripe, stripeBands, tartan } from './line-prints.ts';
import { type Draw, printColours } from './print-colours.ts';
/** Colour block is cut from several cloths, not printed: the garments do that. */
export const PRINTS: Partial<Record<PatternType, Draw>> = {
  stripe,
  pinstripe,
  gingham,
  check,
  tartan,
  houndstooth,
  herringbone,
  dot,
  floral,
  animal,
  abstract,
  geometric,
  paisley,
};

export const PRINT_SCALE: Readonly<Record<PatternScale, number>> = { small: 0.6, medium: 1, large: 1.7 };

/** Prints whose medium repeat is larger than drawn here. */
const LARGER: Partial<Record<PatternType, number>> = {
  dot: 1.2,
  floral: 1.35,
  animal: 1.45,
  paisley: 1.45,
  abstract: 1.2,
  geometric: 1.2,
};

/**
 * A weave of fine lines: below these the lines of one run into each other on a card and in a small picture, and much
 * above them the two look like two cloths.
 */
const LEAST_HERRINGBONE: Readonly<Record<Detail, number>> = { full: 0.85, small: 1.15 };

const printScale = (pattern: { readonly type: PatternType; readonly scale: PatternScale }, detail: Detail): number => {
  const own = PRINT_SCALE[pattern.scale] * (LARGER[pattern.type] ?? 1);
  if (pattern.type === 'herringbone') return Math.max(own, LEAST_HERRINGBONE[detail]);
  // a small picture needs a coarser print, or it turns grey
  return detail === 'small' ? Math.max(1.7, own * 1.6) : own;
};

/** The stripe of a cloth as data, in centimetres at its own scale. */
export const crosswiseStripes = (scale: PatternScale, colours: readonly string[], detail: Detail): Cloth['stripes'] => {
  const own = printColours(colours);
  if (own === undefined) return undefined;
  const k = printScale({ type: 'stripe', scale }, detail);
  const { repeat, bands } = stripeBands(own);
  return { repeat: repeat * k, bands: bands.map((band) => ({ ...band, at: band.at * k, width: band.width * k })) };
};

/**
 * The print of a cloth as a tile in the piece's own colours, or nothing for a plain one. `upright` stripes run down the
 * cloth, as on woven shirting; knitted ones run across.
 */
export const print = (
  pattern: { readonly type: PatternType; readonly scale: PatternScale },
  colours: readonly string[],
  detail: Detail,
  seed: string,
  upright: boolean,
): Tile | undefined => {
  const draws = PRINTS[pattern.type];
  const own = printColours(colours);
  if (draws === undefined || own === undefined) return undefined;
  const scale = printScale(pattern, detail);
  const transform: Matrix =
    upright && pattern.type === 'stripe' ? [0, scale, -scale, 0, 0, 0] : [scale, 0, 0, scale, 0, 0];
  return { name: 'print', ...draws(own, seed), transform };
};
