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
    [0, ...layers.map(numberOf)].reduce(
      (sum, other) => sum + pair(numberOf(piece), other, seating.free, layers.length),
      0,
    );
  const order = layers
    .filter((piece) => !keptLayers.includes(piece))
    .map((piece) => ({ piece, total: total(piece) }))
    .sort((a, b) => b.total - a.total || a.piece - b.piece)
    .map(({ piece }) => piece);

  interface Table {
    /** `both[a * wide + b]`: looks of one layer with another, as mid and as outer layer. */
    readonly both: Float64Array;
    /** By place in the order and number of layers: the most that so many of those after it make with it. */
    readonly ahead: readonly (readonly number[])[];
  }
  const wide = layers.length + 1;
  const tables = new Map<number, Table>();
  const tableOf = (free: number, firsts: number): Table => {
    const key = free * wide + firsts;
    const known = tables.get(key);
    if (known !== undefined) return known;
    const both = Float64Array.from({ length: wide * wide }, (_, at) =>
      pair(Math.floor(at / wide), at % wide, free, firsts),
    );
    const ahead = order.map((piece, index) =>
      running(order.slice(index + 1).map((other) => both[numberOf(piece) * wide + numberOf(other)] as number)),
    );
    tables.set(key, { both, ahead });
    return { both, ahead };
  };
  const dualAhead = order.map((_, index) => order.slice(index).filter(bounds.isFirst).length);

  const keptCounts = new Int32Array(seating.classes);
  for (const piece of keptBeside) {
    const kind = seating.classOf[piece] as number;
    keptCounts[kind] = (keptCounts[kind] as number) + 1;
  }
  const countsOf = (set: readonly number[]): Int32Array => {
    const counts = Int32Array.from(keptCounts);
    for (const piece of set) {
      const kind = seating.classOf[piece] as number;
      counts[kind] = (counts[kind] as number) + 1;
    }
    return counts;
  };
  /** By place in the order: how many layers from there on are of each class. */
  const classesAhead = Array.from({ length: order.length + 1 }, (_, from) => {
    const counts = new Int32Array(seating.classes);
    for (const piece of order.slice(from)) {
      const kind = seating.classOf[piece] as number;
      counts[kind] = (counts[kind] as number) + 1;
    }
    return counts;
  });
  const roomFor = (before: Int32Array, from: number, free: number): number => {
    const counts = Int32Array.from(before);
    const ahead = classesAhead[from] as Int32Array;
    let room = 0;
    for (let kind = 0; kind < seating.classes; kind += 1) {
      for (let left = ahead[kind] as number; left > 0; left -= 1) {
        counts[kind] = (counts[kind] as number) + 1;
        if (seating.needed(counts) > free) {
          counts[kind] = (counts[kind] as number) - 1;
          break;
        }
        room += 1;
      }
    }
    return room;
  };
  /** When layers to come take so many of the free places, no more are left for what is worn below. */
  const upperWith = ({ set, next }: PartialSet, room: number, free: number): number => {
    const firsts = set.filter(bounds.isFirst).length + Math.min(room, dualAhead[next] ?? 0);
    const { both, ahead } = tableOf(free, firsts);
    const numbers = [0, ...set.map(numberOf)];
    let made = bounds.of(0, 0, free, firsts);
    for (let a = 0; a < numbers.length; a += 1)
      for (let b = a + 1; b < numbers.length; b += 1)
        made += both[(numbers[a] as number) * wide + (numbers[b] as number)] as number;
    if (room === 0) return made;
    const best = new Float64Array(room);
    for (let at = next; at < order.length; at += 1) {
      const row = numberOf(order[at] as number) * wide;
      // a pair of two layers to come is counted with the earlier of them
      const later = ahead[at] as readonly number[];
      let gain = later[Math.min(room, later.length) - 1] as number;
      for (const other of numbers) gain += both[row + other] as number;
      // the largest so far, from the first down
      let place = room;
      while (place > 0 && (best[place - 1] as number) < gain) place -= 1;
      if (place < room) {
        best.copyWithin(place + 1, place, room - 1);
        best[place] = gain;
      }
    }
    return best.reduce((sum, gain) => sum + gain, made);
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
    const ahead = classesAhead[next] as Int32Array;
    return own.some(({ kind, least }) => (counts[kind] as number) + (ahead[kind] as number) < least);
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
