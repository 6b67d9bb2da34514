import type { KindId } from '../../vocabulary/index.ts';
import type { DrawnPiece } from '../drawing.ts';
import { clampLength, type DrawnLength } from '../kit/index.ts';

/** Drop of the handles, centimetres. common practice, no source */
const DROPS: Partial<Record<KindId, number>> = {
  tote: 20,
  'shoulder bag': 22,
  'flap bag': 22,
  'basket bag': 17,
  'canvas shopper': 26,
};
/** Shortest and longest drop that is drawn, centimetres: a longer strap would leave the card. */
const [SHORTEST, LONGEST] = [5, 40];

/** The drop as drawn: what the stylist measured, within bounds; undefined for bags whose strap is laid in a loop. */
export const bagLength = (piece: DrawnPiece): DrawnLength | undefined => {
  const usual = DROPS[piece.kind];
  return usual === undefined ? undefined : clampLength(piece.lengthCm, usual, SHORTEST, LONGEST);
};

export const dropOf = (piece: DrawnPiece): number => bagLength(piece)?.cm ?? SHORTEST;
