import { popcount } from './popcount.ts';
import { type LookSpace, nodesOf, setBit } from './space.ts';

/** Different marks (hue families) of the nodes chosen so far, by depth, and the nodes that each set of them leaves. */
export class Marks {
  /** Marks chosen above a depth. */
  private readonly at: Int32Array;
  /** Marks that slots from a depth on can bring. */
  private readonly later: Int32Array;
  private readonly most: number;
  private readonly ofNode: Int32Array;
  private readonly words: number;
  private readonly rows: (Int32Array | undefined)[] = [];

  constructor(space: LookSpace, { most, ofNode }: NonNullable<LookSpace['marks']>) {
    const { slots, words } = space;
    this.at = new Int32Array(slots.length + 1);
    this.later = new Int32Array(slots.length + 1);
    for (let slot = slots.length - 1; slot >= 0; slot -= 1) {
      this.later[slot] = nodesOf(space, slot).reduce(
        (union, node) => union | (ofNode[node] ?? 0),
        this.later[slot + 1] ?? 0,
      );
    }
    this.most = most;
    this.ofNode = ofNode;
    this.words = words;
  }

  /** Takes a node; the row it leaves of later slots, undefined when it brings no new mark. */
  take(depth: number, node: number): Int32Array | undefined {
    const before = this.at[depth] as number;
    const mask = before | (this.ofNode[node] as number);
    this.at[depth + 1] = mask;
    return mask === before ? undefined : this.rowOf(mask);
  }

  /** Bits of a word of a later slot that a node leaves, without taking it. */
  leftBy(depth: number, node: number, word: number): number {
    const before = this.at[depth] as number;
    const mask = before | (this.ofNode[node] as number);
    return mask === before ? -1 : (this.rowOf(mask)[word] as number);
  }

  /** Writes what tells states of a depth apart: the marks that can still come up, and how many are used. */
  keyInto(depth: number, key: Int32Array, length: number): number {
    const mask = this.at[depth] as number;
    key[length] = mask & (this.later[depth] as number);
    key[length + 1] = popcount(mask);
    return length + 2;
  }

  private rowOf(mask: number): Int32Array {
    return this.rows[mask] ?? this.makeRow(mask);
  }

  private makeRow(mask: number): Int32Array {
    const row = new Int32Array(this.words);
    for (let node = 0; node < this.ofNode.length; node += 1) {
      if (popcount(mask | (this.ofNode[node] as number)) <= this.most) setBit(row, node);
    }
    this.rows[mask] = row;
    return row;
  }
}
