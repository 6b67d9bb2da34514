import { beforeAll, describe, expect, it } from 'vitest';
import type { Brief, Occasion, Piece, PlannedOccasion } from '../../lib/model/index.ts';
import { warmestCoat } from '../../lib/plan/coats.ts';
import { planTrip, type Solver } from '../../lib/plan/index.ts';
import { layersFor } from '../../lib/plan/layers.ts';
import { momentsOf } from '../../lib/plan/moments.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { brief, capsule, occasion, piece, sourceOf, weather } from './trip.ts';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const TOP = piece('top', 'long-sleeved tee');
const CARDIGAN = piece('cardigan', 'cardigan');
const TROUSERS = piece('trousers', 'chinos');
const BOOTS = piece('boots', 'lace-up boots');
const COAT = piece('coat', 'wool coat', { dress: { low: 0, high: 3 } });
const SCARF = piece('scarf', 'scarf');
const GLOVES = piece('gloves', 'gloves');
const BEANIE = piece('beanie', 'beanie');
const BAG = [TOP, CARDIGAN, TROUSERS, BOOTS, COAT, SCARF, GLOVES, BEANIE];

/** A trip with one stroll, in the air of that day, °C. */
const strollIn = ([lowC, highC]: readonly [number, number], change: Partial<Occasion> = {}): Brief =>
  brief({
    places: brief().places.map((place) => ({ ...place, weather: weather(lowC, highC, 0) })),
    occasions: [
      occasion('2027-10-03', 'Stroll', {
        at: '15:00',
        setting: { where: 'outdoors', sun: 'shade' },
        activity: 'strolling',
        ...change,
      }),
    ],
  });

const plannedAt = async (
  pieces: readonly Piece[],
  air: readonly [number, number],
  change: Partial<Occasion> = {},
): Promise<PlannedOccasion> => {
  const plan = await planTrip({
    brief: strollIn(air, change),
    traveller: 'Ada',
    capsule: capsule(),
    pieces,
    engine: sourceOf(pieces),
    solver,
  });
  const planned = plan.days.flatMap(({ occasions }) => occasions)[0];
  if (planned === undefined) throw new Error('the trip has an occasion');
  return planned;
};
const worn = ({ look }: PlannedOccasion): readonly string[] => look?.worn.map((one) => one.piece) ?? [];

