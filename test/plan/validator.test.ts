import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Brief, Capsule, Look, Piece, Plan, PlannedDay, PlannedOccasion } from '../../lib/model/index.ts';
import { planTrip } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { bruteForce } from './look-source.ts';
import { brief, capsule, occasion, piece, weather } from './trip.ts';
import { brokenPlan } from './validator/index.ts';

const ANY = { low: 0, high: 3 };
const PIECES: readonly Piece[] = [
  piece('tee', 't-shirt', { worn: 1, dries: 8, dress: ANY }),
  piece('shirt', 'shirt', { worn: 1, dries: 8, dress: ANY }),
  piece('jeans', 'jeans', { worn: 2, dries: 10, dress: ANY }),
  piece('dress', 'tea dress', { worn: 1, dries: 8, dress: ANY }),
  piece('jumper', 'crew-neck jumper', { worn: 9, dress: ANY, places: ['mid layer'] }),
  piece('rain', 'rain jacket', { suits: ['rain'] }),
  piece('boots', 'lace-up boots', { dress: ANY, suits: ['uneven ground', 'rain'] }),
  piece('heels', 'ankle boots', { dress: ANY, heelCm: 9 }),
  piece('swimsuit', 'swimsuit', { dries: 12 }),
  piece('hat', 'sun hat'),
];
const TRIP: Brief = brief({
  to: '2027-10-06',
  washDays: ['2027-10-03', '2027-10-04'],
  avoid: { colours: [], fabrics: [], heelCmOver: 6 },
  places: [{ name: 'Graz', from: '2027-10-02', to: '2027-10-06', weather: weather(9, 15), days: {} }],
  occasions: [
    occasion('2027-10-02', 'Walk', {
      setting: { where: 'outdoors', sun: 'shade' },
      activity: 'walking',
      needs: ['rain', 'uneven ground'],
    }),
    occasion('2027-10-02', 'Supper', { part: 'evening', dress: 'smart casual' }),
    occasion('2027-10-03', 'Museum'),
    occasion('2027-10-03', 'Dinner', { part: 'evening', dress: 'smart casual' }),
    occasion('2027-10-04', 'Swim', {
      at: '10:00',
      needs: ['swim'],
      activity: 'swimming',
      setting: { where: 'indoors', airC: 28 },
    }),
    occasion('2027-10-05', 'Museum'),
    occasion('2027-10-05', 'Opera', { part: 'evening', dress: 'business' }),
    occasion('2027-10-06', 'Chapel', { setting: { where: 'indoors', airC: 19 } }),
  ],
});

