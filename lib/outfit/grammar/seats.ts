import type { Piece } from '../../model/piece.ts';
import { SLOTS, type Slot } from '../../vocabulary/places.ts';
import type { Worn } from '../worn.ts';

/** What the grammar needs to know of a piece. */
export type SeatedPiece = Pick<Piece, 'id' | 'name' | 'places' | 'site'>;

/** A piece in one of the places it can take, numbered in the fixed order: by slot, then as the pieces were given. */
export interface Seat<P = Piece> extends Worn<P> {
  readonly index: number;
  /** 0 for the place the piece is made for. */
  readonly choice: number;
}

/** Jewellery without a site is taken as worn at the neck, the site seen first. */
const slotOf = (piece: SeatedPiece, place: Piece['places'][number]): Slot =>
  place === 'jewellery' ? `jewellery ${piece.site ?? 'neck'}` : place;

/** Slots a piece can take, the one it is made for first, none twice. */
export const slotsOfPiece = (piece: SeatedPiece): readonly Slot[] => [
  ...new Set(piece.places.map((place) => slotOf(piece, place))),
];

/** Every seat of a wardrobe. */
export const seatsOf = <P extends SeatedPiece>(pieces: readonly P[]): readonly Seat<P>[] => {
  const order = new Map(SLOTS.map((slot, index) => [slot, index]));
  return pieces
    .flatMap((piece, given) => slotsOfPiece(piece).map((slot, choice) => ({ piece, slot, choice, given })))
    .sort((a, b) => (order.get(a.slot) ?? 0) - (order.get(b.slot) ?? 0) || a.given - b.given)
    .map(({ piece, slot, choice }, index) => ({ index, piece, slot, choice }));
};
