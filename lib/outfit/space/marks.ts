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
  /** Nodes with each set of marks that one node brings. */
  private readonly alike = new Map<number, Int32Array>();
  private readonly rows: (Int32Array | undefined)[] = [];

  constructor(space: LookSpace, { most, ofNode }: NonNullable<LookSpace['marks']>) {
    const { slots, words } = space;
    this.at = new Int32Array(slots.length + 1);
    this.later = new Int32Array(slots.length + 1);
    for (let slot = slots.length - 1; slot >= 0; slot -= 1) {
      let union = this.later[slot + 1] as number;
      for (const node of nodesOf(space, slot)) {
        const brought = ofNode[node] as number;
        const row = this.alike.get(brought) ?? new Int32Array(words);
        this.alike.set(brought, row);
        setBit(row, node);
        union |= brought;
      }
      this.later[slot] = union;
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

  /**
   * Writes what tells states of a depth apart: the marks that can still come up, and how many are used, as long as that
   * decides. It no longer does when all that can come up may, or when as many as may be are used: then the candidates
   * left bring no other.
   */
  keyInto(depth: number, key: Int32Array, length: number): number {
    const mask = this.at[depth] as number;
    const later = this.later[depth] as number;
    const used = popcount(mask);
    const settled = used === this.most || popcount(mask | later) <= this.most;
    key[length] = settled ? 0 : mask & later;
    key[length + 1] = settled ? -1 : used;
    return length + 2;
  }

  private rowOf(mask: number): Int32Array {
    return this.rows[mask] ?? this.makeRow(mask);
  }

  private makeRow(mask: number): Int32Array {
    const row = new Int32Array(this.words);
    for (const [brought, nodes] of this.alike) {
      if (popcount(mask | brought) > this.most) continue;
      for (let word = 0; word < row.length; word += 1) row[word] = (row[word] as number) | (nodes[word] as number);
    }
    this.rows[mask] = row;
    return row;
  }
}
