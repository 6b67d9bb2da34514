import { createLeafPicker } from './leaves.ts';
import type { PartedLooks } from './looks.ts';
import { looseBound, type Open } from './rows.ts';
import type { Seating } from './seating.ts';

/** A set of layers decided up to a layer of the order, and what it makes of pairs of layers at most. */
export interface PartialSet {
  readonly set: readonly number[];
  /** Layers of the order before this are decided. */
  readonly next: number;
  /** What all pairs of its layers make at most, each pair with its own best cores. */
  readonly made: number;
}

export interface LayerSets {
  readonly first: PartialSet & { readonly upper: number };
  /** With and without the next layer; sets that the list cannot seat, or that leave a line of layers open, are left out. */
  readonly part: (partial: PartialSet) => readonly (PartialSet & { readonly upper: number })[];
  readonly whole: (partial: PartialSet) => boolean;
}

/** For each plane the looks that it makes at most, with every top, one-piece and bottom open. */
const planeBounds = (looks: PartedLooks, seating: Seating): Float64Array => {
  const firsts = [...new Set([...looks.leaves, ...[...looks.bottoms, ...looks.layers]])].filter((piece) =>
    Array.from({ length: looks.bottoms.length + 1 }).some(
      (_, row) => (looks.cell[row * looks.pieces + piece] ?? -1) >= 0,
    ),
  );
  const open: Open = {
    leaves: firsts,
    picker: createLeafPicker(seating, firsts),
    values: new Int32Array(firsts.length),
  };
  const all = looks.bottoms.map((_, index) => index + 1);
  const chosen = { firsts: [], rows: [], open: all, seated: new Int32Array(seating.classes) };
  return Float64Array.from(looks.planes, (plane) =>
    plane === undefined ? 0 : looseBound(looks, Int32Array.from(plane), open, chosen, seating),
  );
};

/**
 * Parts the sets of layers, those that are kept among them in each, from the most promising layer to the least. Adding
 * a layer adds pairs with every layer there is, so what is still to come is bounded by pairs too.
 */
export const createLayerSets = (
  looks: PartedLooks,
  seating: Seating,
  kept: readonly number[],
  /** Whether every piece of a class is a layer. */
  onlyLayers: (kind: number) => boolean,
): LayerSets => {
  const { layers, layerOf } = looks;
  const wide = layers.length + 1;
  const made = planeBounds(looks, seating);
  const pair = (a: number, b: number): number => (made[a * wide + b] as number) + (made[b * wide + a] as number);
  const keptLayers = kept.filter((piece) => layerOf[piece] !== 0);
  const total = (piece: number): number => {
    const at = layerOf[piece] as number;
    return layers.reduce((sum, other) => sum + pair(at, layerOf[other] as number), pair(at, 0));
  };
  const order = layers
    .filter((piece) => !keptLayers.includes(piece))
    .map((piece) => ({ piece, total: total(piece) }))
    .sort((a, b) => b.total - a.total || a.piece - b.piece)
    .map(({ piece }) => piece);
  /** `ahead[i][j]`: the most that `j` layers after the `i`th of the order make with it. */
  const ahead = order.map((piece, index) => {
    const pairs = order
      .slice(index + 1)
      .map((other) => pair(layerOf[piece] as number, layerOf[other] as number))
      .sort((a, b) => b - a);
    let sum = 0;
    return [0, ...pairs.map((value) => (sum += value))];
  });

  const countsOf = (set: readonly number[]): Int32Array => {
    const counts = new Int32Array(seating.classes);
    for (const piece of [...set, ...kept.filter((piece) => layerOf[piece] === 0)]) {
      const kind = seating.classOf[piece] as number;
      counts[kind] = (counts[kind] as number) + 1;
    }
    return counts;
  };
  const gainOf = (piece: number, set: readonly number[]): number =>
    set.reduce(
      (sum, other) => sum + pair(layerOf[piece] as number, layerOf[other] as number),
      pair(layerOf[piece] as number, 0),
    );
  const roomFor = (counts: Int32Array, from: number): number => {
    let room = 0;
    for (let at = from; at < order.length; at += 1) {
      const kind = seating.classOf[order[at] as number] as number;
      counts[kind] = (counts[kind] as number) + 1;
      if (seating.needed(counts) <= seating.free) room += 1;
      else counts[kind] = (counts[kind] as number) - 1;
    }
    return room;
  };
  const upperOf = ({ set, next, made: now }: PartialSet): number => {
    const room = roomFor(countsOf(set), next);
    if (room === 0) return now;
    const gains: number[] = [];
    for (let at = next; at < order.length; at += 1) {
      // a pair of two layers to come is counted with the earlier of them
      const later = ahead[at] ?? [0];
      gains.push(gainOf(order[at] as number, set) + (later[Math.min(room, later.length) - 1] ?? later.at(-1) ?? 0));
    }
    return (
      now +
      gains
        .sort((a, b) => b - a)
        .slice(0, room)
        .reduce((sum, gain) => sum + gain, 0)
    );
  };
  const own = seating.own.filter(({ kind }) => onlyLayers(kind));
  const leavesOpen = (set: readonly number[], next: number): boolean => {
    const counts = countsOf(set);
    return own.some(
      ({ kind, least }) =>
        (counts[kind] as number) + order.slice(next).filter((piece) => seating.classOf[piece] === kind).length < least,
    );
  };
  const start: PartialSet = {
    set: keptLayers,
    next: 0,
    made: keptLayers.reduce((sum, piece, index) => sum + gainOf(piece, keptLayers.slice(0, index)), made[0] as number),
  };
  const whole = ({ next }: PartialSet): boolean => next >= order.length;
  return {
    first: { ...start, upper: upperOf(start) },
    whole,
    part: ({ set, next, made: now }) => {
      const piece = order[next];
      if (piece === undefined) return [];
      const withIt = { set: [...set, piece], next: next + 1, made: now + gainOf(piece, set) };
      const without = { set, next: next + 1, made: now };
      const seats = seating.needed(countsOf(withIt.set)) <= seating.free;
      return [...(seats ? [withIt] : []), without]
        .filter((partial) => !leavesOpen(partial.set, partial.next))
        .map((partial) => ({ ...partial, upper: upperOf(partial) }));
    },
  };
};
