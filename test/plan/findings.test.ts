import { describe, expect, it } from 'vitest';
import type { Brief, Occasion } from '../../lib/model/index.ts';
import { findingsOfBrief } from '../../lib/plan/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { brief, occasion, weather } from './trip.ts';

const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const rules = (trip: Brief): readonly string[] => findingsOfBrief(trip).map(({ rule }) => rule);
const withOccasions = (...occasions: readonly Occasion[]): Brief => brief({ occasions });
const outdoors = { setting: { where: 'outdoors', sun: 'sun' }, activity: 'walking' } as const;

describe('findings of a brief', () => {
  it('has nothing to say of a sound one', () => {
    expect(rules(withOccasions(occasion('2027-10-02', 'Museum'), occasion('2027-10-03', 'Walk', outdoors)))).toEqual(
      [],
    );
  });

  it('reports an occasion outside the trip, with its line', () => {
    const [found] = findingsOfBrief(withOccasions({ ...occasion('2027-11-02', 'Opera'), line: 12 }));
    expect(found).toMatchObject({ rule: 'occasion-outside-trip', level: 'error', line: 12 });
    expect(say(english, formats, found?.message ?? { room: '', key: '', values: {} })).toMatch(
      /Opera.*outside the trip/,
    );
  });

  it('reports two at one hour, unless they are of different people', () => {
    const at = { at: '19:00', part: 'evening' } as const;
    const first = occasion('2027-10-02', 'Dinner', at);
    const second = occasion('2027-10-02', 'Concert', at);
    expect(rules(withOccasions(first, second))).toEqual(['two-at-one-hour']);
    expect(rules(withOccasions({ ...first, travellers: ['Ada'] }, { ...second, travellers: ['Bo'] }))).toEqual([]);
    expect(rules(withOccasions(first, { ...second, at: '21:00' }))).toEqual([]);
    expect(rules(withOccasions(occasion('2027-10-02', 'A'), occasion('2027-10-02', 'B')))).toEqual(['two-at-one-hour']);
  });

  it('warns of hours that overlap as the plan reckons them, and says what would be right', () => {
    const dinner = occasion('2027-10-02', 'Dinner', { at: '19:00', part: 'evening', line: 8 });
    const second = occasion('2027-10-02', 'Second dinner', { at: '20:00', part: 'evening', line: 9 });
    const [one, ...others] = findingsOfBrief(withOccasions(dinner, second));
    expect(others).toEqual([]);
    expect(one).toMatchObject({ level: 'warning', rule: 'hours-overlap', line: 9 });
    expect([one?.message, one?.mend].map((words) => (words === undefined ? '' : say(english, formats, words)))).toEqual(
      [
        '“Dinner” is taken to last until 21:00, and “Second dinner” begins at 20:00 on Saturday 2 October.',
        'Write when “Dinner” ends, at the latest until: "20:00", give one of them another hour, or name the travellers each is for.',
      ],
    );
    const lunches = ['12:00', '12:05'].map((at) => occasion('2027-10-02', `Lunch at ${at}`, { at }));
    expect(rules(withOccasions(...lunches))).toEqual(['hours-overlap']);
    expect(rules(withOccasions({ ...dinner, until: '20:00' }, second))).toEqual([]);
    expect(rules(withOccasions({ ...dinner, travellers: ['Ada'] }, { ...second, travellers: ['Bo'] }))).toEqual([]);
  });

  it('takes a long walk for longer, and sees past midnight', () => {
    const walk = occasion('2027-10-02', 'Walk', { ...outdoors, at: '10:00', needs: ['long walking'] });
    const lunch = (at: string) => occasion('2027-10-02', 'Lunch', { at });
    expect(rules(withOccasions(walk, lunch('14:30')))).toEqual(['hours-overlap']);
    expect(rules(withOccasions(walk, lunch('15:00')))).toEqual([]);
    const ball = occasion('2027-10-02', 'Ball', { at: '23:00', until: '03:00', part: 'night' });
    expect(rules(withOccasions(ball, occasion('2027-10-03', 'Soup', { at: '02:00' })))).toEqual(['hours-overlap']);
  });

  it('lets an hour stand beside a part of the day that has room for both', () => {
    const museum = occasion('2027-10-02', 'Museum', { part: 'day' });
    const evening = occasion('2027-10-02', 'Concert', { part: 'evening' });
    expect(rules(withOccasions(museum, occasion('2027-10-02', 'Lunch', { at: '12:30' }), evening))).toEqual([]);
    const tour = occasion('2027-10-02', 'Tour', { at: '10:30', until: '16:00' });
    expect(findingsOfBrief(withOccasions(museum, tour))).toMatchObject([
      { rule: 'hours-overlap', level: 'warning', about: ['2027-10-02-museum', '2027-10-02-tour'] },
    ]);
    expect(rules(withOccasions(evening, occasion('2027-10-02', 'Dinner', { at: '19:30' })))).toEqual(['hours-overlap']);
    expect(rules(withOccasions(museum, occasion('2027-10-02', 'Ride', { part: 'morning' })))).toEqual([]);
  });

  it('lets swimwear cover what it can', () => {
    const needs = ['swim', 'shoulders covered', 'knees covered', 'head covered', 'sun'] as const;
    expect(rules(withOccasions(occasion('2027-10-02', 'Bath', { needs, activity: 'swimming' })))).toEqual([]);
  });

  it('reports swimming without swimwear', () => {
    expect(rules(withOccasions(occasion('2027-10-02', 'Pool', { activity: 'swimming' })))).toEqual([
      'swims-without-need',
    ]);
  });

  it('reports missing weather outdoors and not indoors', () => {
    const trip = brief({
      places: [],
      occasions: [occasion('2027-10-02', 'Walk', outdoors), occasion('2027-10-03', 'Museum')],
    });
    expect(findingsOfBrief(trip)).toMatchObject([
      { rule: 'missing-weather', level: 'warning', about: ['2027-10-02-walk'] },
    ]);
  });

  it('reports polar night for an occasion in the sun, and cold beyond clothes', () => {
    const trip = brief({
      from: '2027-12-18',
      to: '2027-12-20',
      places: [
        {
          name: 'Tromsø',
          from: '2027-12-18',
          to: '2027-12-20',
          at: { latitude: 69.65, longitude: 18.96 },
          timeZone: 'Europe/Oslo',
          weather: weather(-40, -35),
          days: {},
        },
      ],
      occasions: [occasion('2027-12-19', 'Walk', { ...outdoors, needs: ['sun'] })],
    });
    expect(rules(trip)).toEqual(['no-sun']);
  });

  it('reports an occasion that asks for sun after dark', () => {
    const terrace = (at: string): Occasion => occasion('2027-10-02', 'Terrace', { ...outdoors, needs: ['sun'], at });
    expect(rules(withOccasions(terrace('21:30')))).toEqual(['no-sun']);
    expect(rules(withOccasions(terrace('14:00')))).toEqual([]);
  });

  it('reports wash days outside the trip or too late, at their line', () => {
    const museum = occasion('2027-10-03', 'Museum');
    const found = (washDay: string, ...occasions: readonly Occasion[]) =>
      findingsOfBrief(brief({ washDays: [washDay], occasions })).map(({ message }) => message.key);
    expect(found('2027-12-01', museum)).toEqual(['wash day outside']);
    expect(found('2027-10-04', museum)).toEqual(['wash day too late']);
    expect(found('2027-10-02', museum)).toEqual([]);
    const late = brief({ washDays: ['2027-10-04'], washDaysLine: 31, occasions: [museum] });
    expect(findingsOfBrief(late)).toMatchObject([{ rule: 'wash-day', level: 'warning', line: 31 }]);
  });

  it('says every finding and its mend in words', () => {
    const trip = brief({
      washDays: ['2027-12-01'],
      occasions: [occasion('2027-11-02', 'Opera'), occasion('2027-10-02', 'Pool', { activity: 'swimming' })],
    });
    for (const { message, mend } of findingsOfBrief(trip)) {
      expect(say(english, formats, message)).toMatch(/^[A-Z“].*\.$/);
      expect(mend === undefined ? '' : say(english, formats, mend)).toMatch(/^[A-Z].*\.$/);
    }
  });
});
