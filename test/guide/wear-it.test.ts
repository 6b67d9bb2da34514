import { describe, expect, it } from 'vitest';
import { dayOf } from '../../lib/guide/index.ts';
import { wearIt } from '../../lib/guide/wear-it.ts';
import type { Look, LookComfort } from '../../lib/model/index.ts';
import { createFormats, english, type Phrase, say } from '../../lib/words/index.ts';
import { occasion } from '../plan/trip.ts';

const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const said = (phrase: Phrase): string => say(english, formats, phrase);
const comfort = (lowC: number, highC: number): LookComfort => ({
  activity: 'strolling',
  where: 'outdoors',
  clo: { off: 0.5, on: 1 },
  lowC,
  highC,
  steps: [],
});
const lookIn = (slot: 'one-piece' | 'swim'): Look => ({ id: slot, worn: [{ piece: slot, slot }] });
const sentences = (look: Look): readonly string[] =>
  wearIt(look, undefined, [], { low: 0, high: 1 }, comfort(3, 26), comfort(17, 26)).map(said);

describe('when to wear a look', () => {
  it('says of each range of degrees where it holds', () => {
    expect(sentences(lookIn('one-piece'))).toEqual([
      'Casual to smart casual.',
      'Outdoors on foot 3–26°C, layers on or off.',
      'Sitting indoors 17–26°C.',
    ]);
  });

  it('says no degrees of swimwear', () => {
    expect(sentences(lookIn('swim'))).toEqual(['For swimming and by the water.']);
  });
});

describe('the day of a look', () => {
  const planned = {
    occasion: 'x',
    layersOn: [],
    layersCarried: [],
    change: 'first',
    reasons: [],
    cautions: [],
  } as const;
  const walk = occasion('2027-10-04', 'Walk', { setting: { where: 'outdoors', sun: 'shade' } });

  it('says whether its air is that of a room or is expected outdoors', () => {
    expect(said(dayOf(walk, { ...planned, airC: { low: 11.6, high: 13.2 } }))).toBe(
      'Monday 4 October, 12–13°C expected outdoors',
    );
    const dinner = occasion('2027-10-04', 'Dinner', { setting: { where: 'indoors', airC: 21 } });
    expect(said(dayOf(dinner, { ...planned, airC: { low: 21, high: 21 } }))).toBe('Monday 4 October, 21°C indoors');
  });

  it('names the day alone without weather or a plan', () => {
    expect(said(dayOf(walk, planned))).toBe('Monday 4 October');
    expect(said(dayOf(walk, undefined))).toBe('Monday 4 October');
  });
});
