/** One entry of a row: which column, and how often it counts. */
export type Term = readonly [column: number, factor: number];

/** A mixed-integer programme to be minimised, as plain data. */
export interface Programme {
  readonly costs: readonly number[];
  readonly lowers: readonly number[];
  readonly uppers: readonly number[];
  readonly rows: readonly { readonly low: number; readonly high: number; readonly terms: readonly Term[] }[];
}

export interface Solved {
  /** `limit`: stopped at the node limit with a feasible answer; `failed`: no answer, or the solver broke. */
  readonly status: 'optimal' | 'limit' | 'infeasible' | 'failed';
  /** Column values, whole numbers; empty without an answer. */
  readonly values: readonly number[];
  /** No answer can cost less. */
  readonly bound: number;
}

/** A solver of programmes whose columns are all whole numbers; handed in, so that the plan loads nothing itself. */
export interface Solver {
  solve(programme: Programme): Promise<Solved>;
}

/** Builds a programme column by column and row by row. */
export interface ProgrammeBuilder {
  /** A column that is 0 or 1; returns its index. */
  choice(cost?: number): number;
  /** Sets a bound of a column so that it keeps one value. */
  fix(column: number, value: 0 | 1): void;
  atMost(limit: number, terms: readonly Term[]): void;
  atLeast(limit: number, terms: readonly Term[]): void;
  exactly(value: number, terms: readonly Term[]): void;
  done(): Programme;
}

export const buildProgramme = (): ProgrammeBuilder => {
  const costs: number[] = [];
  const lowers: number[] = [];
  const uppers: number[] = [];
  const rows: { low: number; high: number; terms: readonly Term[] }[] = [];
  const row = (low: number, high: number, terms: readonly Term[]): void => {
    rows.push({ low, high, terms: merged(terms) });
  };
  return {
    choice: (cost = 0) => {
      lowers.push(0);
      uppers.push(1);
      return costs.push(cost) - 1;
    },
    fix: (column, value) => {
      lowers[column] = value;
      uppers[column] = value;
    },
    atMost: (limit, terms) => row(Number.NEGATIVE_INFINITY, limit, terms),
    atLeast: (limit, terms) => row(limit, Number.POSITIVE_INFINITY, terms),
    exactly: (value, terms) => row(value, value, terms),
    done: () => ({ costs, lowers, uppers, rows }),
  };
};

/** The solver refuses a row that names a column twice. */
const merged = (terms: readonly Term[]): readonly Term[] => {
  const factors = new Map<number, number>();
  for (const [column, factor] of terms) factors.set(column, (factors.get(column) ?? 0) + factor);
  return [...factors].sort((a, b) => a[0] - b[0]);
};
