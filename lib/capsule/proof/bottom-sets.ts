import type { Budget } from './budget.ts';
import { type Judge, searchLeaves } from './leaf-sets.ts';
import type { PartedLooks } from './looks.ts';
import { type Chosen, type Open, roomForBottoms, rowValues } from './rows.ts';
import type { Seating } from './seating.ts';

/** Steps of one pick of leaves beside looking at each. */
const PICK = 30;

interface Row {
  readonly row: number;
  /** Looks with this bottom alone at most. */
  readonly most: number;
}

/**
 * Branches on the bottoms under a set of layers, the most promising first. What is chosen is worth its best leaves,
 * what is to come at most its own best leaves; at the end leaves are exact. False when the clock ran out.
 */
export const searchBottoms = (
  looks: PartedLooks,
  seating: Seating,
  open: Open,
  layers: readonly number[],
  weights: Int32Array,
  chosen: Chosen,
  served: readonly Uint8Array[],
  budgets: readonly Budget[],
  judge: Judge,
): boolean => {
  const { leaves, picker } = open;
  const { firsts } = chosen;
  const { listed, most } = roomForBottoms(chosen, looks, seating);
  const before = seating.needed(chosen.seated);
  const seated = Int32Array.from(chosen.seated);
  const rows: number[] = [...chosen.rows];
  const alone = new Int32Array(leaves.length);
  let start = rowValues(looks, weights, open, firsts, 0, 0, 1);
  alone.set(open.values);
  for (const row of rows) {
    start += rowValues(looks, weights, open, firsts, row, 1, 0);
    for (let leaf = 0; leaf < leaves.length; leaf += 1)
      alone[leaf] = (alone[leaf] as number) + (open.values[leaf] as number);
  }

  const withCount = (count: number): boolean => {
    const reserved = Math.max(0, count - chosen.rows.length - listed);
    const order: readonly Row[] = chosen.open
      .map((row) => {
        const fixed = rowValues(looks, weights, open, firsts, row, 1, 0);
        return { row, most: fixed + picker.best(open.values, chosen.seated, seating.free - reserved) };
      })
      .sort((a, b) => b.most - a.most || a.row - b.row);
    if (!judge.tick(order.length * (leaves.length + PICK))) return false;
    const sums = Array.from({ length: count - chosen.rows.length + 1 }, () => new Int32Array(leaves.length));
    sums[0]?.set(alone);

    const descend = (depth: number, from: number, made: number): boolean => {
      if (!judge.tick(leaves.length * 2 + PICK)) return false;
      const sum = sums[depth] as Int32Array;
      const left = count - rows.length;
      if (left === 0) {
        const worth = Int32Array.from(sum);
        const frame = { layers, firsts, rows: [...rows], seated: Int32Array.from(seated), worth, made, served };
        return searchLeaves(looks, seating, open, frame, budgets, judge);
      }
      const held = Math.max(0, reserved - (seating.needed(seated) - before));
      const now = made + picker.best(sum, seated, seating.free - held);
      let rest = 0;
      for (let at = from; at < from + left; at += 1) rest += order[at]?.most ?? Number.NEGATIVE_INFINITY;
      for (let at = from; at + left <= order.length; at += 1) {
        // the order goes down, so that no later bottom can do better
        if (now + rest <= judge.cutoff()) break;
        const { row, most: worth } = order[at] as Row;
        const kind = seating.classOf[looks.bottoms[row - 1] as number] as number;
        seated[kind] = (seated[kind] as number) + 1;
        if (seating.needed(seated) <= seating.free) {
          const fixed = rowValues(looks, weights, open, firsts, row, 1, 0);
          const into = sums[depth + 1] as Int32Array;
          for (let leaf = 0; leaf < leaves.length; leaf += 1)
            into[leaf] = (sum[leaf] as number) + (open.values[leaf] as number);
          rows.push(row);
          const done = descend(depth + 1, at + 1, made + fixed);
          rows.pop();
          if (!done) return false;
        }
        seated[kind] = (seated[kind] as number) - 1;
        rest += (order[at + left]?.most ?? 0) - worth;
      }
      return true;
    };
    return descend(0, 0, start);
  };
  for (let count = chosen.rows.length; count <= most; count += 1) if (!withCount(count)) return false;
  return true;
};
