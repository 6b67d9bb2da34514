import type { Piece } from '../model/index.ts';
import { type DressCode, dressIndex } from '../vocabulary/index.ts';

/** True for what is worn as a coat alone; what may be a jumper or blouse as well is none. */
export const isCoat = ({ places }: Piece): boolean => places.every((place) => place === 'outer layer');

/** Coats, the warmest first. */
export const coatsByWarmth = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.filter(isCoat).toSorted((a, b) => b.clo.value - a.clo.value);

/** The warmest coat that is right for a dress code. */
export const warmestCoat = (pieces: readonly Piece[], dress: DressCode): Piece | undefined => {
  const asked = dressIndex(dress);
  return coatsByWarmth(pieces).find(({ dress: { low, high } }) => low <= asked && asked <= high);
};
