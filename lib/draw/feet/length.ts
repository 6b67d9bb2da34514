import { type KindId, SHAFT_CM } from '../../vocabulary/index.ts';
import type { DrawnPiece } from '../drawing.ts';
import { clampLength, type DrawnLength } from '../kit/index.ts';

/** Height of a boot's shaft above the seat, centimetres. common practice, no source */
const SHAFTS: Partial<Record<KindId, number>> = {
  'hiking boots': 14,
  'ankle boots': 12,
  'chelsea boots': 13.5,
  'knee boots': 36,
  'lace-up boots': 16,
  'rain boots': 28,
  'snow boots': 20,
};
const [LOWEST, HIGHEST] = SHAFT_CM;

/** The shaft as drawn: what the stylist measured, within what a leg can wear; undefined for shoes without one. */
export const shoeLength = (piece: DrawnPiece): DrawnLength | undefined => {
  const usual = SHAFTS[piece.kind];
  return usual === undefined ? undefined : clampLength(piece.lengthCm, usual, LOWEST, HIGHEST);
};

export const shaftOf = (piece: DrawnPiece): number => shoeLength(piece)?.cm ?? LOWEST;
