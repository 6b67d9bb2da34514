import { type LookSpace, type SpaceDemand, WORD } from './space.ts';

/** Which demands stand and which are answered by the nodes chosen so far, by depth; a bit a demand. */
export class Demands {
  private readonly answered: Int32Array;
  private readonly asked: Int32Array;
  private readonly list: readonly SpaceDemand[];
  private readonly words: number;
  private readonly wordOf: Int32Array;
  /** Demands that each node answers, and those it raises. */
  private readonly answersOf: Int32Array;
  private readonly asksOf: Int32Array;
  /** Demands that a slot is the last to raise or answer. */
  private readonly endingAt: Int32Array;
  /** Demands that slots from a depth on can raise or answer. */
  private readonly later: Int32Array;

  constructor({ slots, words, wordOf, demands }: LookSpace) {
    this.answered = new Int32Array(slots.length + 1);
    this.asked = new Int32Array(slots.length + 1);
    this.list = demands;
    this.words = words;
    this.wordOf = wordOf;
    this.answersOf = bitsOf(demands, words, ({ answers }) => answers);
    this.asksOf = bitsOf(demands, words, ({ asks }) => asks);
    this.endingAt = new Int32Array(slots.length);
    demands.forEach(({ asks, last }, index) => {
      if (asks === undefined) this.asked[0] = (this.asked[0] as number) | (1 << index);
      this.endingAt[last] = (this.endingAt[last] as number) | (1 << index);
    });
    this.later = new Int32Array(slots.length + 1);
    for (let slot = slots.length - 1; slot >= 0; slot -= 1) {
      this.later[slot] = (this.later[slot + 1] as number) | (this.endingAt[slot] as number);
    }
  }

  take(depth: number, node: number): void {
    this.answered[depth + 1] = (this.answered[depth] as number) | (this.answersOf[node] as number);
    this.asked[depth + 1] = (this.asked[depth] as number) | (this.asksOf[node] as number);
  }

  /** Narrows the slot at a depth to what the demands that end there allow. */
  close(depth: number, rows: Int32Array): void {
    if (this.endingAt[depth] === 0) return;
    const base = depth * this.words;
    for (let word = this.wordOf[depth] as number; word < (this.wordOf[depth + 1] as number); word += 1) {
      const left = this.left(depth, word, this.answered[depth] as number, this.asked[depth] as number);
      rows[base + word] = (rows[base + word] as number) & left;
    }
  }

  /** Bits of a word of the next slot that a node leaves by the demands that end there, without taking it. */
  leftBy(depth: number, node: number, word: number): number {
    const answered = (this.answered[depth] as number) | (this.answersOf[node] as number);
    const asked = (this.asked[depth] as number) | (this.asksOf[node] as number);
    return this.left(depth + 1, word, answered, asked);
  }

  private left(slot: number, word: number, answered: number, asked: number): number {
    const ending = (this.endingAt[slot] as number) & ~answered;
    let left = -1;
    for (let index = 0; ending >>> index !== 0; index += 1) {
      if (((ending >>> index) & 1) === 0) continue;
      const { answers, asks } = this.list[index] as SpaceDemand;
      left &=
        ((asked >>> index) & 1) !== 0 ? (answers[word] as number) : (answers[word] as number) | ~(asks?.[word] ?? 0);
    }
    return left;
  }

  /** True when every demand that stands has a node left that answers it. */
  answerable(depth: number, rows: Int32Array): boolean {
    const open = (this.asked[depth] as number) & ~(this.answered[depth] as number);
    const base = depth * this.words;
    for (let index = 0; open >>> index !== 0; index += 1) {
      if (((open >>> index) & 1) === 0) continue;
      const { answers } = this.list[index] as SpaceDemand;
      let any = 0;
      for (let word = this.wordOf[depth] as number; word < this.words; word += 1) {
        any |= (rows[base + word] as number) & (answers[word] as number);
      }
      if (any === 0) return false;
    }
    return true;
  }

  /** True when no demand is open from a depth on. */
  settled(depth: number): boolean {
    return ((this.later[depth] as number) & ~(this.answered[depth] as number)) === 0;
  }

  /** Writes what tells states of a depth apart. */
  keyInto(depth: number, key: Int32Array, length: number): number {
    const later = this.later[depth] as number;
    const answered = this.answered[depth] as number;
    key[length] = answered & later;
    key[length + 1] = (this.asked[depth] as number) & ~answered & later;
    return length + 2;
  }
}

const bitsOf = (
  demands: readonly SpaceDemand[],
  words: number,
  rowOf: (demand: SpaceDemand) => Int32Array | undefined,
): Int32Array => {
  const ofNode = new Int32Array(words * WORD);
  demands.forEach((demand, index) => {
    const row = rowOf(demand);
    if (row === undefined) return;
    for (let node = 0; node < ofNode.length; node += 1) {
      if ((((row[node >> 5] as number) >>> (node & 31)) & 1) !== 0)
        ofNode[node] = (ofNode[node] as number) | (1 << index);
    }
  });
  return ofNode;
};
