import { roomBeside, type Seating } from './seating.ts';

/** Layers as far as their number is known, sort by sort. */
export interface LayerCounts {
  /** By class: places that layers, and kept pieces that make no core, take at least. */
  readonly seated: Int32Array;
  /** By sort: layers at most. */
  readonly most: readonly number[];
  /** Layers at most that could be a bottom as well. */
  readonly bottoms: number;
}

/** What goes under one pair of layers, counted: rows are bottoms, row 0 is none. */
export interface Under {
  /** `leaves[row * classes + class]`: leaves of a class that make a core with the row. */
  readonly leaves: Int32Array;
  /** `firsts[row * sorts + sort]`: layers of a sort that make one. */
  readonly firsts: Int32Array;
  /** Looks of one core. */
  readonly times: number;
}

interface Rows {
  readonly seating: Seating;
  /** By bottom: its class, and whether it is chosen with the layers. */
  readonly rows: readonly { readonly kind: number; readonly isLayer: boolean }[];
}

/** How many bottoms sit beside what sits already: without a free place, and in all. */
const roomOf = ({ seating, rows }: Rows, { seated, bottoms }: LayerCounts) => {
  const kinds = rows.flatMap(({ kind, isLayer }) => (isLayer ? [] : [kind]));
  const { listed, most } = roomBeside(seated, kinds, seating);
  // those chosen with the layers have their places already
  const beside = Math.min(bottoms, rows.length - kinds.length);
  return { listed: listed + beside, most: most + beside };
};

/** How many of each class there are, by row: numbers of profiles, so that rows that are alike are asked once. */
interface Profiled {
  /** With the row's bottom. */
  readonly paired: Int32Array;
  /** With it or alone. */
  readonly either: Int32Array;
}

/**
 * Looks at most under one pair of layers. Every core is worth the same there, so that each bottom may have as many tops
 * as sit beside the layers: how many leaves do is told by how many there are of each class. Each bottom has its own best
 * ones, and looks without a bottom are shared out among the bottoms.
 */
export const createRanks = (question: Rows) => {
  const { seating } = question;
  const { classes } = seating;
  const rows = question.rows.length;
  /** By class: how many sit when nothing else does. */
  const most = Array.from({ length: classes }, (_, kind) => {
    const counts = new Int32Array(classes);
    do counts[kind] = (counts[kind] as number) + 1;
    while (seating.needed(counts) <= seating.free && (counts[kind] as number) <= seating.classOf.length);
    return (counts[kind] as number) - 1;
  });
  const profiles: Int32Array[] = [];
  const numbers = new Map<string, number>();
  const numberOf = (leaves: Int32Array, of: readonly number[]): number => {
    const wanted = Int32Array.from(most, (limit, kind) =>
      Math.min(
        limit,
        of.reduce((sum, row) => sum + (leaves[row * classes + kind] as number), 0),
      ),
    );
    const key = wanted.join();
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, profiles.length);
    return profiles.push(wanted) - 1;
  };
  const profiled = new Map<Under, Profiled>();
  const profile = (counted: Under): Profiled => {
    const known = profiled.get(counted);
    if (known !== undefined) return known;
    const { leaves } = counted;
    const fresh = {
      paired: Int32Array.from({ length: rows + 1 }, (_, row) => numberOf(leaves, [row])),
      either: Int32Array.from({ length: rows + 1 }, (_, row) => numberOf(leaves, row === 0 ? [0] : [0, row])),
    };
    profiled.set(counted, fresh);
    return fresh;
  };

  return (known: LayerCounts) => {
    const room = roomOf(question, known);
    const counts = new Int32Array(classes);
    const ranks: (number | undefined)[] = [];
    /** Most of a profile that sit with so many free places. */
    const rank = (number: number, free: number): number => {
      const at = number * (seating.free + 1) + free;
      const found = ranks[at];
      if (found !== undefined) return found;
      counts.set(known.seated);
      let sitting = 0;
      (profiles[number] as Int32Array).forEach((wanted, kind) => {
        for (let more = wanted; more > 0; more -= 1) {
          counts[kind] = (counts[kind] as number) + 1;
          if (seating.needed(counts) > free) {
            counts[kind] = (counts[kind] as number) - 1;
            break;
          }
          sitting += 1;
        }
      });
      ranks[at] = sitting;
      return sitting;
    };
    const worths = new Float64Array(rows);

    return (counted: Under, left: readonly number[]): number => {
      const { paired, either } = profile(counted);
      const { firsts, times } = counted;
      /** Layers that make a core with a row, of those that are left. */
      const layersIn = (row: number): number => {
        let sum = 0;
        for (let sort = 0; sort < left.length; sort += 1)
          sum += Math.min(left[sort] as number, firsts[row * left.length + sort] as number);
        return sum;
      };
      const alone = layersIn(0);
      let bound = alone + rank(either[0] as number, seating.free);
      for (let count = 1; count <= room.most; count += 1) {
        const free = seating.free - Math.max(0, count - room.listed);
        for (let row = 1; row <= rows; row += 1) {
          const withRow = rank(paired[row] as number, free);
          const single = rank(either[row] as number, free) - withRow;
          worths[row - 1] = count * (withRow + layersIn(row)) + single + alone;
        }
        worths.sort();
        let sum = 0;
        for (let at = rows - 1; at >= Math.max(0, rows - count); at -= 1) sum += worths[at] as number;
        bound = Math.max(bound, Math.floor(sum / count));
      }
      return bound * times;
    };
  };
};
