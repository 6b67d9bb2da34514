import { Descent } from './descent.ts';
import { Endings } from './endings.ts';
import type { LookSpace } from './space.ts';

/** Walks the looks of one space in order, one at a time, in constant memory. */
export class Cursor {
  private readonly descent: Descent;
  private readonly endings: Endings;
  private readonly wordOf: Int32Array;
  private readonly words: number;
  /** Node chosen of each slot above the endings. */
  private readonly chosen: Int32Array;
  /** For each depth above the endings, the word that is looked at and its candidates not tried yet. */
  private readonly wordAt: Int32Array;
  private readonly bitsAt: Int32Array;
  /** Depth to go on from when the endings are used up; −1 when there is none. */
  private depth = -1;
  /** Ending that is stood at, and its looks not listed yet. */
  private entry = 0;
  private bits = 0;
  private firstNode = 0;
  /** Node of the last slot of the look stood at. */
  private last = 0;

  constructor(space: LookSpace) {
    this.descent = new Descent(space);
    this.endings = new Endings(this.descent);
    this.wordOf = space.wordOf;
    this.words = space.words;
    this.chosen = new Int32Array(space.slots.length);
    this.wordAt = new Int32Array(space.slots.length);
    this.bitsAt = new Int32Array(space.slots.length);
    this.begin();
  }

  /** Moves to the next look; false after the last. */
  next(): boolean {
    if (this.bits === 0 && !this.advance()) return false;
    const low = this.bits & -this.bits;
    this.bits ^= low;
    this.last = this.firstNode + 31 - Math.clz32(low);
    return true;
  }

  /** Seat of each slot of the look stood at, `NOTHING` where the slot is empty. Changes with `next`. */
  seats(into: Int32Array): void {
    const { counted, seatOf } = this.descent.space;
    for (let slot = 0; slot < this.endings.depth; slot += 1) into[slot] = seatOf[this.chosen[slot] as number] as number;
    const before = this.endings.nodes[this.entry] as number;
    if (before >= 0) into[counted - 2] = seatOf[before] as number;
    into[counted - 1] = seatOf[this.last] as number;
  }

  /** Makes `next` go on behind a place in the order: the wanted seat of each slot, which need not be a look here. */
  goBehind(wanted: Int32Array): void {
    const { seatOf } = this.descent.space;
    this.begin();
    for (let depth = 0; depth < this.endings.depth && this.depth === depth; depth += 1) {
      const target = wanted[depth] as number;
      let node = this.take(depth);
      while (node >= 0 && (seatOf[node] as number) < target) node = this.take(depth);
      if (node >= 0 && (seatOf[node] as number) > target) {
        this.bitsAt[depth] = (this.bitsAt[depth] as number) | (1 << (node & 31));
        return;
      }
      if (node < 0 || !this.enter(depth, node)) return;
    }
    this.skipEndings(wanted);
  }

  private begin(): void {
    const { open, space } = this.descent;
    this.depth = -1;
    this.endings.length = 0;
    this.entry = 0;
    this.bits = 0;
    if (open && space.counted > 0) this.reach(0);
  }

  /** Chooses a node and goes on to the slot after it. False when no look follows. */
  private enter(depth: number, node: number): boolean {
    this.chosen[depth] = node;
    if (!this.descent.descend(depth, node)) return false;
    this.reach(depth + 1);
    return true;
  }

  /** Begins with the candidates of a slot, or with the endings. */
  private reach(depth: number): void {
    if (depth === this.endings.depth) {
      this.endings.find();
      this.entry = -1;
      return;
    }
    const word = this.wordOf[depth] as number;
    this.depth = depth;
    this.wordAt[depth] = word;
    this.bitsAt[depth] = this.descent.rows[depth * this.words + word] as number;
  }

  /** Goes to the next ending. False after the last. */
  private advance(): boolean {
    for (;;) {
      if (this.entry + 1 < this.endings.length) {
        this.standAt(this.entry + 1, this.endings.bits[this.entry + 1] as number);
        return true;
      }
      if (this.depth < 0) return false;
      const node = this.take(this.depth);
      if (node < 0) this.depth -= 1;
      else this.enter(this.depth, node);
    }
  }

  private standAt(entry: number, bits: number): void {
    this.entry = entry;
    this.bits = bits;
    this.firstNode = (this.endings.words[entry] as number) << 5;
  }

  /** Next candidate of the slot at a depth, or −1. */
  private take(depth: number): number {
    let bits = this.bitsAt[depth] as number;
    let word = this.wordAt[depth] as number;
    while (bits === 0) {
      word += 1;
      if (word >= (this.wordOf[depth + 1] as number)) return -1;
      bits = this.descent.rows[depth * this.words + word] as number;
      this.wordAt[depth] = word;
    }
    const low = bits & -bits;
    this.bitsAt[depth] = bits ^ low;
    return (word << 5) + 31 - Math.clz32(low);
  }

  private skipEndings(wanted: Int32Array): void {
    for (let entry = 0; entry < this.endings.length; entry += 1) {
      this.standAt(entry, this.behind(entry, wanted));
      if (this.bits !== 0) return;
    }
  }

  /** Looks of an ending that lie behind the wanted seats of its slots. */
  private behind(entry: number, wanted: Int32Array): number {
    const { counted, seatOf } = this.descent.space;
    const bits = this.endings.bits[entry] as number;
    const before = this.endings.nodes[entry] as number;
    if (before >= 0) {
      const order = (seatOf[before] as number) - (wanted[counted - 2] as number);
      if (order !== 0) return order > 0 ? bits : 0;
    }
    const first = (this.endings.words[entry] as number) << 5;
    let behind = 0;
    for (let rest = bits; rest !== 0; rest &= rest - 1) {
      const node = first + 31 - Math.clz32(rest & -rest);
      if ((seatOf[node] as number) > (wanted[counted - 1] as number)) behind |= rest & -rest;
    }
    return behind;
  }
}
