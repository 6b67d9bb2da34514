import { describe, expect, it } from 'vitest';
import { lookComfort } from '../../lib/comfort/index.ts';
import { dayOf } from '../../lib/guide/index.ts';
import { comfortsOf, type LookComforts, type PlannedFor } from '../../lib/guide/look-comforts.ts';
import { goingOut, goingOutInShort, wearIt, wearItInShort } from '../../lib/guide/wear-it.ts';
import type { Look, LookComfort, Occasion } from '../../lib/model/index.ts';
import type { ActivityId } from '../../lib/vocabulary/index.ts';
import { createFormats, english, type Phrase, phrase, say } from '../../lib/words/index.ts';
import { occasion, piece } from '../plan/trip.ts';

const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const said = (phrase: Phrase): string => say(english, formats, phrase);
const comfort = (where: LookComfort['where'], activity: ActivityId, lowC: number, highC: number): LookComfort => ({
  activity,
  where,
  clo: { off: 0.5, on: 1 },
  lowC,
  highC,
  steps: [],
});
const PLANNED = {
  occasion: 'x',
  layersOn: [],
  layersCarried: [],
  change: 'first',
  reasons: [],
  cautions: [],
} as const;
const COMFORTS: LookComforts = {
  outdoors: comfort('outdoors', 'strolling', 3, 26),
  indoors: comfort('indoors', 'sitting', 17, 26),
  also: [],
  first: 'outdoors',
  lacks: { outdoors: [], indoors: [] },
};
const lookIn = (slot: 'one-piece' | 'swim'): Look => ({ id: slot, worn: [{ piece: slot, slot }] });
const sentences = (look: Look): readonly string[] =>
  wearIt(look, undefined, [], { low: 0, high: 1 }, COMFORTS).map(said);

describe('when to wear a look', () => {
  it('says of each range of degrees where it holds', () => {
    expect(sentences(lookIn('one-piece'))).toEqual([
      'Casual to smart casual.',
      'Outdoors while strolling 3–26°C, layers on or off.',
      'Indoors while sitting 17–26°C.',
    ]);
  });

  it('begins with the air in which it is worn first, and tells further activities last', () => {
    const inside: LookComforts = {
      ...COMFORTS,
      indoors: comfort('indoors', 'strolling indoors', 13, 25),
      also: [comfort('outdoors', 'brisk walking', 5, 20)],
      first: 'indoors',
    };
    const told = wearIt(lookIn('one-piece'), undefined, [], { low: 0, high: 1 }, inside).map(said);
    expect(told.slice(1)).toEqual([
      'Indoors while strolling 13–25°C.',
      'Outdoors while strolling 3–26°C, layers on or off.',
      'Outdoors while walking briskly 5–20°C, layers on or off.',
    ]);
  });

  it('says no degrees of swimwear', () => {
    expect(sentences(lookIn('swim'))).toEqual(['For swimming and by the water.']);
  });
});

describe('the air of a look that is planned', () => {
  const pieces = [piece('dress', 'tea dress'), piece('coat', 'wool coat')];
  const byId = new Map(pieces.map((one) => [one.id, one]));
  const look: Look = {
    id: 'dress+coat',
    worn: [
      { piece: 'dress', slot: 'one-piece' },
      { piece: 'coat', slot: 'outer layer' },
    ],
  };
  const at = (low: number, high: number, change: Partial<Occasion> = {}): PlannedFor => ({
    occasion: occasion('2027-10-04', 'Walk', {
      setting: { where: 'outdoors', sun: 'shade' },
      activity: 'walking',
      ...change,
    }),
    planned: { ...PLANNED, airC: { low, high } },
  });

  it('is told at the activity of its own occasion, as the plan tells it', () => {
    const { outdoors, indoors } = comfortsOf(look, byId, [at(12, 14)], undefined);
    expect(outdoors).toEqual(lookComfort(look, byId, 'walking', 'outdoors'));
    expect(indoors).toEqual(lookComfort(look, byId, 'sitting', 'indoors'));
    expect(comfortsOf(look, byId, [], undefined).outdoors.activity).toBe('strolling');
  });

  it('is told of every activity once', () => {
    const uses = [at(12, 14), at(12, 14, { activity: 'sitting' }), at(10, 12)];
    const { outdoors, also } = comfortsOf(look, byId, uses, undefined);
    expect([outdoors, ...also].map(({ activity }) => activity)).toEqual(['walking', 'sitting']);
  });

  it('comes with what is lacking where colder or hotter air is expected, on a card as well', () => {
    const { lowC, highC } = lookComfort(look, byId, 'walking', 'outdoors');
    const told = (use: PlannedFor) =>
      wearIt(look, 'Walk', ['Walk'], { low: 0, high: 1 }, comfortsOf(look, byId, [use], undefined));
    expect(told(at(lowC, highC)).map(({ key }) => key)).not.toContain('too warm for it');
    const hot = told(at(lowC, highC + 3));
    expect(wearItInShort({ wearIt: hot }).map(said)).toEqual([
      `Outdoors while walking ${lowC}–${highC}°C, layers on or off.`,
      `It is on the warm side for walking at ${highC + 3}°C.`,
    ]);
    const cold = told(at(lowC - 2, highC));
    expect(cold.map(said)).toContain(`It is on the cool side for walking at ${lowC - 2}°C.`);
    expect(wearItInShort({ wearIt: told(at(lowC, highC)) }).map(({ key }) => key)).toEqual([
      'wear it anywhere',
      'wear it outdoors',
    ]);
  });

  it('comes with what is lacking indoors, where the coat hangs at the door or is at hand on a journey', () => {
    const { lowC } = lookComfort(look, byId, 'sitting', 'indoors');
    const inside = (change: Partial<Occasion>, worn: Look = look) => {
      const room = { setting: { where: 'indoors', airC: lowC - 2 }, activity: 'sitting', ...change } as const;
      const comforts = comfortsOf(worn, byId, [at(lowC - 2, lowC - 2, room)], undefined);
      return wearItInShort({ wearIt: wearIt(worn, 'Walk', ['Walk'], { low: 0, high: 1 }, comforts) }).map(said);
    };
    expect(inside({})[1]).toBe('Cool in this room once coat is left at the door: take a wrap or a jumper.');
    expect(inside({ transit: true })[1]).toBe(`Cool for sitting at ${lowC - 2}°C without coat: keep it at hand.`);
    const bare: Look = { id: 'dress', worn: look.worn.slice(0, 1) };
    expect(inside({}, bare)[1]).toBe(`It is on the cool side for sitting at ${lowC - 2}°C.`);
    const warm = at(lowC + 30, lowC + 30, { setting: { where: 'indoors', airC: lowC + 30 }, activity: 'sitting' });
    expect(comfortsOf(look, byId, [warm], undefined).lacks.indoors.map(({ key }) => key)).toEqual(['too warm for it']);
  });
});

