import { searchBottoms } from './bottom-sets.ts';
import type { Budget } from './budget.ts';
import { createHeap } from './heap.ts';
import { createLayerSets, type PartialSet } from './layer-sets.ts';
import { createLeafPicker } from './leaves.ts';
import { type PartedLooks, weighCores } from './looks.ts';
import { type Need, servedUnder } from './needs.ts';
import { type Chosen, looseBound, type Open } from './rows.ts';
import type { Seating } from './seating.ts';

/** Sets that no bag could be made of are told apart this often; then the best of them stands in the bound. */
const MOST_REFUSED = 40;

export interface ProofQuestion {
  readonly looks: PartedLooks;
  readonly seating: Seating;
  readonly kept: readonly number[];
  readonly needs: readonly Need[];
  readonly budgets: readonly Budget[];
  /** Looks of the best set known. */
  readonly found: number;
  /** Makes a bag of a set of garments; its looks, or undefined when that cannot be done. */
  readonly accept: (garments: readonly number[]) => number | undefined;
  /** Steps after which the search stops with what is proved so far. */
  readonly effort: number;
}

export interface Proof {
  /** No set makes more. */
  readonly bound: number;
  readonly steps: number;
}

interface Node extends PartialSet {
  /** True once cores have been weighed under the layers. */
  readonly weighed: boolean;
}

/**
 * Proves how many layered looks a filling of the list makes at most, and finds better ones on the way. Best first over
 * sets of layers, then branching on bottoms; tops, one-pieces and swimwear are then exact. Pieces, lines, occasions and
 * budgets are all held to; shoes and what finishes a look are left to `accept`.
 */
export const prove = ({ looks, seating, kept, needs, budgets, found, accept, effort }: ProofQuestion): Proof => {
  let best = found;
  let refused = 0;
  let unproven = 0;
  let steps = 0;
  const tick = (more: number): boolean => {
    steps += more;
    return steps <= effort;
  };
  const cutoff = (): number => (refused < MOST_REFUSED ? best : Math.max(best, unproven));
  const offer = (garments: readonly number[], made: number): void => {
    best = Math.max(best, accept(garments) ?? 0);
    if (made <= best) return;
    refused += 1;
    unproven = Math.max(unproven, made);
  };

  const { layerOf, rowOf, leaves, bottoms, cell, pieces } = looks;
  const keptLeaves = kept.filter((piece) => leaves.includes(piece));
  const openLeaves = leaves.filter((piece) => !kept.includes(piece));
  const open: Open = {
    leaves: openLeaves,
    picker: createLeafPicker(seating, openLeaves),
    values: new Int32Array(openLeaves.length),
  };
  const isFirst = (piece: number): boolean =>
    bottoms.some((_, index) => (cell[(index + 1) * pieces + piece] as number) >= 0) || (cell[piece] as number) >= 0;
  const chosenUnder = (layers: readonly number[]): Chosen => {
    const set = new Set([...layers, ...kept]);
    const seated = new Int32Array(seating.classes);
    for (const piece of set) {
      const kind = seating.classOf[piece] as number;
      seated[kind] = (seated[kind] as number) + 1;
    }
    return {
      firsts: [...new Set([...layers.filter(isFirst), ...keptLeaves])],
      rows: bottoms.filter((piece) => set.has(piece)).map((piece) => rowOf[piece] as number),
      // a bottom that can be a layer is chosen with the layers
      open: bottoms.filter((piece) => !set.has(piece) && layerOf[piece] === 0).map((piece) => rowOf[piece] as number),
      seated,
    };
  };

  const onlyLayers = (kind: number): boolean =>
    seating.classOf.every((other, piece) => other !== kind || layerOf[piece] !== 0);
  const weights = new Int32Array(looks.cores);
  const layerSets = createLayerSets(looks, seating, kept, onlyLayers);
  const heap = createHeap<Node>();
  heap.push(layerSets.first.upper, { ...layerSets.first, weighed: false });
  for (let top = heap.pop(); top !== undefined; top = heap.pop()) {
    const { key, item } = top;
    if (key <= cutoff()) break;
    const inTime = tick(layerSets.cost(item));
    if (inTime && !layerSets.whole(item)) {
      for (const part of layerSets.part(item)) {
        const upper = Math.min(key, part.upper);
        if (upper > cutoff()) heap.push(upper, { ...part, weighed: false });
      }
      continue;
    }
    const served = inTime ? needs.map((need) => servedUnder(need, looks, item.set)) : [];
    if (served.includes(undefined)) continue;
    const chosen = chosenUnder(item.set);
    if (inTime) weighCores(looks, item.set, weights);
    tick((item.set.length + 1) ** 2 * looks.cores * 0.1);
    if (inTime && !item.weighed) {
      const upper = Math.min(key, looseBound(looks, weights, open, chosen, seating));
      tick(chosen.open.length * openLeaves.length * 2);
      if (upper > cutoff()) heap.push(upper, { ...item, weighed: true });
      continue;
    }
    const serving = served.filter((cores) => cores !== undefined);
    const done =
      inTime &&
      searchBottoms(looks, seating, open, item.set, weights, chosen, serving, budgets, { cutoff, offer, tick });
    if (!done) return { bound: Math.max(key, best, unproven), steps };
  }
  return { bound: Math.max(best, unproven), steps };
};
