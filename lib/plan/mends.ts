import type { Brief, Capsule, PlanMend } from '../model/index.ts';
import type { Pool } from './candidates.ts';
import type { LookSource } from './look-source.ts';
import { type Change, mendOf, type Opening } from './mend.ts';
import { type WardrobeBehind, waysToServe } from './mend-ways.ts';
import { type Assignment, type PlanProblem, withPieces } from './problem.ts';
import { buildProgramme, type Solver, type Term } from './programme.ts';
import { addRoomRows } from './room-in-bag.ts';
import { addChoiceRows, type Choice, unlike } from './serve.ts';

/**
 * How much a change asks of the client. Own choice: a piece or a wash is easy, to be colder is not, and a rule of the
 * occasion less still.
 */
const costOf = (change: Opening): number => {
  if (change.kind === 'wash day') return 10;
  if (change.kind === 'piece') return 12 + change.piece.grams.value / 1000;
  if (change.kind === 'free') return 11;
  if (change.kind === 'degrees') return 13 + 3 * change.degrees;
  return change.kind === 'dress' ? 18 : 24;
};

/** Mends told for one occasion, and occasions they are sought for. */
const MENDS = 3;
const OCCASIONS = 6;

export interface MendQuestion {
  readonly brief: Brief;
  readonly capsule: Capsule;
  readonly problem: PlanProblem;
  readonly pools: readonly Pool[];
  readonly assignment: Assignment;
  readonly source: LookSource;
  readonly solver: Solver;
  readonly wardrobe?: WardrobeBehind;
  /** Occasions whose look the stylist fixed, by their place in the plan. */
  readonly fixed: ReadonlySet<number>;
  /** Pieces that are in the wardrobe but must not be offered. */
  readonly refused: ReadonlySet<string>;
}

interface Gate {
  readonly change: Opening;
  readonly column: number;
}

/**
 * The smallest changes that would let one occasion be served without losing another, best first. All changes go into
 * one programme, each behind a column with a cost; the cheapest set that serves is told, forbidden, and sought again.
 */
const mendsFor = async (question: MendQuestion, index: number): Promise<readonly PlanMend[]> => {
  const { brief, problem, pools, assignment, solver } = question;
  const moment = problem.moments[index];
  if (moment === undefined) return [];
  const ways = waysToServe(question, moment, question.fixed.has(index)).filter(
    // in such cold only warmer clothes are a way out, and no leniency
    ({ changes }) => moment.beyondClothes === undefined || changes.every(({ kind }) => kind === 'piece'),
  );
  const builder = buildProgramme();
  const gates = new Map<string, Gate>();
  const gate = (change: Opening): number => {
    const key = JSON.stringify(change.kind === 'piece' ? change.piece.id : change);
    const known = gates.get(key) ?? { change, column: builder.choice(costOf(change)) };
    gates.set(key, known);
    return known.column;
  };
  const choices: Choice[] = pools.flatMap(({ candidates }, at) =>
    unlike(problem, at, candidates).map((candidate): Choice => ({ moment: at, candidate, column: builder.choice() })),
  );
  for (const { changes, candidates } of ways) {
    const opened = candidates.map((candidate): Choice => ({ moment: index, candidate, column: builder.choice() }));
    for (const column of changes.map(gate)) {
      for (const choice of opened)
        builder.atMost(0, [
          [choice.column, 1],
          [column, -1],
        ]);
    }
    choices.push(...opened);
  }
  const lastWorn = Math.max(...problem.moments.map(({ day }) => day));
  const washDays = Array.from({ length: lastWorn }, (_, day) => day)
    .filter((day) => !problem.washDays.includes(day))
    .map((day) => ({ day, column: gate({ kind: 'wash day', day }) }));
  const offered = question.wardrobe?.pieces.filter(({ id }) => !problem.pieces.has(id)) ?? [];
  const larger = withPieces(problem, offered);
  const unserved = addChoiceRows(builder, larger, choices, () => 0, washDays);
  const added = [...gates.values()].flatMap(({ change, column }) => (change.kind === 'piece' ? [column] : []));
  const leaving = addRoomRows(builder, question, choices, added);
  builder.fix(unserved[index] ?? 0, 0);
  const others = unserved.flatMap((column, at): Term[] => (at === index ? [] : [[column, 1]]));
  builder.atMost(assignment.filter((candidate, at) => candidate === undefined && at !== index).length, others);

  const mends: PlanMend[] = [];
  while (mends.length < MENDS) {
    const solved = await solver.solve(builder.done());
    const open = [...gates.values()].filter(({ column }) => solved.values[column] === 1);
    if (solved.values.length === 0 || open.length === 0) break;
    const serves = unserved.flatMap((column, at) =>
      assignment[at] === undefined && solved.values[column] === 0 ? (problem.moments[at]?.occasion.id ?? []) : [],
    );
    const left = leaving.filter(({ column }) => solved.values[column] === 1);
    const changes = [
      ...open.map(({ change }) => change),
      ...left.map(({ piece }): Change => ({ kind: 'leave', piece })),
    ];
    mends.push({ ...mendOf(changes, moment.occasion, brief, question.capsule), serves });
    builder.atMost(
      open.length - 1,
      noWorse(open, [...gates.values()]).map(({ column }): Term => [column, 1]),
    );
  }
  return mends;
};

/** A mend's changes, and with a number of degrees every larger number: none of that is worth telling after it. */
const noWorse = (open: readonly Gate[], gates: readonly Gate[]): readonly Gate[] => {
  const degrees = open.flatMap(({ change }) => (change.kind === 'degrees' ? [change.degrees] : []))[0];
  if (degrees === undefined) return open;
  const larger = gates.filter(({ change }) => change.kind === 'degrees' && change.degrees > degrees);
  return [...open, ...larger];
};

/** Mends for every occasion that has no look, by its place in the plan. */
export const findMends = async (question: MendQuestion): Promise<ReadonlyMap<number, readonly PlanMend[]>> => {
  const open = question.assignment.flatMap((candidate, index) => (candidate === undefined ? [index] : []));
  const mends = new Map<number, readonly PlanMend[]>();
  for (const index of open.slice(0, OCCASIONS)) mends.set(index, await mendsFor(question, index));
  return mends;
};
