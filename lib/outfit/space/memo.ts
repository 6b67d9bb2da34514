/**
 * Counts that are already known, by exact key, in a table of fixed size: a new entry takes the place of an old one with
 * the same hash, so memory does not grow with the number of looks and no answer is ever wrong.
 */
export class Memo {
  private readonly stride: number;
  private readonly mask: number;
  private readonly keys: Int32Array;
  private readonly values: Float64Array;

  /** `bits`: the table has two to this power entries. */
  constructor(bits: number, keyLength: number) {
    this.stride = keyLength + 1;
    this.mask = (1 << bits) - 1;
    this.keys = new Int32Array((this.mask + 1) * this.stride);
    this.values = new Float64Array(this.mask + 1);
  }

  /** Value for the key, or −1. */
  find(key: Int32Array, length: number, depth: number): number {
    const entry = hashOf(key, length, depth) & this.mask;
    const base = entry * this.stride;
    if (this.keys[base] !== depth + 1) return -1;
    for (let index = 0; index < length; index += 1) if (this.keys[base + 1 + index] !== key[index]) return -1;
    return this.values[entry] as number;
  }

  keep(key: Int32Array, length: number, depth: number, value: number): void {
    const entry = hashOf(key, length, depth) & this.mask;
    const base = entry * this.stride;
    this.keys[base] = depth + 1;
    for (let index = 0; index < length; index += 1) this.keys[base + 1 + index] = key[index] as number;
    this.values[entry] = value;
  }
}

/** A well-mixed 32-bit number of a key. */
export const hashOf = (key: Int32Array, length: number, depth: number): number => {
  let hash = 0x811c9dc5 ^ depth;
  for (let index = 0; index < length; index += 1) {
    hash = Math.imul(hash ^ (key[index] as number), 0x01000193);
    hash ^= hash >>> 15;
  }
  hash = Math.imul(hash ^ (hash >>> 13), 0x5bd1e995);
  return hash ^ (hash >>> 15);
};
