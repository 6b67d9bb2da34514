import { KNITS } from './knits.ts';
import { LAYERS } from './layers.ts';
import { TOPS } from './tops.ts';

export const UPPER = { ...TOPS, ...KNITS, ...LAYERS };
