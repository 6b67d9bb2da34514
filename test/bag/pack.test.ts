import { beforeAll, describe, expect, it } from 'vitest';
import {
  bagReport,
  findingsOfBag,
  findingsOfStock,
  goesIn,
  longestStretch,
  type PackQuestion,
  packInFull,
  packTrip,
  stiffBox,
  sundriesFor,
  sundryTraits,
} from '../../lib/bag/index.ts';
import type { Bag, Brief, Piece, Plan, StockLine } from '../../lib/model/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import type { Solver } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { brief, occasion, piece } from '../plan/trip.ts';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const measured = (value: number) => ({ value, low: value, high: value, basis: 'given', source: 'scale' }) as const;
const weighed = (id: string, kind: Parameters<typeof piece>[1], grams: number, litres: number): Piece =>
  piece(id, kind, { grams: measured(grams), litres: measured(litres) });

const pieces: readonly Piece[] = [
  weighed('tee', 't-shirt', 200, 1),
  weighed('shirt', 'shirt', 250, 1.5),
  weighed('jeans', 'jeans', 600, 3),
  weighed('chinos', 'chinos', 450, 2),
  weighed('trench', 'trench coat', 1200, 6),
  weighed('boots', 'ankle boots', 1000, 6),
  weighed('loafers', 'loafers', 700, 4),
];

const cabin: Bag = { name: 'Cabin case', role: 'cabin', cm: [55, 40, 20], litres: 35, ownGrams: 2000, limitKg: 8 };
const personal: Bag = { name: 'Day bag', role: 'personal', litres: 12, ownGrams: 400 };
const hold: Bag = { name: 'Suitcase', role: 'hold', litres: 70, ownGrams: 3500, limitKg: 23 };

const trip = (change: Partial<Brief> = {}): Brief =>
  brief({
    bags: [cabin, personal],
    occasions: [
      occasion('2027-10-02', 'Flight out', { transit: true, activity: 'travelling' }),
      occasion('2027-10-03', 'Market'),
      occasion('2027-10-05', 'Flight home', { transit: true, activity: 'travelling' }),
    ],
    ...change,
  });

/** A plan by hand: the coat, jeans and boots are worn out, and the light things home. */
const planOf = (asked: Brief): Plan => {
  const wears: Readonly<Record<string, readonly string[]>> = {
    'Flight out': ['tee', 'jeans', 'boots', 'trench'],
    Market: ['shirt', 'chinos', 'loafers'],
    'Flight home': ['shirt', 'chinos', 'loafers'],
  };
  return {
    traveller: 'Ada',
    days: asked.occasions.map(({ id, on, what }) => ({
      date: on,
      wash: [],
      occasions: [
        {
          occasion: id,
          look: {
            id: what,
            worn: (wears[what] ?? []).map((worn) => ({ piece: worn, slot: 'top' as const })),
            dress: { low: 0, high: 0 },
            clo: { off: 0, on: 0 },
          } as never,
          layersOn: [],
          layersCarried: [],
          change: 'first' as const,
          reasons: [],
          cautions: [],
        },
      ],
    })),
    served: asked.occasions.length,
    of: asked.occasions.length,
    proven: true,
    unserved: [],
    weakPoints: [],
    wears: {},
  };
};

const line = (name: string, change: Partial<StockLine> = {}): StockLine => ({
  name,
  group: 'other',
  count: 1,
  per: 'trip',
  spare: 0,
  when: [],
  travellers: [],
  gramsEach: 100,
  litresEach: 0.2,
  basis: 'given',
  file: 'sundries.md',
  ...change,
});

const question = (asked: Brief, stock: readonly StockLine[] = [], packed = pieces): PackQuestion => ({
  brief: asked,
  capsule: { fixed: [] },
  pieces: packed,
  plan: planOf(asked),
  stock,
  solver,
});

