import type { Open } from './rows.ts';
import type { Seating } from './seating.ts';

/** A sum over pieces that must not be exceeded: grams, litres, pieces shared with another proposal. */
export interface Budget {
  /** By piece number. */
  readonly cost: ArrayLike<number>;
  /** What the garments may cost when these are the layers. */
  readonly most: (layers: readonly number[]) => number;
}

/** Looks count this often, so that a price for what a piece costs can be smaller than one look. */
const SCALE = 16;
const ROUNDS = 14;

/**
 * Looks that no choice of leaves within a budget exceeds. Puts a price on what leaves cost (Lagrange): for any price, the
 * best choice at that price and the price of all that may be spent is a bound; the price is halved in until choices fit.
 */
export const budgetBound = (
  { leaves, picker }: Open,
  worth: Int32Array,
  seated: Int32Array,
  seating: Seating,
  cost: ArrayLike<number>,
  left: number,
): number => {
  if (left < 0) return Number.NEGATIVE_INFINITY;
  const priced = new Int32Array(leaves.length);
  let low = 0;
  let high = 0;
  leaves.forEach((piece, leaf) => {
    const each = cost[piece] as number;
    if (each > 0) high = Math.max(high, (SCALE * (worth[leaf] as number)) / each);
  });
  let upper = Number.POSITIVE_INFINITY;
  for (let round = 0; round < ROUNDS; round += 1) {
    const price = (low + high) / 2;
    leaves.forEach((piece, leaf) => {
      // rounded down: a price that is a little too low still bounds
      priced[leaf] = SCALE * (worth[leaf] as number) - Math.floor(price * (cost[piece] as number));
    });
    const chosen: number[] = [];
    const sum = picker.best(priced, seated, seating.free, chosen);
    upper = Math.min(upper, Math.floor((sum + price * left) / SCALE));
    const spent = chosen.reduce((total, leaf) => total + (cost[leaves[leaf] as number] as number), 0);
    if (spent <= left) high = price;
    else low = price;
  }
  return upper;
};
