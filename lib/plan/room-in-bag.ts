import type { Brief, Capsule, Piece } from '../model/index.ts';
import { type Assignment, type PlanProblem, wearingsOf } from './problem.ts';
import type { ProgrammeBuilder, Term } from './programme.ts';
import type { Choice } from './serve.ts';

/** What leaving a piece at home costs a mend, and more for each day it is worn. Less than any other change. Own choice. */
const LEFT_COST = 1;
const WORN_DAY_COST = 0.2;
/** Keeps pieces that are worn as often in their order, so that the same one is left every time. */
const ORDER_COST = 1e-4;

interface Question {
  readonly brief: Brief;
  readonly capsule: Capsule;
  readonly problem: PlanProblem;
  readonly assignment: Assignment;
}

/** A piece that stays at home when its column is chosen. */
export interface Leaving {
  readonly piece: Piece;
  readonly column: number;
}

/** Pieces the capsule names beyond its list: without them its own wishes would name what is not there. */
const named = ({ favourites, fixed, never, always, choose }: Capsule): ReadonlySet<string> =>
  new Set([
    ...[...favourites, ...fixed].flatMap(({ pieces }) => pieces),
    ...[...never, ...always].flat(),
    ...(choose?.keep ?? []),
  ]);

/** No choice wears a piece that stays at home. */
const addLeavingRows = (builder: ProgrammeBuilder, choices: readonly Choice[], { piece, column }: Leaving): void => {
  const byMoment = new Map<number, Term[]>();
  for (const choice of choices) {
    if (!choice.candidate.pieces.includes(piece.id)) continue;
    byMoment.set(choice.moment, [...(byMoment.get(choice.moment) ?? []), [choice.column, 1]]);
  }
  for (const terms of byMoment.values()) builder.atMost(1, [...terms, [column, 1]]);
};

/**
 * Keeps the bag within the brief's "pieces at most": a piece is added where there is room for it, or where another stays
 * at home. `added` are the columns of the pieces offered. Returns what may stay at home; nothing without a limit.
 */
export const addRoomRows = (
  builder: ProgrammeBuilder,
  { brief, capsule, problem, assignment }: Question,
  choices: readonly Choice[],
  added: readonly number[],
): readonly Leaving[] => {
  if (brief.piecesAtMost === undefined || added.length === 0) return [];
  const room = Math.max(0, brief.piecesAtMost - problem.pieces.size);
  const kept = named(capsule);
  const leaving =
    room >= added.length
      ? []
      : [...problem.pieces.values()]
          .filter(({ id }) => !kept.has(id))
          .map((piece, index): Leaving => {
            const worn = wearingsOf(problem, assignment, piece.id).length;
            return { piece, column: builder.choice(LEFT_COST + WORN_DAY_COST * worn + ORDER_COST * index) };
          });
  for (const left of leaving) addLeavingRows(builder, choices, left);
  builder.atMost(room, [
    ...added.map((column): Term => [column, 1]),
    ...leaving.map(({ column }): Term => [column, -1]),
  ]);
  return leaving;
};
