import type { Piece } from '../model/index.ts';
import type { DressCode } from '../vocabulary/index.ts';
import type { Candidate, Pool } from './candidates.ts';
import type { Moment } from './moments.ts';
import type { Assignment, PlanProblem } from './problem.ts';
import { buildProgramme, type ProgrammeBuilder, type Solver, type Term } from './programme.ts';
import { addRepeatRows, addSeenOnceRows } from './seen-rows.ts';
import { dryAt, isWashable, stillWet, wearsOf } from './washing.ts';

/** Terms that add up to 1 when a piece is worn at an occasion; empty when it cannot be. */
export type Uses = (moment: number, piece: string) => readonly Term[];

/** A wash day that only counts when its column is chosen. */
export interface OptionalWashDay {
  readonly day: number;
  readonly column: number;
}

/** Rows for wears between washes, washing and drying. The same for real candidates and for the relaxation. */
export const addCalendarRows = (
  builder: ProgrammeBuilder,
  problem: PlanProblem,
  pieces: readonly Piece[],
  uses: Uses,
  optional: readonly OptionalWashDay[] = [],
): void => {
  for (const piece of pieces) {
    if (piece.places.includes('swim')) addDryingRows(builder, problem, piece, uses);
    else addWearRows(builder, problem, piece, uses, optional);
  }
};

const addDryingRows = (builder: ProgrammeBuilder, problem: PlanProblem, piece: Piece, uses: Uses): void => {
  problem.moments.forEach((later, index) => {
    const now = uses(index, piece.id);
    if (now.length === 0) return;
    problem.moments.slice(0, index).forEach((earlier, before) => {
      const then = uses(before, piece.id);
      if (then.length > 0 && stillWet(piece, earlier.end, later.start)) builder.atMost(1, [...then, ...now]);
    });
  });
};

interface DayColumn {
  readonly day: number;
  readonly column: number;
}

const addWearRows = (
  builder: ProgrammeBuilder,
  problem: PlanProblem,
  piece: Piece,
  uses: Uses,
  optional: readonly OptionalWashDay[],
): void => {
  const worn = new Map<number, number>();
  problem.moments.forEach(({ day }, index) => {
    const terms = uses(index, piece.id);
    if (terms.length === 0) return;
    const column = worn.get(day) ?? builder.choice();
    worn.set(day, column);
    builder.atMost(0, [...terms, [column, -1]]);
  });
  const wornDays: readonly DayColumn[] = [...worn].map(([day, column]) => ({ day, column }));
  const limit = wearsOf(piece);
  if (wornDays.length <= limit) return;
  const washes = isWashable(piece) ? washColumns(builder, problem, piece, wornDays, uses, optional) : [];
  const edges = [Number.NEGATIVE_INFINITY, ...washes.map(({ day }) => day), Number.POSITIVE_INFINITY];
  for (let from = 0; from < edges.length - 1; from += 1) {
    for (let to = from + 1; to < edges.length; to += 1) {
      const inside = wornDays.filter(({ day }) => day > (edges[from] ?? 0) && day <= (edges[to] ?? 0));
      const between = washes.slice(from, to - 1);
      if (inside.length <= limit) continue;
      builder.atMost(limit, [
        ...inside.map(({ column }): Term => [column, 1]),
        ...between.map(({ column }): Term => [column, -limit]),
      ]);
    }
  }
};

/** What comes off after the hour of the wash is dry later: it does not go with the wash and a wearing before that. */
const addLateRows = (
  builder: ProgrammeBuilder,
  problem: PlanProblem,
  piece: Piece,
  wash: DayColumn,
  later: Moment,
  terms: readonly Term[],
  uses: Uses,
): void => {
  problem.moments.forEach((late, index) => {
    const then = late.day === wash.day ? uses(index, piece.id) : [];
    if (then.length > 0 && later.start < dryAt(piece, wash.day, late.end))
      builder.atMost(2, [...terms, ...then, [wash.column, 1]]);
  });
};

