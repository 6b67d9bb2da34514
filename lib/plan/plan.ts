import type { Brief, Capsule, Look, Piece, Plan, UnservedOccasion } from '../model/index.ts';
import { leastUnserved } from './bound.ts';
import { fixedFor, type Pool, rememberRanks } from './candidates.ts';
import { serveByDisplacing } from './displace.ts';
import { dressUp } from './dress-up.ts';
import { improve, serveGreedily } from './improve.ts';
import type { LookSource } from './look-source.ts';
import type { WardrobeBehind } from './mend-ways.ts';
import { findMends } from './mends.ts';
import { momentsOf } from './moments.ts';
import { poolsFor } from './pools.ts';
import { type Assignment, type PlanProblem, problemOf } from './problem.ts';
import type { Solver } from './programme.ts';
import { daysOf, wearsByPiece } from './record.ts';
import { countRepeats } from './repeats.ts';
import { isDressed, seenAt } from './seen.ts';
import { serveMost } from './serve.ts';
import { nearestLook } from './unserved.ts';
import { waysOf } from './way-record.ts';
import { weakPointsOf } from './weak-points.ts';

export interface TripQuestion {
  readonly brief: Brief;
  /** Name of the traveller as in the brief. */
  readonly traveller: string;
  readonly capsule: Capsule;
  /** The pieces in the bag. */
  readonly pieces: readonly Piece[];
  /** Looks of these pieces. */
  readonly engine: LookSource;
  readonly solver: Solver;
  /** What else the client owns; without it no piece is offered as a mend. */
  readonly wardrobe?: WardrobeBehind;
}

interface Answer {
  readonly assignment: Assignment;
  readonly pools: readonly Pool[];
  readonly proven: boolean;
}

const countServed = (assignment: Assignment): number =>
  assignment.filter((candidate) => candidate !== undefined).length;

/** Rounds in which looks found by the proof are added and the plan is solved again. */
const PROOF_ROUNDS = 4;

/**
 * Serves as many occasions as can be. When serving one after the other, with others making way, leaves none without
 * a look, that is the proof; else the solver decides over the pools, and a bound tells whether looks outside the pools could serve more.
 */
const serveAndProve = async (
  problem: PlanProblem,
  firstPools: readonly Pool[],
  source: LookSource,
  solver: Solver,
): Promise<Answer> => {
  let pools = firstPools;
  let assignment = serveByDisplacing(problem, pools, serveGreedily(problem, pools));
  const servable = (): number => pools.filter(({ candidates }) => candidates.length > 0).length;
  if (countServed(assignment) === servable()) return { assignment, pools, proven: true };
  for (let round = 0; round < PROOF_ROUNDS; round += 1) {
    const served = await serveMost(problem, pools, solver);
    if (countServed(served.assignment) > countServed(assignment)) assignment = served.assignment;
    if (countServed(assignment) === servable()) return { assignment, pools, proven: true };
    if (served.best && pools.every(({ complete }) => complete)) return { assignment, pools, proven: true };
    const bound = await leastUnserved(problem, pools, source, solver);
    if (problem.moments.length - countServed(assignment) <= bound.unserved) return { assignment, pools, proven: true };
    if (bound.found.every((fresh) => fresh.length === 0)) break;
    pools = pools.map((pool, index) => ({ ...pool, candidates: [...pool.candidates, ...(bound.found[index] ?? [])] }));
  }
  return { assignment, pools, proven: false };
};

/** Where a plan shows clothes again, the solver is asked for one that does so less. */
const withFewRepeats = async (
  problem: PlanProblem,
  pools: readonly Pool[],
  found: Assignment,
  solver: Solver,
): Promise<Assignment> => {
  const repeats = countRepeats(problem, found);
  if (repeats === 0) return found;
  const { assignment } = await serveMost(problem, pools, solver, { fewRepeats: true });
  if (countServed(assignment) < countServed(found)) return found;
  const other = improve(problem, pools, assignment);
  return countRepeats(problem, other) < repeats ? other : found;
};

/** What is put on last may take off the layer that told two looks apart; such a look is worn as it was planned. */
const keptApart = (
  problem: PlanProblem,
  assignment: Assignment,
  finished: readonly (Look | undefined)[],
): readonly (Look | undefined)[] => {
  const looks = [...finished];
  const shown = (index: number): string => {
    const [moment, look] = [problem.moments[index], looks[index]];
    if (moment === undefined || look === undefined || !isDressed(moment.occasion)) return '';
    return seenAt(moment, look, problem.pieces);
  };
  for (let changed = true; changed; ) {
    changed = false;
    assignment.forEach((candidate, index) => {
      const clothes = shown(index);
      if (candidate === undefined || clothes === '' || clothes === problem.seen(index, candidate)) return;
      const day = problem.moments[index]?.day;
      if (!looks.some((_, at) => problem.moments[at]?.day !== day && shown(at) === clothes)) return;
      looks[index] = candidate.look;
      changed = true;
    });
  }
  return looks;
};

/**
 * Plans one traveller's trip: every occasion gets a look, or the reason why none serves and what would mend it. The
 * number served is proven where `proven` says so; the choice among plans that serve as many is the best found. The same
 * question gives the same plan.
 */
export const planTrip = async (question: TripQuestion): Promise<Plan> => {
  const { brief, traveller, capsule, pieces, solver, wardrobe } = question;
  const source = rememberRanks(question.engine);
  const moments = momentsOf(brief, traveller);
  const problem = problemOf(brief, moments, pieces);
  const firstPools = poolsFor(source, moments, pieces, capsule);
  const { assignment: served, pools, proven } = await serveAndProve(problem, firstPools, source, solver);
  const assignment = await withFewRepeats(problem, pools, improve(problem, pools, served), solver);
  const looks = keptApart(
    problem,
    assignment,
    assignment.map((candidate, index) => {
      const moment = moments[index];
      return candidate === undefined || moment === undefined ? undefined : dressUp(source, moment, candidate, pieces);
    }),
  );
  const ways = waysOf(brief, problem, assignment, looks);
  const shared = { brief, problem, pools, assignment, source };
  const refused = new Set(capsule.choose?.leaveOut ?? []);
  const fixed = new Set(moments.flatMap((moment, index) => (fixedFor(capsule, moment) === undefined ? [] : [index])));
  const mends = await findMends({
    ...shared,
    capsule,
    solver,
    fixed,
    refused,
    ...(wardrobe === undefined ? {} : { wardrobe: { ...wardrobe, engine: rememberRanks(wardrobe.engine) } }),
  });
  const unserved = moments.flatMap((moment, index): UnservedOccasion[] => {
    if (assignment[index] !== undefined) return [];
    const { look, lacks } = nearestLook(problem, assignment, pools, index, source, fixedFor(capsule, moment));
    return [
      {
        occasion: moment.occasion.id,
        ...(look === undefined ? {} : { nearest: look }),
        lacks,
        mends: mends.get(index) ?? [],
        ...(mends.has(index) ? {} : { untried: true }),
      },
    ];
  });
  return {
    traveller,
    days: daysOf(brief, problem, assignment, looks, ways),
    served: countServed(assignment),
    of: moments.length,
    proven,
    unserved,
    weakPoints: await weakPointsOf({ ...shared, solver }),
    wears: wearsByPiece(problem, looks, ways),
  };
};
