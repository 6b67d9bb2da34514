import type { DrawKind } from '../drawing.ts';
import { EASY_TROUSERS } from './easy-kinds.ts';
import { SKIRTS } from './skirt-kinds.ts';
import { TROUSERS } from './trouser-kinds.ts';

export { sideLength } from './legs.ts';
export { skirtLength } from './skirts.ts';

type Lower = keyof typeof TROUSERS | keyof typeof EASY_TROUSERS | keyof typeof SKIRTS;

/** Trousers, shorts and skirts: everything of the group `bottoms`. */
export const LOWER: Readonly<Record<Lower, DrawKind>> = { ...TROUSERS, ...EASY_TROUSERS, ...SKIRTS };
