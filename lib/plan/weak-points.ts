import type { Brief, Piece, WeakPoint } from '../model/index.ts';
import { phrase } from '../words/index.ts';
import { type Candidate, candidatesFor, isFinishing, leftForLater, type Pool, withoutPieces } from './candidates.ts';
import { serveByDisplacing } from './displace.ts';
import { serveGreedily } from './improve.ts';
import type { LookSource } from './look-source.ts';
import { addDays, type Moment } from './moments.ts';
import { type Assignment, type PlanProblem, withMoments } from './problem.ts';
import type { Solver } from './programme.ts';
import { serveMost, unlike } from './serve.ts';

/** Looks asked for an occasion when what was planned for it falls away. */
const LOOKS_INSTEAD = 24;
/** Choices up to which a loss is put to the solver; beyond, each would take seconds. */
const SOLVED_AT_MOST = 400;

interface Spare {
  readonly brief: Brief;
  readonly problem: PlanProblem;
  readonly pools: readonly Pool[];
  readonly assignment: Assignment;
  readonly source: LookSource;
  readonly solver: Solver;
}

/** Occasions that lose their look, by their ids. */
interface Lost {
  /** Nothing serves them any more, whatever else is worn. */
  readonly certain: readonly string[];
  /** No plan was found that serves them as well; a cleverer one may. */
  readonly perhaps: readonly string[];
}

/**
 * Occasions that lose their look when some pools change: first the rest is kept and others may make way, then all is
 * laid out afresh, then the solver is asked where that may save one and the trip is small. What has no look by itself is
 * lost for certain; of the others it is the best found, and another one may go without in their place.
 */
const lostWith = async (
  spare: Spare,
  changed: ReadonlyMap<number, Pool>,
  barred: ReadonlySet<string>,
): Promise<Lost> => {
  const { problem, assignment, solver } = spare;
  const pools = spare.pools.map((pool, index): Pool => {
    // what had no look before takes none from the others
    if (assignment[index] === undefined) return { candidates: [], complete: false };
    const candidates = (changed.get(index) ?? pool).candidates.filter(
      ({ pieces }) => !pieces.some((piece) => barred.has(piece)),
    );
    return { candidates, complete: false };
  });
  const served = assignment.flatMap((candidate, index) => (candidate === undefined ? [] : [index]));
  const lostFrom = (after: Assignment): readonly number[] => served.filter((index) => after[index] === undefined);
  const lostBy = (start?: Assignment): readonly number[] =>
    lostFrom(serveByDisplacing(problem, pools, serveGreedily(problem, pools, start)));
  const bare = new Set(served.filter((index) => pools[index]?.candidates.length === 0));
  const kept = lostBy(assignment.map((candidate, index) => (changed.has(index) ? undefined : candidate)));
  const afresh = kept.length > bare.size ? lostBy() : kept;
  const quick = afresh.length < kept.length ? afresh : kept;
  const ways = (): number =>
    pools.reduce((sum, { candidates }, index) => sum + unlike(problem, index, candidates).length, 0);
  const solved =
    quick.length > bare.size && ways() <= SOLVED_AT_MOST
      ? lostFrom((await serveMost(problem, pools, solver)).assignment)
      : quick;
  const lost = solved.length < quick.length ? solved : quick;
  const idsOf = (indices: readonly number[]): readonly string[] =>
    indices.flatMap((index) => problem.moments[index]?.occasion.id ?? []);
  return {
    certain: idsOf(lost.filter((index) => bare.has(index))),
    perhaps: idsOf(lost.filter((index) => !bare.has(index))),
  };
};

/** Looks for an occasion without some pieces; finishing pieces come in only when nothing serves without them. */
const looksInstead = (
  source: LookSource,
  moment: Moment,
  pieces: readonly Piece[],
  without: readonly string[],
): readonly Candidate[] => {
  const ask = (away: readonly string[]): readonly Candidate[] =>
    candidatesFor(source, withoutPieces(moment.restriction, away), [], { asked: LOOKS_INSTEAD }).candidates;
  const plain = ask([...leftForLater(moment, pieces), ...without]);
  return plain.length > 0 ? plain : ask(without);
};

