import { KNITS } from './knits.ts';
import { TOPS } from './tops.ts';

export const UPPER = { ...TOPS, ...KNITS };
