import type { Piece } from '../model/index.ts';
import { type DressCode, dressIndex } from '../vocabulary/index.ts';

/** Coats, the warmest first; what is worn as a jumper or blouse as well is none. */
export const coatsByWarmth = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces
    .filter(({ places }) => places.every((place) => place === 'outer layer'))
    .toSorted((a, b) => b.clo.value - a.clo.value);

/** The warmest coat that is right for a dress code. */
export const warmestCoat = (pieces: readonly Piece[], dress: DressCode): Piece | undefined => {
  const asked = dressIndex(dress);
  return coatsByWarmth(pieces).find(({ dress: { low, high } }) => low <= asked && asked <= high);
};
