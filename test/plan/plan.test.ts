import { beforeAll, describe, expect, it } from 'vitest';
import { lookSourceOf } from '../../lib/capsule/index.ts';
import type { Brief, Occasion, Piece, Plan } from '../../lib/model/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import {
  findingsOfFixed,
  findingsOfNumber,
  findingsOfPlan,
  momentsOf,
  planTrip,
  type Solver,
  type TripQuestion,
} from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { createFormats, english, type Phrase, say } from '../../lib/words/index.ts';
import { bruteForce } from './look-source.ts';
import { brief, capsule, occasion, piece, weather } from './trip.ts';
import { brokenPlan } from './validator/index.ts';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const words = (phrases: readonly Phrase[]): readonly string[] => phrases.map((phrase) => say(english, formats, phrase));

const plan = (trip: Brief, pieces: readonly Piece[], change: Partial<TripQuestion> = {}): Promise<Plan> =>
  planTrip({
    brief: trip,
    traveller: 'Ada',
    capsule: capsule(),
    pieces,
    engine: bruteForce(pieces),
    solver,
    ...change,
  });

const BASICS = [
  piece('tee', 't-shirt', { worn: 1, dries: 8 }),
  piece('shirt', 'shirt', { worn: 2, dries: 8 }),
  piece('blouse', 'blouse', { worn: 2, dries: 8 }),
  piece('jeans', 'jeans', { worn: 3 }),
  piece('chinos', 'chinos', { worn: 3 }),
  piece('cardigan', 'cardigan', { worn: 5 }),
  piece('coat', 'wool coat'),
  piece('loafers', 'loafers'),
  piece('swimsuit', 'swimsuit', { dries: 12 }),
];

const museum = (on: string): Occasion => occasion(on, 'Museum', { setting: { where: 'indoors', airC: 21 } });
const swim = (on: string, at: string): Occasion =>
  occasion(on, `Swim at ${at}`, {
    at,
    part: 'day',
    needs: ['swim'],
    activity: 'swimming',
    setting: { where: 'indoors', airC: 28 },
  });

describe('a plan', () => {
  const trip = brief({
    occasions: [
      occasion('2027-10-02', 'Arrival', {
        setting: { where: 'outdoors', sun: 'shade' },
        activity: 'strolling',
        transit: true,
      }),
      museum('2027-10-03'),
      occasion('2027-10-03', 'Dinner', {
        part: 'evening',
        dress: 'smart casual',
        activity: 'sitting',
        setting: { where: 'indoors', airC: 22 },
      }),
      swim('2027-10-04', '10:00'),
      museum('2027-10-05'),
    ],
  });

  it('serves everything, proven, and passes the validator', async () => {
    const made = await plan(trip, BASICS);
    expect(made).toMatchObject({ served: 5, of: 5, proven: true, unserved: [] });
    expect(brokenPlan(made, trip, BASICS)).toEqual([]);
  });

  it('is the same every time', async () => {
    expect(JSON.stringify(await plan(trip, BASICS))).toBe(JSON.stringify(await plan(trip, BASICS)));
  });

  it('goes on in one look where it can', async () => {
    const made = await plan(trip, BASICS);
    const dinner = made.days.flatMap((day) => day.occasions).find((planned) => planned.occasion.includes('dinner'));
    expect(['goes on', 'layers only']).toContain(dinner?.change);
  });

  it('gives degrees, layers and the way there in words', async () => {
    const made = await plan(trip, BASICS);
    const all = made.days.flatMap((day) => day.occasions).flatMap(({ reasons }) => words(reasons));
    expect(all.some((text) => /^Comfortable outdoors at -?\d+–\d+°C while strolling/.test(text))).toBe(true);
  });

  it('lists what is worn how often, and every day of the trip', async () => {
    const made = await plan(trip, BASICS);
    expect(made.days.map(({ date }) => date)).toEqual(['2027-10-02', '2027-10-03', '2027-10-04', '2027-10-05']);
    expect(made.wears.swimsuit).toBe(1);
    expect(Object.keys(made.wears)).toHaveLength(BASICS.length);
  });

  it('wears the look the stylist fixed', async () => {
    const fixed = capsule({ fixed: [{ occasion: museum('2027-10-03').id, pieces: ['blouse', 'jeans', 'loafers'] }] });
    const made = await plan(trip, BASICS, { capsule: fixed });
    const look = made.days
      .flatMap((day) => day.occasions)
      .find((planned) => planned.occasion === museum('2027-10-03').id)?.look;
    expect(look?.worn.map((worn) => worn.piece).sort()).toEqual(['blouse', 'jeans', 'loafers']);
    expect(brokenPlan(made, trip, BASICS, fixed)).toEqual([]);
  });

  it('names a coat for the way to a fixed look without one where it is cold outside, and none where it is mild', async () => {
    const fixed = capsule({ fixed: [{ occasion: museum('2027-10-03').id, pieces: ['blouse', 'jeans', 'loafers'] }] });
    const coatAt = async (lowC: number) => {
      const places = trip.places.map((place) => ({ ...place, days: {}, weather: weather(lowC, lowC + 6) }));
      const made = await plan({ ...trip, places }, BASICS, { capsule: fixed });
      const there = made.days.flatMap(({ occasions }) => occasions).find(({ look }) => look?.worn.length === 3);
      return there?.way;
    };
    expect(await coatAt(3)).toMatchObject({ worn: expect.arrayContaining(['coat']), lowC: 3 });
    expect(await coatAt(18)).toBeUndefined();
  });

  it('plans only for those the occasion concerns', async () => {
    const two = brief({ ...trip, occasions: [{ ...museum('2027-10-03'), travellers: ['Bo'] }, museum('2027-10-04')] });
    expect((await plan(two, BASICS)).of).toBe(1);
  });

  it('takes an empty trip and an empty bag', async () => {
    expect(await plan(brief(), BASICS)).toMatchObject({ served: 0, of: 0, proven: true });
    const nothing = await plan(trip, []);
    expect(nothing).toMatchObject({ served: 0, of: 5, proven: true });
    expect(words(nothing.unserved[0]?.lacks ?? [])).toEqual(['these pieces make no look at all']);
  });
});

