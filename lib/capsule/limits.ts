import type { Brief, Piece } from '../model/index.ts';

/** What the clothes may weigh and fill in the bags; undefined where nothing limits. */
export interface Limits {
  readonly grams?: number;
  readonly litres?: number;
  /** True when a journey is dressed for: the heaviest outer layer and shoes are worn then and stay out of the bags. */
  readonly journeys: boolean;
}

/** The room that the brief's bags leave: their limits less their own weight. */
export const limitsOf = (
  brief: Brief,
  given: { readonly gramsAtMost?: number; readonly litresAtMost?: number } = {},
): Limits => {
  const limited = brief.bags.filter(({ limitKg }) => limitKg !== undefined);
  const grams =
    given.gramsAtMost ??
    (brief.bags.length > 0 && limited.length === brief.bags.length
      ? limited.reduce((sum, { limitKg = 0, ownGrams }) => sum + limitKg * 1000 - ownGrams, 0)
      : undefined);
  const litres =
    given.litresAtMost ?? (brief.bags.length > 0 ? brief.bags.reduce((sum, bag) => sum + bag.litres, 0) : undefined);
  return {
    ...(grams === undefined ? {} : { grams }),
    ...(litres === undefined ? {} : { litres }),
    journeys: brief.occasions.some(({ transit }) => transit),
  };
};

/** Grams and litres in the bags. On a journey the heaviest outer layer and the heaviest shoes are worn. common practice, no source */
export const packedOf = (
  pieces: readonly Piece[],
  journeys: boolean,
): { readonly grams: number; readonly litres: number } => {
  let grams = 0;
  let litres = 0;
  const heaviest: Partial<Record<'outer layer' | 'shoes', Piece>> = {};
  for (const piece of pieces) {
    grams += piece.grams.value;
    litres += piece.litres.value;
    for (const place of ['outer layer', 'shoes'] as const) {
      if (piece.places.includes(place) && piece.grams.value > (heaviest[place]?.grams.value ?? 0))
        heaviest[place] = piece;
    }
  }
  if (!journeys) return { grams, litres };
  const worn = new Set(Object.values(heaviest));
  for (const piece of worn) {
    grams -= piece.grams.value;
    litres -= piece.litres.value;
  }
  return { grams, litres };
};

/** By how much the limits are exceeded, as a share of each; 0 when they hold. */
export const overLimits = (pieces: readonly Piece[], limits: Limits): number => {
  if (limits.grams === undefined && limits.litres === undefined) return 0;
  const packed = packedOf(pieces, limits.journeys);
  const over = (is: number, most: number | undefined): number =>
    most === undefined ? 0 : Math.max(0, is - most) / Math.max(1, most);
  return over(packed.grams, limits.grams) + over(packed.litres, limits.litres);
};
