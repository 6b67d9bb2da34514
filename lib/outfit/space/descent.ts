import { Caps } from './caps.ts';
import { Demands } from './demands.ts';
import { Marks } from './marks.ts';
import type { LookSpace } from './space.ts';
import { Warmth } from './warmth.ts';

/**
 * The state of a search through one space: for each depth the candidate words that are left and the small state of the
 * whole-look rules. Enumerating, counting and ranking all move by `descend`, so a look is in all of them or in none.
 *
 * Here and beside it stand classes, not closures: an engine keeps closures fast for the first search of a process only,
 * and a class for all of them.
 */
export class Descent {
  readonly space: LookSpace;
  readonly depth: number;
  /** `rows[depth * words + word]`: candidates left before the slot at `depth` is chosen. */
  readonly rows: Int32Array;
  readonly marks: Marks | undefined;
  readonly caps: Caps | undefined;
  readonly demands: Demands | undefined;
  readonly warmth: Warmth | undefined;
  /** False when the space has no look at the root. */
  readonly open: boolean;
  /** Entries of the longest key. */
  readonly keyLength: number;
  private readonly words: number;
  private readonly wordOf: Int32Array;
  private readonly adjacency: Int32Array;

  constructor(space: LookSpace) {
    const { slots, words, wordOf, adjacency, marks, caps, demands, clo } = space;
    this.space = space;
    this.depth = slots.length;
    this.rows = new Int32Array((slots.length + 1) * words);
    this.rows.set(space.root);
    this.marks = marks && new Marks(space, marks);
    this.caps = caps.length > 0 ? new Caps(space) : undefined;
    this.demands = demands.length > 0 ? new Demands(space) : undefined;
    this.warmth = clo && new Warmth(space, clo);
    this.words = words;
    this.wordOf = wordOf;
    this.adjacency = adjacency;
    this.keyLength = words + 2 + caps.length + 2 + 2;
    this.open = slots.length > 0 && this.close(0) && this.allHaveCandidates(0);
  }

  /** Chooses a node of the slot at `depth`, which must be a candidate. False when no look can follow. */
  descend(depth: number, node: number): boolean {
    const { rows, adjacency, wordOf, words } = this;
    const next = depth + 1;
    const from = depth * words;
    const to = from + words;
    const row = node * words;
    const left = this.marks === undefined ? undefined : this.marks.take(depth, node);
    for (let slot = next; slot < this.depth; slot += 1) {
      const end = wordOf[slot + 1] as number;
      let any = 0;
      for (let word = wordOf[slot] as number; word < end; word += 1) {
        let bits = (rows[from + word] as number) & (adjacency[row + word] as number);
        if (left !== undefined) bits &= left[word] as number;
        rows[to + word] = bits;
        any |= bits;
      }
      if (any === 0) return false;
    }
    if (this.caps !== undefined) this.caps.take(depth, node, rows);
    if (this.demands !== undefined) this.demands.take(depth, node);
    if (this.warmth !== undefined) this.warmth.take(depth, node);
    if (next === this.depth) return true;
    return this.close(next) && (this.caps === undefined || this.allHaveCandidates(next));
  }

  /** Whether some look follows from a depth that was reached. */
  canFinish(depth: number): boolean {
    // the rows of the last slot hold only nodes that finish a look
    if (depth >= this.depth - 1) return true;
    const base = depth * this.words;
    for (let word = this.wordOf[depth] as number; word < (this.wordOf[depth + 1] as number); word += 1) {
      let bits = this.rows[base + word] as number;
      while (bits !== 0) {
        const low = bits & -bits;
        bits ^= low;
        if (this.descend(depth, (word << 5) + 31 - Math.clz32(low)) && this.canFinish(depth + 1)) return true;
      }
    }
    return false;
  }

  /** Writes what tells the state from others of its depth, candidate words first: with the same key come the same looks. */
  keyInto(depth: number, key: Int32Array): number {
    const base = depth * this.words;
    let length = 0;
    for (let word = this.wordOf[depth] as number; word < this.words; word += 1) {
      key[length++] = this.rows[base + word] as number;
    }
    if (this.marks !== undefined) length = this.marks.keyInto(depth, key, length);
    if (this.caps !== undefined) length = this.caps.keyInto(depth, key, length);
    if (this.demands !== undefined) length = this.demands.keyInto(depth, key, length);
    if (this.warmth !== undefined) length = this.warmth.keyInto(depth, key, length);
    return length;
  }

  /** Narrows the slot at a depth by the demands that end there and the insulation. False when nothing is left. */
  private close(depth: number): boolean {
    if (this.warmth !== undefined) this.warmth.close(depth, this.rows);
    if (this.demands !== undefined) {
      this.demands.close(depth, this.rows);
      if (!this.demands.answerable(depth, this.rows)) return false;
    }
    return this.hasCandidate(depth, depth);
  }

  private hasCandidate(depth: number, slot: number): boolean {
    const base = depth * this.words;
    let any = 0;
    for (let word = this.wordOf[slot] as number; word < (this.wordOf[slot + 1] as number); word += 1) {
      any |= this.rows[base + word] as number;
    }
    return any !== 0;
  }

  private allHaveCandidates(depth: number): boolean {
    for (let slot = depth; slot < this.depth; slot += 1) if (!this.hasCandidate(depth, slot)) return false;
    return true;
  }
}
