import type { DrawKind, DrawnPiece } from '../drawing.ts';
import type { DrawnLength } from '../kit/index.ts';
import { EASY_TROUSERS } from './easy-kinds.ts';
import { sideLength } from './leg-measures.ts';
import { SKIRTS } from './skirt-kinds.ts';
import { skirtLength } from './skirt-measures.ts';
import { TROUSERS } from './trouser-kinds.ts';

export { sideLength, skirtLength };

type Lower = keyof typeof TROUSERS | keyof typeof EASY_TROUSERS | keyof typeof SKIRTS;

/** Trousers, shorts and skirts: everything of the group `bottoms`. */
export const LOWER: Readonly<Record<Lower, DrawKind>> = { ...TROUSERS, ...EASY_TROUSERS, ...SKIRTS };

/** The length a piece of the group is drawn at, from the top of its waistband. */
export const lowerLength = (piece: Pick<DrawnPiece, 'kind' | 'length' | 'lengthCm'>): DrawnLength =>
  piece.kind in SKIRTS ? skirtLength(piece) : sideLength(piece);
