import type { DrawnPiece } from '../drawing.ts';
import { clampLength, type DrawnLength } from '../kit/index.ts';

/** Whole length of what hangs from the neck, centimetres: usual, shortest and longest. common practice, no source */
const HANGING = {
  scarf: [170, 80, 210],
  tie: [148, 84, 178],
} as const;

/** The length as drawn, within bounds; undefined for what has none. */
export const adornmentLength = (piece: DrawnPiece): DrawnLength | undefined => {
  if (piece.kind !== 'scarf' && piece.kind !== 'tie') return undefined;
  const [usual, shortest, longest] = HANGING[piece.kind];
  return clampLength(piece.lengthCm, usual, shortest, longest);
};