describe('where a day is spent', () => {
  const stay = (name: string, from: string, to: string) => ({ name, from, to, weather: weather(12, 19), days: {} });
  const train = (on: string, at: string): Occasion =>
    occasion(on, `Train at ${at}`, {
      at,
      transit: true,
      activity: 'travelling',
      setting: { where: 'indoors', airC: 21 },
    });
  const places = [stay('Vienna', '2027-10-02', '2027-10-03'), stay('Graz', '2027-10-03', '2027-10-05')];
  const daysOf = async (...occasions: readonly Occasion[]) =>
    (await plan(brief({ places, occasions }), BASICS)).days.map(({ place, homeward }) => place ?? homeward);

  it('follows the journey of the day', async () => {
    const morning = await daysOf(train('2027-10-03', '08:00'), museum('2027-10-03'), museum('2027-10-05'));
    expect(morning).toEqual(['Vienna', 'Graz', 'Graz', 'Graz']);
    const night = await daysOf(museum('2027-10-03'), train('2027-10-03', '21:00'), museum('2027-10-05'));
    expect(night).toEqual(['Vienna', 'Vienna', 'Graz', 'Graz']);
  });

  it('is nowhere in the brief after the journey home, and stays put before one', async () => {
    const home = await daysOf(museum('2027-10-03'), train('2027-10-04', '20:40'));
    expect(home).toEqual(['Vienna', 'Vienna', 'Graz', true]);
    expect(await daysOf(train('2027-10-02', '08:00'))).toEqual(['Vienna', 'Graz', 'Graz', 'Graz']);
    expect(await daysOf(museum('2027-10-02'))).toEqual(['Vienna', 'Graz', 'Graz', 'Graz']);
  });
});

describe('swimwear', () => {
  const trip = brief({ occasions: [swim('2027-10-03', '10:00'), swim('2027-10-03', '15:00')] });

  it('is not worn wet', async () => {
    const made = await plan(trip, BASICS);
    expect(made).toMatchObject({ served: 1, of: 2, proven: true });
    expect(words(made.unserved[0]?.lacks ?? [])).toEqual(['swimsuit would still be wet']);
  });

  it('takes turns, two of it', async () => {
    const two = [...BASICS, piece('bikini', 'bikini', { dries: 12 })];
    const made = await plan(trip, two);
    expect(made.served).toBe(2);
    expect(brokenPlan(made, trip, two)).toEqual([]);
  });

  it('is offered from the wardrobe when one is missing', async () => {
    const all = [...BASICS, piece('bikini', 'bikini', { dries: 12 })];
    const made = await plan(trip, BASICS, { wardrobe: { pieces: all, engine: bruteForce(all) } });
    expect(words(made.unserved[0]?.mends.map(({ what }) => what) ?? [])[0]).toBe(
      'Pack bikini: add bikini to “pieces” (trips/test/quiet.md).',
    );
  });
});

