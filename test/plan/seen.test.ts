import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Brief, Capsule, Occasion, Piece, Plan } from '../../lib/model/index.ts';
import { findingsOfRepeats, planTrip, type Solver } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import type { DressCode } from '../../lib/vocabulary/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { bruteForce } from './look-source.ts';
import { brief, capsule, occasion, piece } from './trip.ts';
import { brokenPlan, dressedOf, wornToOf } from './validator/index.ts';
import { seenOf, shownAgain } from './validator/seen.ts';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const planned = (trip: Brief, pieces: readonly Piece[], chosen: Capsule = capsule()): Promise<Plan> =>
  planTrip({ brief: trip, traveller: 'Ada', capsule: chosen, pieces, engine: bruteForce(pieces), solver });
const told = (plan: Plan, trip: Brief, pieces: readonly Piece[], chosen: Capsule = capsule()): readonly string[] =>
  findingsOfRepeats(plan, trip, chosen, pieces).map(
    ({ level, message }) => `${level}: ${say(english, formats, message)}`,
  );
/** What is seen at each occasion of a plan, and what is left without a look. */
const shown = (plan: Plan, trip: Brief, pieces: readonly Piece[]): readonly string[] =>
  wornToOf(dressedOf(plan, trip, capsule())).map((one) => seenOf(one, new Map(pieces.map((one) => [one.id, one]))));

const dinner = (on: string, dress: DressCode, airC = 26): Occasion =>
  occasion(on, 'Dinner', { dress, part: 'evening', activity: 'sitting', setting: { where: 'indoors', airC } });
const DAYS = ['2027-10-02', '2027-10-03', '2027-10-04'];

const ANY = { low: 0, high: 3 };

describe('no look is seen twice', () => {
  const shawl = piece('shawl', 'shawl', { places: ['mid layer', 'scarf'], dress: ANY });
  const one = [
    piece('dress', 'wrap dress', { worn: 9, dress: ANY }),
    shawl,
    piece('cardigan', 'cardigan', { places: ['mid layer'], dress: ANY }),
    piece('loafers', 'loafers', { dress: ANY }),
  ];

  it('does not take a layer in the hand, or in another place, for another look', async () => {
    const trip = brief({ occasions: DAYS.map((on) => dinner(on, 'smart casual')) });
    const plan = await planned(trip, one);
    expect(brokenPlan(plan, trip, one)).toEqual([]);
    // in a room of 26 °C every layer is carried, so there is one look to be seen
    expect(plan).toMatchObject({ served: 1, of: 3, proven: true });
    expect(plan.unserved.flatMap(({ lacks }) => lacks.map(({ key }) => key))).toEqual([
      'worn on another day',
      'worn on another day',
    ]);
    const two = [
      ...one,
      piece('top', 'blouse', { worn: 9, dress: ANY }),
      piece('skirt', 'midi skirt', { worn: 9, dress: ANY }),
    ];
    const better = await planned(trip, two);
    expect(better.served).toBe(2);
    expect(new Set(shown(better, trip, two)).size).toBe(2);
  });

  it('takes a layer that is on for another look, wears the dress to no two dinners without need, and says when it must', async () => {
    const trip = brief({
      occasions: [dinner(DAYS[0] ?? '', 'smart casual'), dinner(DAYS[2] ?? '', 'smart casual', 24)],
    });
    const plan = await planned(trip, one);
    expect(shown(plan, trip, one)).toEqual([
      'dress',
      expect.stringMatching(/^(cardigan with dress|dress with shawl)$/),
    ]);
    expect(told(plan, trip, one)).toEqual([
      'warning: The same clothes come again, dress: at “Dinner” on 2 Oct and “Dinner” on 4 Oct.',
    ]);
    const more = [...one, piece('gown', 'tea dress', { worn: 9, dress: ANY })];
    const other = await planned(trip, more);
    expect(told(other, trip, more)).toEqual([]);
  });

  it('wears an everyday look again rather than none, and says so; one the stylist fixed is meant', async () => {
    const trip = brief({ occasions: DAYS.map((on) => dinner(on, 'casual')) });
    const plan = await planned(trip, one);
    expect(plan.served).toBe(3);
    expect(told(plan, trip, one)).toEqual([
      'advice: The same clothes come again, dress: at “Dinner” on 2 Oct, “Dinner” on 3 Oct and “Dinner” on 4 Oct.',
    ]);
    const fixed = capsule({
      fixed: trip.occasions.map(({ id }) => ({ occasion: id, pieces: ['dress', 'loafers'] })),
    });
    const meant = await planned(trip, one, fixed);
    expect(told(meant, trip, one, fixed)).toEqual([]);
    expect(brokenPlan(meant, trip, one, fixed)).toEqual([]);
  });
});

describe('clothes that come again', () => {
  const PIECES = [
    piece('tee', 't-shirt', { worn: 9, dress: ANY }),
    piece('jeans', 'jeans', { worn: 9, dress: ANY }),
    piece('chinos', 'chinos', { worn: 9, dress: ANY }),
    piece('dress', 'wrap dress', { worn: 9, dress: ANY }),
    piece('cardigan', 'cardigan', { worn: 9, dress: ANY, places: ['mid layer'] }),
    piece('loafers', 'loafers', { dress: ANY }),
  ];
  const trips = fc.array(
    fc.record({
      day: fc.integer({ min: 0, max: 5 }),
      dress: fc.constantFrom('casual' as const, 'casual' as const, 'smart casual' as const, 'business' as const),
      airC: fc.integer({ min: 20, max: 26 }),
    }),
    { minLength: 2, maxLength: 7 },
  );

  it('are told whenever they do, and never where the bag has others: against all pairs of occasions', async () => {
    let toldOf = 0;
    await fc.assert(
      fc.asyncProperty(trips, async (asked) => {
        const occasions = asked.map(({ day, dress, airC }, index) => ({
          ...dinner(`2027-10-0${2 + day}`, dress, airC),
          id: `o${index}`,
          at: `${10 + index}:00`,
        }));
        const trip = brief({ to: '2027-10-08', occasions });
        const plan = await planned(trip, PIECES);
        expect(brokenPlan(plan, trip, PIECES)).toEqual([]);
        const byId = new Map(PIECES.map((one) => [one.id, one]));
        const again = shownAgain(wornToOf(dressedOf(plan, trip, capsule())), byId);
        const said = findingsOfRepeats(plan, trip, capsule(), PIECES).map(({ message }) =>
          [...(message.values.clothes as readonly string[])].sort().join('+'),
        );
        expect(said.toSorted()).toEqual(again);
        toldOf += again.length;
        // three cores and a day each: nothing needs to come again
        if (new Set(asked.map(({ day }) => day)).size <= 2 && asked.every(({ dress }) => dress === 'casual'))
          expect(again).toEqual([]);
      }),
      { numRuns: 60, seed: 5 },
    );
    expect(toldOf).toBeGreaterThan(0);
  });
});