const rulesOf = async (asked: PackQuestion): Promise<readonly string[]> => {
  const packed = await packInFull(asked);
  const engine = createWardrobeEngine({ pieces: asked.pieces, rules: {}, never: [], always: [] });
  return findingsOfBag(asked, packed, await bagReport(asked, packed, engine)).map(({ rule }) => rule);
};

describe('packing', () => {
  it('has every piece once, in a bag or worn at the first departure', async () => {
    const { bags, worn } = await packTrip(question(trip()));
    const listed = [...bags.flatMap((bag) => bag.pieces), ...worn].map((packed) => packed.piece);
    expect(listed.toSorted()).toEqual(pieces.map(({ id }) => id).toSorted());
    expect(worn.map((packed) => packed.piece)).toEqual(['tee', 'jeans', 'trench', 'boots']);
  });

  it('weighs the bag as packed, and says on which later journey it is heavier', async () => {
    const { bags, wornGrams } = await packTrip(question(trip({ bags: [cabin] })));
    expect(bags[0]?.grams.value).toBe(2000 + 250 + 450 + 700);
    expect(wornGrams.value).toBe(200 + 600 + 1200 + 1000);
    expect(bags[0]?.heaviest).toMatchObject({ on: '2027-10-05', grams: { value: 2000 + 3000 } });
  });

  it('puts shoes in first and what the first day asks for on top', async () => {
    const { bags } = await packTrip(question({ ...trip({ bags: [cabin] }), occasions: trip().occasions.slice(1, 2) }));
    expect(bags[0]?.pieces.map((packed) => packed.piece)[0]).toBe('boots');
    expect(bags[0]?.pieces.map((packed) => packed.piece).slice(-2)).toEqual(['chinos', 'shirt']);
  });

  it('keeps spare batteries out of the hold and large bottles in it', async () => {
    const stock = [
      line('Power bank', { group: 'electrics', wattHours: 37, spareBattery: true }),
      line('Large shampoo', { group: 'liquids', millilitres: 250 }),
    ];
    const { bags } = await packTrip(question(trip({ bags: [hold, cabin] }), stock));
    expect(bags[1]?.sundries.map(({ sundry }) => sundry.name)).toContain('Power bank');
    expect(bags[0]?.sundries.map(({ sundry }) => sundry.name)).toContain('Large shampoo');
  });
});

describe('what the packing list says beside its lines', () => {
  it('how each thing goes in: shoes in a bag, jumpers rolled, hats filled, what is worn not at all', async () => {
    // common practice, no source
    const more = [
      ...pieces,
      piece('jumper', 'crew-neck jumper'),
      piece('hat', 'sun hat'),
      piece('ring', 'ring'),
      piece('blouse', 'blouse', { fabric: 'satin' }),
    ];
    const { bags, worn } = await packTrip(question(trip(), [], more));
    const folds = new Map(bags.flatMap((bag) => bag.pieces.map(({ piece: id, fold }) => [id, fold])));
    expect(Object.fromEntries(folds)).toMatchObject({
      loafers: 'shoe bag',
      jumper: 'roll',
      hat: 'fill',
      ring: 'pouch',
      blouse: 'flat',
      shirt: 'fold',
    });
    expect(worn.length).toBeGreaterThan(0);
    expect(new Set(worn.map(({ fold }) => fold))).toEqual(new Set(['wear']));
  });

  it('when the guideline that stands in was read, and that the carrier is to be asked', async () => {
    const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
    const notes = async (change: Partial<Brief>): Promise<string> =>
      (await packTrip(question(trip(change)))).notes.map((note) => say(english, formats, note)).join(' ');
    const said = await notes({ bags: [{ ...cabin, guideline: 'cabin', assumed: ['size'] }], occasions: [] });
    expect(said).toMatch(
      /^Cabin case: its size is assumed from .* read in \p{L}+ \d{4}\. Ask the carrier: its own rule always holds\.$/u,
    );
    expect(await notes({ bags: [cabin], occasions: [] })).toBe('');
    expect(await notes({})).toMatch(/Liquids and batteries .* read in .* Ask your carrier/);
  });
});

