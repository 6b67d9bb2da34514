import type { PlanProblem } from './problem.ts';
import type { ProgrammeBuilder, Term } from './programme.ts';
import { isDressed } from './seen.ts';
import type { Choice } from './serve.ts';

/** Costs of clothes that come again, for a programme in which an occasion without a look costs 1. */
const AGAIN_COST = 0.001;

interface DayColumn {
  readonly day: number;
  readonly column: number;
}

const isDressedAt = (problem: PlanProblem, { moment, dress }: Choice): boolean => {
  const asked = dress ?? problem.moments[moment]?.occasion.dress;
  return asked !== undefined && isDressed({ dress: asked });
};

const dayOf = (problem: PlanProblem, { moment }: Choice): number => problem.moments[moment]?.day ?? 0;

/** Choices that show the same; none that shows nothing. */
const alike = (choices: readonly Choice[], shown: (choice: Choice) => string): readonly (readonly Choice[])[] => {
  const groups = new Map<string, Choice[]>();
  for (const choice of choices) {
    const key = shown(choice);
    if (key === '') continue;
    const group = groups.get(key) ?? [];
    groups.set(key, group);
    group.push(choice);
  }
  return [...groups.values()];
};

/** A column a day that is chosen when one of the choices of that day is. */
const dayColumns = (
  builder: ProgrammeBuilder,
  problem: PlanProblem,
  choices: readonly Choice[],
): readonly DayColumn[] => {
  const byDay = new Map<number, Map<number, Term[]>>();
  for (const choice of choices) {
    const moments = byDay.get(dayOf(problem, choice)) ?? new Map<number, Term[]>();
    byDay.set(dayOf(problem, choice), moments);
    moments.set(choice.moment, [...(moments.get(choice.moment) ?? []), [choice.column, 1]]);
  }
  if (byDay.size < 2) return [];
  return [...byDay].map(([day, moments]) => {
    const column = builder.choice();
    for (const terms of moments.values()) builder.atMost(0, [...terms, [column, -1]]);
    return { day, column };
  });
};

const terms = (columns: readonly DayColumn[]): readonly Term[] => columns.map(({ column }): Term => [column, 1]);

/** What is seen at an occasion people dress for is seen at no other such day, but where the stylist fixed it so. */
export const addSeenOnceRows = (builder: ProgrammeBuilder, problem: PlanProblem, choices: readonly Choice[]): void => {
  const dressed = choices.filter((choice) => isDressedAt(problem, choice));
  for (const same of alike(dressed, ({ moment, candidate }) => problem.seen(moment, candidate))) {
    const meant = new Set(same.filter(({ candidate }) => candidate.fixed).map((choice) => dayOf(problem, choice)));
    const free = same.filter(({ candidate }) => !candidate.fixed);
    if (meant.size === 0) {
      const columns = dayColumns(builder, problem, free);
      if (columns.length > 0) builder.atMost(1, terms(columns));
    } else for (const choice of free) if (!meant.has(dayOf(problem, choice))) builder.fix(choice.column, 0);
  }
};

/** Each day beyond the first on which some choices show the same costs a little. */
const addAgainRow = (builder: ProgrammeBuilder, columns: readonly DayColumn[]): void => {
  if (columns.length < 2) return;
  const more = columns.slice(1).map((): Term => [builder.choice(AGAIN_COST), -1]);
  builder.atMost(1, [...terms(columns), ...more]);
};

/** Costs for the repeats of `repeatsOf`, each much smaller than an occasion without a look. */
export const addRepeatRows = (builder: ProgrammeBuilder, problem: PlanProblem, choices: readonly Choice[]): void => {
  const land = choices.filter(({ moment, candidate }) => problem.seen(moment, candidate) !== '');
  for (const same of alike(land, ({ moment, candidate }) => problem.seen(moment, candidate)))
    addAgainRow(builder, dayColumns(builder, problem, same));
  for (const same of alike(land, ({ candidate }) => candidate.core)) {
    const columns = dayColumns(builder, problem, same);
    for (const first of columns) {
      for (const next of columns.filter(({ day }) => day === first.day + 1)) addAgainRow(builder, [first, next]);
    }
    addAgainRow(
      builder,
      dayColumns(
        builder,
        problem,
        same.filter((choice) => isDressedAt(problem, choice)),
      ),
    );
  }
};
