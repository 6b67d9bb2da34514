import type { PartedLooks } from './looks.ts';
import { createRanks, type LayerCounts, type Under } from './ranks.ts';
import type { Seating } from './seating.ts';

/** What a mid and an outer layer make at most; layers count from 1, 0 is none. */
export type PairTable = Float64Array;

export interface PairBounds {
  /**
   * By `a * (layers + 1) + b`: looks of the two together, either of them the mid layer. Roughly: no pair is told from
   * another by what it goes with once the layers take their places.
   */
  readonly roughly: (counts: LayerCounts) => PairTable;
  /** The same, with what each pair goes with. */
  readonly closely: (counts: LayerCounts) => PairTable;
  /** Steps that `closely` takes. */
  readonly cost: number;
}

/** Steps that one row counts for beside those of parting a set. Own choice. */
const ROW_STEPS = 20;

export const createPairBounds = (
  looks: PartedLooks,
  seating: Seating,
  /** By piece number: its sort among layers. */
  sortOf: Int16Array,
  sorts: number,
): PairBounds => {
  const { cell, pieces, bottoms, layers, leaves, layerOf, planes, cores } = looks;
  const { classes, classOf } = seating;
  const height = bottoms.length + 1;
  const underPlane = (plane: Uint8Array): Under => {
    const counted = new Int32Array(height * classes);
    const firsts = new Int32Array(height * sorts);
    let times = 1;
    for (let row = 0; row < height; row += 1) {
      const makes = (piece: number): boolean => {
        const core = cell[row * pieces + piece] as number;
        if (core < 0 || plane[core] === 0) return false;
        times = Math.max(times, plane[core] as number);
        return true;
      };
      for (const piece of leaves) {
        const at = row * classes + (classOf[piece] as number);
        if (makes(piece)) counted[at] = (counted[at] as number) + 1;
      }
      for (const piece of layers) {
        const at = row * sorts + (sortOf[piece] as number);
        if (makes(piece)) firsts[at] = (firsts[at] as number) + 1;
      }
    }
    return { leaves: counted, firsts, times };
  };
  const known = new Map<string, Under>();
  const unders = planes.map((plane) => {
    if (plane === undefined) return undefined;
    const key = plane.join('');
    const under = known.get(key) ?? underPlane(plane);
    known.set(key, under);
    return under;
  });
  const any = new Uint8Array(cores);
  for (const plane of planes)
    if (plane !== undefined)
      for (let core = 0; core < cores; core += 1) any[core] = Math.max(any[core] as number, plane[core] as number);
  const underAny = underPlane(any);

  const wide = layers.length + 1;
  /** By layer: its sort; what is not worn has the one after the last. */
  const sortAt = Uint16Array.from({ length: wide }, (_, at) =>
    at === 0 ? sorts : (sortOf[layers[at - 1] as number] as number),
  );
  const boundOf = createRanks({
    seating,
    rows: bottoms.map((piece) => ({ kind: classOf[piece] as number, isLayer: layerOf[piece] !== 0 })),
  });
  /** Both ways of wearing two layers, from what one way makes. */
  const tableOf = (
    one: (under: Under, left: readonly number[]) => number,
    most: readonly number[],
    underOf: typeof unders,
  ): PairTable => {
    // a layer is not worn under itself
    const lefts = Array.from({ length: (sorts + 1) ** 2 }, (_, key) => {
      const left = [...most];
      for (const sort of [Math.floor(key / (sorts + 1)), key % (sorts + 1)])
        if (sort < sorts) left[sort] = Math.max(0, (left[sort] as number) - 1);
      return left;
    });
    const bounds = new Map<Under, number[]>();
    const ways = Float64Array.from(underOf, (under, at) => {
      if (under === undefined) return 0;
      const key = (sortAt[Math.floor(at / wide)] as number) * (sorts + 1) + (sortAt[at % wide] as number);
      const byLeft = bounds.get(under) ?? [];
      bounds.set(under, byLeft);
      byLeft[key] ??= one(under, lefts[key] as readonly number[]);
      return byLeft[key] as number;
    });
    return ways.map((way, at) => {
      const [a, b] = [Math.floor(at / wide), at % wide];
      return a === b ? way : way + (ways[b * wide + a] as number);
    });
  };
  const anywhere = unders.map((under) => (under === undefined ? undefined : underAny));
  const all = Array.from({ length: sorts }, () => layers.length);
  const alone = tableOf(boundOf({ seated: new Int32Array(classes), most: all, bottoms: layers.length }), all, unders);
  return {
    roughly: (counts) =>
      tableOf(boundOf(counts), counts.most, anywhere).map((bound, at) => Math.min(bound, alone[at] as number)),
    closely: (counts) => tableOf(boundOf(counts), counts.most, unders),
    cost: known.size * height * ROW_STEPS,
  };
};
