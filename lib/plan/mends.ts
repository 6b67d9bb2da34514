import type { Brief, Capsule, PlanMend } from '../model/index.ts';
import type { Pool } from './candidates.ts';
import type { LookSource } from './look-source.ts';
import { type Change, mendOf, type Opening } from './mend.ts';
import { type WardrobeBehind, type Way, waysToServe } from './mend-ways.ts';
import { type Assignment, type PlanProblem, withPieces } from './problem.ts';
import { buildProgramme, type Solver, type Term } from './programme.ts';
import { addRoomRows } from './room-in-bag.ts';
import { addChoiceRows, type Choice, unlike } from './serve.ts';

/**
 * How much a change asks of the client. Own choice: a piece or a wash is easy, to be colder is not, and a rule of the
 * occasion less still. Any one change asks less than two pieces or leniencies together, which are sought only where
 * no single one serves.
 */
const costOf = (change: Opening): number => {
  if (change.kind === 'wash day') return 10;
  if (change.kind === 'piece') return 12 + change.piece.grams.value / 1000;
  if (change.kind === 'free') return 11;
  if (change.kind === 'degrees') return 13 + 3 * change.degrees;
  return change.kind === 'dress' ? 18 : 23;
};

/** Of mends that ask as much, the one that serves more occasions at once. */
const STILL_UNSERVED_COST = 1e-4;
/** No two changes that are sought together ask less; each asks at least as much as a piece that weighs nothing. */
const LEAST_OF_TWO = 24;
/** Mends told for one occasion, and occasions they are sought for. */
const MENDS = 3;
const OCCASIONS = 10;

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

interface Cheapest {
  /** Best first. */
  readonly mends: readonly PlanMend[];
  /** What the best asks of the client; endless where there is none. */
  readonly least: number;
}

interface Gate {
  readonly change: Opening;
  readonly column: number;
}

/** The smallest changes that would let one occasion be served without losing another, best first. */
const mendsFor = async (question: MendQuestion, index: number): Promise<readonly PlanMend[]> => {
  const moment = question.problem.moments[index];
  if (moment === undefined) return [];
  // in such cold only warmer clothes are a way out, and no leniency
  const allowed = ({ changes }: Way): boolean =>
    moment.beyondClothes === undefined || changes.every(({ kind }) => kind === 'piece');
  const { one, two } = waysToServe(question, index, question.fixed.has(index));
  const { mends, least } = await cheapestMends(question, index, one.filter(allowed));
  if (least <= LEAST_OF_TWO) return mends;
  return (await cheapestMends(question, index, [...one, ...two()].filter(allowed))).mends;
};

/**
 * All changes go into one programme, each behind a column with a cost; the cheapest set that serves is told, forbidden,
 * and sought again.
 */
const cheapestMends = async (question: MendQuestion, index: number, ways: readonly Way[]): Promise<Cheapest> => {
  const { brief, problem, pools, assignment, solver } = question;
  const moment = problem.moments[index];
  if (moment === undefined) return { mends: [], least: Number.POSITIVE_INFINITY };
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
  for (const { moment: at, changes, candidates } of ways) {
    const dress = changes.find((change) => change.kind === 'dress')?.dress;
    const opened = candidates.map(
      (candidate): Choice => ({
        moment: at,
        candidate,
        column: builder.choice(),
        ...(dress === undefined ? {} : { dress }),
      }),
    );
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
  const unserved = addChoiceRows(builder, larger, choices, () => STILL_UNSERVED_COST, washDays);
  const added = [...gates.values()].flatMap(({ change, column }) => (change.kind === 'piece' ? [column] : []));
  const leaving = addRoomRows(builder, question, choices, added);
  unserved.forEach((column, at) => {
    if (at === index || assignment[at] !== undefined) builder.fix(column, 0);
  });

  const mends: PlanMend[] = [];
  let least = Number.POSITIVE_INFINITY;
  while (mends.length < MENDS) {
    const solved = await solver.solve(builder.done());
    const open = [...gates.values()].filter(({ column }) => solved.values[column] === 1);
    if (solved.values.length === 0 || open.length === 0) break;
    const serves = unserved.flatMap((column, at) =>
      assignment[at] === undefined && solved.values[column] === 0 ? (problem.moments[at]?.occasion.id ?? []) : [],
    );
    least = Math.min(
      least,
      open.reduce((sum, { change }) => sum + costOf(change), 0),
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
  return { mends, least };
};

/** A mend's changes, and with a number of degrees every larger number: none of that is worth telling after it. */
const noWorse = (open: readonly Gate[], gates: readonly Gate[]): readonly Gate[] => {
  const degrees = open.flatMap(({ change }) => (change.kind === 'degrees' ? [change.degrees] : []))[0];
  if (degrees === undefined) return open;
  const larger = gates.filter(({ change }) => change.kind === 'degrees' && change.degrees > degrees);
  return [...open, ...larger];
};

/** Mends by the place of their occasion in the plan, for the first few that have no look; the others have no entry. */
export const findMends = async (question: MendQuestion): Promise<ReadonlyMap<number, readonly PlanMend[]>> => {
  const open = question.assignment.flatMap((candidate, index) => (candidate === undefined ? [index] : []));
  const mends = new Map<number, readonly PlanMend[]>();
  for (const index of open.slice(0, OCCASIONS)) mends.set(index, await mendsFor(question, index));
  return mends;
};
