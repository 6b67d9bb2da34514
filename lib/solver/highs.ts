import highsLoader from 'highs';
import type { Programme, Solved, Solver } from '../plan/programme.ts';

/**
 * Work after which the best answer so far is taken: counts, not a clock, so that answers stay the same on any machine.
 * Plans of 60 pieces and 36 occasions need under 3,000 iterations a programme; this many take some ten seconds.
 */
const NODES_AT_MOST = 20_000;
const LP_ITERATIONS_AT_MOST = 60_000;
const SEED = 1;

export interface SolverLimits {
  /** Simplex iterations over all relaxations of one programme; looked at between nodes and rounds of cuts. */
  readonly lpIterations?: number;
}

/** The package's types are written for CommonJS, where the default is a property; the module itself exports it. */
const loadHighs = highsLoader as unknown as typeof highsLoader.default;

const FAILED: Solved = { status: 'failed', values: [], bound: Number.NEGATIVE_INFINITY };

/**
 * HiGHS as the plan's solver. One engine in WebAssembly; each programme is freed before the next, and stopped from
 * inside when it runs long, so that no other thread has to end it.
 */
export const loadSolver = async (limits: SolverLimits = {}): Promise<Solver> => {
  const highs = await loadHighs();
  const { callbackType, modelStatus, solutionStatus, variableType } = highs.constants;
  const lpIterations = limits.lpIterations ?? LP_ITERATIONS_AT_MOST;

  const solveNow = (programme: Programme): Solved => {
    const { costs, lowers, uppers, rows } = programme;
    const starts = new Int32Array(rows.length + 1);
    rows.forEach(({ terms }, index) => {
      starts[index + 1] = (starts[index] ?? 0) + terms.length;
    });
    const bounded = (value: number): number =>
      value === Number.NEGATIVE_INFINITY
        ? -highs.infinity
        : value === Number.POSITIVE_INFINITY
          ? highs.infinity
          : value;
    const model = highs.createModel({
      numCols: costs.length,
      numRows: rows.length,
      colCost: Float64Array.from(costs),
      colLower: Float64Array.from(lowers),
      colUpper: Float64Array.from(uppers),
      rowLower: Float64Array.from(rows, ({ low }) => bounded(low)),
      rowUpper: Float64Array.from(rows, ({ high }) => bounded(high)),
      matrix: {
        format: 'csr',
        numRows: rows.length,
        numCols: costs.length,
        starts,
        indices: Int32Array.from(rows.flatMap(({ terms }) => terms.map(([column]) => column))),
        values: Float64Array.from(rows.flatMap(({ terms }) => terms.map(([, factor]) => factor))),
      },
      integrality: costs.map(() => variableType.integer),
    });
    try {
      model.options.set({
        output_flag: false,
        random_seed: SEED,
        mip_rel_gap: 0,
        mip_abs_gap: 1e-6,
        mip_max_nodes: NODES_AT_MOST,
      });
      model.run({
        [callbackType.mipInterrupt](event) {
          if (Number(event.data.mip_total_lp_iterations ?? 0) > lpIterations) event.interrupt();
        },
      });
      const status = model.getModelStatus();
      if (status === modelStatus.infeasible)
        return { status: 'infeasible', values: [], bound: Number.POSITIVE_INFINITY };
      if (Number(model.info.get('primal_solution_status')) !== solutionStatus.feasible) return FAILED;
      return {
        status: status === modelStatus.optimal ? 'optimal' : 'limit',
        values: Array.from(model.getSolution().colValue, Math.round),
        bound: Number(model.info.get('mip_dual_bound')),
      };
    } finally {
      model.dispose();
    }
  };

  return {
    solve: async (programme) => {
      if (programme.costs.length === 0) return { status: 'optimal', values: [], bound: 0 };
      try {
        return solveNow(programme);
      } catch {
        return FAILED;
      }
    },
  };
};
