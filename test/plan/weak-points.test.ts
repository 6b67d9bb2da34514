import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Occasion, WeakPoint } from '../../lib/model/index.ts';
import { planTrip } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { canServe, mostServed, type Trip } from './exhaustive.ts';
import { allLooks, bruteForce } from './look-source.ts';
import { THREE_DAYS, threeDays } from './three-days.ts';
import { capsule, piece } from './trip.ts';

const ANY = { low: 0, high: 2 };
const OWNED = [
  piece('tee', 't-shirt', { worn: 1, dries: 8, dress: ANY }),
  piece('shirt', 'shirt', { worn: 2, dries: 30, dress: ANY }),
  piece('jeans', 'jeans', { worn: 2, dress: ANY }),
  piece('chinos', 'chinos', { worn: 2, dress: ANY }),
  piece('dress', 'tea dress', { worn: 1, dries: 8, dress: ANY }),
  piece('jumper', 'crew-neck jumper', { worn: 3, places: ['mid layer'], dress: ANY }),
  piece('rain', 'rain jacket', { suits: ['rain'] }),
  piece('boots', 'lace-up boots', { dress: ANY, suits: ['uneven ground'] }),
  piece('loafers', 'loafers', { dress: ANY, suits: [] }),
  piece('swimsuit', 'swimsuit', { dries: 12, dress: ANY }),
  piece('bikini', 'bikini', { dries: 12, dress: ANY }),
];
const indoors = (airC: number) => ({ where: 'indoors', airC }) as const;
const KINDS: Readonly<Record<string, Partial<Occasion>>> = {
  museum: { setting: indoors(23) },
  dinner: { setting: indoors(23), dress: 'smart casual' },
  stroll: { setting: { where: 'outdoors', sun: 'shade' }, activity: 'walking' },
  hill: { setting: { where: 'outdoors', sun: 'shade' }, activity: 'walking', needs: ['uneven ground'] },
  swim: { setting: indoors(28), needs: ['swim'], activity: 'swimming' },
};
const trips = fc.record({
  left: fc.uniqueArray(fc.constantFrom(...OWNED.map(({ id }) => id)), { maxLength: 4 }),
  whens: fc.array(
    fc.record({
      day: fc.integer({ min: 0, max: 2 }),
      part: fc.constantFrom('morning' as const, 'evening' as const),
      kind: fc.constantFrom(...Object.keys(KINDS)),
    }),
    { minLength: 2, maxLength: 5 },
  ),
  washes: fc.boolean(),
});

it('loses with each piece and each wet day as many as trying everything says, and names as certain what has no look at all', async () => {
  const solver = await loadSolver();
  const seen = { certain: 0, perhaps: 0 };
  await fc.assert(
    fc.asyncProperty(trips, async ({ left, whens, washes }) => {
      const pieces = OWNED.filter(({ id }) => !left.includes(id));
      const trip = threeDays(pieces, { whens, washes }, KINDS, [14, 18]);
      const plan = await planTrip({
        brief: trip.brief,
        traveller: 'Ada',
        capsule: capsule(),
        pieces,
        engine: bruteForce(pieces),
        solver,
      });
      const open = new Set(plan.unserved.map(({ occasion: id }) => id));
      const occasions = trip.brief.occasions.filter(({ id }) => !open.has(id));
      const compare = (after: Trip, point: WeakPoint | undefined): void => {
        const most = mostServed(after);
        expect(occasions.length - (point?.loses.length ?? 0), String(point?.what.key)).toBe(most);
        const perhaps = point?.perhaps ?? [];
        const bare = occasions.filter(({ id }) => !canServe(after, new Set([id]))).map(({ id }) => id);
        const certain = point?.loses.filter((id) => !perhaps.includes(id)) ?? [];
        expect(certain.toSorted()).toEqual(bare.toSorted());
        seen.certain += bare.length;
        seen.perhaps += perhaps.length;
      };
      for (const { id } of pieces) {
        const others = pieces.filter((one) => one.id !== id);
        const after = { ...trip, brief: { ...trip.brief, occasions }, pieces: others, looks: allLooks(others) };
        const point = plan.weakPoints.find((one) => one.piece === id);
        compare(after, point);
      }
      for (const date of THREE_DAYS) {
        const wet = occasions.map((one) =>
          one.on === date && one.setting.where === 'outdoors'
            ? { ...one, needs: [...one.needs, 'rain' as const] }
            : one,
        );
        const point = plan.weakPoints.find((one) => one.piece === undefined && one.what.values.date === date);
        compare({ ...trip, brief: { ...trip.brief, occasions: wet } }, point);
      }
    }),
    { numRuns: 40, seed: 99 },
  );
  expect(seen.certain).toBeGreaterThan(10);
  expect(seen.perhaps).toBeGreaterThan(10);
});

it('says what is lost for certain, and what may be', () => {
  const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
  const said = (occasions: readonly string[], perhaps: readonly string[]): string =>
    say(english, formats, { room: 'plan', key: 'piece spoilt', values: { piece: 'Coat', occasions, perhaps } });
  expect(said(['Walk'], [])).toBe('If something happens to Coat, no look is left for Walk.');
  expect(said([], ['Opera'])).toBe('If something happens to Coat, there may be no look for Opera.');
  expect(said(['Walk'], ['Opera'])).toBe(
    'If something happens to Coat, no look is left for Walk, and perhaps none for Opera.',
  );
});
