import type { PartedLooks } from './looks.ts';
import { createPairBounds, type PairTable } from './pair-bounds.ts';
import type { LayerCounts } from './ranks.ts';
import type { Seating } from './seating.ts';

/** A set of layers as far as it is decided: first how many of each sort, then which. */
export interface PartialSet {
  readonly set: readonly number[];
  /** Layers of the order before this are decided. */
  readonly next: number;
  /** How many layers of each sort there will be, sort by sort as far as that is decided. */
  readonly counts: readonly number[];
  /** What pairs make at most with so many of each sort, once that has been worked out closely. */
  readonly table?: PairTable;
}

export interface LayerSets {
  readonly first: PartialSet & { readonly upper: number };
  /** Sets decided one step further; those that the list cannot seat, or that leave a line of layers open, are left out. */
  readonly part: (partial: PartialSet) => readonly (PartialSet & { readonly upper: number })[];
  readonly whole: (partial: PartialSet) => boolean;
  /** Steps that parting takes. */
  readonly cost: (partial: PartialSet) => number;
}

/** Layers of one class that can be worn in the same places. */
interface Sort {
  readonly kind: number;
  readonly uses: string;
  readonly members: readonly number[];
  /** Of the members: pieces that are chosen anyway. */
  readonly kept: number;
}

/**
 * Parts the sets of layers, those that are kept among them in each: by how many there are of each sort, so that what is
 * left for the pieces below is known, then piece by piece from the most promising to the least. A set makes what its pairs
 * make (a mid and an outer layer, either of them none); each layer to come brings its pairs with those that are there, and
 * half of its pairs with others to come.
 */
