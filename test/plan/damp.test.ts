import { describe, expect, it } from 'vitest';
import { dampInWords } from '../../lib/guide/damp.ts';
import type { PlannedDay } from '../../lib/model/index.ts';
import { packedDamp } from '../../lib/plan/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { occasion } from './trip.ts';

const flight = occasion('2027-01-12', 'Flight', { at: '09:30', until: '12:00', transit: true });
const dinner = occasion('2027-01-12', 'Dinner', { at: '19:30' });
const planned = (id: string) =>
  ({ occasion: id, layersOn: [], layersCarried: [], change: 'first', reasons: [], cautions: [] }) as const;
const days = (dryBy: string, dryAt: string): readonly PlannedDay[] => [
  { date: '2027-01-11', occasions: [], wash: [{ piece: 'leggings', dryBy, dryAt }] },
  { date: '2027-01-12', occasions: [planned(flight.id), planned(dinner.id)], wash: [] },
];
const brief = { occasions: [flight, dinner] };

describe('washing that travels damp', () => {
  it('is told on the day of the journey, with the hour it is dry', () => {
    expect(packedDamp({ days: days('2027-01-12', '12:00') }, brief)).toEqual([
      { on: '2027-01-12', journey: flight.id, pieces: ['leggings'], dryBy: '2027-01-12', dryAt: '12:00' },
    ]);
    const [told] = dampInWords({ days: days('2027-01-12', '12:00') }, brief, () => 'Grey leggings');
    const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
    expect(told === undefined ? '' : say(english, formats, told.said)).toBe(
      'Still damp for “Flight”: Grey leggings. Pack it in a bag of its own and hang it up on arrival: dry by Tuesday, 12:00.',
    );
  });

  it('is none where it is dry by then, or where nobody travels', () => {
    expect(packedDamp({ days: days('2027-01-12', '09:00') }, brief)).toEqual([]);
    expect(packedDamp({ days: days('2027-01-12', '12:00') }, { occasions: [dinner] })).toEqual([]);
  });
});
