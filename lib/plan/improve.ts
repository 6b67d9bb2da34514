import type { Candidate, Pool } from './candidates.ts';
import { type Assignment, changeHolds, type PlanProblem } from './problem.ts';
import { judgeOf } from './quality.ts';
import { seededRandom } from './random.ts';

/** Rounds of taking a few occasions out and putting them back; a count, so that the plan is the same every time. */
const ROUNDS = 160;
const TAKEN_OUT = 3;
const SEED = 20270;
/** Candidates tried when an occasion is put back. */
const TRIED = 24;
const LEAST_GAIN = 1e-9;

type Judge = (assignment: Assignment) => number;
type Draft = (Candidate | undefined)[];

/** The cheapest candidate that can serve an occasion as things stand; undefined when none can. */
const bestFor = (
  problem: PlanProblem,
  pools: readonly Pool[],
  draft: Draft,
  index: number,
  judge: Judge,
  tried = Number.POSITIVE_INFINITY,
): Candidate | undefined => {
  const before = draft[index];
  let best: Candidate | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of (pools[index]?.candidates ?? []).slice(0, tried)) {
    draft[index] = candidate;
    const cost = judge(draft);
    if (cost < least - LEAST_GAIN && changeHolds(problem, draft, index)) {
      least = cost;
      best = candidate;
    }
  }
  draft[index] = before;
  return best;
};

/** Serves occasion after occasion, those with the fewest looks first, each by what costs the plan least. */
export const serveGreedily = (problem: PlanProblem, pools: readonly Pool[], start?: Assignment): Assignment => {
  const judge = judgeOf(problem);
  const draft: Draft = problem.moments.map((_, index) => start?.[index]);
  const order = problem.moments
    .map((_, index) => index)
    .filter((index) => draft[index] === undefined)
    .sort((a, b) => (pools[a]?.candidates.length ?? 0) - (pools[b]?.candidates.length ?? 0) || a - b);
  for (const index of order) draft[index] = bestFor(problem, pools, draft, index, judge);
  return draft;
};

/** One pass over all occasions, giving each its best look; repeated while anything gets better. */
const settle = (problem: PlanProblem, pools: readonly Pool[], draft: Draft, judge: Judge): number => {
  let cost = judge(draft);
  for (let better = true; better; ) {
    better = false;
    for (let index = 0; index < draft.length; index += 1) {
      const before = draft[index];
      if (before === undefined || before.fixed) continue;
      draft[index] = bestFor(problem, pools, draft, index, judge) ?? before;
      const now = judge(draft);
      if (now < cost - LEAST_GAIN) {
        cost = now;
        better = true;
      } else draft[index] = before;
    }
  }
  return cost;
};

/**
 * Makes a plan better without serving fewer occasions: single changes until none helps, then a fixed number of rounds
 * in which a few neighbouring occasions are taken out and put back. Best found, not proven best.
 */
export const improve = (problem: PlanProblem, pools: readonly Pool[], start: Assignment): Assignment => {
  const judge = judgeOf(problem);
  const random = seededRandom(SEED);
  const draft: Draft = [...start];
  let cost = settle(problem, pools, draft, judge);
  const free = draft.flatMap((candidate, index) => (candidate === undefined || candidate.fixed ? [] : [index]));
  if (free.length < 2) return draft;
  for (let round = 0; round < ROUNDS; round += 1) {
    const first = free[Math.floor(random() * free.length)] ?? 0;
    const near = random() < 0.5;
    const out = new Set([first]);
    while (out.size < Math.min(TAKEN_OUT, free.length)) {
      const other = near
        ? free[(free.indexOf(first) + out.size) % free.length]
        : free[Math.floor(random() * free.length)];
      out.add(other ?? first);
    }
    const kept = [...draft];
    for (const index of out) draft[index] = undefined;
    for (const index of shuffled([...out], random)) draft[index] = bestFor(problem, pools, draft, index, judge, TRIED);
    const complete = [...out].every((index) => draft[index] !== undefined);
    const now = complete ? judge(draft) : Number.POSITIVE_INFINITY;
    if (now < cost - LEAST_GAIN) cost = now;
    else
      kept.forEach((candidate, index) => {
        draft[index] = candidate;
      });
  }
  settle(problem, pools, draft, judge);
  return draft;
};

const shuffled = (indices: number[], random: () => number): readonly number[] => {
  for (let last = indices.length - 1; last > 0; last -= 1) {
    const other = Math.floor(random() * (last + 1));
    const kept = indices[last] ?? 0;
    indices[last] = indices[other] ?? 0;
    indices[other] = kept;
  }
  return indices;
};
