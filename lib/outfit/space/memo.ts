/**
 * Counts that are already known, by exact key, in a table of fixed size: a new entry takes the place of an old one with
 * the same hash, so memory does not grow with the number of looks and no answer is ever wrong.
 */
export interface Memo {
  /** Value for the key, or −1. */
  readonly find: (key: Int32Array, length: number, depth: number) => number;
  /** Stores for the key of the last `find` that missed at the same depth. */
  readonly keep: (key: Int32Array, length: number, depth: number, value: number) => void;
}

const hashOf = (key: Int32Array, length: number, depth: number): number => {
  let hash = 0x811c9dc5 ^ depth;
  for (let index = 0; index < length; index += 1) {
    hash = Math.imul(hash ^ (key[index] as number), 0x01000193);
    hash ^= hash >>> 15;
  }
  hash = Math.imul(hash ^ (hash >>> 13), 0x5bd1e995);
  return hash ^ (hash >>> 15);
};

/** `bits`: the table has two to this power entries. */
export const createMemo = (bits: number, keyLength: number): Memo => {
  const stride = keyLength + 1;
  const mask = (1 << bits) - 1;
  const keys = new Int32Array((mask + 1) * stride);
  const values = new Float64Array(mask + 1);
  return {
    find: (key, length, depth) => {
      const entry = hashOf(key, length, depth) & mask;
      const base = entry * stride;
      if (keys[base] !== depth + 1) return -1;
      for (let index = 0; index < length; index += 1) if (keys[base + 1 + index] !== key[index]) return -1;
      return values[entry] as number;
    },
    keep: (key, length, depth, value) => {
      const entry = hashOf(key, length, depth) & mask;
      const base = entry * stride;
      keys[base] = depth + 1;
      for (let index = 0; index < length; index += 1) keys[base + 1 + index] = key[index] as number;
      values[entry] = value;
    },
  };
};
