import { Descent } from './descent.ts';
import { popcount } from './popcount.ts';
import type { LookSpace } from './space.ts';

/** States beyond which the diagram is given up; a capsule of 60 pieces stays well below. */
const MOST_STATES = 200_000;

/** A growing list of whole numbers. */
const createList = () => {
  let items = new Int32Array(1024);
  let length = 0;
  return {
    push: (value: number): void => {
      if (length === items.length) {
        const grown = new Int32Array(length * 2);
        grown.set(items);
        items = grown;
      }
      items[length++] = value;
    },
    view: (): Int32Array => items.subarray(0, length),
  };
};

/**
 * For each seat, the looks of the space that contain it, in one traversal: states that have the same looks below them
 * are one node of a diagram; looks through an edge are the ways into its upper end times the ways out of its lower.
 * Undefined where the diagram would grow too large or a number too large for a double.
 */
export const tallySpace = (space: LookSpace, seats: number): Float64Array | undefined => {
  const tally = new Float64Array(seats);
  const descent = new Descent(space);
  if (!descent.open || space.counted === 0) return tally;
  const { rows, depth } = descent;
  const { words, wordOf, seatOf } = space;
  if (space.counted !== depth) return undefined;

  const statesAt = Array.from({ length: depth }, () => new Map<number, number[]>());
  const keys: Int32Array[] = [];
  const ways = [0];
  const edges = Array.from({ length: depth }, () => ({ from: createList(), node: createList(), to: createList() }));
  const scratch = new Int32Array(descent.keyLength);
  let full = false;

  /** Number of the state at hand, and whether it is new. */
  const stateOf = (at: number): { readonly state: number; readonly fresh: boolean } => {
    const length = descent.keyInto(at, scratch);
    let hash = 17;
    for (let index = 0; index < length; index += 1) hash = Math.imul(hash ^ (scratch[index] as number), 0x01000193);
    const bucket = statesAt[at]?.get(hash);
    const same = bucket?.find((state) => {
      const key = keys[state] as Int32Array;
      for (let index = 0; index < length; index += 1) if (key[index] !== scratch[index]) return false;
      return true;
    });
    if (same !== undefined) return { state: same, fresh: false };
    const state = keys.length;
    keys.push(scratch.slice(0, length));
    if (bucket === undefined) statesAt[at]?.set(hash, [state]);
    else bucket.push(state);
    return { state, fresh: true };
  };

  const build = (at: number, state: number): number => {
    const base = at * words;
    let total = 0;
    for (let word = wordOf[at] as number; word < (wordOf[at + 1] as number); word += 1) {
      if (at === depth - 1) {
        total += popcount(rows[base + word] as number);
        continue;
      }
      let bits = rows[base + word] as number;
      while (bits !== 0) {
        const low = bits & -bits;
        bits ^= low;
        const node = (word << 5) + 31 - Math.clz32(low);
        if (full || !descent.descend(at, node)) continue;
        const { state: child, fresh } = stateOf(at + 1);
        if (fresh) {
          if (keys.length > MOST_STATES) full = true;
          ways[child] = build(at + 1, child);
        }
        const out = ways[child] as number;
        if (out === 0) continue;
        const list = edges[at];
        list?.from.push(state);
        list?.node.push(node);
        list?.to.push(child);
        total += out;
      }
    }
    return total;
  };

  const { state: top } = stateOf(0);
  const total = build(0, top);
  ways[top] = total;
  if (full || total > Number.MAX_SAFE_INTEGER) return undefined;

  const into = new Float64Array(keys.length);
  into[top] = 1;
  const count = (node: number, looks: number): void => {
    const seat = seatOf[node] as number;
    if (seat >= 0) tally[seat] = (tally[seat] as number) + looks;
  };
  edges.forEach(({ from, node, to }) => {
    const froms = from.view();
    const nodes = node.view();
    const tos = to.view();
    for (let edge = 0; edge < froms.length; edge += 1) {
      const arriving = into[froms[edge] as number] as number;
      const child = tos[edge] as number;
      into[child] = (into[child] as number) + arriving;
      count(nodes[edge] as number, arriving * (ways[child] as number));
    }
  });
  const last = depth - 1;
  for (const bucket of statesAt[last]?.values() ?? []) {
    for (const state of bucket) {
      const arriving = into[state] as number;
      const key = keys[state] as Int32Array;
      // the key begins with the candidate words of the last slot
      for (let word = wordOf[last] as number; word < words; word += 1) {
        let bits = key[word - (wordOf[last] as number)] as number;
        while (bits !== 0) {
          const low = bits & -bits;
          bits ^= low;
          count((word << 5) + 31 - Math.clz32(low), arriving);
        }
      }
    }
  }
  return tally;
};
