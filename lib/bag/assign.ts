import type { Bag } from '../model/index.ts';
import type { Programme, Solver, Term } from '../plan/index.ts';
import type { Item } from './items.ts';

/** Steps in which a bag's overrun is counted. Ten grams weigh about as much as a twentieth of a litre of clothes. */
const GRAMS_A_STEP = 10;
const LITRES_A_STEP = 0.05;
/** A step too much costs more than any better place for all things together. */
const STEP_COST = 10_000;
const MOST_STEPS = 100_000;

export interface Assignment {
  /** The bag of each item, by number. */
  readonly bags: readonly number[];
  /** True when no other assignment costs less. */
  readonly proven: boolean;
}

interface Room {
  readonly grams: number | undefined;
  readonly litres: number;
}

/** What a bag has room for: undefined grams when nothing limits it. A limit below the bag's own weight leaves none. */
export const roomOf = ({ litres, limitKg, ownGrams }: Bag): Room => ({
  grams: limitKg === undefined ? undefined : Math.max(0, limitKg * 1000 - ownGrams),
  litres: Math.max(0, litres),
});

/** An item that may go nowhere goes anywhere: it is on the list, and a finding says what is wrong with it. */
const placesOf = ({ places }: Item): readonly (number | undefined)[] =>
  places.some((cost) => cost !== undefined) ? places : places.map(() => 0);

const steps = (over: number, step: number): number => (over <= 1e-9 ? 0 : Math.ceil(over / step - 1e-9));

/** Journeys are loads of their own; without any, everything is in the bags at once. */
const loads = (journeys: number): readonly number[] =>
  journeys === 0 ? [0] : Array.from({ length: journeys }, (_, index) => index);

/** What an assignment costs: steps over the limits on every journey, then how well each thing is placed. */
export const costOf = (
  items: readonly Item[],
  bags: readonly Bag[],
  journeys: number,
  assigned: readonly number[],
): number => {
  let cost = items.reduce((sum, item, index) => sum + (placesOf(item)[assigned[index] ?? 0] ?? 0), 0);
  bags.forEach((bag, at) => {
    const room = roomOf(bag);
    for (const journey of loads(journeys)) {
      const inside = items.filter((item, index) => assigned[index] === at && !item.wornOn.has(journey));
      const grams = inside.reduce((sum, item) => sum + item.grams, 0);
      const litres = inside.reduce((sum, item) => sum + item.litres, 0);
      const over = room.grams === undefined ? 0 : steps(grams - room.grams, GRAMS_A_STEP);
      cost += STEP_COST * (over + steps(litres - room.litres, LITRES_A_STEP));
    }
  });
  return cost;
};

/** The assignment as a programme: columns item by item and bag by bag, then the overruns. */
const programmeOf = (items: readonly Item[], bags: readonly Bag[], journeys: number): Programme => {
  const costs: number[] = [];
  const uppers: number[] = [];
  const rows: { low: number; high: number; terms: readonly Term[] }[] = [];
  const column = (cost: number, upper: number): number => {
    uppers.push(upper);
    return costs.push(cost) - 1;
  };
  const at = items.map((item) => placesOf(item).map((cost) => column(cost ?? 0, cost === undefined ? 0 : 1)));
  for (const columns of at) rows.push({ low: 1, high: 1, terms: columns.map((index) => [index, 1]) });
  const limit = (bag: number, journey: number, most: number, of: (item: Item) => number, step: number): void => {
    const over = column(STEP_COST, MOST_STEPS);
    const terms = items.flatMap((item, index): Term[] =>
      item.wornOn.has(journey) ? [] : [[at[index]?.[bag] ?? 0, of(item)]],
    );
    rows.push({ low: Number.NEGATIVE_INFINITY, high: most, terms: [...terms, [over, -step]] });
  };
  bags.forEach((bag, index) => {
    const room = roomOf(bag);
    for (const journey of loads(journeys)) {
      if (room.grams !== undefined) limit(index, journey, room.grams, ({ grams }) => grams, GRAMS_A_STEP);
      limit(index, journey, room.litres, ({ litres }) => litres, LITRES_A_STEP);
    }
  });
  return { costs, lowers: costs.map(() => 0), uppers, rows };
};

/** Each item in turn, largest first, where it adds least: what remains when the solver gives nothing. */
const oneByOne = (items: readonly Item[], bags: readonly Bag[], journeys: number): readonly number[] => {
  const assigned: number[] = items.map(() => -1);
  const order = items.map((_, index) => index).toSorted((a, b) => (items[b]?.litres ?? 0) - (items[a]?.litres ?? 0));
  for (const index of order) {
    const item = items[index];
    if (item === undefined) continue;
    const tried = placesOf(item).flatMap((place, bag) => {
      if (place === undefined) return [];
      const next = assigned.with(index, bag);
      return [{ bag, cost: costOf(items, bags, journeys, next) }];
    });
    tried.sort((a, b) => a.cost - b.cost || a.bag - b.bag);
    assigned[index] = tried[0]?.bag ?? 0;
  }
  return assigned;
};

/** Puts every item into a bag so that the limits are kept on every journey, or exceeded by the least; then where it belongs. */
export const assignToBags = async (
  items: readonly Item[],
  bags: readonly Bag[],
  journeys: number,
  solver: Solver,
): Promise<Assignment> => {
  if (bags.length === 0) return { bags: items.map(() => -1), proven: true };
  if (bags.length === 1) return { bags: items.map(() => 0), proven: true };
  const { status, values } = await solver.solve(programmeOf(items, bags, journeys));
  if (status !== 'optimal' && status !== 'limit') {
    return { bags: oneByOne(items, bags, journeys), proven: false };
  }
  const assigned = items.map((_, index) =>
    Math.max(
      0,
      bags.findIndex((_bag, bag) => values[index * bags.length + bag] === 1),
    ),
  );
  return { bags: assigned, proven: status === 'optimal' };
};
