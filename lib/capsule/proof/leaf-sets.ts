import { type Budget, budgetBound } from './budget.ts';
import type { PartedLooks } from './looks.ts';
import type { Open } from './rows.ts';
import type { Seating } from './seating.ts';

/** Layers and bottoms that are chosen, and what each leaf would add. */
export interface Frame {
  readonly layers: readonly number[];
  /** Tops, one-pieces and swimwear that are chosen. */
  readonly firsts: readonly number[];
  /** Rows of chosen bottoms. */
  readonly rows: readonly number[];
  readonly seated: Int32Array;
  /** By open leaf: looks. */
  readonly worth: Int32Array;
  /** Looks of what is chosen. */
  readonly made: number;
  /** For each occasion the cores that serve it. */
  readonly served: readonly Uint8Array[];
}

/** What a search reports to. */
export interface Judge {
  /** Sets that make no more are of no interest. */
  readonly cutoff: () => number;
  /** A set of garments that serves, fits and makes so many looks, the most that its branch holds. */
  readonly offer: (garments: readonly number[], looks: number) => void;
  /** Counts steps; false once there have been too many. */
  readonly tick: (steps: number) => boolean;
}

const wears = ({ cell, pieces }: PartedLooks, served: Uint8Array, rows: readonly number[], piece: number): boolean =>
  [0, ...rows].some((row) => {
    const core = cell[row * pieces + piece] as number;
    return core >= 0 && served[core] === 1;
  });

const spentOn = (cost: ArrayLike<number>, set: readonly number[]): number =>
  set.reduce((sum, piece) => sum + (cost[piece] as number), 0);

/**
 * Finds the best leaves in a frame that serve every occasion and hold to the budgets. The best of all is looked at first;
 * where an occasion is left without, each leaf that would serve it is taken in turn; where a budget is overspent, the
 * dearest leaf is refused, then taken. False when there were too many steps.
 */
export const searchLeaves = (
  looks: PartedLooks,
  seating: Seating,
  open: Open,
  frame: Frame,
  budgets: readonly Budget[],
  { cutoff, offer, tick }: Judge,
): boolean => {
  const { leaves, picker } = open;
  const { firsts, rows, layers, made } = frame;
  const fixed = [...new Set([...layers, ...firsts, ...rows.map((row) => looks.bottoms[row - 1] as number)])];
  const wanting = frame.served.filter((served) => !firsts.some((piece) => wears(looks, served, rows, piece)));
  const serving = wanting.map((served) => leaves.map((piece) => wears(looks, served, rows, piece)));
  if (serving.some((by) => !by.includes(true))) return true;
  const limits = budgets.map(({ cost, most }) => ({ cost, left: most(layers) - spentOn(cost, fixed) }));
  const counts = Int32Array.from(frame.seated);
  const openLeaves = new Set(leaves);
  const isDecided = (piece: number): boolean =>
    looks.layerOf[piece] !== 0 || looks.rowOf[piece] !== 0 || firsts.includes(piece);
  // lines that nothing but leaves can fill any more
  const toFill = (limits.length === 0 ? [] : seating.own).filter(({ kind }) =>
    seating.classOf.every((other, piece) => other !== kind || openLeaves.has(piece) || isDecided(piece)),
  );
  const piecesOf = (some: readonly number[]): readonly number[] => some.map((leaf) => leaves[leaf] as number);

  const refusedNow = new Set<number>();
  /** What it costs at least to fill the lines that leaves have for themselves; infinite when too few are left. */
  const fillingCost = (cost: ArrayLike<number>, set: readonly number[]): number => {
    let sum = 0;
    for (const { kind, least } of toFill) {
      const ofKind = (piece: number): boolean => seating.classOf[piece] === kind;
      const lacking = least - piecesOf(set).filter(ofKind).length - (frame.seated[kind] as number);
      if (lacking <= 0) continue;
      const prices = [...leaves.keys()]
        .filter((leaf) => ofKind(leaves[leaf] as number) && !set.includes(leaf) && !refusedNow.has(leaf))
        .map((leaf) => cost[leaves[leaf] as number] as number)
        .sort((a, b) => a - b);
      if (prices.length < lacking) return Number.POSITIVE_INFINITY;
      sum += prices.slice(0, lacking).reduce((total, price) => total + price, 0);
    }
    return sum;
  };

  /** `sum`: looks of the leaves taken; `worth` is 0 for those and for refused ones. */
  const search = (taken: readonly number[], worth: Int32Array, sum: number): boolean => {
    if (!tick(leaves.length * 2)) return false;
    const chosen: number[] = [];
    const total = made + sum + picker.best(worth, counts, seating.free, chosen);
    if (total <= cutoff()) return true;
    const takeThen = (leaf: number, without: Int32Array): boolean => {
      const kind = seating.classOf[leaves[leaf] as number] as number;
      counts[kind] = (counts[kind] as number) + 1;
      const goOn =
        seating.needed(counts) > seating.free ||
        search([...taken, leaf], Int32Array.from(without), sum + (worth[leaf] as number));
      counts[kind] = (counts[kind] as number) - 1;
      return goOn;
    };
    const now = [...taken, ...chosen];
    const overspent = limits.filter(({ cost, left }) => spentOn(cost, piecesOf(now)) + fillingCost(cost, now) > left);
    for (const { cost, left } of overspent) {
      const more = left - spentOn(cost, piecesOf(taken));
      if (!tick(leaves.length * 30)) return false;
      if (made + sum + budgetBound(open, worth, counts, seating, cost, more) <= cutoff()) return true;
    }
    const refused = Int32Array.from(worth);
    const [over] = overspent;
    if (over !== undefined) {
      const priceOf = (leaf: number): number => over.cost[leaves[leaf] as number] as number;
      const dearest = chosen.toSorted(
        (a, b) => priceOf(b) - priceOf(a) || (worth[a] as number) - (worth[b] as number) || a - b,
      )[0];
      if (dearest === undefined || priceOf(dearest) === 0) return true;
      refused[dearest] = 0;
      refusedNow.add(dearest);
      const goOn = search(taken, Int32Array.from(refused), sum);
      refusedNow.delete(dearest);
      return goOn && takeThen(dearest, refused);
    }
    const unmet = serving.find((by) => ![...taken, ...chosen].some((leaf) => by[leaf] === true));
    if (unmet === undefined) {
      offer([...fixed, ...piecesOf([...taken, ...chosen])], total);
      return true;
    }
    const able = [...leaves.keys()]
      .filter((leaf) => unmet[leaf] === true && (worth[leaf] as number) > 0)
      .sort((a, b) => (worth[b] as number) - (worth[a] as number) || a - b);
    for (const leaf of able) {
      // taken in this branch, refused in those that follow
      refused[leaf] = 0;
      if (!takeThen(leaf, refused)) return false;
    }
    return true;
  };
  return search([], frame.worth, 0);
};
