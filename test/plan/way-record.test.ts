import { beforeAll, describe, expect, it } from 'vitest';
import { journeysOf } from '../../lib/bag/index.ts';
import { wayInWords, wearingOf } from '../../lib/guide/index.ts';
import type { Brief, Occasion, Piece, PlannedOccasion } from '../../lib/model/index.ts';
import { candidateOf } from '../../lib/plan/candidates.ts';
import { momentsOf, planTrip, type Solver } from '../../lib/plan/index.ts';
import { problemOf } from '../../lib/plan/problem.ts';
import { judgeOf } from '../../lib/plan/quality.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { german } from '../../lib/words/german/index.ts';
import { createFormats, english, type Language, say } from '../../lib/words/index.ts';
import { brief, capsule, occasion, piece, sourceOf, weather } from './trip.ts';
import { brokenPlan } from './validator/index.ts';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const DAY = '2027-10-03';
const BAG: readonly Piece[] = [
  piece('shirt', 'shirt'),
  piece('jumper', 'crew-neck jumper'),
  piece('trousers', 'tailored trousers'),
  piece('socks', 'walking socks'),
  piece('shoes', 'chelsea boots'),
  piece('snow-boots', 'snow boots'),
  piece('down-coat', 'down jacket', { dress: { low: 0, high: 3 } }),
  piece('beanie', 'beanie'),
  piece('scarf', 'chunky scarf'),
  piece('gloves', 'leather gloves'),
  piece('swimsuit', 'swimsuit'),
];
const DRESSED: readonly Piece[] = [
  piece('dress', 'cocktail dress'),
  piece('pumps', 'pumps'),
  piece('tights', 'tights'),
  ...BAG.slice(5, 10),
];

const trip = (lowC: number, ...occasions: readonly Occasion[]): Brief =>
  brief({
    places: brief().places.map((place) => ({ ...place, weather: weather(lowC, lowC + 4) })),
    occasions,
  });
const museum = (at = '11:00', what = 'Museum', change: Partial<Occasion> = {}): Occasion =>
  occasion(DAY, what, { at, dress: 'smart casual', setting: { where: 'indoors', airC: 20 }, ...change });
const planned = async (asked: Brief, pieces: readonly Piece[] = BAG, fixed = capsule()) => {
  const plan = await planTrip({
    brief: asked,
    traveller: 'Ada',
    capsule: fixed,
    pieces,
    engine: sourceOf(pieces),
    solver,
  });
  expect(brokenPlan(plan, asked, pieces, fixed)).toEqual([]);
  return { plan, occasions: plan.days.flatMap((day) => day.occasions) };
};
const inWords = (of: PlannedOccasion | undefined, language: Language = english) => {
  const formats = createFormats({
    language: language === english ? 'en-GB' : 'de-DE',
    temperature: 'C',
    length: 'cm',
    weight: 'kg',
  });
  return of === undefined ? [] : wayInWords(of, (id) => id).map((words) => say(language, formats, words));
};