describe('washing', () => {
  const days = ['2027-10-02', '2027-10-03', '2027-10-04', '2027-10-05'];
  const one = [
    piece('dress', 'tea dress', { worn: 2, dries: 10 }),
    piece('cardigan', 'cardigan', { worn: 9 }),
    piece('jacket', 'long cardigan', { worn: 9 }),
    piece('shawl', 'knitted jacket', { worn: 9 }),
    piece('loafers', 'loafers'),
  ];
  const trip = brief({ occasions: days.map((on) => museum(on)) });

  it('stops at the wears between washes', async () => {
    const made = await plan(trip, one);
    expect(made).toMatchObject({ served: 2, proven: true });
    const lacks = made.unserved.flatMap((u) => words(u.lacks)).join(' ');
    expect(lacks).toMatch(/dress would need washing/);
  });

  it('names the wash day that would mend it, and the plan with it holds', async () => {
    const made = await plan(trip, one);
    const mends = words(made.unserved[0]?.mends.map(({ what }) => what) ?? []);
    expect(mends[0]).toBe('Wash on 3 Oct: add 2027-10-03 to “wash days” (trips/test/brief.md).');
    const washed = brief({ ...trip, washDays: ['2027-10-03'] });
    const better = await plan(washed, one);
    expect(better.served).toBe(4);
    expect(better.days[1]?.wash).toEqual([{ piece: 'dress', dryBy: '2027-10-04', dryAt: '08:00' }]);
    expect(brokenPlan(better, washed, one)).toEqual([]);
  });

  it('does not wear what is still drying', async () => {
    const slow = one.map((p) => (p.id === 'dress' ? piece('dress', 'tea dress', { worn: 2, dries: 30 }) : p));
    const washed = brief({ ...trip, washDays: ['2027-10-03'] });
    const made = await plan(washed, slow);
    expect(made.served).toBe(3);
    expect(brokenPlan(made, washed, slow)).toEqual([]);
  });

  it('hangs up what is worn past the hour of the wash when it comes off', async () => {
    // worn until 23:00 and not until the wash of 22:00: dry at 11:00 two days later, an hour after the museum opens
    const late = brief({
      washDays: ['2027-10-02'],
      occasions: [{ ...museum('2027-10-02'), part: 'evening' as const }, museum('2027-10-04')].map((one) => ({
        ...one,
        setting: { where: 'indoors', airC: 25 },
      })),
    });
    const pieces = (dries: number) => [piece('dress', 'tea dress', { worn: 1, dries }), piece('loafers', 'loafers')];
    const damp = await plan(late, pieces(36));
    expect(damp).toMatchObject({ served: 1, proven: true });
    const dry = await plan(late, pieces(35));
    expect(dry.served).toBe(2);
    expect(dry.days[0]?.wash).toEqual([{ piece: 'dress', dryBy: '2027-10-04', dryAt: '10:00' }]);
    expect(brokenPlan(dry, late, pieces(35))).toEqual([]);
  });

  it('washes nothing that has to be dry cleaned', async () => {
    const delicate = one.map((p) => (p.id === 'dress' ? { ...p, care: { ...p.care, wash: 'dry clean' as const } } : p));
    const made = await plan(brief({ ...trip, washDays: ['2027-10-03'] }), delicate);
    expect(made.served).toBe(2);
  });
});

