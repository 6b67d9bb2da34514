import { type LookSpace, nodesOf } from './space.ts';

type Cap = LookSpace['caps'][number];

/** How many nodes of each capped class are chosen, by depth. */
export class Caps {
  /** `at[depth * number of caps + cap]`. */
  private readonly at: Int32Array;
  /** Nodes that slots from a depth on can add, laid out alike. */
  private readonly later: Int32Array;
  private readonly list: readonly Cap[];
  private readonly words: number;
  private readonly wordOf: Int32Array;

  constructor(space: LookSpace) {
    const { slots, words, wordOf, caps } = space;
    this.at = new Int32Array((slots.length + 1) * caps.length);
    this.later = new Int32Array((slots.length + 1) * caps.length);
    for (let slot = slots.length - 1; slot >= 0; slot -= 1) {
      const nodes = nodesOf(space, slot);
      caps.forEach(({ ofNode }, index) => {
        const here = nodes.some((node) => ofNode[node] === 1) ? 1 : 0;
        this.later[slot * caps.length + index] = (this.later[(slot + 1) * caps.length + index] ?? 0) + here;
      });
    }
    this.list = caps;
    this.words = words;
    this.wordOf = wordOf;
  }

  /** Takes a node, and takes the classes that are full out of the rows of the next depth. */
  take(depth: number, node: number, rows: Int32Array): void {
    const { at, list, words } = this;
    const base = (depth + 1) * words;
    for (let index = 0; index < list.length; index += 1) {
      const cap = list[index] as Cap;
      const before = at[depth * list.length + index] as number;
      const counted = before + (cap.ofNode[node] as number);
      at[(depth + 1) * list.length + index] = counted;
      if (counted === before || counted < cap.most) continue;
      for (let word = this.wordOf[depth + 1] as number; word < words; word += 1) {
        rows[base + word] = (rows[base + word] as number) & (cap.others[word] as number);
      }
    }
  }

  /** Bits of a word of a later slot that a node leaves, without taking it. */
  leftBy(depth: number, node: number, word: number): number {
    const { at, list } = this;
    let left = -1;
    for (let index = 0; index < list.length; index += 1) {
      const cap = list[index] as Cap;
      const more = cap.ofNode[node] as number;
      if (more !== 0 && (at[depth * list.length + index] as number) + more >= cap.most)
        left &= cap.others[word] as number;
    }
    return left;
  }

  /** True when no slot from a depth on can break a cap. */
  settled(depth: number): boolean {
    const { at, later, list } = this;
    for (let index = 0; index < list.length; index += 1) {
      const place = depth * list.length + index;
      if ((at[place] as number) + (later[place] as number) > (list[index] as Cap).most) return false;
    }
    return true;
  }

  /** Writes what tells states of a depth apart: how many of each class may still be chosen, where that matters. */
  keyInto(depth: number, key: Int32Array, length: number): number {
    const { at, later, list } = this;
    for (let index = 0; index < list.length; index += 1) {
      const place = depth * list.length + index;
      key[length + index] = Math.min((list[index] as Cap).most - (at[place] as number), later[place] as number);
    }
    return length + list.length;
  }
}