/** What people put on to go out in the cold: common practice, no source. */
describe('the way there and back', () => {
  it('names the coat, something for head, neck and hands, and boots for the snow, all of it packed', async () => {
    const { plan, occasions } = await planned(trip(-9, museum()));
    const way = occasions[0]?.way;
    expect(way?.worn).toEqual(expect.arrayContaining(['down-coat', 'beanie', 'scarf', 'gloves']));
    expect(way).toMatchObject({ shoes: 'snow-boots', lowC: -9 });
    expect(wearingOf(plan, trip(-9, museum()), 'snow-boots').get(DAY)).toBe('day');
    expect(wearingOf(plan, trip(-9, museum()), 'down-coat').get(DAY)).toBe('day');
    expect(plan.wears.gloves).toBe(1);
  });

  it('asks for no boots above frost, for no hat above 5 °C, and for nothing in mild air', async () => {
    const at = async (lowC: number) => (await planned(trip(lowC, museum()))).occasions[0]?.way;
    const cool = await at(4);
    expect(cool?.shoes).toBeUndefined();
    expect(cool?.worn).toContain('beanie');
    expect((await at(8))?.worn).not.toContain('beanie');
    expect(await at(16)).toBeUndefined();
  });

  it('puts tights under a dress', async () => {
    const dinner = museum('19:30', 'Dinner', {
      dress: 'cocktail',
      activity: 'sitting',
      setting: { where: 'indoors', airC: 22 },
    });
    const [evening] = (await planned(trip(-9, dinner), DRESSED)).occasions;
    expect([...(evening?.look?.worn ?? []).map((one) => one.piece), evening?.way?.under]).toContain('tights');
    expect(evening?.way?.shoes).toBe('snow-boots');
    const fixed = capsule({ fixed: [{ occasion: dinner.id, pieces: ['dress', 'pumps'] }] });
    const [meant] = (await planned(trip(-9, dinner), DRESSED, fixed)).occasions;
    expect(meant?.way?.under).toBe('tights');
    const [mild] = (await planned(trip(12, dinner), DRESSED, fixed)).occasions;
    expect(mild?.way?.under).toBeUndefined();
  });

  it('counts on a journey as worn, so that no bag holds it', async () => {
    const flight = museum('09:00', 'Flight', { dress: 'casual', transit: true, activity: 'travelling' });
    const fixed = capsule({ fixed: [{ occasion: flight.id, pieces: ['shirt', 'trousers', 'shoes'] }] });
    const asked = trip(-9, flight);
    const { plan } = await planned(asked, BAG, fixed);
    const [journey] = journeysOf(asked, plan);
    expect([...(journey?.worn ?? [])]).toEqual(expect.arrayContaining(['down-coat', 'beanie', 'gloves']));
  });

  it('keeps one coat from the museum to lunch, whichever the looks would rather have', async () => {
    const coats = [...BAG, piece('wool-coat', 'wool coat', { dress: { low: 0, high: 3 } })];
    const lunch = museum('13:00', 'Lunch', { activity: 'sitting' });
    const asked = trip(-9, museum('11:00', 'Museum', { until: '12:45' }), lunch);
    const fixed = capsule({
      fixed: [{ occasion: lunch.id, pieces: ['shirt', 'jumper', 'trousers', 'shoes', 'wool-coat'] }],
    });
    const { occasions } = await planned(asked, coats, fixed);
    const coatTo = (index: number) =>
      (occasions[index]?.way?.worn ?? []).filter((id) => ['wool-coat', 'down-coat'].includes(id));
    expect([coatTo(0), coatTo(1)]).toEqual([['wool-coat'], ['wool-coat']]);
  });

  it('has dry, warm clothes ready after a swim in the cold, and none where it is warm', async () => {
    const swim = occasion(DAY, 'Swim', {
      at: '15:00',
      setting: { where: 'outdoors', sun: 'shade' },
      activity: 'swimming',
      needs: ['swim'],
    });
    const [cold] = (await planned(trip(-6, swim))).occasions;
    expect(cold?.way?.worn).toEqual(
      expect.arrayContaining(['jumper', 'trousers', 'socks', 'snow-boots', 'down-coat', 'beanie', 'gloves']),
    );
    expect(inWords(cold)[0]).toMatch(
      /^For the way to the water, and to put on dry at once afterwards: jumper, trousers/,
    );
    expect((await planned(trip(22, swim))).occasions[0]?.way).toBeUndefined();
    // a shirt is worth having where there is no jumper
    const without = BAG.filter(({ id }) => id !== 'jumper');
    expect((await planned(trip(-6, swim), without)).occasions[0]?.way?.worn).toEqual(
      expect.arrayContaining(['shirt', 'trousers', 'down-coat']),
    );
  });
});

it('says what is worn and what is carried, in both languages', () => {
  const of: PlannedOccasion = {
    occasion: 'x',
    layersOn: [],
    layersCarried: ['cardigan', 'coat'],
    way: { worn: ['coat', 'hat'], shoes: 'boots', under: 'tights', lowC: -9 },
    change: 'first',
    reasons: [],
    cautions: [],
  };
  expect(inWords(of)).toEqual([
    'Wear on the way: coat and hat. It may be -9°C outside.',
    'Put on tights under it before you go out.',
    'Walk there in boots and change shoes there.',
    'Take along: cardigan.',
  ]);
  expect(inWords(of, german)[0]).toBe('Unterwegs anziehen: coat und hat. Draußen kann es -9 °C kalt sein.');
});

it('counts another coat against looks that follow each other closely, and not where there is time or it rains', () => {
  const coats = [...BAG, piece('wool-coat', 'wool coat', { dress: { low: 0, high: 3 } })];
  const source = sourceOf(coats);
  const inCoat = (coat: string) => {
    const { look } = source.explain(['shirt', 'jumper', 'trousers', 'shoes', coat]);
    if (look === undefined) throw new Error('these make a look');
    return candidateOf(look, 1, () => [], []);
  };
  const [wool, down] = [inCoat('wool-coat'), inCoat('down-coat')];
  const dearerBy = (...occasions: readonly Occasion[]): number => {
    const asked = trip(-9, ...occasions);
    const judge = judgeOf(problemOf(asked, momentsOf(asked, 'Ada'), coats));
    return judge([wool, down]) + judge([down, wool]) - judge([wool, wool]) - judge([down, down]);
  };
  const first = museum('11:00', 'Museum', { until: '12:45' });
  const later = dearerBy(first, museum('18:00', 'Lecture'));
  expect(dearerBy(first, museum('13:00', 'Lunch'))).toBeGreaterThan(later + 10);
  expect(
    dearerBy(
      first,
      museum('13:00', 'Walk', { needs: ['rain'], setting: { where: 'outdoors', sun: 'shade' }, activity: 'walking' }),
    ),
  ).toBeCloseTo(later);
});

it('is held to by the validator, which knows what a cold way asks for', async () => {
  const asked = trip(-9, museum());
  const { plan } = await planned(asked);
  const days = plan.days.map((day) => ({ ...day, occasions: day.occasions.map(({ way: _, ...one }) => one) }));
  const wrong = brokenPlan({ ...plan, days }, asked, BAG).join();
  for (const lack of ['no headwear', 'no scarf', 'no gloves', 'no shoes']) expect(wrong).toContain(lack);
});
