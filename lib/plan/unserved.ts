import { cloOfLook } from '../comfort/index.ts';
import type { Look, Piece } from '../model/index.ts';
import type { Need } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { type Candidate, fixedFor, type Pool } from './candidates.ts';
import { coveredInTheCold } from './finish.ts';
import type { LookRestriction, LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';
import { type Assignment, isSeenOnce, type PlanProblem, pieceHolds } from './problem.ts';

export interface Nearest {
  readonly look?: Look;
  readonly lacks: readonly Phrase[];
}

type Ask = 'dress' | 'clo' | 'heel' | `need ${Need}`;

const asksOf = (restriction: LookRestriction): readonly Ask[] => [
  ...(restriction.clo === undefined ? [] : (['clo'] as const)),
  ...(restriction.dress === undefined ? [] : (['dress'] as const)),
  ...(restriction.heelCmAtMost === undefined ? [] : (['heel'] as const)),
  ...(restriction.needs ?? []).map((need): Ask => `need ${need}`),
];

const relaxed = (restriction: LookRestriction, dropped: ReadonlySet<Ask>): LookRestriction => ({
  ...(restriction.without === undefined ? {} : { without: restriction.without }),
  ...(restriction.dress === undefined || dropped.has('dress') ? {} : { dress: restriction.dress }),
  ...(restriction.clo === undefined || dropped.has('clo') ? {} : { clo: restriction.clo }),
  ...(restriction.heelCmAtMost === undefined || dropped.has('heel') ? {} : { heelCmAtMost: restriction.heelCmAtMost }),
  needs: (restriction.needs ?? []).filter((need) => !dropped.has(`need ${need}`)),
});

/** Every set of asks, smallest first. */
const subsets = (asks: readonly Ask[]): readonly ReadonlySet<Ask>[] =>
  Array.from(
    { length: 2 ** asks.length },
    (_, chosen) => new Set(asks.filter((__, index) => (chosen & (2 ** index)) !== 0)),
  )
    // clothes are never near to swimwear: that is dropped last of all
    .sort((a, b) => Number(a.has('need swim')) - Number(b.has('need swim')) || a.size - b.size);

const wordsFor = (ask: Ask, moment: Moment, look: Look, pieces: ReadonlyMap<string, Piece>): Phrase => {
  if (ask === 'dress') return phrase('plan', 'lacks dress', { dress: moment.occasion.dress });
  if (ask === 'heel') return phrase('plan', 'lacks flat shoes', {});
  if (ask === 'clo') {
    const tooCold = cloOfLook(look, pieces).on < (moment.restriction.clo?.min ?? 0);
    return tooCold
      ? phrase('plan', 'lacks warmth', { low: moment.air?.lowC ?? 0, activity: moment.occasion.activity })
      : phrase('plan', 'lacks coolness', { high: moment.air?.highC ?? 0, activity: moment.occasion.activity });
  }
  return phrase('plan', 'lacks need', { need: ask.slice('need '.length) });
};

/** The least whole number from 0 to `most` that holds, when every number above one that holds does; undefined when none does. */
const leastThat = (holds: (number: number) => boolean, most: number): number | undefined => {
  if (!holds(most)) return undefined;
  let [low, high] = [0, most];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return high;
};

/** Steps in which a lack of warmth is measured, to a clo. Own choice. */
const STEPS_A_CLO = 1000;
/** Beyond what any clothes insulate. Own choice, clo. */
const ALL_CLOTHES_CLO = 10;

/**
 * The best look among those that miss the warmth asked for by least: as little too cold as the bag allows, or
 * else as little too warm.
 */
const nearestInWarmth = (
  source: LookSource,
  moment: Moment,
  others: LookRestriction,
  pieces: readonly Piece[],
): Look | undefined => {
  const best = (clo: LookRestriction['clo']): Look | undefined =>
    source.rank(1, clo === undefined ? others : { ...others, clo })[0]?.look;
  const { clo } = moment.restriction;
  if (clo === undefined) return best(undefined);
  const colder = (steps: number) => ({ min: Math.max(0, clo.min - steps / STEPS_A_CLO), max: clo.max });
  const warmer = (steps: number) => ({ min: clo.min, max: clo.max + steps / STEPS_A_CLO });
  const cold = leastThat((by) => best(colder(by)) !== undefined, Math.ceil(clo.min * STEPS_A_CLO));
  const warmest = cold === undefined ? undefined : best(colder(cold));
  // what covers head, neck and hands is wanted, warm enough or not
  if (warmest !== undefined) return coveredInTheCold(source, moment, warmest, pieces, others);
  const warm = leastThat((by) => best(warmer(by)) !== undefined, ALL_CLOTHES_CLO * STEPS_A_CLO);
  return best(warm === undefined ? undefined : warmer(warm));
};

/** Asks dropped from the fewest up until there is a look: how near it comes, and what it lacks. */
const nearestByAsks = (source: LookSource, moment: Moment, pieces: ReadonlyMap<string, Piece>): Nearest => {
  for (const dropped of subsets(asksOf(moment.restriction))) {
    const others = relaxed(moment.restriction, dropped);
    const look = dropped.has('clo')
      ? nearestInWarmth(source, moment, others, [...pieces.values()])
      : source.rank(1, others)[0]?.look;
    if (look !== undefined && dropped.has('need swim')) return { lacks: [phrase('plan', 'lacks swimwear', {})] };
    if (look !== undefined) return { look, lacks: [...dropped].map((ask) => wordsFor(ask, moment, look, pieces)) };
  }
  return { lacks: [phrase('plan', 'no look at all', {})] };
};

/** What stands in the way of one look when the rest of the plan is as it is. */
const conflictsOf = (
  problem: PlanProblem,
  assignment: Assignment,
  index: number,
  candidate: Candidate,
): readonly Phrase[] => {
  const tried = assignment.map((other, at) => (at === index ? candidate : other));
  const stuck = candidate.pieces.filter((piece) => !pieceHolds(problem, tried, piece));
  const nameOf = (id: string): string => problem.pieces.get(id)?.name ?? id;
  const isSwim = (id: string): boolean => problem.pieces.get(id)?.places.includes('swim') === true;
  const wet = stuck.filter(isSwim).map(nameOf);
  const worn = stuck.filter((id) => !isSwim(id)).map(nameOf);
  return [
    ...(wet.length > 0 ? [phrase('plan', 'still wet', { pieces: wet })] : []),
    ...(worn.length > 0 ? [phrase('plan', 'worn out', { pieces: worn })] : []),
    ...(isSeenOnce(problem, tried, index) ? [] : [phrase('plan', 'worn on another day', {})]),
  ];
};

/** The look that comes nearest to an occasion nothing serves, and what it lacks. */
export const nearestLook = (
  problem: PlanProblem,
  assignment: Assignment,
  pools: readonly Pool[],
  index: number,
  source: LookSource,
  fixedPieces: readonly string[] | undefined,
): Nearest => {
  const moment = problem.moments[index];
  if (moment === undefined) return { lacks: [] };
  const candidates = pools[index]?.candidates ?? [];
  const blocked = candidates
    .map((candidate) => ({ candidate, lacks: conflictsOf(problem, assignment, index, candidate) }))
    .sort((a, b) => a.lacks.length - b.lacks.length)[0];
  if (blocked !== undefined) return { look: blocked.candidate.look, lacks: blocked.lacks };
  if (moment.beyondClothes === 'altogether') {
    return { lacks: [phrase('plan', 'beyond travel clothes', { low: moment.air?.lowC ?? 0 })] };
  }
  if (fixedPieces !== undefined) {
    return { lacks: [phrase('plan', 'fixed look is none', { reasons: source.explain(fixedPieces).reasons })] };
  }
  return nearestByAsks(source, moment, problem.pieces);
};

export { fixedFor };
