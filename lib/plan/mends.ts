import type { Brief, Piece, PlanMend } from '../model/index.ts';
import { DRESS_CODES, type DressCode, dressIndex, type Need } from '../vocabulary/index.ts';
import { phrase } from '../words/index.ts';
import { type Candidate, candidatesFor, leftForLater, type Pool, withoutPieces } from './candidates.ts';
import type { LookRestriction, LookSource } from './look-source.ts';
import { addDays, type Moment, requiredAt, restrictionOf } from './moments.ts';
import type { Assignment, PlanProblem } from './problem.ts';
import { buildProgramme, type Solver, type Term } from './programme.ts';
import { addChoiceRows, type Choice, unlike } from './serve.ts';

/** The wardrobe behind the capsule: what else the client could pack. */
export interface WardrobeBehind {
  /** All pieces, those of the capsule among them. */
  readonly pieces: readonly Piece[];
  /** A look source over all of them. */
  readonly engine: LookSource;
}

/** One small change to the trip or the bag. */
type Change =
  | { readonly kind: 'piece'; readonly piece: Piece }
  | { readonly kind: 'wash day'; readonly day: number }
  | { readonly kind: 'dress'; readonly dress: DressCode }
  | { readonly kind: 'need'; readonly need: Need }
  | { readonly kind: 'degrees'; readonly degrees: number }
  | { readonly kind: 'free' };

/** How much a change asks of the client. Own choice: a piece or a wash is easy, a rule of the occasion is not. */
const costOf = (change: Change): number => {
  if (change.kind === 'wash day') return 10;
  if (change.kind === 'piece') return 12 + change.piece.grams.value / 1000;
  if (change.kind === 'free') return 11;
  if (change.kind === 'degrees') return 9 + 3 * change.degrees;
  return change.kind === 'dress' ? 15 : 24;
};

const DEGREES = [1, 2, 3] as const;
const LOOKS_A_CHANGE = 12;
/** Mends told for one occasion, and occasions they are sought for. */
const MENDS = 3;
const OCCASIONS = 6;
const EXTRA_PIECES = 80;

interface Way {
  readonly change: Change;
  readonly candidates: readonly Candidate[];
}