describe('the day of a look', () => {
  const walk = occasion('2027-10-04', 'Walk', { setting: { where: 'outdoors', sun: 'shade' } });

  it('says whether its air is that of a room or is expected outdoors', () => {
    expect(said(dayOf(walk, { ...PLANNED, airC: { low: 11.6, high: 13.2 } }))).toBe(
      'Monday 4 October, 12–13°C expected outdoors',
    );
    const dinner = occasion('2027-10-04', 'Dinner', { setting: { where: 'indoors', airC: 21 } });
    expect(said(dayOf(dinner, { ...PLANNED, airC: { low: 21, high: 21 } }))).toBe('Monday 4 October, 21°C indoors');
  });

  it('names the day alone without weather or a plan', () => {
    expect(said(dayOf(walk, PLANNED))).toBe('Monday 4 October');
    expect(said(dayOf(walk, undefined))).toBe('Monday 4 October');
  });
});

describe('going out in a look', () => {
  const nameOf = (id: string): string => id;
  const dress = lookIn('one-piece');
  const to = (lowC: number, worn: readonly string[], cautions: readonly Phrase[] = []) => ({
    planned: { ...PLANNED, look: dress, way: { worn, shoes: 'snow boots', lowC }, cautions },
  });

  it('is told for the coldest way, and on a card by what is not in the look', () => {
    const uses = [to(-2, ['coat']), to(-9, ['coat', 'hat'])];
    expect(goingOut(uses, nameOf).map(said)).toEqual([
      'Wear on the way: coat and hat. It may be -9°C outside.',
      'Walk there in snow boots and change shoes there.',
    ]);
    const coated: Look = { ...dress, worn: [...dress.worn, { piece: 'coat', slot: 'outer layer' }] };
    expect(goingOutInShort(coated, uses, nameOf).map(said)).toEqual(['On the way also: snow boots and hat.']);
    expect(goingOut([{ planned: PLANNED }], nameOf)).toEqual([]);
    expect(goingOutInShort(dress, [{ planned: PLANNED }], nameOf)).toEqual([]);
  });

  it('warns of cold water on page and card, and says what to put on', () => {
    const swim = lookIn('swim');
    const cold = phrase('comfort', 'cold swim', { low: -4 });
    const [use] = [
      { planned: { ...PLANNED, look: swim, way: { worn: ['jumper', 'coat'], lowC: -4 }, cautions: [cold] } },
    ];
    expect(goingOut([use], nameOf).map(said)).toEqual([
      expect.stringMatching(/^For the way to the water, and to put on dry at once afterwards: jumper and coat\./),
      said(cold),
    ]);
    const all = wearIt(swim, undefined, [], { low: 0, high: 1 }, COMFORTS, goingOut([use], nameOf));
    expect(all).toHaveLength(3);
    expect(wearItInShort({ wearIt: all }).map(said)).toEqual(['For swimming and by the water.']);
    expect(goingOutInShort(swim, [use], nameOf).map(said)).toEqual([
      'To put on dry at once afterwards: jumper and coat.',
      expect.stringContaining('never alone'),
    ]);
  });
});
