import { Descent } from './descent.ts';
import { Endings } from './endings.ts';
import { IntList } from './int-list.ts';
import { popcount } from './popcount.ts';
import type { LookSpace } from './space.ts';
import { States } from './states.ts';

/** States beyond which the diagram is given up; a capsule of 60 pieces stays well below. */
const MOST_STATES = 200_000;
const NONE = -1;

/**
 * The looks of a space as a diagram, in which states that have the same looks below them are one. Built going down
 * once, which counts the ways out of every state; then every choice is weighed coming back over the states, upper
 * before lower: the looks through it are the ways into its state times the ways out of the state it leads to.
 */
class Diagram {
  private readonly descent: Descent;
  private readonly endings: Endings;
  private readonly states: States;
  private readonly key: Int32Array;
  /** States in the order they were counted: lower before upper. */
  private readonly order = new IntList();
  /** By place in that order, the last choice and the end of the endings. */
  private readonly choiceOf = new IntList();
  private readonly endingsTo = new IntList();
  /** Choices: a node, the state it leads to and the choice before it of the same state. */
  private readonly nodes = new IntList();
  private readonly nexts = new IntList();
  private readonly previous = new IntList();
  /** Endings: as in `Endings`. */
  private readonly beforeLast = new IntList();
  private readonly words = new IntList();
  private readonly bits = new IntList();

  constructor(descent: Descent) {
    this.descent = descent;
    this.endings = new Endings(descent);
    this.states = new States(descent.keyLength);
    this.key = new Int32Array(descent.keyLength);
  }

  /** Looks by seat; undefined where the diagram grows too large or a number too large for a double. */
  looksOf(seats: number): Float64Array | undefined {
    const top = this.visit(0);
    const total = this.states.looks[top] as number;
    if (this.states.length > MOST_STATES || total > Number.MAX_SAFE_INTEGER) return undefined;
    const { seatOf } = this.descent.space;
    const ofSeat = new Float64Array(seats);
    this.ofNodes(top).forEach((looks, node) => {
      const seat = seatOf[node] as number;
      if (seat >= 0) ofSeat[seat] = (ofSeat[seat] as number) + looks;
    });
    return ofSeat;
  }

  /** Number of the state stood at; counts the looks below it when it is met the first time. */
  private visit(depth: number): number {
    const { states, descent, key } = this;
    const known = states.length;
    const state = states.numberOf(key, descent.keyInto(depth, key), depth);
    if (state < known || states.length > MOST_STATES) return state;
    if (depth === this.endings.depth) {
      states.looks[state] = this.end();
      this.choiceOf.push(NONE);
    } else this.branch(depth, state);
    this.order.push(state);
    this.endingsTo.push(this.bits.length);
    return state;
  }

  private end(): number {
    const { endings } = this;
    const looks = endings.count();
    for (let entry = 0; entry < endings.length; entry += 1) {
      this.beforeLast.push(endings.nodes[entry] as number);
      this.words.push(endings.words[entry] as number);
      this.bits.push(endings.bits[entry] as number);
    }
    return looks;
  }

  private branch(depth: number, state: number): void {
    const { descent, states } = this;
    const { words, wordOf } = descent.space;
    let looks = 0;
    let choice = NONE;
    for (let word = wordOf[depth] as number; word < (wordOf[depth + 1] as number); word += 1) {
      let bits = descent.rows[depth * words + word] as number;
      while (bits !== 0) {
        const low = bits & -bits;
        bits ^= low;
        const node = (word << 5) + 31 - Math.clz32(low);
        if (!descent.descend(depth, node)) continue;
        const next = this.visit(depth + 1);
        const below = states.looks[next] as number;
        if (below === 0) continue;
        looks += below;
        this.nodes.push(node);
        this.nexts.push(next);
        this.previous.push(choice);
        choice = this.nodes.length - 1;
      }
    }
    states.looks[state] = looks;
    this.choiceOf.push(choice);
  }

  private ofNodes(top: number): Float64Array {
    const { states, order } = this;
    const ofNode = new Float64Array(this.descent.space.seatOf.length);
    const into = new Float64Array(states.length);
    into[top] = 1;
    for (let place = order.length - 1; place >= 0; place -= 1) {
      const arriving = into[order.at(place)] as number;
      for (let choice = this.choiceOf.at(place); choice !== NONE; choice = this.previous.at(choice)) {
        const node = this.nodes.at(choice);
        const next = this.nexts.at(choice);
        into[next] = (into[next] as number) + arriving;
        ofNode[node] = (ofNode[node] as number) + arriving * (states.looks[next] as number);
      }
      const from = place === 0 ? 0 : this.endingsTo.at(place - 1);
      for (let ending = from; ending < this.endingsTo.at(place); ending += 1)
        this.weighEnding(ending, arriving, ofNode);
    }
    return ofNode;
  }

  private weighEnding(ending: number, arriving: number, ofNode: Float64Array): void {
    let bits = this.bits.at(ending);
    const before = this.beforeLast.at(ending);
    if (before >= 0) ofNode[before] = (ofNode[before] as number) + arriving * popcount(bits);
    const first = this.words.at(ending) << 5;
    for (; bits !== 0; bits &= bits - 1) {
      const node = first + 31 - Math.clz32(bits & -bits);
      ofNode[node] = (ofNode[node] as number) + arriving;
    }
  }
}

/** For each seat, the looks of the space that contain it, in about the time of a count. Undefined where `Diagram` is. */
export const tallySpace = (space: LookSpace, seats: number): Float64Array | undefined => {
  const descent = new Descent(space);
  if (!descent.open || space.counted === 0) return new Float64Array(seats);
  return new Diagram(descent).looksOf(seats);
};