describe('the check of the bags', () => {
  it('says nothing but the carrier of a bag that fits', async () => {
    expect(await rulesOf(question(trip()))).toEqual([]);
    expect(await rulesOf(question(trip({ bags: [{ ...cabin, guideline: 'cabin' }] })))).toEqual(['carrier-rule']);
  });

  it('names what to leave out when a bag is over its weight', async () => {
    const asked = question(trip({ bags: [{ ...cabin, limitKg: 4.2 }] }));
    const packed = await packInFull(asked);
    const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
    const report = await bagReport(asked, packed, engine);
    expect(report.fits).toBe(false);
    expect(report.leaveOut.fits).toBe(true);
    const found = findingsOfBag(asked, packed, report).find(({ rule }) => rule === 'bag-over-weight');
    expect(found?.level).toBe('error');
    expect(found?.message.values.over).toBeCloseTo(800, 6);
    expect(found?.mend?.values.pieces).toEqual(report.leaveOut.steps.map((step) => step.piece));
  });

  it('warns when the estimate alone could take it over', async () => {
    const estimated = pieces.map((one) =>
      one.id === 'boots' ? { ...one, grams: { ...one.grams, low: 500, high: 1500, basis: 'estimated' as const } } : one,
    );
    expect(await rulesOf(question(trip({ bags: [{ ...cabin, limitKg: 5.2 }] }), [], estimated))).toContain(
      'bag-near-limit',
    );
  });

  it('says which piece goes into no bag, and which is heavier than any bag may hold', async () => {
    const tiny: Bag = { name: 'Pouch', role: 'cabin', cm: [22, 15, 8], litres: 2, ownGrams: 100, limitKg: 1 };
    const asked = question(trip({ bags: [tiny] }));
    const packed = await packInFull(asked);
    const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
    const found = findingsOfBag(asked, packed, await bagReport(asked, packed, engine));
    const about = (rule: string) => found.filter((one) => one.rule === rule).flatMap((one) => one.about);
    expect(about('piece-too-long')).toEqual(['boots', 'loafers']);
    expect(about('piece-too-heavy')).toEqual(['trench', 'boots']);
  });

  it.each([
    ['no kilograms', { limitKg: 0 }],
    ['no litres', { litres: 0 }],
    ['a limit below its own weight', { limitKg: 1.5 }],
  ])('refuses a bag with %s', async (_what, change) => {
    expect(await rulesOf(question(trip({ bags: [{ ...cabin, ...change }] })))).toContain('bag-without-room');
  });

  it.each<readonly [string, Partial<StockLine>, readonly Bag[]]>([
    ['liquid-over-100', { group: 'liquids', millilitres: 101 }, [cabin]],
    ['liquids-over-litre', { group: 'liquids', millilitres: 100, count: 11 }, [cabin]],
    ['battery-over-100', { group: 'electrics', wattHours: 101 }, [cabin]],
    ['battery-over-160', { group: 'electrics', wattHours: 161 }, [cabin]],
    ['spare-battery-in-hold', { group: 'electrics', wattHours: 30, spareBattery: true }, [hold]],
  ])('finds %s on a flight and not on a train', async (rule, change, bags) => {
    const flight = trip({ bags });
    expect(await rulesOf(question(flight, [line('thing', change)]))).toContain(rule);
    const train = { ...flight, occasions: flight.occasions.map((one) => ({ ...one, what: 'Train' })) };
    expect(await rulesOf(question(train, [line('thing', change)]))).not.toContain(rule);
  });

  it.each<readonly [string, Partial<StockLine>]>([
    ['liquid-over-100', { group: 'liquids', millilitres: 100 }],
    ['liquid-over-100', { group: 'medicines', millilitres: 250 }],
    ['liquids-over-litre', { group: 'liquids', millilitres: 100, count: 10 }],
    ['battery-over-100', { group: 'electrics', wattHours: 100 }],
    ['battery-over-160', { group: 'electrics', wattHours: 160 }],
  ])('does not find %s at the limit itself or where it does not hold', async (rule, change) => {
    expect(await rulesOf(question(trip(), [line('thing', change)]))).not.toContain(rule);
  });

  it('asks for the millilitres of a liquid', () => {
    expect(findingsOfStock([line('Tonic', { group: 'liquids' })]).map(({ rule }) => rule)).toEqual([
      'liquid-without-millilitres',
    ]);
  });

  it('packs without bags and without journeys', async () => {
    const none = question(trip({ bags: [], occasions: [] }));
    expect((await packTrip(none)).bags).toEqual([]);
    expect(await rulesOf(none)).toEqual([]);
  });
});

