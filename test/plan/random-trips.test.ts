import fc from 'fast-check';
import { beforeAll, expect, it } from 'vitest';
import type { Occasion } from '../../lib/model/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { planTrip, type Solver } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { ACTIVITIES, type ActivityId, DRESS_CODES, type KindId, NEEDS } from '../../lib/vocabulary/index.ts';
import { brief, capsule, occasion, piece, weather } from './trip.ts';
import { brokenPlan } from './validator/index.ts';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const KINDS_PACKED: readonly KindId[] = [
  't-shirt',
  'shirt',
  'blouse',
  'fine roll-neck',
  'chinos',
  'tailored trousers',
  'midi skirt',
  'wrap dress',
  'cardigan',
  'blazer',
  'wool coat',
  'rain jacket',
  'loafers',
  'walking shoes',
  'swimsuit',
  'sun hat',
  'scarf',
  'tote',
];
const PIECES = KINDS_PACKED.map((kind) => piece(kind.replaceAll(' ', '-'), kind));
const DAYS = 5;
const on = (day: number): string => `2027-10-0${2 + day}`;

const occasions = fc.array(
  fc.record({
    day: fc.integer({ min: 0, max: DAYS - 1 }),
    hour: fc.integer({ min: 6, max: 21 }),
    dress: fc.constantFrom(...DRESS_CODES.slice(0, 4)),
    activity: fc.constantFrom(...(Object.keys(ACTIVITIES) as ActivityId[])),
    // other needs beside a swim contradict it, and are findings of their own
    needs: fc
      .uniqueArray(fc.constantFrom(...NEEDS), { maxLength: 2 })
      .map((needs) => (needs.includes('swim') ? (['swim'] as const) : needs)),
    airC: fc.option(fc.integer({ min: 16, max: 30 })),
    degreesOff: fc.option(fc.integer({ min: 1, max: 5 })),
    transit: fc.boolean(),
  }),
  { minLength: 1, maxLength: 11 },
);
const trips = fc.record({
  occasions,
  wash: fc.uniqueArray(fc.integer({ min: 0, max: DAYS - 1 }), { maxLength: 2 }),
  lowC: fc.integer({ min: -15, max: 26 }),
  spread: fc.integer({ min: 0, max: 14 }),
  heelCmOver: fc.option(fc.integer({ min: 0, max: 8 })),
});

it('breaks no constraint on random trips, whatever they ask', async () => {
  const engine = createWardrobeEngine({ pieces: PIECES, rules: {}, never: [], always: [] });
  const source = {
    rank: engine.rank,
    explain: (ids: readonly string[], restriction = {}) => {
      const { goes, look } = engine.explain([...ids], restriction);
      return { goes, reasons: [], ...(look === undefined ? {} : { look }) };
    },
  };
  await fc.assert(
    fc.asyncProperty(trips, async ({ occasions: asked, wash, lowC, spread, heelCmOver }) => {
      const trip = brief({
        from: on(0),
        to: on(DAYS - 1),
        washDays: wash.toSorted().map(on),
        places: [{ name: 'Here', from: on(0), to: on(DAYS - 1), weather: weather(lowC, lowC + spread), days: {} }],
        avoid: { colours: [], fabrics: [], ...(heelCmOver === null ? {} : { heelCmOver }) },
        occasions: asked.map(
          ({ day, hour, airC, degreesOff, ...rest }, index): Occasion => ({
            ...occasion(on(day), `Occasion ${index}`),
            ...rest,
            id: `o${index}`,
            at: `${String(hour).padStart(2, '0')}:00`,
            setting: airC === null ? { where: 'outdoors', sun: 'sun' } : { where: 'indoors', airC },
            ...(degreesOff === null ? {} : { degreesOff }),
          }),
        ),
      });
      const plan = await planTrip({
        brief: trip,
        traveller: 'Ada',
        capsule: capsule(),
        pieces: PIECES,
        engine: source,
        solver,
      });
      expect(brokenPlan(plan, trip, PIECES)).toEqual([]);
      for (const { lacks } of plan.unserved) expect(lacks.length).toBeGreaterThan(0);
    }),
    { numRuns: 60, seed: 12 },
  );
});
