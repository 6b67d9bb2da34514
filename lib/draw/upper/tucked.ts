import type { UpperShape } from './shape.ts';

/** Where a top that is tucked in ends, below the neck point: what reaches deeper into a waistband is not seen. */
const ENDS = 51;
/** Breadth of that end, less than the narrowest waistband. */
const END_WIDTH = 33;
/** The cloth blouses a little over the band, and no wider than this at the waist. */
const BLOUSED = { waist: 45, over: 1.5 };

/** A top as its upper part looks when a waistband holds its lower one. Centimetres. */
export const tuckedShape = (loose: UpperShape): UpperShape => ({
  ...loose,
  length: Math.min(loose.length, ENDS),
  waist: Math.min(loose.waist, BLOUSED.waist),
  hem: Math.min(loose.hem, END_WIDTH),
  hemDip: 0,
  blouse: BLOUSED.over,
});
