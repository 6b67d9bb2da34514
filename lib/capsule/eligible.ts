import { avoidedIn, strayFromMood } from '../colour/index.ts';
import type { Brief, NamedColour, Piece } from '../model/index.ts';
import { fabricRefused } from '../vocabulary/index.ts';

/** Why a piece cannot be chosen; undefined when it can. */
export type Refusal = 'left out' | 'refused by the brief' | 'outside the mood' | 'still to buy';

export interface ChoiceLimits {
  readonly brief: Brief;
  readonly palette: readonly NamedColour[];
  readonly keep: readonly string[];
  readonly leaveOut: readonly string[];
}

/** Pieces to keep are judged by nobody; what the brief refuses is never chosen otherwise. */
export const refusalOf = (piece: Piece, { brief, palette, keep, leaveOut }: ChoiceLimits): Refusal | undefined => {
  if (keep.includes(piece.id)) return undefined;
  if (leaveOut.includes(piece.id)) return 'left out';
  const { colours, fabrics, heelCmOver } = brief.avoid;
  if (avoidedIn(piece, colours).length > 0 || fabricRefused(piece, fabrics) !== undefined)
    return 'refused by the brief';
  if (heelCmOver !== undefined && piece.heelCm > heelCmOver) return 'refused by the brief';
  if (piece.status === 'to buy') return 'still to buy';
  return strayFromMood(piece, palette) === undefined ? undefined : 'outside the mood';
};

/** Pieces of a cloth that the brief refuses; no look but the stylist's own is made with them. */
export const refusedPieces = (pieces: readonly Piece[], { avoid }: Brief): ReadonlySet<string> =>
  new Set(pieces.filter((piece) => fabricRefused(piece, avoid.fabrics) !== undefined).map(({ id }) => id));
