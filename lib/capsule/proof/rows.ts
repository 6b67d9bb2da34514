import type { LeafPicker } from './leaves.ts';
import type { PartedLooks } from './looks.ts';
import { roomBeside, type Seating } from './seating.ts';

/** Tops, one-pieces and swimwear that may still be chosen, and how. */
export interface Open {
  readonly leaves: readonly number[];
  readonly picker: LeafPicker;
  readonly values: Int32Array;
}

/** What is chosen already. */
export interface Chosen {
  /** Tops, one-pieces and swimwear among it. */
  readonly firsts: readonly number[];
  /** Rows of bottoms that are chosen. */
  readonly rows: readonly number[];
  /** Rows of bottoms that may be. */
  readonly open: readonly number[];
  /** Pieces of each class. */
  readonly seated: Int32Array;
}

/** How many more bottoms sit beside a set: without a free place, and in all. */
export const roomForBottoms = (
  { rows, open, seated }: Chosen,
  { bottoms }: PartedLooks,
  seating: Seating,
): { readonly listed: number; readonly most: number } => {
  const kinds = open.map((row) => seating.classOf[bottoms[row - 1] as number] as number);
  const { listed, most } = roomBeside(seated, kinds, seating);
  return { listed, most: rows.length + most };
};

/** Value of every open leaf with one bottom, `times` over, beside what it makes alone; the sum for chosen ones. */
export const rowValues = (
  { cell, pieces }: PartedLooks,
  weights: Int32Array,
  { leaves, values }: Pick<Open, 'leaves' | 'values'>,
  firsts: readonly number[],
  row: number,
  times: number,
  alone: number,
): number => {
  const of = (piece: number): number => {
    const paired = row === 0 ? -1 : (cell[row * pieces + piece] as number);
    const single = cell[piece] as number;
    return (
      (paired < 0 ? 0 : times * (weights[paired] as number)) + (single < 0 ? 0 : alone * (weights[single] as number))
    );
  };
  for (let leaf = 0; leaf < leaves.length; leaf += 1) values[leaf] = of(leaves[leaf] as number);
  let sum = 0;
  for (const piece of firsts) sum += of(piece);
  return sum;
};

/**
 * No choice of leaves and bottoms beside what is chosen makes more: each bottom may have its own best leaves, and looks
 * without a bottom are shared out among the bottoms.
 */
export const looseBound = (
  looks: PartedLooks,
  weights: Int32Array,
  open: Open,
  chosen: Chosen,
  seating: Seating,
): number => {
  const { listed, most } = roomForBottoms(chosen, looks, seating);
  const { seated, rows, firsts } = chosen;
  const alone = rowValues(looks, weights, open, firsts, 0, 0, 1);
  let bound = rows.length > 0 ? 0 : alone + open.picker.best(open.values, seated, seating.free);
  for (let count = Math.max(1, rows.length); count <= most; count += 1) {
    const free = seating.free - Math.max(0, count - rows.length - listed);
    const worth = (row: number): number => {
      const fixed = rowValues(looks, weights, open, firsts, row, count, 1);
      return fixed + open.picker.best(open.values, seated, free);
    };
    const best = chosen.open.map(worth).sort((a, b) => b - a);
    const sum =
      rows.reduce((total, row) => total + worth(row), 0) +
      best.slice(0, count - rows.length).reduce((total, value) => total + value, 0);
    bound = Math.max(bound, Math.floor(sum / count));
  }
  return bound;
};
