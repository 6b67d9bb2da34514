import type { Piece } from '../model/index.ts';
import type { Place } from '../vocabulary/index.ts';
import { relatePieces } from './piece-relation.ts';
import type { ColourRelation } from './relation.ts';

/** A top and a bottom by colour alone. */
export interface PalettePair {
  readonly top: string;
  readonly bottom: string;
  readonly relation: ColourRelation;
}

/** What a piece finds to go with, by colour alone. */
export interface Companions {
  readonly piece: string;
  readonly goesWith: readonly string[];
  /** How many pieces it could be worn with; 0 when there are none. */
  readonly of: number;
}

/** The pieces that can be worn in a place. */
export const worn = (pieces: readonly Piece[], place: Place): readonly Piece[] =>
  pieces.filter((piece) => piece.places.includes(place));

/** Every top with every bottom, in the order of the pieces. A piece is never paired with itself. */
export const palettePairs = (pieces: readonly Piece[]): readonly PalettePair[] =>
  worn(pieces, 'top').flatMap((top) =>
    worn(pieces, 'bottom')
      .filter((bottom) => bottom.id !== top.id)
      .map((bottom) => ({ top: top.id, bottom: bottom.id, relation: relatePieces(top, bottom) })),
  );

const isCore = (piece: Piece): boolean =>
  piece.places.some((place) => place === 'top' || place === 'bottom' || place === 'one-piece');

/** The pieces a piece is judged against: tops with bottoms, everything else with the tops, bottoms and one-pieces. */
const partnersOf = (piece: Piece, pieces: readonly Piece[]): readonly Piece[] => {
  const others = pieces.filter(({ id }) => id !== piece.id);
  if (piece.places.includes('swim')) return [];
  if (piece.places.includes('top')) return worn(others, 'bottom');
  if (piece.places.includes('bottom')) return worn(others, 'top');
  if (piece.places.includes('one-piece'))
    return others.filter((other) => !isCore(other) && !other.places.includes('swim'));
  return others.filter(isCore);
};

/** For every piece: which of its possible partners it goes with by colour. */
export const companions = (pieces: readonly Piece[]): readonly Companions[] =>
  pieces.map((piece) => {
    const partners = partnersOf(piece, pieces);
    return {
      piece: piece.id,
      goesWith: partners.filter((other) => relatePieces(piece, other).goes).map(({ id }) => id),
      of: partners.length,
    };
  });
