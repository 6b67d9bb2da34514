import fc from 'fast-check';
import { expect, it } from 'vitest';
import { planTrip } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { mostServed } from './exhaustive.ts';
import { bruteForce } from './look-source.ts';
import { made, smallTrips } from './small-trips.ts';
import { brokenPlan } from './validator/index.ts';

it('serves as many as any plan can, says so truly, and breaks nothing', async () => {
  const solver = await loadSolver();
  const met = { short: 0, washed: 0, fixed: 0, rained: 0 };
  await fc.assert(
    fc.asyncProperty(smallTrips(6), async (random) => {
      const { trip, pieces, looks, clashes, capsule } = made(random);
      const engine = bruteForce(pieces, clashes);
      const plan = await planTrip({ brief: trip, traveller: 'Ada', capsule, pieces, engine, solver });
      expect(brokenPlan(plan, trip, pieces, capsule)).toEqual([]);
      expect(plan.served).toBe(mostServed({ brief: trip, pieces, looks, capsule }));
      expect(plan.proven).toBe(true);
      met.short += plan.unserved.length;
      met.washed += plan.days.flatMap(({ wash }) => wash).length;
      met.fixed += capsule.fixed.length;
      met.rained += trip.occasions.filter(({ needs }) => needs.includes('rain')).length;
    }),
    { numRuns: 250, seed: 7 },
  );
  // trips that ask too much, wash, have looks of the stylist and rain are all among them
  for (const count of Object.values(met)) expect(count).toBeGreaterThan(10);
});
