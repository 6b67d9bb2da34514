import { hashOf } from './memo.ts';

const LEAST_ROOM = 256;

/** Numbers the different states of a search by exact key, and keeps a count for each. */
export class States {
  /** How many there are; the next new one gets this number. */
  length = 0;
  /** Looks below each state. */
  looks = new Float64Array(LEAST_ROOM);
  /** Open addressing: one more than the number of a state, or 0; at most half full. */
  private table = new Int32Array(2 * LEAST_ROOM);
  private keys: Int32Array;
  private readonly stride: number;

  constructor(keyLength: number) {
    // the hash and the depth stand before the key
    this.stride = keyLength + 2;
    this.keys = new Int32Array(LEAST_ROOM * this.stride);
  }

  /** Number of the state of a depth with a key: `length` as it was before where the state is new. */
  numberOf(key: Int32Array, keyLength: number, depth: number): number {
    const hash = hashOf(key, keyLength, depth);
    const mask = this.table.length - 1;
    let place = hash & mask;
    for (let known = this.table[place] as number; known !== 0; known = this.table[place] as number) {
      if (this.isState(known - 1, hash, key, keyLength, depth)) return known - 1;
      place = (place + 1) & mask;
    }
    this.table[place] = this.length + 1;
    this.keep(hash, key, keyLength, depth);
    return this.length - 1;
  }

  private isState(state: number, hash: number, key: Int32Array, keyLength: number, depth: number): boolean {
    const { keys } = this;
    const base = state * this.stride;
    if (keys[base] !== hash || keys[base + 1] !== depth) return false;
    for (let index = 0; index < keyLength; index += 1) if (keys[base + 2 + index] !== key[index]) return false;
    return true;
  }

  private keep(hash: number, key: Int32Array, keyLength: number, depth: number): void {
    if (this.length === this.looks.length) this.enlarge();
    const base = this.length * this.stride;
    this.keys[base] = hash;
    this.keys[base + 1] = depth;
    for (let index = 0; index < keyLength; index += 1) this.keys[base + 2 + index] = key[index] as number;
    this.length += 1;
  }

  private enlarge(): void {
    const looks = new Float64Array(this.looks.length * 2);
    looks.set(this.looks);
    this.looks = looks;
    const keys = new Int32Array(this.keys.length * 2);
    keys.set(this.keys);
    this.keys = keys;
    const table = new Int32Array(this.table.length * 2);
    for (const entry of this.table) {
      if (entry === 0) continue;
      let place = (keys[(entry - 1) * this.stride] as number) & (table.length - 1);
      while (table[place] !== 0) place = (place + 1) & (table.length - 1);
      table[place] = entry;
    }
    this.table = table;
  }
}