/** A look the stylist fixed, worn without one of its finishing pieces. */
const withoutFinish = (source: LookSource, candidate: Candidate, piece: Piece): Candidate | undefined => {
  const pieces = candidate.pieces.filter((id) => id !== piece.id);
  const { look } = source.explain(pieces);
  return look === undefined ? undefined : { ...candidate, look, pieces };
};

const wordsOf = (problem: PlanProblem, ids: readonly string[]): readonly string[] =>
  ids.flatMap((id) => problem.moments.find(({ occasion }) => occasion.id === id)?.occasion.what ?? []);

const inWords = (problem: PlanProblem, { certain, perhaps }: Lost) => ({
  occasions: wordsOf(problem, certain),
  perhaps: wordsOf(problem, perhaps),
});

const allOf = ({ certain, perhaps }: Lost): Pick<WeakPoint, 'loses' | 'perhaps'> => ({
  loses: [...certain, ...perhaps],
  ...(perhaps.length === 0 ? {} : { perhaps }),
});

/** Each piece of the plan spoilt in turn. */
const spoiltPieces = async (spare: Spare): Promise<readonly WeakPoint[]> => {
  const { problem, assignment, source, pools } = spare;
  const pieces = [...problem.pieces.values()];
  const points: WeakPoint[] = [];
  for (const piece of pieces) {
    const changed = new Map<number, Pool>();
    assignment.forEach((candidate, index) => {
      const moment = problem.moments[index];
      if (moment === undefined || candidate?.pieces.includes(piece.id) !== true) return;
      const left = pools[index]?.candidates.filter(({ pieces: worn }) => !worn.includes(piece.id)) ?? [];
      const kept = candidate.fixed && isFinishing(piece) ? withoutFinish(source, candidate, piece) : undefined;
      const others = left.length > 0 ? left : looksInstead(source, moment, pieces, [piece.id]);
      const instead = kept === undefined ? others : [kept, ...others];
      changed.set(index, { candidates: instead, complete: false });
    });
    if (changed.size === 0) continue;
    const lost = await lostWith(spare, changed, new Set([piece.id]));
    if (lost.certain.length + lost.perhaps.length === 0) continue;
    const what = phrase('plan', 'piece spoilt', { piece: piece.name, ...inWords(problem, lost) });
    points.push({ what, piece: piece.id, ...allOf(lost) });
  }
  return points;
};

/** On a day no warmer than this what falls is snow, which asks for no rainwear; °C. Own choice. */
const SNOW_C = 0;

/** Rain on each day that was planned dry. */
const wetDays = async (spare: Spare): Promise<readonly WeakPoint[]> => {
  const { brief, problem, assignment, source } = spare;
  const points: WeakPoint[] = [];
  for (const day of new Set(problem.moments.map((moment) => moment.day))) {
    const changed = new Map<number, Pool>();
    const moments = [...problem.moments];
    problem.moments.forEach((moment, index) => {
      const { occasion, restriction } = moment;
      if (moment.day !== day || occasion.setting.where === 'indoors' || moment.swims) return;
      if (occasion.needs.includes('rain') || assignment[index] === undefined) return;
      if (moment.weather !== undefined && moment.weather.highC <= SNOW_C) return;
      const needs = [...occasion.needs, 'rain' as const];
      const wet: Moment = { ...moment, occasion: { ...occasion, needs }, restriction: { ...restriction, needs } };
      moments[index] = wet;
      const candidates = looksInstead(source, wet, [...problem.pieces.values()], []);
      changed.set(index, { candidates, complete: false });
    });
    if (changed.size === 0) continue;
    const lost = await lostWith({ ...spare, problem: withMoments(problem, moments) }, changed, new Set());
    if (lost.certain.length + lost.perhaps.length === 0) continue;
    const said = { date: addDays(brief.from, day), ...inWords(problem, lost) };
    points.push({ what: phrase('plan', 'rain on a dry day', said), ...allOf(lost) });
  }
  return points;
};

/** Where the plan has nothing in reserve, the points that lose most first. */
export const weakPointsOf = async (spare: Spare): Promise<readonly WeakPoint[]> =>
  [...(await spoiltPieces(spare)), ...(await wetDays(spare))].sort((a, b) => b.loses.length - a.loses.length);
