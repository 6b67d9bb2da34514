import type { Slot } from '../vocabulary/places.ts';

/** One piece in the place it takes in a look. */
export interface WornPiece {
  readonly piece: string;
  readonly slot: Slot;
}

/** A set of (piece, place) that obeys the grammar, in slot order. */
export interface Look {
  /** Piece ids joined by `+` in slot order; equal looks have equal ids. */
  readonly id: string;
  readonly worn: readonly WornPiece[];
}

/** The three counts, always named. Exact integers of any size. */
export interface LookCounts {
  /** Distinct cores: top + bottom, a one-piece, or swimwear. */
  readonly core: bigint;
  /** Cores with every choice of mid and outer layer; the figure the trade quotes. */
  readonly layered: bigint;
  /** With legwear, shoes and accessories. */
  readonly complete: bigint;
}