describe('when it cannot be done', () => {
  it('names the nearest look, what it lacks, and a looser dress code', async () => {
    const gala = occasion('2027-10-03', 'Gala', { dress: 'formal', part: 'evening' });
    const made = await plan(brief({ occasions: [gala] }), BASICS);
    expect(made).toMatchObject({ served: 0, of: 1, proven: true });
    expect(made.unserved[0]?.nearest).toBeDefined();
    expect(words(made.unserved[0]?.lacks ?? []).join(' ')).toMatch(/formal/);
    const findings = findingsOfPlan(made, brief({ occasions: [gala] }), BASICS);
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ level: 'error', rule: 'unserved-occasion', about: [gala.id] });
  });

  it('finds the dress code one step down', async () => {
    const gala = occasion('2027-10-03', 'Party', {
      dress: 'business',
      part: 'evening',
      setting: { where: 'indoors', airC: 24 },
    });
    const casual = BASICS.filter(({ id }) => ['tee', 'jeans', 'loafers'].includes(id)).map((p) =>
      p.id === 'tee' ? { ...p, dress: { low: 0, high: 1 } } : { ...p, dress: { low: 0, high: 2 } },
    );
    const made = await plan(brief({ occasions: [gala] }), casual);
    expect(words(made.unserved[0]?.mends.map(({ what }) => what) ?? [])[0]).toBe(
      'Let “Party” be smart casual: write “dress: smart casual” (trips/test/brief.md).',
    );
  });

  it('finds that one degree would do', async () => {
    // A stroll for which the warmest look is just too cold: found by lowering the air until nothing serves.
    const stroll = (lowC: number, degreesOff = 0) =>
      brief({
        places: [{ name: 'Vienna', from: '2027-10-02', to: '2027-10-12', weather: weather(lowC, lowC), days: {} }],
        occasions: [
          occasion('2027-10-03', 'Stroll', {
            setting: { where: 'outdoors', sun: 'shade' },
            activity: 'strolling',
            line: 9,
            ...(degreesOff === 0 ? {} : { degreesOff }),
          }),
        ],
      });
    let lowC = 12;
    while ((await plan(stroll(lowC), BASICS)).served === 1) lowC -= 0.5;
    const made = await plan(stroll(lowC), BASICS);
    expect(words(made.unserved[0]?.lacks ?? [])[0]).toMatch(/not warm enough for strolling/);
    expect(words(made.unserved[0]?.mends.map(({ what }) => what) ?? [])[0]).toBe(
      'Accept “Stroll” a degree (°C) off comfortable: write “degrees off: 1” (trips/test/brief.md:9).',
    );
    const accepted = await plan(stroll(lowC, 1), BASICS);
    expect(accepted.served).toBe(1);
    expect(brokenPlan(accepted, stroll(lowC, 1), BASICS)).toEqual([]);
    const reasons = accepted.days.flatMap(({ occasions }) => occasions.flatMap((planned) => words(planned.reasons)));
    expect(reasons.join(' ')).toContain('accepts a degree (°C) off comfortable');
  });

  it('says at −40 °C that no clothes serve, and what to do', async () => {
    const polar = brief({
      places: [{ name: 'Pole', from: '2027-10-02', to: '2027-10-12', weather: weather(-40, -38), days: {} }],
      occasions: [
        occasion('2027-10-03', 'Walk', { setting: { where: 'outdoors', sun: 'shade' }, activity: 'walking' }),
      ],
    });
    const made = await plan(polar, BASICS);
    expect(made.served).toBe(0);
    expect(words(made.unserved[0]?.lacks ?? [])).toEqual(['at -39°C no clothes in a travel bag are enough']);
    const chosen = capsule({
      fixed: [{ occasion: 'Walk', pieces: ['shirt', 'jeans', 'cardigan', 'coat', 'loafers'] }],
    });
    expect((await plan(polar, BASICS, { capsule: chosen })).served).toBe(0);
    expect(findingsOfPlan(made, polar, BASICS).map(({ rule }) => rule)).toEqual(['too-cold-for-clothes']);
    expect(words(made.days[1]?.occasions[0]?.cautions ?? []).join(' ')).toMatch(
      /no clothes in a travel bag are enough/,
    );
  });

  it('says of a fixed look what it misses, in degrees, to the stylist and not in its reasons', async () => {
    const chilly = brief({
      occasions: [
        occasion('2027-10-03', 'Reading', { setting: { where: 'indoors', airC: 19 }, activity: 'sitting', line: 7 }),
      ],
    });
    const fixed = capsule({ fixed: [{ occasion: 'Reading', pieces: ['tee', 'jeans', 'loafers'] }] });
    const ruled = createWardrobeEngine({ pieces: BASICS, rules: {}, never: [], always: [] });
    const engine = lookSourceOf(ruled, new Set());
    const made = await plan(chilly, BASICS, { capsule: fixed, engine });
    const [planned] = made.days[1]?.occasions ?? [];
    expect(made.served).toBe(1);
    expect(words(planned?.reasons ?? []).join(' ')).not.toMatch(/clo/);
    const [found] = findingsOfFixed(made, chilly);
    expect(found).toMatchObject({ level: 'warning', rule: 'fixed-look', line: 7, about: ['2027-10-03-reading'] });
    expect(words(found?.reason === undefined ? [] : [found.reason])).toEqual([
      'It is on the cool side for sitting at 19°C.',
    ]);
    const warm = capsule({
      fixed: [{ occasion: 'Reading', pieces: ['shirt', 'jeans', 'cardigan', 'coat', 'loafers'] }],
    });
    expect(findingsOfFixed(await plan(chilly, BASICS, { capsule: warm, engine }), chilly)).toEqual([]);
  });

  it('says when there are more pieces than the brief allows', () => {
    const rules = (piecesAtMost?: number): readonly string[] =>
      findingsOfNumber(BASICS, brief(piecesAtMost === undefined ? {} : { piecesAtMost }), capsule()).map(
        ({ message }) => words([message])[0] ?? '',
      );
    expect(rules(8)).toEqual(['The capsule has 9 pieces; the brief allows 8.']);
    expect(rules(9)).toEqual([]);
    expect(rules()).toEqual([]);
  });

  it('never calls a suit near to a swim', async () => {
    const pool = brief({ occasions: [swim('2027-10-03', '10:00')] });
    const dry = BASICS.filter(({ id }) => id !== 'swimsuit');
    const made = await plan(pool, dry);
    expect(made.unserved).toMatchObject([{ lacks: [{ key: 'lacks swimwear' }] }]);
    expect(made.unserved[0]?.nearest).toBeUndefined();
    const covered = { ...swim('2027-10-03', '10:00'), needs: ['swim', 'knees covered'] as const };
    const [unserved] = (await plan(brief({ occasions: [covered] }), BASICS)).unserved;
    expect(unserved?.nearest?.worn.map(({ piece: id }) => id)).toEqual(['swimsuit']);
    expect(words(unserved?.lacks ?? [])).toEqual(['it leaves the knees bare']);
  });

  it('tells fixed pieces that make no look', async () => {
    const fixed = capsule({ fixed: [{ occasion: 'Museum', pieces: ['tee', 'shirt'] }] });
    const made = await plan(brief({ occasions: [museum('2027-10-03')] }), BASICS, { capsule: fixed });
    expect(words(made.unserved[0]?.lacks ?? [])).toEqual(['the pieces fixed to it do not make a look']);
    expect(words(made.unserved[0]?.mends.map(({ what }) => what) ?? [])).toContain(
      'Leave the look for “Museum” open: take Museum out of “fixed” (trips/test/quiet.md).',
    );
  });
});

