import { beforeAll, describe, expect, it } from 'vitest';
import type { Occasion, Piece } from '../../lib/model/index.ts';
import { planTrip, type Solver } from '../../lib/plan/index.ts';
import { tasteCost } from '../../lib/plan/taste.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { brief, capsule, occasion, piece, sourceOf } from './trip.ts';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const WIDE = { low: 0, high: 4 } as const;
const SHOES = piece('shoes', 'walking shoes', { dress: WIDE });
const TOP = piece('top', 'dress shirt', { dress: WIDE });
const KNIT = piece('knit', 'cardigan', { dress: WIDE });
const TROUSERS = piece('trousers', 'tailored trousers', { dress: WIDE });
const SKIRT = piece('skirt', 'midi skirt', { dress: WIDE });
const SATIN = piece('satin', 'midi skirt', { dress: WIDE, fabric: 'satin' });

/** What is worn at one occasion without weather, of these pieces. */
const wornAt = async (pieces: readonly Piece[], change: Partial<Occasion>): Promise<readonly string[]> => {
  const trip = brief({
    places: [],
    occasions: [occasion('2027-10-03', 'It', { setting: { where: 'outdoors', sun: 'shade' }, ...change })],
  });
  const plan = await planTrip({
    brief: trip,
    traveller: 'Ada',
    capsule: capsule(),
    pieces,
    engine: sourceOf(pieces),
    solver,
  });
  expect(plan.served).toBe(1);
  return plan.days.flatMap((day) => day.occasions.flatMap(({ look }) => look?.worn.map((one) => one.piece) ?? []));
};

/** What people wear where: common practice, no source. */
describe('taste', () => {
  it('takes trousers on uneven ground, and a skirt when there is nothing else', async () => {
    const walk = { activity: 'walking', needs: ['uneven ground', 'long walking'] } as const;
    const shoes = { ...SHOES, suits: ['uneven ground', 'long walking'] } as Piece;
    const bagFor = (...bottoms: readonly Piece[]) => [shoes, TOP, KNIT, ...bottoms];
    expect(await wornAt(bagFor(TROUSERS, SKIRT), walk)).toContain('trousers');
    expect(await wornAt(bagFor(SKIRT, TROUSERS), walk)).toContain('trousers');
    expect(await wornAt(bagFor(SKIRT), walk)).toContain('skirt');
  });

  it('keeps satin for the evening and leaves it off trains', async () => {
    const indoors = { setting: { where: 'indoors', airC: 22 }, part: 'evening' } as const;
    for (const bottoms of [
      [TROUSERS, SATIN],
      [SATIN, TROUSERS],
    ]) {
      const withSatin = [SHOES, TOP, KNIT, ...bottoms];
      expect(await wornAt(withSatin, { ...indoors, dress: 'cocktail' })).toContain('satin');
      expect(await wornAt(withSatin, { ...indoors, dress: 'casual', transit: true })).toContain('trousers');
    }
  });

  it('prefers garments about as dressy as the occasion', async () => {
    const plain = piece('plain', 'dress shirt', { dress: { low: 0, high: 3 } });
    const dressy = piece('dressy', 'dress shirt', { dress: { low: 0, high: 4 } });
    const [casual, formal] = [{ dress: { low: 0, high: 1 } }, { dress: { low: 0, high: 4 } }].map(({ dress }) =>
      tasteCost(occasion('2027-10-03', 'It', { dress: 'formal' }), [{ piece: { ...plain, dress }, slot: 'top' }]),
    );
    expect(formal).toBeLessThan(casual ?? 0);
    for (const tops of [
      [plain, dressy],
      [dressy, plain],
    ]) {
      const pieces = [SHOES, TROUSERS, ...tops];
      expect(await wornAt(pieces, { dress: 'cocktail', setting: { where: 'indoors', airC: 22 } })).toContain('dressy');
      expect(await wornAt(pieces, { dress: 'casual', setting: { where: 'indoors', airC: 22 } })).toContain('plain');
    }
  });
});
