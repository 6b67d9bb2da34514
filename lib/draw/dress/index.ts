import type { DrawKind } from '../drawing.ts';
import { DAY_DRESSES } from './day-kinds.ts';
import { LEGGED } from './leg-kinds.ts';
import { STRAP_DRESSES } from './strap-kinds.ts';

export { dressLength } from './frame.ts';
export { suitLength } from './leg-kinds.ts';

type OnePiece = keyof typeof DAY_DRESSES | keyof typeof STRAP_DRESSES | keyof typeof LEGGED;

/** Dresses, jumpsuits and dungarees: everything of the group `one-pieces`. */
export const DRESS: Readonly<Record<OnePiece, DrawKind>> = { ...DAY_DRESSES, ...STRAP_DRESSES, ...LEGGED };