describe('weak points', () => {
  it('names the piece the plan hangs on, and the dry day', async () => {
    const walk = occasion('2027-10-03', 'Walk', {
      setting: { where: 'outdoors', sun: 'shade' },
      activity: 'strolling',
    });
    const made = await plan(brief({ occasions: [walk, museum('2027-10-04')] }), BASICS);
    const loafers = made.weakPoints.find((point) => point.piece === 'loafers');
    expect(loafers?.loses).toHaveLength(2);
    expect(made.weakPoints.map(({ what }) => say(english, formats, what))).toContain(
      'If it rains on Sunday 3 October, no look is left for Walk.',
    );
    expect(made.weakPoints.find((point) => point.piece === 'tee')).toBeUndefined();
  });
});

describe('a journey', () => {
  // Wear the heaviest things to travel, pack the light ones: common practice, no source
  it('is made in the look that suits it and takes most out of the bags', async () => {
    const pieces = [
      ...BASICS,
      piece('boots', 'ankle boots'),
      piece('trench', 'trench coat'),
      piece('jumper', 'crew-neck jumper'),
    ];
    const train = occasion('2027-10-03', 'Train', { transit: true, activity: 'travelling' });
    const trip = brief({ occasions: [museum('2027-10-02'), train] });
    const grams = new Map(pieces.map((one) => [one.id, one.grams.value]));
    const weightOf = (worn: readonly { readonly piece: string }[]): number =>
      worn.reduce((sum, { piece: id }) => sum + (grams.get(id) ?? 0), 0);
    const moment = momentsOf(trip, 'Ada').find(({ occasion: { id } }) => id === train.id);
    const weights = bruteForce(pieces)
      .rank(Number.MAX_SAFE_INTEGER, moment?.restriction)
      .map(({ look }) => weightOf(look.worn));
    const planned = await plan(trip, pieces);
    const look = planned.days.flatMap(({ occasions }) => occasions).find(({ occasion: id }) => id === train.id)?.look;
    expect(new Set(weights).size).toBeGreaterThan(5);
    expect(weightOf(look?.worn ?? [])).toBe(Math.max(...weights));
    expect(brokenPlan(planned, trip, pieces)).toEqual([]);
  });

  it('is not made in heavy shoes that the client refuses', async () => {
    const heels = piece('heels', 'knee boots', { heelCm: 9 });
    const train = occasion('2027-10-03', 'Train', { transit: true, activity: 'travelling' });
    const wornUnder = async (heelCmOver: number): Promise<readonly string[]> => {
      const trip = brief({ avoid: { colours: [], fabrics: [], heelCmOver }, occasions: [train] });
      const planned = await plan(trip, [...BASICS, heels]);
      return planned.days[1]?.occasions[0]?.look?.worn.map(({ piece: id }) => id) ?? [];
    };
    expect(await wornUnder(10)).toContain('heels');
    expect(await wornUnder(6)).toContain('loafers');
  });
});
