import { describe, expect, it } from 'vitest';
import { buildProgramme, type Programme, type Term } from '../../lib/plan/programme.ts';
import { seededRandom } from '../../lib/plan/random.ts';
import { loadSolver } from '../../lib/solver/index.ts';

/**
 * Market split: rows of random numbers, each to be halved exactly by one choice of columns. Small, and beyond branch and
 * bound. Source: Cornuéjols and Dawande, A class of hard small 0-1 programs, IPCO 1998 (from memory).
 */
const marketSplit = (rows: number): Programme => {
  const random = seededRandom(7);
  const builder = buildProgramme();
  const columns = Array.from({ length: 10 * (rows - 1) }, () => builder.choice(Math.floor(random() * 100)));
  for (let row = 0; row < rows; row += 1) {
    const terms = columns.map((column): Term => [column, Math.floor(random() * 100)]);
    builder.exactly(Math.floor(terms.reduce((sum, [, factor]) => sum + factor, 0) / 2), terms);
  }
  return builder.done();
};

/** Choose at most `limit` by weight, for the most worth; and the best by trying everything. */
const knapsack = (seed: number): { readonly programme: Programme; readonly best: number } => {
  const random = seededRandom(seed);
  const items = Array.from({ length: 12 }, () => ({
    weight: 1 + Math.floor(random() * 20),
    worth: Math.ceil(random() * 30),
  }));
  const builder = buildProgramme();
  const limit = 50;
  builder.atMost(
    limit,
    items.map(({ weight, worth }): Term => [builder.choice(-worth), weight]),
  );
  let best = 0;
  for (let chosen = 0; chosen < 2 ** items.length; chosen += 1) {
    const taken = items.filter((_, index) => (chosen & (2 ** index)) !== 0);
    const weight = taken.reduce((sum, item) => sum + item.weight, 0);
    if (weight <= limit)
      best = Math.max(
        best,
        taken.reduce((sum, item) => sum + item.worth, 0),
      );
  }
  return { programme: builder.done(), best };
};

describe('the solver', () => {
  it.each([1, 2, 3, 4, 5])('finds what trying everything finds, seed %i', async (seed) => {
    const { programme, best } = knapsack(seed);
    const { status, values, bound } = await (await loadSolver()).solve(programme);
    expect(status).toBe('optimal');
    expect(-values.reduce((sum, value, column) => sum + value * (programme.costs[column] ?? 0), 0)).toBe(best);
    expect(bound).toBeCloseTo(-best, 6);
  });

  it('stops a programme that runs long after a count of its work, with the same answer every time', async () => {
    const solver = await loadSolver({ lpIterations: 1500 });
    const hard = marketSplit(6);
    const first = await solver.solve(hard);
    expect(['limit', 'failed']).toContain(first.status);
    expect(await solver.solve(hard)).toEqual(first);
    // it goes on answering afterwards
    const { programme, best } = knapsack(9);
    expect((await solver.solve(programme)).bound).toBeCloseTo(-best, 6);
  });

  it('says that a programme has no answer', async () => {
    const builder = buildProgramme();
    const column = builder.choice();
    builder.exactly(2, [[column, 1]]);
    expect((await (await loadSolver()).solve(builder.done())).status).toBe('infeasible');
  });

  it('takes an empty programme, and survives a broken one', async () => {
    const solver = await loadSolver();
    expect(await solver.solve(buildProgramme().done())).toMatchObject({ status: 'optimal', values: [] });
    const broken: Programme = { costs: [1], lowers: [0], uppers: [1], rows: [{ low: 0, high: 1, terms: [[5, 1]] }] };
    expect((await solver.solve(broken)).status).toBe('failed');
  });

  it('gives the memory of one programme to the next', async () => {
    const solver = await loadSolver();
    const wide = buildProgramme();
    for (let row = 0; row < 200; row += 1) {
      wide.exactly(
        1,
        Array.from({ length: 40 }, (_, column): Term => [wide.choice(column), 1]),
      );
    }
    const programme = wide.done();
    // the memory of WebAssembly is counted as external
    const growthMb = async (solves: number): Promise<number> => {
      const before = process.memoryUsage().external;
      for (let round = 0; round < solves; round += 1) await solver.solve(programme);
      return (process.memoryUsage().external - before) / 2 ** 20;
    };
    await growthMb(5);
    // kept, each would take half a megabyte and more
    expect(await growthMb(50)).toBeLessThan(10);
  });
});
