import type { Piece } from '../model/piece.ts';
import type { Slot } from '../vocabulary/places.ts';

/** One piece in the place it would take; what every rule looks at. */
export interface Worn<P = Piece> {
  readonly piece: P;
  readonly slot: Slot;
}
