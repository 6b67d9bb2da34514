import type { Brief, Piece } from '../model/index.ts';
import type { Candidate } from './candidates.ts';
import { daysBetween, type Moment } from './moments.ts';
import { isLimited, stillWet, type Wearing, washesFor } from './washing.ts';

/** One trip of one traveller as the plan sees it. */
export interface PlanProblem {
  readonly moments: readonly Moment[];
  readonly pieces: ReadonlyMap<string, Piece>;
  /** Pieces that cannot simply be worn every day. */
  readonly limited: ReadonlySet<string>;
  /** Days of washing, counted from the first day, in order. */
  readonly washDays: readonly number[];
  readonly days: number;
}

/** One candidate an occasion, or none. */
export type Assignment = readonly (Candidate | undefined)[];

export const problemOf = (brief: Brief, moments: readonly Moment[], pieces: readonly Piece[]): PlanProblem => {
  const days = new Set(moments.map(({ day }) => day)).size;
  return {
    moments,
    pieces: new Map(pieces.map((piece) => [piece.id, piece])),
    limited: new Set(pieces.filter((piece) => isLimited(piece, days)).map(({ id }) => id)),
    washDays: [...new Set(brief.washDays)]
      .filter((date) => brief.from <= date && date <= brief.to)
      .map((date) => daysBetween(brief.from, date))
      .sort((a, b) => a - b),
    days: daysBetween(brief.from, brief.to) + 1,
  };
};

/** When a piece is worn under an assignment, one entry a day. */
export const wearingsOf = (problem: PlanProblem, assignment: Assignment, piece: string): readonly Wearing[] => {
  const wearings: Wearing[] = [];
  assignment.forEach((candidate, index) => {
    const moment = problem.moments[index];
    if (moment === undefined || candidate === undefined || !candidate.pieces.includes(piece)) return;
    if (wearings.at(-1)?.day !== moment.day) wearings.push({ day: moment.day, from: moment.start });
  });
  return wearings;
};

/** True when a piece can be worn as assigned: wears, washes and drying. */
export const pieceHolds = (problem: PlanProblem, assignment: Assignment, id: string): boolean => {
  const piece = problem.pieces.get(id);
  if (piece === undefined || !problem.limited.has(id)) return true;
  if (piece.places.includes('swim')) return swimwearHolds(problem, assignment, piece);
  return washesFor(piece, wearingsOf(problem, assignment, id), problem.washDays) !== undefined;
};

/** Swimwear is rinsed and hung up after every swim, so only drying limits it. common practice, no source */
const swimwearHolds = (problem: PlanProblem, assignment: Assignment, piece: Piece): boolean => {
  let wetFrom: number | undefined;
  return problem.moments.every((moment, index) => {
    if (assignment[index]?.pieces.includes(piece.id) !== true) return true;
    const wet = wetFrom !== undefined && stillWet(piece, wetFrom, moment.start);
    wetFrom = Math.max(wetFrom ?? moment.end, moment.end);
    return !wet;
  });
};

/** True when no look is worn on two days, counting the looks a stylist fixed as meant. */
export const identityHolds = (problem: PlanProblem, assignment: Assignment, identity: string): boolean => {
  if (identity === '') return true;
  const free = new Set<number>();
  const meant = new Set<number>();
  assignment.forEach((candidate, index) => {
    const day = problem.moments[index]?.day;
    if (candidate?.identity !== identity || day === undefined) return;
    (candidate.fixed ? meant : free).add(day);
  });
  return meant.size > 0 ? [...free].every((day) => meant.has(day)) : free.size <= 1;
};

/** True when changing one occasion from one candidate to another keeps everything possible; `assignment` is after the change. */
export const changeHolds = (
  problem: PlanProblem,
  assignment: Assignment,
  added: readonly (Candidate | undefined)[],
): boolean =>
  added.every(
    (candidate) =>
      candidate === undefined ||
      (identityHolds(problem, assignment, candidate.identity) &&
        candidate.pieces.every((piece) => pieceHolds(problem, assignment, piece))),
  );
