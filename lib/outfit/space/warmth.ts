import { type LookSpace, nodesOf, type SpaceClo, setBit, WORD } from './space.ts';

/** Nodes of a slot by an amount of insulation: for each amount the row of the nodes that reach it, and one of none. */
interface Ladder {
  readonly amounts: Float64Array;
  readonly rows: readonly Int32Array[];
}

const ladderOf = (space: LookSpace, slot: number, amountOf: (node: number) => number): Ladder => {
  const from = space.wordOf[slot] as number;
  const to = space.wordOf[slot + 1] as number;
  const nodes = nodesOf(space, slot);
  const amounts = [...new Set(nodes.map(amountOf))].sort((a, b) => a - b);
  const rows = [...amounts, Number.POSITIVE_INFINITY].map((amount) => {
    const row = new Int32Array(to - from);
    for (const node of nodes) if (amountOf(node) >= amount) setBit(row, node - from * WORD);
    return row;
  });
  return { amounts: Float64Array.from(amounts), rows };
};

/** Row of the nodes with at least an amount. */
const rung = ({ amounts, rows }: Ladder, least: number): Int32Array => {
  let index = 0;
  while (index < amounts.length && (amounts[index] as number) < least) index += 1;
  return rows[index] as Int32Array;
};

/** Insulation of the nodes chosen so far, by depth: with layers off and with everything on, in whole units. */
export class Warmth {
  private readonly off: Float64Array;
  private readonly on: Float64Array;
  /** Least that slots from a depth on add with everything on, and most with layers off. */
  private readonly leastOn: Float64Array;
  private readonly mostOff: Float64Array;
  private readonly clo: SpaceClo;
  private readonly words: number;
  private readonly wordOf: Int32Array;
  private readonly warmer: readonly Ladder[];
  private readonly cooler: readonly Ladder[];

  constructor(space: LookSpace, clo: SpaceClo) {
    this.off = new Float64Array(space.slots.length + 1);
    this.on = new Float64Array(space.slots.length + 1);
    this.leastOn = new Float64Array(space.slots.length + 1);
    this.mostOff = new Float64Array(space.slots.length + 1);
    for (let slot = space.slots.length - 1; slot >= 0; slot -= 1) {
      const nodes = nodesOf(space, slot);
      this.leastOn[slot] =
        (this.leastOn[slot + 1] as number) + Math.min(...nodes.map((node) => clo.on[node] as number));
      this.mostOff[slot] =
        (this.mostOff[slot + 1] as number) + Math.max(...nodes.map((node) => clo.off[node] as number));
    }
    this.clo = clo;
    this.words = space.words;
    this.wordOf = space.wordOf;
    this.warmer = space.slots.map((_, slot) => ladderOf(space, slot, (node) => clo.on[node] as number));
    this.cooler = space.slots.map((_, slot) => ladderOf(space, slot, (node) => -(clo.off[node] as number)));
  }

  take(depth: number, node: number): void {
    this.off[depth + 1] = (this.off[depth] as number) + (this.clo.off[node] as number);
    this.on[depth + 1] = (this.on[depth] as number) + (this.clo.on[node] as number);
  }

  /** Narrows the slot at a depth to nodes with which later slots can still make the look warm and cool enough. */
  close(depth: number, rows: Int32Array): void {
    const base = depth * this.words;
    const from = this.wordOf[depth] as number;
    const warm = this.warmEnough(depth, this.on[depth] as number);
    const cool = this.coolEnough(depth, this.off[depth] as number);
    for (let word = from; word < (this.wordOf[depth + 1] as number); word += 1) {
      rows[base + word] = (rows[base + word] as number) & (warm[word - from] as number) & (cool[word - from] as number);
    }
  }

  /** Bits of a word of the next slot that a node leaves, without taking it. */
  leftBy(depth: number, node: number, word: number): number {
    const next = depth + 1;
    const index = word - (this.wordOf[next] as number);
    const warm = this.warmEnough(next, (this.on[depth] as number) + (this.clo.on[node] as number));
    const cool = this.coolEnough(next, (this.off[depth] as number) + (this.clo.off[node] as number));
    return (warm[index] as number) & (cool[index] as number);
  }

  /** True when every choice of slots from a depth on is warm and cool enough. */
  settled(depth: number): boolean {
    return this.isWarm(depth) && this.isCool(depth);
  }

  /** Writes what tells states of a depth apart: the amounts, as long as they can decide. */
  keyInto(depth: number, key: Int32Array, length: number): number {
    key[length] = this.isWarm(depth) ? -1 : (this.on[depth] as number);
    key[length + 1] = this.isCool(depth) ? -1 : (this.off[depth] as number);
    return length + 2;
  }

  private isWarm(depth: number): boolean {
    return (this.on[depth] as number) + (this.leastOn[depth] as number) >= this.clo.min;
  }

  private isCool(depth: number): boolean {
    return (this.off[depth] as number) + (this.mostOff[depth] as number) <= this.clo.max;
  }

  private warmEnough(slot: number, on: number): Int32Array {
    return rung(this.warmer[slot] as Ladder, this.clo.min - on - (this.clo.mostOn[slot + 1] as number));
  }

  private coolEnough(slot: number, off: number): Int32Array {
    return rung(this.cooler[slot] as Ladder, off + (this.clo.leastOff[slot + 1] as number) - this.clo.max);
  }
}