/** What people wear in cold and heat: common practice, no source. */
describe('clothes for the weather', () => {
  it('covers head, neck and hands in the cold', async () => {
    const cold = await plannedAt(BAG, [-1, 5], { degreesOff: 5 });
    expect(worn(cold)).toEqual(expect.arrayContaining(['coat', 'scarf', 'gloves', 'beanie']));
    expect(cold.layersOn).toEqual(expect.arrayContaining(['coat', 'scarf', 'gloves']));
    expect(worn(await plannedAt(BAG, [20, 24]))).not.toEqual(expect.arrayContaining(['scarf']));
  });

  it('wears the warmest coat of the bag in frost, and the one that suits when it is mild or dressy', async () => {
    const down = piece('down', 'down jacket', { clo: { ...COAT.clo, value: 0.78 } });
    const bag = [...BAG, down, piece('knit', 'crew-neck jumper'), piece('leggings', 'thermal leggings')];
    for (const pieces of [bag, bag.toReversed()]) {
      const walk: Partial<Occasion> = { at: '10:00', activity: 'walking', degreesOff: 3 };
      expect(worn(await plannedAt(pieces, [-3, 3], walk))).toContain('down');
      expect(worn(await plannedAt(pieces, [9, 14], walk))).not.toContain('down');
    }
    const walk: Partial<Occasion> = { at: '10:00', activity: 'walking', degreesOff: 3 };
    expect(worn(await plannedAt(bag, [-8, -2], walk))).toEqual(
      expect.arrayContaining(['down', 'knit', 'leggings', 'beanie', 'scarf', 'gloves']),
    );
    expect(warmestCoat(bag, 'casual')?.id).toBe('down');
    expect(warmestCoat(bag, 'business')?.id).toBe('coat');
  });

  it('puts a shirt under an overshirt in the cold, and wears it alone where there is no other top', async () => {
    const overshirt = piece('overshirt', 'overshirt', { grams: { ...TOP.grams, value: 10 } });
    const shirt = piece('shirt', 'shirt', { grams: { ...TOP.grams, value: 900 } });
    const bag = [overshirt, shirt, TROUSERS, BOOTS, COAT, SCARF];
    for (const pieces of [bag, bag.toReversed()]) {
      const cold = await plannedAt(pieces, [1, 5], { degreesOff: 5 });
      expect(cold.look?.worn).toContainEqual({ piece: 'shirt', slot: 'top' });
    }
    const alone = await plannedAt([overshirt, TROUSERS, BOOTS, COAT, SCARF], [1, 5], { degreesOff: 5 });
    expect(alone.look?.worn).toContainEqual({ piece: 'overshirt', slot: 'top' });
  });

  it('dresses two travellers in the same air each as they feel', async () => {
    const both = strollIn([6, 10]);
    const trip: Brief = {
      ...both,
      travellers: [
        { name: 'Ada', wardrobe: 'test', feels: 'cold' },
        { name: 'Ben', wardrobe: 'test' },
      ],
    };
    const bag = [TOP, CARDIGAN, TROUSERS, BOOTS, COAT, piece('jacket', 'linen jacket')];
    const [ada, ben] = ['Ada', 'Ben'].map((traveller) => momentsOf(trip, traveller)[0]);
    expect(ada?.required?.min).toBeGreaterThan((ben?.required?.min ?? Number.NaN) + 0.1);
    const warmthOf = async (traveller: string): Promise<number> => {
      const plan = await planTrip({
        brief: trip,
        traveller,
        capsule: capsule({ traveller }),
        pieces: bag,
        engine: sourceOf(bag),
        solver,
      });
      const look = plan.days.flatMap(({ occasions }) => occasions)[0]?.look;
      return (look?.worn ?? []).reduce((clo, one) => clo + (bag.find(({ id }) => id === one.piece)?.clo.value ?? 0), 0);
    };
    expect(await warmthOf('Ada')).toBeGreaterThan(await warmthOf('Ben'));
  });

  it('does not dress colder because the client could bear it', async () => {
    const bag = [TOP, CARDIGAN, TROUSERS, BOOTS, COAT];
    for (const pieces of [bag, bag.toReversed()]) {
      const allowed = await plannedAt(pieces, [2, 6], { degreesOff: 5 });
      expect(worn(allowed)).toEqual(expect.arrayContaining(['coat', 'cardigan']));
    }
  });

  it('carries no layer in the heat', async () => {
    const [tee, shorts, sandals] = [piece('tee', 't-shirt'), piece('shorts', 'shorts'), piece('sandals', 'sandals')];
    const hot = await plannedAt([CARDIGAN, COAT, SCARF, tee, shorts, sandals], [27, 33]);
    expect(worn(hot).toSorted()).toEqual(['sandals', 'shorts', 'tee']);
  });

  it('puts the jumper on before the coat', () => {
    const pieces = [TOP, CARDIGAN, TROUSERS, BOOTS, COAT];
    const { look } = sourceOf(pieces).explain(pieces.map(({ id }) => id));
    if (look === undefined) throw new Error('these make a look');
    const coated: number[] = [];
    for (const airC of [2, 4, 6, 8, 10, 12, 14, 16, 18]) {
      const [moment] = momentsOf(strollIn([airC, airC]), 'Ada');
      if (moment === undefined) throw new Error('the trip has an occasion');
      const { on } = layersFor(moment, look, new Map(pieces.map((one) => [one.id, one])));
      if (!on.includes('coat')) continue;
      coated.push(airC);
      expect(on).toContain('cardigan');
    }
    expect(coated.length).toBeGreaterThan(1);
  });

  it('names as nearest to a frost the warmest look of the bag, scarf, gloves and hat included', async () => {
    for (const pieces of [BAG, BAG.toReversed()]) {
      const { unserved } = await planTrip({
        brief: strollIn([-9, -7]),
        traveller: 'Ada',
        capsule: capsule(),
        pieces,
        engine: sourceOf(pieces),
        solver,
      });
      expect(unserved.map(({ lacks }) => lacks.map(({ key }) => key))).toEqual([['lacks warmth']]);
      expect(unserved[0]?.nearest?.worn.map((one) => one.piece).toSorted()).toEqual(BAG.map(({ id }) => id).toSorted());
    }
  });

  it('names as nearest to a hot day the look that is too warm by least', async () => {
    const [thick, thin] = [piece('thick', 'roll-neck'), piece('thin', 'long-sleeved tee')];
    const pieces = [thick, thin, TROUSERS, BOOTS];
    const { unserved } = await planTrip({
      brief: strollIn([34, 38]),
      traveller: 'Ada',
      capsule: capsule(),
      pieces,
      engine: sourceOf(pieces),
      solver,
    });
    expect(unserved[0]?.lacks.map(({ key }) => key)).toEqual(['lacks coolness']);
    expect(unserved[0]?.nearest?.worn.map((one) => one.piece)).toContain('thin');
  });
});

describe('thermal underwear', () => {
  const THERMALS = [piece('thermal-top', 'thermal top'), piece('thermal-leggings', 'thermal leggings')];
  const bag = [...BAG, piece('jumper', 'crew-neck jumper'), ...THERMALS];
  const isThermal = (id: string): boolean => THERMALS.some((one) => one.id === id);

  it('is worn in frost and in no room that is warm enough without, however much it takes out of the bags', async () => {
    const room = { setting: { where: 'indoors', airC: 22 }, activity: 'travelling', transit: true } as const;
    expect(worn(await plannedAt(bag, [-9, -3], room)).filter(isThermal)).toEqual([]);
    expect(worn(await plannedAt(bag, [8, 14])).filter(isThermal)).toEqual([]);
    const frost = await plannedAt(bag, [-12, -8], { degreesOff: 6 });
    expect(worn(frost).some(isThermal)).toBe(true);
  });

  it('is the only top that is seen where there is no other, and nowhere else', async () => {
    const topOf = ({ look }: PlannedOccasion): string | undefined =>
      look?.worn.find(({ slot }) => slot === 'top')?.piece;
    const cool = { setting: { where: 'indoors', airC: 17 }, activity: 'sitting' } as const;
    expect(topOf(await plannedAt(bag, [-9, -3], cool))).not.toBe('thermal-top');
    const noOther = bag.filter(({ id }) => !['top', 'jumper', 'cardigan'].includes(id));
    expect(topOf(await plannedAt(noOther, [-9, -3], { ...cool, degreesOff: 6 }))).toBe('thermal-top');
  });
});
