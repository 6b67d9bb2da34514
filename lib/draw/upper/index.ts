import { TOPS } from './tops.ts';

export const UPPER = { ...TOPS };
