import { describe, expect, it } from 'vitest';
import type { Brief, Finding, Piece, Plan } from '../../lib/model/index.ts';
import { findingsOfWashing } from '../../lib/plan/index.ts';
import { german } from '../../lib/words/german/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { brief, occasion, piece } from './trip.ts';

const units = { temperature: 'C', length: 'cm', weight: 'kg' } as const;
const formats = createFormats({ language: 'en-GB', ...units });
const deutsch = createFormats({ language: 'de', ...units });
const museum = (on: string) => occasion(on, `Museum ${on.slice(8)}`, { at: '11:00' });
const breakfast = occasion('2027-10-05', 'Breakfast', { at: '07:00' });

/** Its date, what is worn, what is washed in the evening. */
type Day = readonly [date: string, worn: readonly string[], washed?: readonly string[]];
const planOf = (...days: readonly Day[]): Plan => ({
  traveller: 'Ada',
  days: days.map(([date, worn, washed = []]) => ({
    date,
    occasions: [
      {
        occasion: date,
        look: { id: date, worn: worn.map((id) => ({ piece: id, slot: 'top' as const })), score: 1, reasons: [] },
        layersOn: [],
        layersCarried: [],
        change: 'first',
        reasons: [],
        cautions: [],
      },
    ],
    wash: washed.map((id) => ({ piece: id, dryBy: date, dryAt: '00:00' })),
  })),
  served: days.length,
  of: days.length,
  proven: true,
  unserved: [],
  weakPoints: [],
  wears: {},
});
const trip = (washDay: string, ...occasions: Brief['occasions']): Brief =>
  brief({ washDaysLine: 40, washDays: [washDay], occasions });
const said = (finding: Finding | undefined): readonly string[] =>
  [finding?.message, finding?.mend].map((words) => (words === undefined ? '' : say(english, formats, words)));

/** Worn once between washes, so that a trip of more days needs them washed. */
const quick = (dries: number): Piece => piece('dress', 'tea dress', { worn: 1, dries });
const slow = piece('jumper', 'crew-neck jumper', { worn: 1, dries: 20 });

describe('drying after a wash day', () => {
  const late = trip('2027-10-04', museum('2027-10-03'), breakfast);
  const worn = planOf(['2027-10-03', ['dress', 'jumper']], ['2027-10-04', []]);

  it('warns when nothing is dry by the last occasion: line, hours, and the day that would do', () => {
    const [one, ...others] = findingsOfWashing(worn, late, [quick(10), slow]);
    expect(others).toEqual([]);
    expect(one).toMatchObject({ level: 'warning', rule: 'wash-day', file: 'trips/test/brief.md', line: 40 });
    // hung up at 22:00, ten hours: dry at 8:00, and breakfast is at 7:00
    expect(said(one)).toEqual([
      'Nothing washed on Monday 4 October and hung up at 22:00 is dry for “Breakfast” (5 Oct, 7:00), the last there is to dress for: dress, the quickest, takes until 5 Oct, 8:00.',
      'Wash on 3 Oct at the latest, or take the wash day out.',
    ]);
    expect(one === undefined ? '' : say(german, deutsch, one.message)).toContain('bis 5. Okt., 8:00 Uhr.');
  });

  it('has nothing to say where the piece is dry to the hour', () => {
    expect(findingsOfWashing(worn, late, [quick(9)])).toEqual([]);
  });

  it('takes an estimate at its long end', () => {
    const estimated = quick(8);
    const long = { ...estimated, care: { ...estimated.care, dryHours: { ...estimated.care.dryHours, high: 9.5 } } };
    expect(findingsOfWashing(worn, late, [long])).toMatchObject([{ level: 'warning' }]);
  });

  it('looks at all that can be washed where nothing has to be', () => {
    const lasting = [piece('dress', 'tea dress', { worn: 9, dries: 80 }), piece('coat', 'wool coat', { dries: 4 })];
    expect(said(findingsOfWashing(worn, late, lasting)[0])[1]).toBe('Take the wash day out.');
  });

  it('names the pieces that are too slow where others dry', () => {
    const [one] = findingsOfWashing(worn, late, [quick(9), slow]);
    expect(one).toMatchObject({ level: 'advice', line: 40 });
    expect(said(one)).toEqual([
      'Washed on Monday 4 October, jumper would still be damp at “Breakfast” (5 Oct, 7:00), the last there is to dress for.',
      'Leave it out of that wash, or wash on 3 Oct at the latest.',
    ]);
  });

  it('names what the plan washes that is packed damp for a journey', () => {
    const train = occasion('2027-10-04', 'Train', { at: '07:30', transit: true, activity: 'travelling' });
    const asked = trip('2027-10-03', museum('2027-10-03'), train, museum('2027-10-05'));
    const washing = planOf(['2027-10-03', ['dress', 'jumper'], ['dress']]);
    expect(findingsOfWashing(washing, asked, [quick(12), slow]).map(said)).toEqual([
      [
        'Washed on Sunday 3 October, dress will still be damp when “Train” sets off (4 Oct, 7:30).',
        'Wash a day earlier, or carry a waterproof bag for what is still damp.',
      ],
    ]);
    expect(findingsOfWashing(washing, asked, [quick(9), slow])).toEqual([]);
  });

  it('says nothing of what another traveller dresses for', () => {
    const others = { ...museum('2027-10-05'), travellers: ['Bo'] };
    expect(findingsOfWashing(worn, trip('2027-10-04', museum('2027-10-03'), others), [quick(10)])).toEqual([]);
  });
});
