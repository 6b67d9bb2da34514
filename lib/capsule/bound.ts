import type { Piece } from '../model/index.ts';
import type { LookTable } from '../outfit/index.ts';
import { choose, combinations, sumOfLargest } from './combinations.ts';
import { type Composition, placesOf } from './compositions.ts';

/** Sets of layers tried one by one; beyond, every core may have its own best layers, which only loosens the bound. */
const MOST_LAYER_SETS = 30_000;
/** Sets of bottoms looked at in all before a composition is left at its loose bound. */
const MOST_BOTTOM_SETS = 400_000;

interface Cores {
  readonly tops: number;
  readonly bottoms: number;
  /** `separates[bottom * tops + top]`: core number, or −1. */
  readonly separates: Int32Array;
  readonly onePieces: readonly number[];
  readonly swim: readonly number[];
}

const sortCores = ({ cores, core }: LookTable, pieces: readonly Piece[]): Cores => {
  const topNumber = new Map<number, number>();
  const bottomNumber = new Map<number, number>();
  const pairs: { readonly top: number; readonly bottom: number; readonly c: number }[] = [];
  const onePieces: number[] = [];
  const swim: number[] = [];
  const numberIn = (map: Map<number, number>, piece: number): number => {
    const known = map.get(piece) ?? map.size;
    map.set(piece, known);
    return known;
  };
  for (let c = 0; c < cores; c += 1) {
    const a = core[c * 2] as number;
    const b = core[c * 2 + 1] as number;
    if (b >= 0) pairs.push({ top: numberIn(topNumber, a), bottom: numberIn(bottomNumber, b), c });
    else if (pieces[a]?.places.includes('one-piece') === true) onePieces.push(c);
    else swim.push(c);
  }
  const separates = new Int32Array(topNumber.size * bottomNumber.size).fill(-1);
  for (const { top, bottom, c } of pairs) separates[bottom * topNumber.size + top] = c;
  return { tops: topNumber.size, bottoms: bottomNumber.size, separates, onePieces, swim };
};

/** For each core the layered looks it makes with a set of layers: a table of outer layers by mid layer, in bits. */
const layerTables = (table: LookTable, pieces: readonly Piece[]) => {
  const mids = pieces.flatMap((piece, index) => ((placesOf(piece)[4] ?? 0) > 0 ? [index] : []));
  const outers = pieces.flatMap((piece, index) => ((placesOf(piece)[5] ?? 0) > 0 ? [index] : []));
  const midNumber = new Map(mids.map((piece, index) => [piece, index + 1]));
  const outerNumber = new Map(outers.map((piece, index) => [piece, index + 1]));
  const wide = outers.length + 1;
  const high = mids.length + 1;
  const goes = new Uint8Array(table.cores * high * wide);
  for (let c = 0; c < table.cores; c += 1) {
    for (let row = table.from[c] as number; row < (table.from[c + 1] as number); row += 1) {
      const mid = midNumber.get(table.layers[row * 2] as number) ?? 0;
      const outer = outerNumber.get(table.layers[row * 2 + 1] as number) ?? 0;
      goes[(c * high + mid) * wide + outer] = 1;
    }
  }
  return { mids: mids.length, outers: outers.length, high, wide, goes };
};

type Layers = ReturnType<typeof layerTables>;

/** Weight of every core when it may wear these mid and outer layers (numbers from 1; nothing is always allowed). */
const weighCores = (
  cores: number,
  { high, wide, goes }: Layers,
  mids: readonly number[],
  outers: readonly number[],
  weights: Float64Array,
): void => {
  for (let c = 0; c < cores; c += 1) {
    let looks = 0;
    for (let i = -1; i < mids.length; i += 1) {
      const row = (c * high + (i < 0 ? 0 : (mids[i] as number) + 1)) * wide;
      looks += goes[row] as number;
      for (let j = 0; j < outers.length; j += 1) looks += goes[row + (outers[j] as number) + 1] as number;
    }
    weights[c] = looks;
  }
};

/** Weight of every core with its own best layers: at most one look for each pair of layers there is room for. */
const weighFreely = (cores: number, layers: Layers, mids: number, outers: number, weights: Float64Array): void => {
  const { high, wide, goes } = layers;
  const scratch = new Float64Array(Math.max(1, mids));
  for (let c = 0; c < cores; c += 1) {
    const rowValue = (mid: number): number => {
      let free = 0;
      for (let outer = 1; outer < wide; outer += 1) free += goes[(c * high + mid) * wide + outer] as number;
      return (goes[(c * high + mid) * wide] as number) + Math.min(outers, free);
    };
    const values = Array.from({ length: high - 1 }, (_, mid) => rowValue(mid + 1));
    weights[c] = rowValue(0) + sumOfLargest(values, mids, scratch);
  }
};

