import type { Piece } from '../model/index.ts';
import { type Candidate, candidatesFor, type Pool, withoutPieces } from './candidates.ts';
import type { LookSource } from './look-source.ts';
import type { PlanProblem } from './problem.ts';
import { buildProgramme, type Solver, type Term } from './programme.ts';
import { addCalendarRows } from './serve.ts';

/** Rounds and questions after which the proof is given up; counts, so that the answer stays the same. */
const ROUNDS = 24;
const QUESTIONS = 2500;

export interface Bound {
  /** No plan with these pieces leaves fewer occasions unserved. */
  readonly unserved: number;
  /** Looks found on the way that the pools did not have, by occasion. */
  readonly found: readonly (readonly Candidate[])[];
}

/** "Every look of this occasion wears at least one of these": true for all occasions that ask the same. */
interface Cover {
  readonly pieces: readonly string[];
}

/**
 * How many occasions must stay unserved whatever is worn. A programme over pieces alone (which limited pieces each
 * occasion uses) is a relaxation of the plan; the look source is asked whether a look exists with just those pieces,
 * and each "no" is added as a set of which every look needs one piece. Logic-based Benders decomposition
 * (Hooker & Ottosson 2003). Looks being seen again is left out, so the bound holds but may be too hopeful.
 */
export const leastUnserved = async (
  problem: PlanProblem,
  pools: readonly Pool[],
  source: LookSource,
  solver: Solver,
): Promise<Bound> => {
  const limited = [...problem.pieces.values()].filter(({ id }) => problem.limited.has(id));
  const groups = new Map<string, Cover[]>();
  const groupOf = (moment: number): Cover[] => {
    const key =
      pools[moment]?.candidates[0]?.fixed === true
        ? `fixed ${moment}`
        : JSON.stringify(problem.moments[moment]?.restriction);
    const covers = groups.get(key) ?? [];
    groups.set(key, covers);
    return covers;
  };
  const found: Candidate[][] = problem.moments.map(() => []);
  let questions = 0;

  /** A look of the occasion that wears none of the pieces. */
  const lookWithout = (moment: number, pieces: readonly string[]): Candidate | undefined => {
    const barred = new Set(pieces);
    const known = [...(pools[moment]?.candidates ?? []), ...(found[moment] ?? [])].find(
      (candidate) => !candidate.pieces.some((piece) => barred.has(piece)),
    );
    const restriction = problem.moments[moment]?.restriction;
    if (known !== undefined || restriction === undefined || pools[moment]?.candidates[0]?.fixed === true) return known;
    questions += 1;
    const fresh = candidatesFor(source, withoutPieces(restriction, pieces), [], { asked: 1 }).candidates[0];
    if (fresh !== undefined) found[moment]?.push(fresh);
    return fresh;
  };

  /** The pieces left away shrunk to as few as still leave no look. */
  const shrunk = (moment: number, pieces: readonly string[]): readonly string[] => {
    let cover = pieces;
    for (const piece of pieces) {
      const fewer = cover.filter((other) => other !== piece);
      if (lookWithout(moment, fewer) === undefined) cover = fewer;
    }
    return cover;
  };

  let least = 0;
  for (let round = 0; round < ROUNDS && questions < QUESTIONS; round += 1) {
    const relaxed = await solveRelaxed(problem, limited, groupOf, solver);
    if (relaxed === undefined) break;
    least = Math.max(least, relaxed.unserved);
    let added = false;
    for (const [moment, used] of relaxed.uses.entries()) {
      if (used === undefined) continue;
      const away = limited.filter(({ id }) => !used.has(id)).map(({ id }) => id);
      if (groupOf(moment).some(({ pieces }) => pieces.every((piece) => !used.has(piece)))) continue;
      if (lookWithout(moment, away) !== undefined) continue;
      groupOf(moment).push({ pieces: shrunk(moment, away) });
      added = true;
    }
    if (!added) break;
  }
  return { unserved: least, found };
};

interface Relaxed {
  readonly unserved: number;
  /** Limited pieces used by each served occasion. */
  readonly uses: readonly (ReadonlySet<string> | undefined)[];
}

const solveRelaxed = async (
  problem: PlanProblem,
  limited: readonly Piece[],
  coversOf: (moment: number) => readonly Cover[],
  solver: Solver,
): Promise<Relaxed | undefined> => {
  const builder = buildProgramme();
  const columns = problem.moments.map((_, moment) => {
    const named = new Set(coversOf(moment).flatMap(({ pieces }) => pieces));
    return new Map(limited.filter(({ id }) => named.has(id)).map(({ id }) => [id, builder.choice()]));
  });
  const unserved = problem.moments.map((_, moment) => {
    const column = builder.choice(1);
    for (const { pieces } of coversOf(moment)) {
      builder.atLeast(1, [...pieces.map((piece): Term => [columns[moment]?.get(piece) ?? column, 1]), [column, 1]]);
    }
    return column;
  });
  addCalendarRows(builder, problem, limited, (moment, piece) => {
    const column = columns[moment]?.get(piece);
    return column === undefined ? [] : [[column, 1]];
  });
  const solved = await solver.solve(builder.done());
  if (solved.status !== 'optimal') return undefined;
  return {
    unserved: Math.round(solved.bound),
    uses: problem.moments.map((_, moment) =>
      solved.values[unserved[moment] ?? 0] === 1
        ? undefined
        : new Set(
            [...(columns[moment] ?? [])].filter(([, column]) => solved.values[column] === 1).map(([piece]) => piece),
          ),
    ),
  };
};
