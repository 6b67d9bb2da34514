import type { Candidate, Pool } from './candidates.ts';
import { type Assignment, changeHolds, isSeenOnce, type PlanProblem, pieceHolds } from './problem.ts';

/** Tries at putting one look in; a count, so that the plan is the same every time. */
const TRIES = 6000;
/** How many occasions may move on for one that has no look. */
const DEPTH = 2;

type Draft = (Candidate | undefined)[];

/** Occasions whose look stands in the way of a candidate: they share what is worn out, wet, or seen already. */
const inTheWay = (problem: PlanProblem, draft: Draft, index: number, candidate: Candidate): readonly number[] => {
  const stuck = new Set(candidate.pieces.filter((piece) => !pieceHolds(problem, draft, piece)));
  const clothes = isSeenOnce(problem, draft, index) ? undefined : problem.seen(index, candidate);
  return draft.flatMap((other, at) => {
    if (at === index || other === undefined || other.fixed) return [];
    const blocks = other.pieces.some((piece) => stuck.has(piece)) || problem.seen(at, other) === clothes;
    return blocks ? [at] : [];
  });
};

/**
 * Serves occasions that found no look by letting others change theirs, a chain of up to `DEPTH`. Quick and often enough;
 * what it leaves unserved is for the solver to decide.
 */
export const serveByDisplacing = (problem: PlanProblem, pools: readonly Pool[], start: Assignment): Assignment => {
  const draft: Draft = [...start];
  let tries = 0;

  const place = (index: number, depth: number, settled: ReadonlySet<number>): boolean => {
    const before = draft[index];
    const candidates = pools[index]?.candidates ?? [];
    for (const candidate of candidates) {
      if (tries > TRIES) break;
      tries += 1;
      draft[index] = candidate;
      if (changeHolds(problem, draft, index)) return true;
    }
    for (const candidate of depth > 0 ? candidates : []) {
      draft[index] = candidate;
      for (const other of inTheWay(problem, draft, index, candidate)) {
        if (tries > TRIES || settled.has(other)) continue;
        const kept = draft[other];
        draft[other] = undefined;
        tries += 1;
        if (changeHolds(problem, draft, index) && place(other, depth - 1, new Set([...settled, index]))) return true;
        draft[other] = kept;
      }
    }
    draft[index] = before;
    return false;
  };

  start.forEach((candidate, index) => {
    if (candidate === undefined && (pools[index]?.candidates.length ?? 0) > 0) {
      tries = 0;
      place(index, DEPTH, new Set([index]));
    }
  });
  return draft;
};