const washColumns = (
  builder: ProgrammeBuilder,
  problem: PlanProblem,
  piece: Piece,
  wornDays: readonly DayColumn[],
  uses: Uses,
  optional: readonly OptionalWashDay[],
): readonly DayColumn[] => {
  const gates = new Map(optional.map(({ day, column }) => [day, column]));
  return [...new Set([...problem.washDays, ...gates.keys()])]
    .sort((a, b) => a - b)
    .filter((washDay) => wornDays.some(({ day }) => day <= washDay) && wornDays.some(({ day }) => day > washDay))
    .map((washDay) => {
      const column = builder.choice();
      const gate = problem.washDays.includes(washDay) ? undefined : gates.get(washDay);
      if (gate !== undefined)
        builder.atMost(0, [
          [column, 1],
          [gate, -1],
        ]);
      const dry = dryAt(piece, washDay);
      problem.moments.forEach((moment, index) => {
        const terms = uses(index, piece.id);
        if (terms.length === 0 || moment.day <= washDay) return;
        if (moment.start < dry) builder.atMost(1, [...terms, [column, 1]]);
        else addLateRows(builder, problem, piece, { day: washDay, column }, moment, terms, uses);
      });
      return { day: washDay, column };
    });
};

/** One way of serving one occasion, and the columns that must be chosen with it. */
export interface Choice {
  readonly moment: number;
  readonly candidate: Candidate;
  readonly column: number;
  /** The occasion's dress code, where a mend writes another. */
  readonly dress?: DressCode;
}

/** Rows that give every occasion at most one choice, keep looks apart by days, and keep the calendar. Returns unserved columns. */
export const addChoiceRows = (
  builder: ProgrammeBuilder,
  problem: PlanProblem,
  choices: readonly Choice[],
  unservedCost: (moment: number) => number,
  optional: readonly OptionalWashDay[] = [],
): readonly number[] => {
  const byMoment = problem.moments.map((): Choice[] => []);
  for (const choice of choices) byMoment[choice.moment]?.push(choice);
  const unserved = byMoment.map((ways, moment) => {
    const column = builder.choice(unservedCost(moment));
    builder.exactly(1, [[column, 1], ...ways.map((way): Term => [way.column, 1])]);
    return column;
  });
  addSeenOnceRows(builder, problem, choices);
  const uses = new Map<string, Map<number, Term[]>>();
  for (const { moment, candidate, column } of choices) {
    for (const piece of candidate.pieces) {
      if (!problem.limited.has(piece)) continue;
      const moments = uses.get(piece) ?? new Map<number, Term[]>();
      uses.set(piece, moments);
      moments.set(moment, [...(moments.get(moment) ?? []), [column, 1]]);
    }
  }
  const limited = [...problem.pieces.values()].filter(({ id }) => uses.has(id));
  addCalendarRows(builder, problem, limited, (moment, piece) => uses.get(piece)?.get(moment) ?? [], optional);
  return unserved;
};

export interface Served {
  readonly assignment: Assignment;
  readonly unserved: number;
  /** True when no choice from these pools serves more. */
  readonly best: boolean;
}

/** Of candidates that use the same limited pieces and would be seen as the same look, the first: the rest cannot serve more. */
export const unlike = (
  problem: PlanProblem,
  moment: number,
  candidates: readonly Candidate[],
): readonly Candidate[] => {
  const known = new Set<string>();
  return candidates.filter((candidate) => {
    const limited = candidate.pieces.filter((piece) => problem.limited.has(piece)).sort();
    const key = `${problem.seen(moment, candidate)}|${limited.join('+')}|${candidate.fixed}`;
    return !known.has(key) && known.add(key);
  });
};

/** Serves as many occasions from the pools as can be, by the solver; on request with as few clothes seen again as can be. */
export const serveMost = async (
  problem: PlanProblem,
  pools: readonly Pool[],
  solver: Solver,
  { fewRepeats = false }: { readonly fewRepeats?: boolean } = {},
): Promise<Served> => {
  const builder = buildProgramme();
  const choices = pools.flatMap(({ candidates }, moment) =>
    unlike(problem, moment, candidates).map((candidate): Choice => ({ moment, candidate, column: builder.choice() })),
  );
  const unserved = addChoiceRows(builder, problem, choices, () => 1);
  if (fewRepeats) addRepeatRows(builder, problem, choices);
  const solved = await solver.solve(builder.done());
  const assignment = problem.moments.map(
    (_, moment) => choices.find((choice) => choice.moment === moment && solved.values[choice.column] === 1)?.candidate,
  );
  return {
    assignment,
    unserved: unserved.filter((_, moment) => assignment[moment] === undefined).length,
    best: solved.status === 'optimal',
  };
};
