import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { assignToBags, costOf, type Item } from '../../lib/bag/index.ts';
import type { Bag } from '../../lib/model/index.ts';
import type { Solver } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const bag = (litres: number, limitKg?: number): Bag => ({
  name: 'bag',
  role: 'cabin',
  litres,
  ownGrams: 500,
  ...(limitKg === undefined ? {} : { limitKg }),
});

const item = fc.record({
  grams: fc.integer({ min: 20, max: 1500 }),
  litres: fc.integer({ min: 1, max: 70 }).map((tenths) => tenths / 10),
  cost: fc.array(fc.option(fc.integer({ min: 0, max: 9 }), { nil: undefined }), { minLength: 3, maxLength: 3 }),
  worn: fc.uniqueArray(fc.integer({ min: 0, max: 1 }), { maxLength: 2 }),
});

const everyAssignment = function* (items: number, bags: number): Generator<readonly number[]> {
  for (let code = 0; code < bags ** items; code += 1) {
    yield Array.from({ length: items }, (_, index) => Math.floor(code / bags ** index) % bags);
  }
};

const allowed = (items: readonly Item[], assigned: readonly number[]): boolean =>
  items.every(
    ({ places }, index) => places.every((cost) => cost === undefined) || places[assigned[index] ?? 0] !== undefined,
  );

describe('things into bags', () => {
  it('costs what the best of every assignment costs', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(item, { minLength: 1, maxLength: 6 }),
        fc.integer({ min: 2, max: 3 }),
        fc.array(fc.integer({ min: 2, max: 12 }), { minLength: 3, maxLength: 3 }),
        fc.option(fc.integer({ min: 10, max: 40 }), { nil: undefined }),
        async (drawn, count, litres, tenths) => {
          const bags = litres
            .slice(0, count)
            .map((size, index) => bag(size, index === 0 && tenths !== undefined ? tenths / 10 : undefined));
          const items = drawn.map(({ grams, litres: each, cost, worn }) => ({
            grams,
            litres: each,
            places: cost.slice(0, count),
            wornOn: new Set(worn),
          }));
          let best = Number.POSITIVE_INFINITY;
          for (const assigned of everyAssignment(items.length, count)) {
            if (allowed(items, assigned)) best = Math.min(best, costOf(items, bags, 2, assigned));
          }
          const found = await assignToBags(items, bags, 2, solver);
          expect(allowed(items, found.bags)).toBe(true);
          expect(costOf(items, bags, 2, found.bags)).toBe(best);
        },
      ),
      { numRuns: 60, seed: 7 },
    );
  });

  it('still puts everything somewhere when the solver gives nothing', async () => {
    const broken: Solver = { solve: async () => ({ status: 'failed', values: [], bound: 0 }) };
    const items: Item[] = [4, 3, 2].map((litres) => ({ grams: 100, litres, places: [0, 1], wornOn: new Set() }));
    const found = await assignToBags(items, [bag(4), bag(6)], 0, broken);
    expect(found.proven).toBe(false);
    expect(costOf(items, [bag(4), bag(6)], 0, found.bags)).toBeLessThan(10_000);
  });

  it('counts a bag without room as full', () => {
    const one: Item = { grams: 100, litres: 1, places: [0], wornOn: new Set() };
    expect(costOf([one], [bag(0, 0)], 0, [0])).toBeGreaterThan(0);
  });
});
