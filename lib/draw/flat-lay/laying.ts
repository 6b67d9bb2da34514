import type { Slot } from '../../vocabulary/index.ts';
import type { LayItem } from './item.ts';

/** How the pieces of a slot are laid. */
export interface Laying {
  /** `worn` in the left column as on a body, `layer` behind it on the right, `beside` in the gaps, `small` to the left of where it is worn. */
  readonly part: 'worn' | 'layer' | 'beside' | 'small';
  /** Degrees it may be turned, clockwise, from and to. */
  readonly turn: readonly [number, number];
  /** Order from the lowest layer up. */
  readonly level: number;
  /** Order in which places are given. */
  readonly rank: number;
  /** Largest share of itself that may lie on another piece. */
  readonly over: number;
}

/** A stylist's habits, common practice, no source: clothes nearly straight, extras livelier, small things never on cloth. */
export const LAYING: Readonly<Record<Slot, Laying>> = {
  'one-piece': { part: 'worn', turn: [-3, -2], level: 2, rank: 0, over: 0 },
  top: { part: 'worn', turn: [-3, -2.2], level: 3, rank: 0, over: 1 },
  bottom: { part: 'worn', turn: [0.9, 1.5], level: 2, rank: 0, over: 0 },
  swim: { part: 'worn', turn: [-3, -2], level: 2, rank: 0, over: 0 },
  'cover-up': { part: 'layer', turn: [3.5, 4.5], level: 1, rank: 1, over: 0 },
  'mid layer': { part: 'layer', turn: [3, 4], level: 1, rank: 1, over: 0 },
  'outer layer': { part: 'layer', turn: [4, 5], level: 0, rank: 2, over: 0 },
  'base layer': { part: 'layer', turn: [3, 4], level: 1, rank: 1, over: 0 },
  bag: { part: 'beside', turn: [-6, -3], level: 4, rank: 3, over: 0.3 },
  shoes: { part: 'beside', turn: [-5, -2], level: 5, rank: 4, over: 0.08 },
  headwear: { part: 'beside', turn: [5, 9], level: 4, rank: 5, over: 0.06 },
  scarf: { part: 'beside', turn: [6, 10], level: 4, rank: 6, over: 0.06 },
  'leg layer': { part: 'beside', turn: [-6, -3], level: 4, rank: 7, over: 0.04 },
  legwear: { part: 'beside', turn: [-6, -3], level: 4, rank: 7, over: 0.04 },
  tie: { part: 'beside', turn: [4, 8], level: 4, rank: 8, over: 0 },
  belt: { part: 'beside', turn: [-8, -4], level: 4, rank: 9, over: 0.04 },
  gloves: { part: 'beside', turn: [-10, -5], level: 4, rank: 10, over: 0.04 },
  eyewear: { part: 'small', turn: [-12, -8], level: 4, rank: 11, over: 0 },
  'jewellery neck': { part: 'small', turn: [-6, 6], level: 4, rank: 12, over: 0 },
  'jewellery wrist': { part: 'small', turn: [-12, 12], level: 4, rank: 13, over: 0 },
  'jewellery ears': { part: 'small', turn: [4, 9], level: 4, rank: 14, over: 0 },
  'jewellery lapel': { part: 'small', turn: [-10, 10], level: 4, rank: 15, over: 0 },
  'jewellery finger': { part: 'small', turn: [-12, 12], level: 4, rank: 16, over: 0 },
};

/** A top that is tucked in lies below its bottom, and above the layers beside it. */
const TUCKED_LEVEL = 1.5;

/**
 * How each of these slots is laid. One piece is worn above the waist and one below; a second one, which a look may hold
 * when a shirt goes over a vest, lies beside them like a layer.
 */
export const layingsOf = (items: readonly Pick<LayItem, 'slot' | 'tuck'>[]): readonly Laying[] => {
  const taken = new Set<'above' | 'below'>();
  return items.map(({ slot, tuck }) => {
    if (LAYING[slot].part !== 'worn') return LAYING[slot];
    const half = slot === 'bottom' ? 'below' : 'above';
    const second = taken.has(half);
    taken.add(half);
    if (second) return LAYING['mid layer'];
    return tuck === 'in' ? { ...LAYING[slot], level: TUCKED_LEVEL } : LAYING[slot];
  });
};
