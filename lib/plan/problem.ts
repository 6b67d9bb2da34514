import type { Brief, Piece } from '../model/index.ts';
import type { Candidate } from './candidates.ts';
import { daysBetween, type Moment } from './moments.ts';
import { createSeen, isDressed } from './seen.ts';
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
  /** Which occasions people dress for, by their place in `moments`. */
  readonly dressed: readonly boolean[];
  /** The clothes that are seen of a candidate at an occasion, by its place in `moments`; empty for a swim. */
  readonly seen: (moment: number, candidate: Candidate) => string;
}

/** One candidate an occasion, or none. */
export type Assignment = readonly (Candidate | undefined)[];

/** Days with something to dress for. */
const daysOfMoments = (moments: readonly Moment[]): number => new Set(moments.map(({ day }) => day)).size;

export const problemOf = (brief: Brief, moments: readonly Moment[], pieces: readonly Piece[]): PlanProblem => {
  const days = daysOfMoments(moments);
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  return {
    moments,
    pieces: byId,
    limited: new Set(pieces.filter((piece) => isLimited(piece, days)).map(({ id }) => id)),
    washDays: [...new Set(brief.washDays)]
      .filter((date) => brief.from <= date && date <= brief.to)
      .map((date) => daysBetween(brief.from, date))
      .sort((a, b) => a - b),
    days: daysBetween(brief.from, brief.to) + 1,
    dressed: moments.map(({ occasion }) => isDressed(occasion)),
    seen: createSeen(moments, byId),
  };
};

/** The same trip with more pieces to wear. */
export const withPieces = (problem: PlanProblem, more: readonly Piece[]): PlanProblem => {
  const pieces = new Map([...problem.pieces, ...more.map((piece): [string, Piece] => [piece.id, piece])]);
  const days = daysOfMoments(problem.moments);
  const limited = more.filter((piece) => isLimited(piece, days)).map(({ id }) => id);
  return {
    ...problem,
    pieces,
    limited: new Set([...problem.limited, ...limited]),
    seen: createSeen(problem.moments, pieces),
  };
};

/** The same trip with other things asked of its occasions. */
export const withMoments = (problem: PlanProblem, moments: readonly Moment[]): PlanProblem => ({
  ...problem,
  moments,
  seen: createSeen(moments, problem.pieces),
});

/** When a piece is worn under an assignment, one entry a day. */
export const wearingsOf = (problem: PlanProblem, assignment: Assignment, piece: string): readonly Wearing[] => {
  const wearings: Wearing[] = [];
  assignment.forEach((candidate, index) => {
    const moment = problem.moments[index];
    if (moment === undefined || candidate === undefined || !candidate.pieces.includes(piece)) return;
    const { day, start: from, end: until } = moment;
    const before = wearings.at(-1);
    if (before?.day !== day) wearings.push({ day, from, until });
    else wearings[wearings.length - 1] = { ...before, until: Math.max(before.until, until) };
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

/**
 * True when what is seen at an occasion people dress for is not seen at another such occasion on another day, counting
 * the looks a stylist fixed as meant.
 */
export const isSeenOnce = (problem: PlanProblem, assignment: Assignment, index: number): boolean => {
  const candidate = assignment[index];
  if (candidate === undefined || problem.dressed[index] !== true) return true;
  const clothes = problem.seen(index, candidate);
  if (clothes === '') return true;
  const free = new Set<number>();
  const meant = new Set<number>();
  for (let at = 0; at < assignment.length; at += 1) {
    const other = assignment[at];
    const day = problem.moments[at]?.day;
    if (other === undefined || day === undefined || problem.dressed[at] !== true) continue;
    if (problem.seen(at, other) === clothes) (other.fixed ? meant : free).add(day);
  }
  return meant.size > 0 ? [...free].every((day) => meant.has(day)) : free.size <= 1;
};

/** True when the look an occasion has been given keeps everything possible. */
export const changeHolds = (problem: PlanProblem, assignment: Assignment, index: number): boolean =>
  isSeenOnce(problem, assignment, index) &&
  (assignment[index]?.pieces.every((piece) => pieceHolds(problem, assignment, piece)) ?? true);
