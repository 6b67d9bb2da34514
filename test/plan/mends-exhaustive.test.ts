import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Occasion, PlanMend } from '../../lib/model/index.ts';
import { planTrip } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { DRESS_CODES } from '../../lib/vocabulary/index.ts';
import { canServe, type Trip } from './exhaustive.ts';
import { allLooks, bruteForce } from './look-source.ts';
import { THREE_DAYS, threeDays } from './three-days.ts';
import { capsule, piece } from './trip.ts';

const ANY = { low: 0, high: 2 };
const PLAIN = { low: 0, high: 0 };
const COVERED = { covers: ['knees'] } as const;
const OWNED = [
  piece('tee', 't-shirt', { worn: 1, dries: 8, dress: ANY }),
  piece('top', 'blouse', { worn: 1, dries: 8, dress: PLAIN }),
  piece('shorts', 'shorts', { worn: 2, dress: ANY, covers: [] }),
  piece('jeans', 'jeans', { worn: 2, dress: PLAIN, ...COVERED }),
  piece('dress', 'tea dress', { worn: 1, dries: 8, dress: ANY, ...COVERED }),
  piece('jumper', 'crew-neck jumper', { worn: 3, places: ['mid layer'], dress: ANY }),
  piece('rain', 'rain jacket', { suits: ['rain'] }),
  piece('shoes', 'loafers', { dress: ANY, suits: [] }),
  piece('boots', 'lace-up boots', { dress: ANY, suits: ['uneven ground'] }),
  piece('swimsuit', 'swimsuit', { dries: 12, dress: ANY }),
  piece('bikini', 'bikini', { dries: 12, dress: ANY }),
];
const indoors = (airC: number) => ({ where: 'indoors', airC }) as const;

const trips = fc.record({
  packed: fc.uniqueArray(fc.constantFrom(...OWNED.map(({ id }) => id)), { minLength: 3, maxLength: 7 }),
  whens: fc.array(
    fc.record({
      day: fc.integer({ min: 0, max: 2 }),
      part: fc.constantFrom('morning' as const, 'evening' as const),
      kind: fc.constantFrom('museum', 'dinner', 'hill', 'chapel', 'swim'),
    }),
    { minLength: 1, maxLength: 4 },
  ),
  washes: fc.boolean(),
});

const KINDS: Readonly<Record<string, Partial<Occasion>>> = {
  museum: { setting: indoors(23) },
  dinner: { setting: indoors(23), dress: 'smart casual' },
  hill: {
    setting: { where: 'outdoors', sun: 'shade' },
    activity: 'walking',
    needs: ['rain', 'uneven ground'],
  },
  chapel: { setting: indoors(23), needs: ['knees covered'] },
  swim: { setting: indoors(28), needs: ['swim'], activity: 'swimming' },
};

/** A change as a mend writes it, and what it asks of the client: the plan's own prices, written down a second time. */
interface Change {
  readonly says: string;
  readonly cost: number;
  readonly applied: (trip: Trip) => Trip;
}

const changesFor = (trip: Trip, { id, dress, needs, setting }: Occasion): readonly Change[] => {
  const occasionAs = (change: Partial<Occasion>) => (to: Trip) => ({
    ...to,
    brief: {
      ...to.brief,
      occasions: to.brief.occasions.map((one) => (one.id === id ? { ...one, ...change } : one)),
    },
  });
  const code = DRESS_CODES.indexOf(dress);
  return [
    // a coat is no mend for a room, at whose door it hangs
    ...OWNED.filter((one) => !trip.pieces.includes(one) && !(setting.where === 'indoors' && one.id === 'rain')).map(
      (one) => ({
        says: `add pieces ${one.id}`,
        cost: 12 + one.grams.value / 1000,
        applied: (to: Trip) => {
          const pieces = [...to.pieces, one];
          return { ...to, pieces, looks: allLooks(pieces) };
        },
      }),
    ),
    ...THREE_DAYS.slice(0, 2)
      .filter((date) => !trip.brief.washDays.includes(date))
      .map((date) => ({
        says: `add wash days ${date}`,
        cost: 10,
        applied: (to: Trip) => ({ ...to, brief: { ...to.brief, washDays: [...to.brief.washDays, date].sort() } }),
      })),
    ...[code - 1, code + 1].flatMap((index) => {
      const other = DRESS_CODES[index];
      return other === undefined
        ? []
        : [{ says: `write dress ${other}`, cost: 18, applied: occasionAs({ dress: other }) }];
    }),
    ...(needs.includes('knees covered')
      ? [{ says: 'take out needs knees covered', cost: 23, applied: occasionAs({ needs: [] }) }]
      : []),
    ...(needs.includes('swim')
      ? []
      : [1, 2, 3].map((degrees) => ({
          says: `write degrees off ${degrees}`,
          cost: 13 + 3 * degrees,
          applied: occasionAs({ degreesOff: degrees }),
        }))),
  ];
};

