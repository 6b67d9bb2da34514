import { COATS } from './coats.ts';
import { KNITS } from './knits.ts';
import { LAYERS } from './layers.ts';
import { TOPS } from './tops.ts';

/** Tops, knits, layers and coats. */
export const UPPER = { ...TOPS, ...KNITS, ...LAYERS, ...COATS };
export { upperDrawnLength, upperLength } from './shape.ts';
