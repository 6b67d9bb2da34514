import type { ListLine, Piece } from '../model/index.ts';
import type { Position } from './fill.ts';

/** How many pieces of a set can take each place of a layered look, at most. */
export interface Composition {
  readonly tops: number;
  readonly bottoms: number;
  readonly onePieces: number;
  readonly swim: number;
  /** Mid layers and cover-ups. */
  readonly mids: number;
  readonly outers: number;
}

export const PLACES_COUNTED = ['tops', 'bottoms', 'onePieces', 'swim', 'mids', 'outers'] as const;
type Vector = readonly number[];

/** One number a place: 1 when the piece can take it. A piece of several places counts in each, which only loosens the bound. */
export const placesOf = ({ places }: Piece): Vector => [
  places.includes('top') ? 1 : 0,
  places.includes('bottom') ? 1 : 0,
  places.includes('one-piece') ? 1 : 0,
  places.includes('swim') ? 1 : 0,
  places.includes('mid layer') || places.includes('cover-up') ? 1 : 0,
  places.includes('outer layer') ? 1 : 0,
];

const dominates = (a: Vector, b: Vector): boolean => a.every((value, index) => value >= (b[index] ?? 0));

/** Vectors that no other is at least as large as in every entry. */
const largest = (vectors: readonly Vector[]): readonly Vector[] => {
  const unique = [...new Map(vectors.map((vector) => [vector.join(), vector])).values()];
  return unique.filter((vector) => !unique.some((other) => other !== vector && dominates(other, vector)));
};

const add = (a: Vector, b: Vector, times: number): Vector => a.map((value, index) => value + times * (b[index] ?? 0));

/** Every way to take `count` pieces from classes of pieces, as sums of their vectors. */
const spread = (
  classes: readonly { readonly vector: Vector; readonly pieces: number }[],
  count: number,
): readonly Vector[] => {
  let partial = new Map<string, { vector: Vector; left: number }>([
    ['', { vector: PLACES_COUNTED.map(() => 0), left: count }],
  ]);
  for (const { vector, pieces } of classes) {
    const next = new Map<string, { vector: Vector; left: number }>();
    for (const state of partial.values()) {
      for (let take = 0; take <= Math.min(pieces, state.left); take += 1) {
        const entry = { vector: add(state.vector, vector, take), left: state.left - take };
        next.set(`${entry.vector.join()}/${entry.left}`, entry);
      }
    }
    partial = next;
  }
  return largest([...partial.values()].map(({ vector }) => vector));
};

const classesOf = (pieces: readonly Piece[]) => {
  const classes = new Map<string, { vector: Vector; pieces: number }>();
  for (const piece of pieces) {
    const vector = placesOf(piece);
    const known = classes.get(vector.join());
    classes.set(vector.join(), { vector, pieces: (known?.pieces ?? 0) + 1 });
  }
  return [...classes.values()];
};

/** The compositions that a filled list can have; those that another exceeds in every place are left out. */
export const compositionsOf = (
  pieces: readonly Piece[],
  positions: readonly Position[],
  lines: readonly ListLine[],
): readonly Composition[] => {
  const groups = [
    ...lines.map(({ count, kinds }) => ({
      count,
      classes: classesOf(pieces.filter(({ kind }) => kinds.includes(kind))),
    })),
    { count: positions.filter(({ line }) => line === undefined).length, classes: classesOf(pieces) },
  ];
  let vectors: readonly Vector[] = [PLACES_COUNTED.map(() => 0)];
  for (const { count, classes } of groups) {
    if (count === 0) continue;
    const parts = spread(classes, count);
    vectors = largest(vectors.flatMap((vector) => parts.map((part) => add(vector, part, 1))));
  }
  return vectors.map(([tops = 0, bottoms = 0, onePieces = 0, swim = 0, mids = 0, outers = 0]) => ({
    tops,
    bottoms,
    onePieces,
    swim,
    mids,
    outers,
  }));
};
