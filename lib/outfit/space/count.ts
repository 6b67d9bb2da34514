import { Descent } from './descent.ts';
import { Endings } from './endings.ts';
import { Memo } from './memo.ts';
import { type LookSpace, nodesOf } from './space.ts';

/** Entries of the table of known counts, as powers of two; more did not pay when measured. */
const LEAST_MEMO_BITS = 8;
const MOST_MEMO_BITS = 17;
/** Entries of the table of counts too large for a double. */
const MOST_LARGE = 50_000;

/** Most looks that can lie below each depth: the product of the sizes of the slots from there on. */
const capacities = (space: LookSpace): Float64Array => {
  const below = new Float64Array(space.counted + 1).fill(1);
  for (let depth = space.counted - 1; depth >= 0; depth -= 1) {
    below[depth] = (below[depth + 1] ?? 1) * nodesOf(space, depth).length;
  }
  return below;
};

const memoBits = (below: Float64Array): number =>
  Math.min(MOST_MEMO_BITS, Math.max(LEAST_MEMO_BITS, Math.floor(Math.log2(below[0] ?? 1) / 2)));

/** Counts the looks below the states of a descent. */
class Counter {
  private readonly descent: Descent;
  private readonly endings: Endings;
  private readonly keys: readonly Int32Array[];
  private readonly below: Float64Array;
  private readonly memo: Memo;
  private readonly known = new Map<string, bigint>();
  /** States from this depth on are counted anew: looking them up would cost more. */
  private readonly forgotten: number;

  constructor(space: LookSpace) {
    this.descent = new Descent(space);
    this.endings = new Endings(this.descent);
    this.keys = space.slots.map(() => new Int32Array(this.descent.keyLength));
    this.below = capacities(space);
    this.memo = new Memo(memoBits(this.below), this.descent.keyLength);
    this.forgotten = space.counted === space.slots.length ? this.endings.depth : space.counted;
  }

  total(): bigint {
    return this.descent.open && this.descent.space.counted > 0 ? this.countLarge(0) : 0n;
  }

  /** In doubles: exact while the capacity at the depth is at most 2^53. */
  private count(depth: number): number {
    if (depth === 0 || depth >= this.forgotten) return this.countAnew(depth);
    const key = this.keys[depth] as Int32Array;
    const length = this.descent.keyInto(depth, key);
    const known = this.memo.find(key, length, depth);
    if (known >= 0) return known;
    const total = this.countAnew(depth);
    this.memo.keep(key, length, depth, total);
    return total;
  }

  private countAnew(depth: number): number {
    if (depth === this.endings.depth) return this.endings.count();
    const { descent } = this;
    const { words, wordOf } = descent.space;
    let total = 0;
    for (let word = wordOf[depth] as number; word < (wordOf[depth + 1] as number); word += 1) {
      let bits = descent.rows[depth * words + word] as number;
      while (bits !== 0) {
        const low = bits & -bits;
        bits ^= low;
        if (descent.descend(depth, (word << 5) + 31 - Math.clz32(low))) total += this.count(depth + 1);
      }
    }
    return total;
  }

  private countLarge(depth: number): bigint {
    if ((this.below[depth] as number) <= Number.MAX_SAFE_INTEGER) return BigInt(this.count(depth));
    const { descent } = this;
    const { words, wordOf } = descent.space;
    const key = this.keys[depth] as Int32Array;
    const name = `${depth}:${key.subarray(0, this.descent.keyInto(depth, key)).join()}`;
    const found = this.known.get(name);
    if (found !== undefined) return found;
    let total = 0n;
    for (let word = wordOf[depth] as number; word < (wordOf[depth + 1] as number); word += 1) {
      let bits = descent.rows[depth * words + word] as number;
      while (bits !== 0) {
        const low = bits & -bits;
        bits ^= low;
        if (descent.descend(depth, (word << 5) + 31 - Math.clz32(low))) total += this.countLarge(depth + 1);
      }
    }
    if (this.known.size >= MOST_LARGE) this.known.clear();
    this.known.set(name, total);
    return total;
  }
}

/** Number of looks of a space, exact at any size: doubles where they are exact, whole numbers above. */
export const countSpace = (space: LookSpace): bigint => new Counter(space).total();
