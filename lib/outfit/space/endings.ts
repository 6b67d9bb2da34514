import type { Descent } from './descent.ts';
import { popcount } from './popcount.ts';
import { WORD } from './space.ts';

/**
 * How the looks of one state end: the last two slots at once, since nearly all work of a search is done there. In order,
 * each entry is a node of the last slot but one with a word of the last slot, whose bits are the nodes that make a look
 * with it. Where looks must only be *completable*, or have one slot, an entry is a word of the last counted slot alone.
 */
export class Endings {
  /** Depth of the states that end here. */
  readonly depth: number;
  /** Entries found by the last `find`. */
  length = 0;
  /** −1 where the entry is of one slot. */
  readonly nodes: Int32Array;
  readonly words: Int32Array;
  readonly bits: Int32Array;
  private readonly descent: Descent;
  private readonly paired: boolean;

  constructor(descent: Descent) {
    const { counted, wordOf } = descent.space;
    this.descent = descent;
    this.paired = counted === descent.depth && counted > 1;
    this.depth = this.paired ? counted - 2 : counted - 1;
    const wordsOf = (slot: number): number => (wordOf[slot + 1] as number) - (wordOf[slot] as number);
    const most = this.paired ? wordsOf(counted - 2) * WORD * wordsOf(counted - 1) : wordsOf(counted - 1);
    this.nodes = new Int32Array(most).fill(-1);
    this.words = new Int32Array(most);
    this.bits = new Int32Array(most);
  }

  /** Lists the endings of the state that the descent stands at. */
  find(): void {
    this.length = 0;
    if (this.paired) this.findPairs();
    else this.findSingles();
  }

  /** Number of looks that the state ends in. */
  count(): number {
    this.find();
    let looks = 0;
    for (let entry = 0; entry < this.length; entry += 1) looks += popcount(this.bits[entry] as number);
    return looks;
  }

  private findPairs(): void {
    const { depth, descent } = this;
    const { rows, space, marks } = descent;
    const { words, wordOf, adjacency } = space;
    const base = depth * words;
    const first = wordOf[depth + 1] as number;
    const settled = this.settled();
    for (let word = wordOf[depth] as number; word < first; word += 1) {
      let bits = rows[base + word] as number;
      while (bits !== 0) {
        const low = bits & -bits;
        bits ^= low;
        const node = (word << 5) + 31 - Math.clz32(low);
        for (let last = first; last < words; last += 1) {
          const fit = (rows[base + last] as number) & (adjacency[node * words + last] as number);
          if (fit === 0) continue;
          const left = marks === undefined ? fit : fit & marks.leftBy(depth, node, last);
          this.add(node, last, settled ? left : left & this.leftBy(node, last));
        }
      }
    }
  }

  /** True when no whole-look rule but that of the marks can take anything away here, which is nearly always so. */
  private settled(): boolean {
    const { caps, demands, warmth } = this.descent;
    return (
      (caps === undefined || caps.settled(this.depth)) &&
      (demands === undefined || demands.settled(this.depth)) &&
      (warmth === undefined || warmth.settled(this.depth))
    );
  }

  /** Bits of a word of the last slot that those rules leave beside a node of the slot before it. */
  private leftBy(node: number, word: number): number {
    const { caps, demands, warmth } = this.descent;
    let left = -1;
    if (caps !== undefined) left &= caps.leftBy(this.depth, node, word);
    if (demands !== undefined) left &= demands.leftBy(this.depth, node, word);
    if (warmth !== undefined) left &= warmth.leftBy(this.depth, node, word);
    return left;
  }

  private findSingles(): void {
    const { depth, descent } = this;
    const { words, wordOf, counted } = descent.space;
    const whole = counted === descent.depth;
    for (let word = wordOf[depth] as number; word < (wordOf[depth + 1] as number); word += 1) {
      const bits = descent.rows[depth * words + word] as number;
      this.add(-1, word, whole ? bits : this.finishing(word, bits));
    }
  }

  private finishing(word: number, among: number): number {
    const { depth, descent } = this;
    let kept = 0;
    for (let bits = among; bits !== 0; bits &= bits - 1) {
      const node = (word << 5) + 31 - Math.clz32(bits & -bits);
      if (descent.descend(depth, node) && descent.canFinish(depth + 1)) kept |= bits & -bits;
    }
    return kept;
  }

  private add(node: number, word: number, bits: number): void {
    if (bits === 0) return;
    this.nodes[this.length] = node;
    this.words[this.length] = word;
    this.bits[this.length] = bits;
    this.length += 1;
  }
}
