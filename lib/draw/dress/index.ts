import type { DrawKind, DrawnPiece } from '../drawing.ts';
import type { DrawnLength } from '../kit/index.ts';
import { DAY_DRESSES } from './day-kinds.ts';
import { dressLength } from './frame.ts';
import { LEGGED } from './leg-kinds.ts';
import { STRAP_DRESSES } from './strap-kinds.ts';
import { suitLength } from './suit.ts';

export { dressLength, suitLength };

type OnePiece = keyof typeof DAY_DRESSES | keyof typeof STRAP_DRESSES | keyof typeof LEGGED;

/** Dresses, jumpsuits and dungarees: everything of the group `one-pieces`. */
export const DRESS: Readonly<Record<OnePiece, DrawKind>> = { ...DAY_DRESSES, ...STRAP_DRESSES, ...LEGGED };

/** The length a piece of the group is drawn at, from the neck point of the shoulder. */
export const onePieceLength = (piece: Pick<DrawnPiece, 'kind' | 'length' | 'lengthCm'>): DrawnLength =>
  piece.kind in LEGGED ? suitLength(piece) : dressLength(piece);