describe('the validator', () => {
  let plan: Plan;
  beforeAll(async () => {
    plan = await planTrip({
      brief: TRIP,
      traveller: 'Ada',
      capsule: capsule(),
      pieces: PIECES,
      engine: bruteForce(PIECES),
      solver: await loadSolver(),
    });
  });
  const check = (changed: Plan, trip: Brief = TRIP, wishes: Partial<Capsule> = {}): string =>
    brokenPlan(changed, trip, PIECES, capsule(wishes)).join('; ');

  const days = (change: (day: PlannedDay) => PlannedDay): Plan => ({ ...plan, days: plan.days.map(change) });
  const occasions = (change: (one: PlannedOccasion) => PlannedOccasion): Plan =>
    days((day) => ({ ...day, occasions: day.occasions.map(change) }));
  const looks = (change: (look: Look) => Look): Plan =>
    occasions((one) => (one.look === undefined ? one : { ...one, look: change(one.look) }));
  const of = (name: string): PlannedOccasion => {
    const found = plan.days.flatMap((day) => day.occasions).find(({ occasion: id }) => id.includes(name));
    if (found === undefined) throw new Error(name);
    return found;
  };

  it('imports nothing of the plan', () => {
    const folder = path.join(import.meta.dirname, 'validator');
    for (const file of readdirSync(folder))
      expect(readFileSync(path.join(folder, file), 'utf8'), file).not.toMatch(/lib\/plan|look-source/);
  });

  it('takes the plan as it was made, which has all that is to be spoilt', () => {
    expect(check(plan)).toBe('');
    expect(plan.served).toBe(8);
    expect(plan.days.flatMap(({ wash }) => wash).length).toBeGreaterThan(0);
    expect(plan.days.flatMap((day) => day.occasions).some(({ layersOn }) => layersOn.includes('jumper'))).toBe(true);
    expect(
      plan.days.flatMap((day) => day.occasions).filter(({ look }) => look?.worn[0]?.slot === 'one-piece').length,
    ).toBeGreaterThan(0);
  });

  it('sees all washes gone', () => {
    expect(check(days((day) => ({ ...day, wash: [] })))).toMatch(/times without a wash/);
  });
  it('sees one wash gone', () => {
    const [first] = plan.days.flatMap(({ wash }) => wash);
    const without = days((day) => ({ ...day, wash: day.wash.filter((one) => one !== first) }));
    expect(check(without)).toContain(`${first?.piece} is worn 2 times without a wash`);
  });
  it('sees a wash on no wash day, of a piece that is not packed, or of one that cannot be washed', () => {
    const [first] = plan.days.flatMap(({ wash }) => wash);
    const moved = days((day) => ({ ...day, wash: day.date === '2027-10-05' && first ? [first] : [] }));
    expect(check(moved)).toMatch(/on 2027-10-05, no wash day/);
    const stranger = days((day) => ({ ...day, wash: day.wash.map((one) => ({ ...one, piece: 'kilt' })) }));
    expect(check(stranger)).toMatch(/kilt is washed and not in the bag/);
    const delicate = PIECES.map((one) => ({ ...one, care: { ...one.care, wash: 'dry clean' as const } }));
    expect(brokenPlan(plan, TRIP, delicate).join()).toMatch(/cannot be washed on the way/);
  });
  it('sees what is said to be dry before it is washed', () => {
    const early = days((day) => ({ ...day, wash: day.wash.map((one) => ({ ...one, dryBy: '2027-10-02' })) }));
    expect(check(early)).toMatch(/is dry at 1?\d\d?, not/);
  });
  it('sees what is worn before it is dry', () => {
    const slow = PIECES.map((one) => ({ ...one, care: { ...one.care, dryHours: { ...one.care.dryHours, high: 60 } } }));
    expect(brokenPlan(plan, TRIP, slow).join()).toMatch(/is worn wet/);
  });
  it('sees shoes left out of every look', () => {
    const barefoot = looks((look) => ({ ...look, worn: look.worn.filter(({ slot }) => slot !== 'shoes') }));
    expect(check(barefoot)).toMatch(/no look is made of/);
  });
  it('sees a T-shirt and jeans over a dress', () => {
    const both = looks((look) =>
      look.worn[0]?.slot === 'one-piece'
        ? { ...look, worn: [...look.worn, { piece: 'tee', slot: 'top' }, { piece: 'jeans', slot: 'bottom' }] }
        : look,
    );
    expect(check(both)).toMatch(/no look is made of one-piece, .*top, bottom/);
  });
  it('sees shoes on the head, a piece worn twice at once, and one that is not packed', () => {
    const onHead = looks((look) => ({
      ...look,
      worn: look.worn.map((one) => (one.slot === 'shoes' ? { ...one, slot: 'headwear' } : one)),
    }));
    expect(check(onHead)).toMatch(/boots is not worn as headwear/);
    const doubled = looks((look) => ({ ...look, worn: [...look.worn, ...look.worn.slice(0, 1)] }));
    expect(check(doubled)).toMatch(/worn twice at once.*two pieces are in one place/);
    const stranger = looks((look) => ({
      ...look,
      worn: look.worn.map((one) => ({ ...one, piece: `no-${one.piece}` })),
    }));
    expect(check(stranger)).toMatch(/no-boots is not in the bag/);
  });
  it('sees layers that are none of the look, on in the warm and in the hand in the cold and rain', () => {
    expect(check(occasions((one) => ({ ...one, layersOn: ['anorak'] })))).toMatch(/layers are .*, not anorak/);
    const swapped = occasions((one) => ({ ...one, layersOn: one.layersCarried, layersCarried: one.layersOn }));
    expect(check(swapped)).toMatch(/rain is in the hand in the rain/);
    expect(check(swapped)).toMatch(/too cold with .*jumper.* in the hand/);
    const hot: Brief = {
      ...TRIP,
      occasions: TRIP.occasions.map((one) => ({ ...one, setting: { where: 'indoors', airC: 29 } })),
    };
    expect(check(plan, hot)).toMatch(/is on and not needed/);
  });
  it('sees a wrong table of wears and a wrong change', () => {
    expect(check({ ...plan, wears: { ...plan.wears, boots: 99 } })).toMatch(/boots is worn on \d days, not 99/);
    expect(check({ ...plan, wears: {} })).toMatch(/not undefined/);
    expect(check(occasions((one) => ({ ...one, change: 'goes on' })))).toMatch(/is called “goes on” and is “first”/);
  });
  it('sees occasions on another day', () => {
    const turned = days((day) => ({
      ...day,
      occasions:
        plan.days.find(
          ({ date }) =>
            date === (day.date === '2027-10-05' ? '2027-10-06' : day.date === '2027-10-06' ? '2027-10-05' : day.date),
        )?.occasions ?? [],
    }));
    expect(check(turned)).toMatch(/opera is planned on 2027-10-06, not on 2027-10-05/);
  });
  it('sees an occasion twice and another dropped, and one nobody asked for', () => {
    const twice = occasions((one) => (one.occasion.includes('opera') ? { ...of('10-05-museum') } : one));
    expect(check(twice)).toMatch(/05-museum is planned on 2027-10-05 and 2027-10-05/);
    expect(check(twice)).toMatch(/opera is planned on no day/);
    expect(check(occasions((one) => ({ ...one, occasion: `${one.occasion}-x` })))).toMatch(
      /is planned and not asked for/,
    );
  });
  it('sees numbers that do not add up', () => {
    expect(check({ ...plan, served: 3 })).toMatch(/says 3 of 8/);
    const bare = occasions(({ look: _, ...one }) => ({ ...one, layersOn: [], layersCarried: [], change: 'first' }));
    expect(check(bare)).toMatch(/are called unserved/);
    expect(check({ ...plan, days: plan.days.slice(1) })).toMatch(/not the days of the trip/);
  });
  it('sees what the client avoids and the occasion asks', () => {
    const heels = looks((look) => ({
      ...look,
      worn: look.worn.map((one) => (one.slot === 'shoes' ? { ...one, piece: 'heels' } : one)),
    }));
    expect(check(heels)).toMatch(/heels has a heel.*|nothing answers uneven ground/);
    const { fabric = '', colours = [] } = PIECES.find(({ id }) => id === 'boots') ?? {};
    expect(check(plan, { ...TRIP, avoid: { colours: [], fabrics: [fabric] } })).toMatch(/boots is of/);
    expect(check(plan, { ...TRIP, avoid: { colours, fabrics: [] } })).toMatch(/colour that is avoided/);
    const formal: Brief = { ...TRIP, occasions: TRIP.occasions.map((one) => ({ ...one, dress: 'formal' })) };
    expect(check(plan, formal)).toMatch(/tee is not formal/);
    const asked = (need: 'sun' | 'head covered' | 'snow'): string =>
      check(plan, { ...TRIP, occasions: TRIP.occasions.map((one) => ({ ...one, needs: [need] })) });
    for (const need of ['sun', 'head covered', 'snow'] as const)
      expect(asked(need)).toContain(`nothing answers ${need}`);
    const arctic: Brief = { ...TRIP, places: TRIP.places.map((place) => ({ ...place, weather: weather(-20, -15) })) };
    expect(check(plan, arctic)).toMatch(/too cold with everything on/);
  });
  it('sees wishes of the capsule gone against', () => {
    const { look } = of('10-03-museum');
    const ids = look?.worn.map(({ piece: id }) => id) ?? [];
    expect(check(plan, TRIP, { never: [ids.slice(0, 2)] })).toMatch(/are never worn together/);
    expect(check(plan, TRIP, { always: [[ids[0] ?? '', 'hat']] })).toMatch(/is without what is always worn with it/);
    const fixed = [{ occasion: '2027-10-03-museum', pieces: ['tee', 'jeans', 'heels'] }];
    expect(check(plan, TRIP, { fixed })).toMatch(/not the look the stylist chose/);
  });
  it('sees a look come again before the same people, unless the stylist chose it', () => {
    const again = occasions((one) =>
      one.occasion.includes('opera') ? { ...of('supper'), occasion: one.occasion } : one,
    );
    expect(check(again)).toMatch(/is seen again at 2027-10-05-opera/);
    const pieces = of('supper').look?.worn.map(({ piece: id }) => id) ?? [];
    const chosen = ['2027-10-02-supper', '2027-10-05-opera'].map((id) => ({ occasion: id, pieces }));
    expect(check(again, TRIP, { fixed: chosen })).not.toMatch(/is seen again/);
  });
});
