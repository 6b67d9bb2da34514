import { beforeAll, describe, expect, it } from 'vitest';
import { lookComfort } from '../../lib/comfort/index.ts';
import type { Occasion, Piece, Plan } from '../../lib/model/index.ts';
import { findingsOfRooms, planTrip, type Solver } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { brief, capsule, occasion, piece, sourceOf, weather } from './trip.ts';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const DRESS = piece('dress', 'slip dress', { dress: { low: 0, high: 4 } });
const SHOES = piece('shoes', 'loafers', { dress: { low: 0, high: 4 } });
const COAT = piece('coat', 'wool coat', { dress: { low: 0, high: 4 } });
const CARDIGAN = piece('cardigan', 'cardigan', { dress: { low: 0, high: 4 } });
const SHAWL = piece('shawl', 'shawl', { dress: { low: 0, high: 4 } });

const inARoomOf = (airC: number, change: Partial<Occasion> = {}) =>
  brief({
    places: brief().places.map((place) => ({ ...place, weather: weather(2, 8, 0) })),
    occasions: [
      occasion('2027-10-03', 'Concert', { setting: { where: 'indoors', airC }, activity: 'sitting', ...change }),
    ],
  });

const planned = async (pieces: readonly Piece[], trip: ReturnType<typeof inARoomOf>, fixed?: readonly string[]) => {
  const source = sourceOf(pieces);
  const plan: Plan = await planTrip({
    brief: trip,
    traveller: 'Ada',
    capsule: capsule(fixed === undefined ? {} : { fixed: [{ occasion: 'Concert', pieces: [...fixed] }] }),
    pieces,
    engine: source,
    solver,
  });
  const one = plan.days.flatMap(({ occasions }) => occasions)[0];
  return {
    ...one,
    worn: one?.look?.worn.map((seat) => seat.piece) ?? [],
    found: findingsOfRooms(plan, trip, pieces, source),
  };
};

/** Coats hang in the cloakroom: common practice, no source. */
describe('in a room', () => {
  it('wears what is warm without the coat, where the bag has it', async () => {
    for (const pieces of [
      [DRESS, SHOES, COAT, CARDIGAN],
      [CARDIGAN, COAT, SHOES, DRESS],
    ]) {
      const { worn, found, layersOn, layersCarried } = await planned(pieces, inARoomOf(24));
      expect(worn).toContain('cardigan');
      expect(layersOn).toEqual(['cardigan']);
      expect(layersCarried).not.toContain('cardigan');
      expect(found).toEqual([]);
    }
  });

  it('never sits in the coat, and says that the look is cool without it', async () => {
    const { worn, layersOn, layersCarried, cautions, found } = await planned([DRESS, SHOES, COAT], inARoomOf(22));
    expect(worn).toContain('coat');
    expect([layersOn, layersCarried]).toEqual([[], ['coat']]);
    expect(cautions?.map(({ key }) => key)).toContain('cool inside');
    expect(found.map(({ rule, mend }) => [rule, mend?.key])).toEqual([['coat-in-a-room', 'coat in a room mend']]);
  });

  it('names what is packed against it, when the stylist fixed a look that is cool', async () => {
    const bag = [DRESS, SHOES, COAT, CARDIGAN, SHAWL];
    const { found } = await planned(bag, inARoomOf(25), ['dress', 'shoes', 'coat']);
    expect(found.map(({ mend }) => mend?.key)).toEqual(['coat in a room mend with']);
    expect(found[0]?.mend?.values.layers).toEqual(expect.arrayContaining(['cardigan']));
    expect(found[0]?.mend?.values.layers).not.toContain('coat');
  });

  it('keeps the coat on for a journey where nothing else is warm enough', async () => {
    const { layersOn, found } = await planned(
      [DRESS, SHOES, COAT],
      inARoomOf(22, { transit: true, activity: 'travelling' }),
    );
    expect(layersOn).toEqual(['coat']);
    expect(found).toEqual([]);
    const hat = piece('beanie', 'beanie', { dress: { low: 0, high: 4 } });
    const hatted = await planned(
      [DRESS, SHOES, CARDIGAN, hat],
      inARoomOf(21, { transit: true, activity: 'travelling' }),
    );
    expect(hatted.layersOn).not.toContain('beanie');
  });

  it('tells the degrees of rooms without the coat, and those out of doors with it', () => {
    const pieces = new Map([DRESS, SHOES, COAT].map((one) => [one.id, one]));
    const bare = sourceOf([DRESS, SHOES]).explain(['dress', 'shoes']).look;
    const coated = sourceOf([DRESS, SHOES, COAT]).explain(['dress', 'shoes', 'coat']).look;
    if (bare === undefined || coated === undefined) throw new Error('these make looks');
    const rooms = [bare, coated].map((look) => lookComfort(look, pieces, 'sitting', 'indoors').lowC);
    expect(rooms[0]).toBe(rooms[1]);
    const outside = [bare, coated].map((look) => lookComfort(look, pieces, 'strolling', 'outdoors').lowC);
    expect(outside[1]).toBeLessThan(outside[0] ?? Number.NaN);
  });
});