describe('stiff pieces', () => {
  it('measures a shoe by its size: EU 42 is a last of 28 cm', () => {
    // Paris point, two thirds of a centimetre. from memory
    const box = stiffBox(piece('loafers', 'loafers', { size: '42' }));
    expect(box?.[0]).toBeGreaterThanOrEqual(28);
    expect(box?.[0]).toBeLessThan(31);
    expect(stiffBox(piece('tee', 't-shirt'))).toBeUndefined();
  });

  it('turns a box to make it fit, and takes the inner size at its word', () => {
    expect(goesIn([30, 10, 8], { ...personal, innerCm: [30, 10, 8] })).toBe(true);
    expect(goesIn([30.1, 10, 8], { ...personal, innerCm: [30, 10, 8] })).toBe(false);
    expect(goesIn([30, 10, 8], personal)).toBe(true);
  });
});

describe('sundries', () => {
  it.each([
    [[], 4],
    [['2027-10-03'], 2],
    [['2027-10-02'], 3],
    [['2027-10-05'], 4],
    [['2027-10-02', '2027-10-03', '2027-10-04'], 1],
    [['2027-12-01'], 4],
  ])('with washes on %j is longest without one for %i days of four', (washDays, days) => {
    expect(longestStretch({ from: '2027-10-02', to: '2027-10-05', washDays })).toBe(days);
  });

  it('packs for the longest stretch and one spare', () => {
    const asked = trip({ washDays: ['2027-10-03'] });
    const [socks] = sundriesFor(asked, planOf(asked), [], [line('Socks', { per: 'day between washes', spare: 1 })]);
    expect(socks?.count).toBe(3);
  });

  it('packs what a trait asks for and for whom, and never more than the most', () => {
    const asked = trip();
    const names = sundriesFor(
      asked,
      planOf(asked),
      [],
      [
        line('Goggles', { when: ['swim'] }),
        line('Ear plugs', { when: ['flight', 'swim'] }),
        line('For another', { travellers: ['Bo'] }),
        line('Tissues', { per: 'day', count: 2, most: 3 }),
      ],
    ).map(({ name, count }) => `${count} ${name}`);
    expect(names).toEqual(['1 Ear plugs', '3 Tissues']);
  });

  it.each([
    [['sandals', 'flip-flops'], []],
    [['sandals', 'loafers'], ['Socks']],
  ] as const)('with %j packs %j of what closed shoes ask for', (kinds, names) => {
    const asked = trip();
    const shoes = kinds.map((kind) => piece(kind, kind));
    const stock = [line('Socks', { when: ['closed shoes'] })];
    expect(sundriesFor(asked, planOf(asked), shoes, stock).map(({ name }) => name)).toEqual(names);
  });

  it('reads the traits of a trip', () => {
    const wet = trip({
      occasions: [
        occasion('2027-10-03', 'Baths', { needs: ['swim'] }),
        occasion('2027-10-04', 'Ball', { dress: 'formal' }),
      ],
      washDays: ['2027-10-03'],
    });
    expect([...sundryTraits(wet, planOf(wet), [])]).toEqual(['swim', 'formal', 'wash day']);
  });
});