export const createLayerSets = (
  looks: PartedLooks,
  seating: Seating,
  kept: readonly number[],
  /** Whether every piece of a class is a layer. */
  onlyLayers: (kind: number) => boolean,
): LayerSets => {
  const { layers, layerOf, rowOf, leaves, bottoms, cell, pieces, planes } = looks;
  const wide = layers.length + 1;
  const numberOf = (piece: number): number => layerOf[piece] as number;
  const keptLayers = kept.filter((piece) => layerOf[piece] !== 0);
  const keptOthers = kept.filter((piece) => layerOf[piece] === 0);
  const inCores = new Set(leaves);
  const keptFinish = keptOthers.filter((piece) => rowOf[piece] === 0 && !inCores.has(piece));

  const isFirst = (piece: number): boolean =>
    [0, ...bottoms.map((_, index) => index + 1)].some((row) => (cell[row * pieces + piece] as number) >= 0);
  /** What a layer can be: a top or one-piece, a mid layer, an outer layer. */
  const usesOf = (piece: number): string =>
    [
      isFirst(piece),
      planes.some((plane, at) => plane !== undefined && Math.floor(at / wide) === numberOf(piece)),
      planes.some((plane, at) => plane !== undefined && at % wide === numberOf(piece)),
    ].join();
  const sorts: Sort[] = [];
  const sortOf = new Int16Array(seating.classOf.length).fill(-1);
  for (const piece of layers) {
    const kind = seating.classOf[piece] as number;
    const uses = usesOf(piece);
    let at = sorts.findIndex((sort) => sort.kind === kind && sort.uses === uses);
    if (at < 0) at = sorts.push({ kind, uses, members: [], kept: 0 }) - 1;
    const { members, kept: before } = sorts[at] as Sort;
    sorts[at] = { kind, uses, members: [...members, piece], kept: before + (keptLayers.includes(piece) ? 1 : 0) };
    sortOf[piece] = at;
  }

  const bounds = createPairBounds(looks, seating, sortOf, sorts.length);

  const seats = (counts: readonly number[], beside: readonly number[]): Int32Array => {
    const seated = new Int32Array(seating.classes);
    for (const piece of beside) {
      const kind = seating.classOf[piece] as number;
      seated[kind] = (seated[kind] as number) + 1;
    }
    sorts.forEach(({ kind, kept: least }, at) => {
      seated[kind] = (seated[kind] as number) + (counts[at] ?? least);
    });
    return seated;
  };
  const sits = (counts: readonly number[]): boolean => seating.needed(seats(counts, keptOthers)) <= seating.free;
  /** How many of each sort at most, given the counts of the first ones. */
  const mostOf = (counts: readonly number[]): readonly number[] =>
    sorts.map(({ members, kept: least }, at) => {
      const known = counts[at];
      if (known !== undefined) return known;
      let most = least;
      const trying = sorts.map((sort, other) => counts[other] ?? sort.kept);
      while (most < members.length) {
        trying[at] = most + 1;
        if (!sits(trying)) break;
        most += 1;
      }
      return most;
    });
  const layerCounts = (counts: readonly number[], most: readonly number[]): LayerCounts => ({
    seated: seats(counts, keptFinish),
    most,
    bottoms: sorts.reduce(
      (sum, { members }, at) =>
        sum + Math.min(most[at] as number, members.filter((piece) => rowOf[piece] !== 0).length),
      0,
    ),
  });
  const roughTables = new Map<string, PairTable>();
  const roughTable = (counts: readonly number[], most: readonly number[]): PairTable => {
    const known = layerCounts(counts, most);
    const key = [...known.seated, ...most, known.bottoms].join();
    const table = roughTables.get(key) ?? bounds.roughly(known);
    roughTables.set(key, table);
    return table;
  };

  const start = mostOf([]);
  const rootTable = roughTable([], start);
  const total = (piece: number): number =>
    [0, ...layers.map(numberOf)].reduce((sum, other) => sum + (rootTable[numberOf(piece) * wide + other] as number), 0);
  const order = layers
    .filter((piece) => !keptLayers.includes(piece))
    .map((piece) => ({ piece, total: total(piece) }))
    .sort((a, b) => b.total - a.total || a.piece - b.piece)
    .map(({ piece }) => piece);
  const numbers = order.map(numberOf);
  const sortAt = order.map((piece) => sortOf[piece] as number);

  const left = new Int32Array(sorts.length);
  const from = new Int32Array(sorts.length + 1);
  let best = new Float64Array(64);
  let partners = new Float64Array(64);
  /** Keeps the largest so many of each sort, the largest first. */
  const insert = (into: Float64Array, sort: number, room: number, value: number): void => {
    const base = from[sort] as number;
    let place = room;
    while (place > 0 && (into[base + place - 1] as number) < value) place -= 1;
    if (place >= room) return;
    into.copyWithin(base + place + 1, base + place, base + room - 1);
    into[base + place] = value;
  };
  const upperOf = ({ set, next }: PartialSet, most: readonly number[], table: PairTable): number => {
    let to = 0;
    for (let at = 0; at < sorts.length; at += 1) {
      left[at] = most[at] as number;
      for (const piece of set) if (sortOf[piece] === at) left[at] = (left[at] as number) - 1;
      from[at] = to;
      to += left[at] as number;
    }
    const inside = [0, ...set.map(numberOf)];
    let made = table[0] as number;
    for (let a = 0; a < inside.length; a += 1)
      for (let b = a + 1; b < inside.length; b += 1)
        made += table[(inside[a] as number) * wide + (inside[b] as number)] as number;
    if (to === 0) return made;
    if (best.length < to) {
      best = new Float64Array(to);
      partners = new Float64Array(to);
    }
    best.fill(0, 0, to);
    for (let at = next; at < order.length; at += 1) {
      const sort = sortAt[at] as number;
      if (left[sort] === 0) continue;
      const row = (numbers[at] as number) * wide;
      let gain = 0;
      for (const other of inside) gain += table[row + other] as number;
      partners.fill(0, 0, to);
      for (let other = next; other < order.length; other += 1) {
        const theirs = sortAt[other] as number;
        const room = (left[theirs] as number) - (theirs === sort ? 1 : 0);
        if (room > 0 && other !== at) insert(partners, theirs, room, table[row + (numbers[other] as number)] as number);
      }
      let beside = 0;
      for (let place = 0; place < to; place += 1) beside += partners[place] as number;
      insert(best, sort, left[sort] as number, gain + beside / 2);
    }
    let sum = made;
    for (let place = 0; place < to; place += 1) sum += best[place] as number;
    return Math.floor(sum + 1e-6);
  };

  const own = seating.own.filter(({ kind }) => onlyLayers(kind));
  const fillsLines = (most: readonly number[]): boolean => {
    const seated = seats(most, keptOthers);
    return own.every(({ kind, least }) => (seated[kind] as number) >= least);
  };
  const takenOf = (set: readonly number[], sort: number): number =>
    set.filter((piece) => sortOf[piece] === sort).length;
  const isCounted = ({ counts }: PartialSet): boolean => counts.length >= sorts.length;
  const complete = ({ set, counts }: PartialSet): boolean =>
    set.length >= counts.reduce((sum, count) => sum + count, 0);

  const countFurther = (partial: PartialSet) => {
    const sort = partial.counts.length;
    const parts: (PartialSet & { readonly upper: number })[] = [];
    const most = mostOf(partial.counts)[sort] as number;
    for (let count = (sorts[sort] as Sort).kept; count <= most; count += 1) {
      const part = { ...partial, counts: [...partial.counts, count] };
      if (!sits(part.counts)) continue;
      const mostEach = mostOf(part.counts);
      if (fillsLines(mostEach))
        parts.push({ ...part, upper: upperOf(part, mostEach, roughTable(part.counts, mostEach)) });
    }
    return parts;
  };
  const chooseFurther = ({ set, counts, table, next }: PartialSet & { readonly table: PairTable }) => {
    let at = next;
    while (at < order.length && takenOf(set, sortAt[at] as number) >= (counts[sortAt[at] as number] as number)) at += 1;
    const piece = order[at];
    if (piece === undefined) return [];
    const sort = sortAt[at] as number;
    const wanting = (counts[sort] as number) - takenOf(set, sort);
    const later = sortAt.filter((other, index) => index > at && other === sort).length;
    return [
      { set: [...set, piece], counts, table, next: at + 1 },
      ...(later >= wanting ? [{ set, counts, table, next: at + 1 }] : []),
    ].map((part) => ({ ...part, upper: upperOf(part, counts, table) }));
  };

  const root: PartialSet = { set: keptLayers, next: 0, counts: [] };
  return {
    first: { ...root, upper: upperOf(root, start, rootTable) },
    whole: (partial) => isCounted(partial) && partial.table !== undefined && complete(partial),
    part: (partial) => {
      if (!isCounted(partial)) return countFurther(partial);
      const { counts, table } = partial;
      if (table !== undefined) return chooseFurther({ ...partial, table });
      const close = bounds.closely(layerCounts(counts, counts));
      return [{ ...partial, table: close, upper: upperOf(partial, counts, close) }];
    },
    cost: ({ counts, table, next }) =>
      counts.length >= sorts.length && table === undefined ? bounds.cost : (order.length - next) ** 2 + wide,
  };
};
