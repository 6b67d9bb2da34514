import { popcount } from './compile.ts';
import { createDescent, type Descent } from './descent.ts';
import { createMemo } from './memo.ts';
import type { LookSpace } from './space.ts';

/** Entries of the table of known counts, as powers of two; more did not pay when measured. */
const LEAST_MEMO_BITS = 8;
const MOST_MEMO_BITS = 17;
/** Entries of the table of counts too large for a double. */
const MOST_LARGE = 50_000;

/** Most looks that can lie below each depth: the product of the sizes of the slots from there on. */
const capacities = ({ wordOf, seatOf, counted }: LookSpace): Float64Array => {
  const below = new Float64Array(counted + 1).fill(1);
  for (let depth = counted - 1; depth >= 0; depth -= 1) {
    let nodes = 0;
    for (let node = (wordOf[depth] ?? 0) * 32; node < (wordOf[depth + 1] ?? 0) * 32; node += 1) {
      if ((seatOf[node] ?? -2) !== -2) nodes += 1;
    }
    below[depth] = (below[depth + 1] ?? 1) * nodes;
  }
  return below;
};

const memoBits = (below: Float64Array): number =>
  Math.min(MOST_MEMO_BITS, Math.max(LEAST_MEMO_BITS, Math.floor(Math.log2(below[0] ?? 1) / 2)));

/** Counts below a depth in doubles; exact while the capacity there is at most 2^53. */
const createCounter = (descent: Descent, below: Float64Array) => {
  const { rows, descend, canFinish, keyInto, depth, space } = descent;
  const { words, wordOf, counted } = space;
  const whole = counted === depth;
  const memo = createMemo(memoBits(below), descent.keyLength);
  const keys = Array.from({ length: depth + 1 }, () => new Int32Array(descent.keyLength));

  const count = (at: number): number => {
    if (at === counted) return canFinish(at) ? 1 : 0;
    const base = at * words;
    const first = wordOf[at] as number;
    const end = wordOf[at + 1] as number;
    if (whole && at === depth - 1) {
      let total = 0;
      for (let word = first; word < end; word += 1) total += popcount(rows[base + word] as number);
      return total;
    }
    const remember = at > 0 && (!whole || at < depth - 2);
    const key = keys[at] as Int32Array;
    const length = remember ? keyInto(at, key) : 0;
    if (remember) {
      const known = memo.find(key, length, at);
      if (known >= 0) return known;
    }
    let total = 0;
    for (let word = first; word < end; word += 1) {
      let bits = rows[base + word] as number;
      while (bits !== 0) {
        const low = bits & -bits;
        bits ^= low;
        if (descend(at, (word << 5) + 31 - Math.clz32(low))) total += count(at + 1);
      }
    }
    if (remember) memo.keep(key, length, at, total);
    return total;
  };
  return count;
};

/** Number of looks of a space, exact at any size: doubles where they are exact, whole numbers above. */
export const countSpace = (space: LookSpace): bigint => {
  const descent = createDescent(space);
  if (!descent.open || space.counted === 0) return 0n;
  const below = capacities(space);
  const count = createCounter(descent, below);
  const { rows, descend, keyInto } = descent;
  const { words, wordOf } = space;
  const known = new Map<string, bigint>();
  const key = new Int32Array(descent.keyLength);

  const countLarge = (at: number): bigint => {
    if ((below[at] as number) <= Number.MAX_SAFE_INTEGER) return BigInt(count(at));
    const name = `${at}:${key.subarray(0, keyInto(at, key)).join()}`;
    const found = known.get(name);
    if (found !== undefined) return found;
    let total = 0n;
    for (let word = wordOf[at] as number; word < (wordOf[at + 1] as number); word += 1) {
      let bits = rows[at * words + word] as number;
      while (bits !== 0) {
        const low = bits & -bits;
        bits ^= low;
        if (descend(at, (word << 5) + 31 - Math.clz32(low))) total += countLarge(at + 1);
      }
    }
    if (known.size >= MOST_LARGE) known.clear();
    known.set(name, total);
    return total;
  };
  return countLarge(0);
};