export interface MendQuestion {
  readonly brief: Brief;
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

const looks = (source: LookSource, restriction: LookRestriction): readonly Candidate[] =>
  candidatesFor(source, restriction, [], { asked: LOOKS_A_CHANGE }).candidates;

const looserDress = (code: DressCode): readonly DressCode[] =>
  [dressIndex(code) - 1, dressIndex(code) + 1].flatMap((index) => DRESS_CODES[index] ?? []);

const degreeWays = (
  brief: Brief,
  moment: Moment,
  ask: (r: LookRestriction) => readonly Candidate[],
): readonly Way[] => {
  const { air, occasion, place } = moment;
  if (air === undefined || moment.restriction.clo === undefined) return [];
  return DEGREES.map((degrees) => ({
    change: { kind: 'degrees', degrees },
    candidates: ask(restrictionOf(occasion, requiredAt(occasion, place, air, degrees), brief.avoid.heelCmOver)),
  }));
};

/** Looks that one change to the occasion itself would open. */
const occasionWays = (question: MendQuestion, moment: Moment, isFixed: boolean): readonly Way[] => {
  const { brief, source, problem } = question;
  const later = leftForLater(moment, [...problem.pieces.values()]);
  const ask = (restriction: LookRestriction): readonly Candidate[] => looks(source, withoutPieces(restriction, later));
  const { restriction, occasion } = moment;
  return [
    ...(isFixed ? [{ change: { kind: 'free' } as const, candidates: ask(restriction) }] : []),
    ...looserDress(occasion.dress).map(
      (dress): Way => ({ change: { kind: 'dress', dress }, candidates: ask({ ...restriction, dress }) }),
    ),
    ...occasion.needs
      .filter((need) => need !== 'swim')
      .map(
        (need): Way => ({
          change: { kind: 'need', need },
          candidates: ask({ ...restriction, needs: occasion.needs.filter((other) => other !== need) }),
        }),
      ),
    ...degreeWays(brief, moment, ask),
  ];
};

/** Looks that one more piece of the wardrobe would open, whatever else is in it left at home. */
const pieceWays = (question: MendQuestion, moment: Moment): readonly Way[] => {
  const { wardrobe, problem, refused } = question;
  if (wardrobe === undefined) return [];
  const outside = wardrobe.pieces.filter(({ id }) => !problem.pieces.has(id));
  const later = leftForLater(moment, wardrobe.pieces);
  return outside
    .filter(({ id }) => !later.includes(id) && !refused.has(id))
    .slice(0, EXTRA_PIECES)
    .map((piece): Way => {
      const others = outside.filter(({ id }) => id !== piece.id).map(({ id }) => id);
      const restriction = withoutPieces({ ...moment.restriction, pieces: [piece.id] }, [...others, ...later]);
      return { change: { kind: 'piece', piece }, candidates: looks(wardrobe.engine, restriction) };
    });
};

interface Gate {
  readonly change: Change;
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
  const isFixed = question.fixed.has(index);
  const ways = [...occasionWays(question, moment, isFixed), ...pieceWays(question, moment)].filter(
    ({ candidates }) => candidates.length > 0,
  );
  const builder = buildProgramme();
  const gates: Gate[] = [];
  const gate = (change: Change): number => {
    const column = builder.choice(costOf(change));
    gates.push({ change, column });
    return column;
  };
  const choices: Choice[] = pools.flatMap(({ candidates }, at) =>
    unlike(problem, candidates).map((candidate): Choice => ({ moment: at, candidate, column: builder.choice() })),
  );
  for (const { change, candidates } of ways) {
    const column = gate(change);
    const opened = candidates.map((candidate): Choice => ({ moment: index, candidate, column: builder.choice() }));
    for (const choice of opened)
      builder.atMost(0, [
        [choice.column, 1],
        [column, -1],
      ]);
    choices.push(...opened);
  }
  const lastWorn = Math.max(...problem.moments.map(({ day }) => day));
  const washDays = Array.from({ length: lastWorn }, (_, day) => day)
    .filter((day) => !problem.washDays.includes(day))
    .map((day) => ({ day, column: gate({ kind: 'wash day', day }) }));
  const offered = question.wardrobe?.pieces.filter(({ id }) => !problem.pieces.has(id)) ?? [];
  const larger: PlanProblem = {
    ...problem,
    pieces: new Map([...problem.pieces, ...offered.map((piece): [string, Piece] => [piece.id, piece])]),
  };
  const unserved = addChoiceRows(builder, larger, choices, () => 0, washDays);
  builder.fix(unserved[index] ?? 0, 0);
  const others = unserved.flatMap((column, at): Term[] => (at === index ? [] : [[column, 1]]));
  builder.atMost(assignment.filter((candidate, at) => candidate === undefined && at !== index).length, others);

  const mends: PlanMend[] = [];
  while (mends.length < MENDS) {
    const solved = await solver.solve(builder.done());
    const open = gates.filter(({ column }) => solved.values[column] === 1);
    if (solved.values.length === 0 || open.length === 0) break;
    const serves = unserved.flatMap((column, at) =>
      assignment[at] === undefined && solved.values[column] === 0 ? (problem.moments[at]?.occasion.id ?? []) : [],
    );
    mends.push({
      what: mendPhrase(
        brief,
        moment,
        open.map(({ change }) => change),
      ),
      serves,
    });
    builder.atMost(
      open.length - 1,
      noWorse(open, gates).map(({ column }): Term => [column, 1]),
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

const mendPhrase = (brief: Brief, moment: Moment, changes: readonly Change[]): PlanMend['what'] =>
  phrase('plan', 'mend', {
    pieces: changes.flatMap((change) => (change.kind === 'piece' ? [change.piece.name] : [])),
    washDays: changes.flatMap((change) => (change.kind === 'wash day' ? [addDays(brief.from, change.day)] : [])),
    dress: changes.find((change) => change.kind === 'dress')?.dress ?? '',
    needs: changes.flatMap((change) => (change.kind === 'need' ? [change.need] : [])),
    degrees: Math.max(0, ...changes.map((change) => (change.kind === 'degrees' ? change.degrees : 0))),
    free: changes.filter(({ kind }) => kind === 'free').length,
    occasion: moment.occasion.what,
  });

/** Mends for every occasion that has no look, by its place in the plan. */
export const findMends = async (question: MendQuestion): Promise<ReadonlyMap<number, readonly PlanMend[]>> => {
  const open = question.assignment.flatMap((candidate, index) => (candidate === undefined ? [index] : []));
  const mends = new Map<number, readonly PlanMend[]>();
  for (const index of open.slice(0, OCCASIONS)) mends.set(index, await mendsFor(question, index));
  return mends;
};
