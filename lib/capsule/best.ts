import type { LookTable } from '../outfit/index.ts';
import { type Earlier, fillAround, fillByClimbing, polish, searchProblem } from './fillings.ts';
import type { Limits } from './limits.ts';
import { createPricer } from './pricing.ts';
import type { Budget } from './proof/budget.ts';
import { type PartedLooks, partLooks } from './proof/looks.ts';
import { type Need, needsOf } from './proof/needs.ts';
import { prove } from './proof/prove.ts';
import { createSeating } from './proof/seating.ts';
import type { ChoosingRoom } from './room.ts';
import { evaluate, type Filled } from './search.ts';

/** Looks of a wardrobe from which on it is large: fewer starts. */
const LARGE = 400_000;
/** Steps of the proof, some seconds. */
const EFFORT = 100_000_000;
/** Steps of the proof for a proposal after the first, whose bound is not told. */
const EFFORT_LATER = 40_000_000;

export interface Best {
  readonly filled: Filled;
  /** No set that fills the list, holds to the limits and dresses these occasions makes more looks. */
  readonly bound: number;
  readonly steps: number;
}

/** The least that the lines without any garment put in the bags: shoes and what finishes. The last pair is worn on a journey. */
const leastBeside = (
  { eligible, question, limits }: ChoosingRoom,
  working: ReadonlySet<number>,
  measured: 'grams' | 'litres',
): number => {
  let sum = 0;
  let worn = 0;
  for (const { kinds, count } of question.list.lines) {
    const fitting = eligible.flatMap((piece, number) => (kinds.includes(piece.kind) ? [{ piece, number }] : []));
    if (fitting.some(({ number }) => working.has(number))) continue;
    const least = fitting
      .map(({ piece }) => piece[measured].value)
      .sort((a, b) => a - b)
      .slice(0, count);
    sum += least.reduce((total, value) => total + value, 0);
    if (limits.journeys && fitting.some(({ piece }) => piece.places.includes('shoes')))
      worn = Math.max(worn, least.at(-1) ?? 0);
  }
  return sum - worn;
};

const limitBudget = (
  room: ChoosingRoom,
  working: ReadonlySet<number>,
  measured: 'grams' | 'litres',
  most: number,
): Budget => {
  const { eligible, limits } = room;
  const left = most - leastBeside(room, working, measured);
  const outer = eligible.map((piece) =>
    limits.journeys && piece.places.includes('outer layer') ? piece[measured].value : 0,
  );
  const idleOuter = outer.reduce((worn, value, number) => (working.has(number) ? worn : Math.max(worn, value)), 0);
  return {
    cost: eligible.map((piece) => piece[measured].value),
    // the coat worn on a journey is not in the bags
    most: (layers) => left + layers.reduce((worn, piece) => Math.max(worn, outer[piece] ?? 0), idleOuter),
  };
};

const budgetsOf = (
  room: ChoosingRoom,
  limits: Limits,
  working: ReadonlySet<number>,
  earlier: readonly Earlier[],
): readonly Budget[] => [
  ...(['grams', 'litres'] as const).flatMap((measured) => {
    const most = limits[measured];
    return most === undefined ? [] : [limitBudget(room, working, measured, most)];
  }),
  ...earlier.map(
    ({ garments, mayShare }): Budget => ({
      cost: room.eligible.map((_, number) => (garments.has(number) && working.has(number) ? 1 : 0)),
      most: () => mayShare,
    }),
  ),
];

/**
 * Places without a line that shoes must take: one when no line and nothing kept has shoes, and some occasion cannot do
 * without.
 */
const placesForShoes = (
  { eligible, question, keep }: ChoosingRoom,
  looks: PartedLooks,
  needs: readonly Need[],
): number => {
  const shod = eligible.some(
    (piece) =>
      piece.places.includes('shoes') &&
      (keep.includes(piece.id) || question.list.lines.some(({ kinds }) => kinds.includes(piece.kind))),
  );
  if (shod) return 0;
  const barefoot = new Set(
    eligible.flatMap((piece, number) => (piece.places.includes('swim') ? [looks.cell[number] ?? -1] : [])),
  );
  const needsShoes = ({ planes, anyLayers }: Need): boolean =>
    [...planes.values(), ...(anyLayers === undefined ? [] : [anyLayers])].every((plane) =>
      plane.every((serves, core) => serves === 0 || !barefoot.has(core)),
    );
  return needs.some(needsShoes) ? 1 : 0;
};

/**
 * The best filling that differs enough from earlier ones: climbs from many starts, then proves what no filling exceeds
 * and takes what the proof finds. Undefined when nothing fills the list; `excess` tells when a limit is not held.
 */
export const createChooser = (room: ChoosingRoom, table: LookTable) => {
  const { eligible, positions, question, demands, engine, keep, limits } = room;
  const price = createPricer(table, eligible.length);
  const looks = partLooks(table, eligible.length);
  const seating = createSeating(eligible, positions, question.list.lines);
  const working = new Set([...looks.leaves, ...looks.layers, ...looks.bottoms]);
  const kept = keep.flatMap((id) => room.numberOf.get(id) ?? []);
  const known = new Map<string, readonly Need[]>();
  const needsFor = (toServe: ReadonlySet<string>): readonly Need[] => {
    const key = [...toServe].sort().join();
    const wanted = demands.filter(({ occasion }) => toServe.has(occasion));
    const needs = known.get(key) ?? needsOf(wanted, engine, eligible, table, looks);
    known.set(key, needs);
    return needs;
  };

  return (earlier: readonly Earlier[]): Best | undefined => {
    const problem = searchProblem(room, price, earlier);
    const climbed = fillByClimbing(room, problem, earlier, table.looks > LARGE);
    if (climbed === undefined) return undefined;
    let best = climbed;
    if (climbed.filled.excess > 0) return { filled: climbed.filled, bound: 0, steps: 0 };
    const toServe = new Set(climbed.witnesses.keys());
    const needs = needsFor(toServe);
    const { bound, steps } = prove({
      looks,
      seating: { ...seating, free: seating.free - placesForShoes(room, looks, needs) },
      kept,
      needs,
      budgets: budgetsOf(room, limits, working, earlier),
      found: climbed.filled.looks,
      accept: (garments) => {
        const around = fillAround(room, problem, earlier, garments, working, toServe);
        if (around !== undefined && around.filled.worth > best.filled.worth) best = around;
        return around?.filled.looks;
      },
      effort: Math.min(question.effort ?? EFFORT, earlier.length === 0 ? EFFORT : EFFORT_LATER),
    });
    const polished = evaluate(polish(room, problem, best).at, problem);
    return { filled: polished, bound: Math.max(bound, polished.looks), steps };
  };
};