/** Best separates for fixed weights: exact by branching on bottoms, or a bound where `budget` runs out. */
const boundSeparates = (
  cores: Cores,
  weights: Float64Array,
  { tops, bottoms }: Composition,
  enough: number,
  budget: { left: number },
): number => {
  const { tops: allTops, separates } = cores;
  const scratch = new Float64Array(Math.max(1, tops, bottoms));
  const rows = Array.from({ length: cores.bottoms }, (_, bottom) => {
    const row = new Float64Array(allTops);
    for (let top = 0; top < allTops; top += 1) {
      const c = separates[bottom * allTops + top] as number;
      row[top] = c < 0 ? 0 : (weights[c] as number);
    }
    return { row, most: sumOfLargest(row, tops, scratch) };
  }).sort((a, b) => b.most - a.most);
  const loose = rows.slice(0, bottoms).reduce((sum, { most }) => sum + most, 0);
  if (loose <= enough) return loose;

  let best = enough;
  const sums = Array.from({ length: bottoms + 1 }, () => new Float64Array(allTops));
  const descend = (first: number, chosen: number): void => {
    if (budget.left <= 0) return;
    budget.left -= 1;
    const sum = sums[chosen] as Float64Array;
    const value = sumOfLargest(sum, tops, scratch);
    if (chosen === bottoms) {
      best = Math.max(best, value);
      return;
    }
    for (let next = first; next < rows.length; next += 1) {
      let rest = value;
      for (let later = next; later < Math.min(rows.length, next + bottoms - chosen); later += 1)
        rest += rows[later]?.most ?? 0;
      // rows are sorted, so that no later bottom can do better
      if (rest <= best) break;
      const row = rows[next]?.row as Float64Array;
      const into = sums[chosen + 1] as Float64Array;
      for (let top = 0; top < allTops; top += 1) into[top] = (sum[top] as number) + (row[top] as number);
      descend(next + 1, chosen + 1);
    }
    best = Math.max(best, value);
  };
  descend(0, 0);
  return budget.left <= 0 ? loose : best;
};

export interface BoundQuestion {
  readonly table: LookTable;
  readonly pieces: readonly Piece[];
  readonly compositions: readonly Composition[];
  /** Looks of the best set found, which no bound falls below. */
  readonly found: number;
}

/**
 * An upper bound on the layered looks of any filling of the list: sets of layers are tried one by one, bottoms are
 * branched on, and then tops, one-pieces and swimwear separate. Weight, volume and occasions are left aside, and a piece
 * that can take two places counts in both; both only raise it.
 */
export const boundOf = ({ table, pieces, compositions, found }: BoundQuestion): number => {
  const cores = sortCores(table, pieces);
  const layers = layerTables(table, pieces);
  const weights = new Float64Array(table.cores);
  const scratch = new Float64Array(pieces.length + 1);
  const budget = { left: MOST_BOTTOM_SETS };
  let bound = found;
  for (const composition of compositions) {
    const { onePieces, swim } = composition;
    const mids = Math.min(composition.mids, layers.mids);
    const outers = Math.min(composition.outers, layers.outers);
    const weigh = (): void => {
      const aside =
        sumOfLargest(
          cores.onePieces.map((c) => weights[c] as number),
          onePieces,
          scratch,
        ) +
        sumOfLargest(
          cores.swim.map((c) => weights[c] as number),
          swim,
          scratch,
        );
      const separates = boundSeparates(cores, weights, composition, Math.max(0, bound - aside), budget);
      bound = Math.max(bound, separates + aside);
    };
    if (choose(layers.mids, mids) * choose(layers.outers, outers) > MOST_LAYER_SETS) {
      weighFreely(table.cores, layers, mids, outers, weights);
      weigh();
      continue;
    }
    for (const someMids of combinations(layers.mids, mids)) {
      for (const someOuters of combinations(layers.outers, outers)) {
        weighCores(table.cores, layers, someMids, someOuters, weights);
        weigh();
      }
    }
  }
  return bound;
};
