import { createDescent } from './descent.ts';
import type { LookSpace } from './space.ts';

/** Walks the looks of one space in order, one at a time, in constant memory. */
export interface Cursor {
  /** Moves to the next look; false after the last. */
  readonly next: () => boolean;
  /** Seat of each slot of the look stood at, `NOTHING` where the slot is empty. Changes with `next`. */
  readonly seats: (into: Int32Array) => void;
  /** Makes `next` go on behind a place in the order: the wanted seat of each slot, which need not be a look here. */
  readonly goBehind: (wanted: Int32Array) => void;
}

export const createCursor = (space: LookSpace): Cursor => {
  const descent = createDescent(space);
  const { rows, descend, canFinish } = descent;
  const { words, wordOf, seatOf, counted } = space;
  const last = counted - 1;
  const whole = counted === descent.depth;
  const chosen = new Int32Array(Math.max(1, counted));
  const wordAt = new Int32Array(Math.max(1, counted));
  const bitsAt = new Int32Array(Math.max(1, counted));
  let at = 0;
  /** Candidates left of a last slot of one word, kept apart: many looks differ from the one before in the last slot only. */
  let lastBits = 0;
  const lastWord = wordOf[last] as number;
  const single = whole && last > 0 && (wordOf[last + 1] as number) === lastWord + 1;
  let spent = !descent.open || counted === 0;

  const enter = (depth: number): void => {
    const word = wordOf[depth] as number;
    at = depth;
    wordAt[depth] = word;
    bitsAt[depth] = rows[depth * words + word] as number;
  };
  if (!spent) enter(0);

  /** Next candidate of the slot at a depth, or −1. */
  const take = (depth: number): number => {
    let bits = bitsAt[depth] as number;
    let word = wordAt[depth] as number;
    while (bits === 0) {
      word += 1;
      if (word >= (wordOf[depth + 1] as number)) return -1;
      bits = rows[depth * words + word] as number;
      wordAt[depth] = word;
    }
    const low = bits & -bits;
    bitsAt[depth] = bits ^ low;
    return (word << 5) + 31 - Math.clz32(low);
  };

  const takeLast = (): boolean => {
    const low = lastBits & -lastBits;
    lastBits ^= low;
    chosen[last] = (lastWord << 5) + 31 - Math.clz32(low);
    return true;
  };

  const next = (): boolean => {
    if (lastBits !== 0) return takeLast();
    if (spent) return false;
    for (;;) {
      const node = take(at);
      if (node < 0) {
        at -= 1;
        if (at < 0) {
          spent = true;
          return false;
        }
        continue;
      }
      chosen[at] = node;
      if (at === last) {
        if (whole || (descend(at, node) && canFinish(at + 1))) return true;
      } else if (descend(at, node)) {
        if (!single || at + 1 < last) enter(at + 1);
        else {
          lastBits = rows[last * words + lastWord] as number;
          return takeLast();
        }
      }
    }
  };

  const goBehind = (wanted: Int32Array): void => {
    spent = !descent.open || counted === 0;
    lastBits = 0;
    if (spent) return;
    enter(0);
    for (let depth = 0; ; depth += 1) {
      const target = wanted[depth] as number;
      let node = take(depth);
      while (node >= 0 && (seatOf[node] as number) < target) node = take(depth);
      if (node >= 0 && (seatOf[node] as number) > target) {
        bitsAt[depth] = (bitsAt[depth] as number) | (1 << (node & 31));
        return;
      }
      if (node < 0 || depth === last) return;
      chosen[depth] = node;
      if (!descend(depth, node)) return;
      enter(depth + 1);
    }
  };

  const seats = (into: Int32Array): void => {
    for (let depth = 0; depth < counted; depth += 1) into[depth] = seatOf[chosen[depth] as number] as number;
  };
  return { next, seats, goBehind };
};
