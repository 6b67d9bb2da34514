import type { Seating } from './seating.ts';

/** Low bits of a sorted entry that hold the number of a leaf; a wardrobe has fewer pieces. */
const NUMBER_BITS = 10;
const NUMBER_MASK = (1 << NUMBER_BITS) - 1;
/** Values above this would not fit above the number. */
export const MOST_VALUE = 2 ** (31 - NUMBER_BITS) - 1;
export const MOST_LEAVES = 2 ** NUMBER_BITS;

/**
 * Picks leaves of the greatest value in all that sit beside a set that is seated already. Sets that can be seated are a
 * transversal matroid, so that taking the best first is exact.
 */
export interface LeafPicker {
  /** `values` by leaf, whole and not above `MOST_VALUE`; `free` places may go to leaves and what sits already. */
  readonly best: (values: Int32Array, seated: Int32Array, free: number, into?: number[]) => number;
}

export const createLeafPicker = (seating: Seating, leaves: readonly number[]): LeafPicker => {
  const classOf = Int16Array.from(leaves, (piece) => seating.classOf[piece] as number);
  const order = new Int32Array(leaves.length);
  const counts = new Int32Array(seating.classes);
  const best: LeafPicker['best'] = (values, seated, free, into) => {
    let filled = 0;
    for (let leaf = 0; leaf < leaves.length; leaf += 1) {
      const value = values[leaf] as number;
      // the last of equal values comes first when read from the end, so numbers are turned round
      if (value > 0) order[filled++] = (value << NUMBER_BITS) | (NUMBER_MASK - leaf);
    }
    const sorted = order.subarray(0, filled).sort();
    counts.set(seated);
    let room = free - seating.needed(counts);
    let sum = 0;
    for (let at = filled - 1; at >= 0; at -= 1) {
      const entry = sorted[at] as number;
      const leaf = NUMBER_MASK - (entry & NUMBER_MASK);
      const kind = classOf[leaf] as number;
      const group = seating.groupOf[kind] as number;
      const before = seating.overflow(group, counts);
      counts[kind] = (counts[kind] as number) + 1;
      const more = seating.overflow(group, counts) - before;
      if (more > room) {
        counts[kind] = (counts[kind] as number) - 1;
        continue;
      }
      room -= more;
      sum += entry >> NUMBER_BITS;
      into?.push(leaf);
    }
    return sum;
  };
  return { best };
};