/** One change and every two together, cheapest first. */
const setsOf = (changes: readonly Change[]): readonly (readonly Change[])[] => {
  const cost = (set: readonly Change[]): number => set.reduce((sum, one) => sum + one.cost, 0);
  const pairs = changes.flatMap((first, index) => changes.slice(index + 1).map((second) => [first, second]));
  return [...changes.map((one) => [one]), ...pairs].sort((a, b) => cost(a) - cost(b));
};
const costOf = (says: readonly string[], changes: readonly Change[]): number =>
  says.reduce((sum, one) => sum + (changes.find((change) => change.says === one)?.cost ?? Number.NaN), 0);
const inWords = ({ entries }: PlanMend): readonly string[] =>
  entries.map(({ action, field, value }) => `${action} ${field} ${value}`);

it('tells the cheapest mends in their order, as trying every one and two changes finds them', async () => {
  const solver = await loadSolver();
  const found = { mended: 0, byTwo: 0, hopeless: 0 };
  await fc.assert(
    fc.asyncProperty(trips, async ({ packed, whens, washes }) => {
      const pieces = OWNED.filter(({ id }) => packed.includes(id));
      const trip = threeDays(pieces, { whens, washes }, KINDS, [13, 17]);
      const plan = await planTrip({
        brief: trip.brief,
        traveller: 'Ada',
        capsule: capsule(),
        pieces,
        engine: bruteForce(pieces),
        wardrobe: { pieces: OWNED, engine: bruteForce(OWNED) },
        solver,
      });
      const open = new Set(plan.unserved.map(({ occasion: id }) => id));
      const served = trip.brief.occasions.map(({ id }) => id).filter((id) => !open.has(id));
      for (const { occasion: id, mends } of plan.unserved) {
        const asked = trip.brief.occasions.find((one) => one.id === id);
        if (asked === undefined) throw new Error(id);
        const changes = changesFor(trip, asked);
        const serves = (set: readonly Change[]): boolean =>
          canServe(
            set.reduce((to, { applied }) => applied(to), trip),
            new Set([...served, id]),
          );
        const told = mends.map(inWords);
        const cheapest = setsOf(changes).find(serves);
        if (cheapest === undefined) {
          found.hopeless += 1;
          // what is told then needs more than two changes
          for (const says of told) expect(says.length, says.join(', ')).toBeGreaterThan(2);
          continue;
        }
        found.mended += 1;
        if (cheapest.length === 2) found.byTwo += 1;
        const costs = told.map((says) => costOf(says, changes));
        const least = costOf(
          cheapest.map(({ says }) => says),
          changes,
        );
        expect(costs[0], `${told[0]?.join(', ')}, not ${cheapest.map(({ says }) => says).join(', ')}`).toBeCloseTo(
          least,
          9,
        );
        expect(costs).toEqual(costs.toSorted((a, b) => a - b));
        for (const says of told)
          expect(serves(changes.filter((change) => says.includes(change.says))), says.join(', ')).toBe(true);
      }
    }),
    { numRuns: 60, seed: 3 },
  );
  expect(found.mended).toBeGreaterThan(20);
  expect(found.byTwo).toBeGreaterThan(3);
});
