import { beforeAll, describe, expect, it } from 'vitest';
import type { Piece, StockLine } from '../../lib/model/index.ts';
import { findingsOfFinish, planTrip, type Solver, withSocks } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { brief, capsule, occasion, piece, sourceOf, weather } from './trip.ts';
import { brokenPlan } from './validator/index.ts';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const SUIT: readonly Piece[] = [
  piece('shirt', 'dress shirt'),
  piece('suit-trousers', 'suit trousers'),
  piece('suit-jacket', 'suit jacket'),
  piece('oxfords', 'oxford shoes'),
];
const SOCKS = piece('dress-socks', 'dress socks');
const BELT = piece('belt', 'belt');
const LINEN: StockLine = {
  name: 'Socks',
  group: 'underthings',
  count: 1,
  per: 'day',
  spare: 0,
  gramsEach: 40,
  litresEach: 0.1,
  basis: 'given',
  when: [],
  travellers: [],
  file: 'sundries.md',
};

const dinner = (dress: 'casual' | 'business', airC: number) =>
  brief({
    occasions: [
      occasion('2027-10-03', 'Dinner', {
        dress,
        activity: dress === 'casual' ? 'standing' : 'sitting',
        setting: { where: 'indoors', airC },
      }),
    ],
  });
const planned = async (
  pieces: readonly Piece[],
  dress: 'casual' | 'business' = 'business',
  stock: readonly StockLine[] = [],
  airC = dress === 'casual' ? 24 : 22,
  inCapsule = capsule(),
) => {
  const trip = dinner(dress, airC);
  const plan = await planTrip({
    brief: trip,
    traveller: 'Ada',
    capsule: inCapsule,
    pieces,
    engine: sourceOf(pieces),
    solver,
  });
  const fixed = inCapsule.fixed.flatMap((look) => trip.occasions.map(({ id }) => ({ ...look, occasion: id })));
  expect(brokenPlan(plan, trip, pieces, { ...inCapsule, fixed })).toEqual([]);
  expect(plan.served).toBe(1);
  return {
    worn: plan.days.flatMap((day) => day.occasions.flatMap(({ look }) => look?.worn.map((worn) => worn.piece) ?? [])),
    carried: plan.days.flatMap((day) => day.occasions.flatMap(({ layersCarried }) => layersCarried)),
    rules: findingsOfFinish(plan, trip, pieces, stock).map(({ rule }) => rule),
  };
};

/** Socks in laced shoes and a belt through the loops of a suit: common practice, no source. */
describe('a suit', () => {
  it('gets its socks and its belt where the bag has them', async () => {
    const { worn, rules } = await planned([...SUIT, SOCKS, BELT]);
    expect(worn).toEqual(expect.arrayContaining(['dress-socks', 'belt']));
    expect(rules).toEqual([]);
  });

  it('gets socks that go with it in any look that is shown, and none with loafers or shorts', () => {
    const bag = [...SUIT, piece('loafers', 'loafers'), piece('shorts', 'shorts'), SOCKS];
    const source = sourceOf(bag);
    const dressed = (...ids: readonly string[]): readonly string[] | undefined => {
      const { look } = source.explain(ids);
      return look && withSocks(source, look, bag).worn.map((worn) => worn.piece);
    };
    expect(dressed('shirt', 'suit-trousers', 'oxfords')).toContain('dress-socks');
    expect(dressed('shirt', 'suit-trousers', 'loafers')).toEqual(['shirt', 'suit-trousers', 'loafers']);
    expect(dressed('shirt', 'shorts', 'oxfords')).not.toContain('dress-socks');
    const { look } = source.explain(['shirt', 'suit-trousers', 'oxfords']);
    expect(look && withSocks(source, look, SUIT)).toBe(look);
  });

  it('without them is said softly, once', async () => {
    expect((await planned(SUIT)).rules).toEqual(['no-socks', 'no-belt']);
    expect((await planned([...SUIT, BELT])).rules).toEqual(['no-socks']);
  });

  it('takes socks out of the stock of underthings, and braces for a belt', async () => {
    expect((await planned(SUIT, 'business', [LINEN])).rules).toEqual(['no-belt']);
    const braced = await planned([...SUIT, piece('braces', 'braces')], 'business', [LINEN]);
    expect(braced.worn).toContain('braces');
    expect(braced.rules).toEqual([]);
    expect((await planned(SUIT, 'business', [{ ...LINEN, travellers: ['Bo'] }])).rules).toContain('no-socks');
  });

  it('keeps its jacket on in a room too warm to need it', async () => {
    const fixed = capsule({
      fixed: [{ occasion: 'Dinner', pieces: ['shirt', 'suit-trousers', 'suit-jacket', 'oxfords'] }],
    });
    const { worn, carried } = await planned(SUIT, 'business', [LINEN], 25, fixed);
    expect(worn).toContain('suit-jacket');
    expect(carried).toEqual([]);
    // at a casual supper it comes off
    const casual = SUIT.map((one) => ({ ...one, dress: { low: 0, high: 4 } }));
    expect((await planned(casual, 'casual', [LINEN], 25, fixed)).carried).toEqual(['suit-jacket']);
  });

  it('is not asked for a belt at a casual supper', async () => {
    const casual = [
      piece('tee', 'long-sleeved tee'),
      piece('chinos', 'chinos'),
      piece('boots', 'lace-up boots'),
      piece('knit', 'cardigan'),
    ];
    expect((await planned(casual, 'casual')).rules).toEqual([]);
  });
});

