import type { PartedLooks } from './looks.ts';
import { createPairBounds } from './pair-bounds.ts';
import type { Seating } from './seating.ts';

/** A set of layers decided up to a layer of the order. */
export interface PartialSet {
  readonly set: readonly number[];
  /** Layers of the order before this are decided. */
  readonly next: number;
}

export interface LayerSets {
  readonly first: PartialSet & { readonly upper: number };
  /** With and without the next layer; sets that the list cannot seat, or that leave a line of layers open, are left out. */
  readonly part: (partial: PartialSet) => readonly (PartialSet & { readonly upper: number })[];
  readonly whole: (partial: PartialSet) => boolean;
}

/** Sums of the first so many of some values, the largest first. */
const running = (values: readonly number[]): readonly number[] => {
  let sum = 0;
  return [0, ...values.toSorted((a, b) => b - a).map((value) => (sum += value))];
};

const largest = (values: readonly number[], count: number): number => running(values)[Math.min(count, values.length)] ?? 0;

/**
 * Parts the sets of layers, those that are kept among them in each, from the most promising layer to the least. A set
 * makes what its pairs make (a mid and an outer layer, either of them none); what is still to come adds pairs with every
 * layer there is and with one another.
 */
export const createLayerSets = (
  looks: PartedLooks,
  seating: Seating,
  kept: readonly number[],
  /** Whether every piece of a class is a layer. */
  onlyLayers: (kind: number) => boolean,
): LayerSets => {
  const { layers, layerOf } = looks;
  const bounds = createPairBounds(looks, seating);
  const numberOf = (piece: number): number => layerOf[piece] as number;
  /** Looks of one layer with another or, at 0, with none; as mid and as outer layer. */
  const pair = (a: number, b: number, free: number, firsts: number): number =>
    bounds.of(a, b, free, firsts) + bounds.of(b, a, free, firsts);
  const keptLayers = kept.filter((piece) => layerOf[piece] !== 0);
  const keptBeside = kept.filter((piece) => layerOf[piece] === 0);
  const total = (piece: number): number =>
    [0, ...layers.map(numberOf)].reduce((sum, other) => sum + pair(numberOf(piece), other, seating.free, layers.length), 0);
  const order = layers
    .filter((piece) => !keptLayers.includes(piece))
    .map((piece) => ({ piece, total: total(piece) }))
    .sort((a, b) => b.total - a.total || a.piece - b.piece)
    .map(({ piece }) => piece);

  /** By place in the order and number of layers: the most that so many of those after it make with it. */
  const knownAhead = new Map<string, readonly (readonly number[])[]>();
  const aheadOf = (free: number, firsts: number): readonly (readonly number[])[] => {
    const key = `${free}/${firsts}`;
    const ahead =
      knownAhead.get(key) ??
      order.map((piece, index) =>
        running(order.slice(index + 1).map((other) => pair(numberOf(piece), numberOf(other), free, firsts))),
      );
    knownAhead.set(key, ahead);
    return ahead;
  };

  const countsOf = (set: readonly number[]): Int32Array => {
    const counts = new Int32Array(seating.classes);
    for (const piece of [...set, ...keptBeside]) {
      const kind = seating.classOf[piece] as number;
      counts[kind] = (counts[kind] as number) + 1;
    }
    return counts;
  };
  const roomFor = (before: Int32Array, from: number, free: number): number => {
    const counts = Int32Array.from(before);
    let room = 0;
    for (let at = from; at < order.length; at += 1) {
      const kind = seating.classOf[order[at] as number] as number;
      counts[kind] = (counts[kind] as number) + 1;
      if (seating.needed(counts) <= free) room += 1;
      else counts[kind] = (counts[kind] as number) - 1;
    }
    return room;
  };
  /** When layers to come take so many of the free places, no more are left for what is worn below. */
  const upperWith = ({ set, next }: PartialSet, room: number, free: number): number => {
    const toCome = order.slice(next);
    const firsts = set.filter(bounds.isFirst).length + Math.min(room, toCome.filter(bounds.isFirst).length);
    const numbers = [0, ...set.map(numberOf)];
    let made = 0;
    for (const mid of numbers) for (const outer of numbers) made += bounds.of(mid, outer, free, firsts);
    if (room === 0) return made;
    const ahead = aheadOf(free, firsts);
    const gains = toCome.map((piece, index) => {
      // a pair of two layers to come is counted with the earlier of them
      const later = ahead[next + index] ?? [0];
      return numbers.reduce(
        (sum, other) => sum + pair(numberOf(piece), other, free, firsts),
        later[Math.min(room, later.length) - 1] ?? 0,
      );
    });
    return made + largest(gains, room);
  };
  const upperOf = (partial: PartialSet): number => {
    const counts = countsOf(partial.set);
    const needed = seating.needed(counts);
    let upper = 0;
    for (let taken = 0; taken <= seating.free - needed; taken += 1)
      upper = Math.max(
        upper,
        upperWith(partial, roomFor(counts, partial.next, needed + taken), seating.free - needed - taken),
      );
    return upper;
  };

  const own = seating.own.filter(({ kind }) => onlyLayers(kind));
  const leavesOpen = ({ set, next }: PartialSet): boolean => {
    const counts = countsOf(set);
    return own.some(
      ({ kind, least }) =>
        (counts[kind] as number) + order.slice(next).filter((piece) => seating.classOf[piece] === kind).length < least,
    );
  };
  const start: PartialSet = { set: keptLayers, next: 0 };
  return {
    first: { ...start, upper: upperOf(start) },
    whole: ({ next }) => next >= order.length,
    part: ({ set, next }) => {
      const piece = order[next];
      if (piece === undefined) return [];
      const withIt = { set: [...set, piece], next: next + 1 };
      const seats = seating.needed(countsOf(withIt.set)) <= seating.free;
      return [...(seats ? [withIt] : []), { set, next: next + 1 }]
        .filter((partial) => !leavesOpen(partial))
        .map((partial) => ({ ...partial, upper: upperOf(partial) }));
    },
  };
};