/** A brim and dark glasses in strong sun: World Health Organization, Global Solar UV Index (2002), from index 3. */
describe('a look in the sun', () => {
  const CLOTHES: readonly Piece[] = [
    piece('tee', 't-shirt'),
    piece('shorts', 'shorts'),
    piece('sandals', 'sandals'),
    piece('glasses', 'sunglasses'),
    piece('hat', 'sun hat'),
  ];
  const worn = async (change: Parameters<typeof occasion>[2]): Promise<readonly string[]> => {
    const plan = await planTrip({
      brief: brief({
        from: '2027-06-12',
        to: '2027-06-13',
        places: [
          {
            name: 'Évora',
            from: '2027-06-12',
            to: '2027-06-13',
            at: { latitude: 38.57, longitude: -7.91 },
            timeZone: 'Europe/Lisbon',
            weather: weather(26, 31, 0),
            days: {},
          },
        ],
        occasions: [
          occasion('2027-06-12', 'Walk', {
            setting: { where: 'outdoors', sun: 'sun' },
            activity: 'strolling',
            ...change,
          }),
        ],
      }),
      traveller: 'Ada',
      capsule: capsule(),
      pieces: CLOTHES,
      engine: sourceOf(CLOTHES),
      solver,
    });
    return plan.days.flatMap((day) => day.occasions.flatMap(({ look }) => look?.worn.map((one) => one.piece) ?? []));
  };

  it('gets the hat and the sunglasses of the bag, and not after dark', async () => {
    expect(await worn({ at: '12:00' })).toEqual(expect.arrayContaining(['hat', 'glasses']));
    const evening = await worn({ at: '22:00', part: 'evening' });
    expect(evening).toContain('tee');
    expect(evening).not.toContain('glasses');
    expect(evening).not.toContain('hat');
    // on a journey they save room in the bag
    expect(await worn({ at: '22:00', part: 'evening', transit: true })).toContain('hat');
  });
});

describe('socks in the snow', () => {
  it('are worn in snow boots below thermal leggings', () => {
    const bag = [
      piece('tee', 'long-sleeved tee'),
      piece('jeans', 'jeans'),
      piece('boots', 'snow boots'),
      piece('leggings', 'thermal leggings'),
      piece('socks', 'walking socks'),
    ];
    const source = sourceOf(bag);
    const { look } = source.explain(['tee', 'jeans', 'boots', 'leggings']);
    if (look === undefined) throw new Error('these make a look');
    expect(withSocks(source, look, bag).worn.map((one) => one.piece)).toEqual(
      expect.arrayContaining(['leggings', 'socks']),
    );
  });
});
