import { describe, expect, it } from 'vitest';
import { wearingOf } from '../../lib/guide/wearing.ts';
import type { PlannedOccasion } from '../../lib/model/index.ts';
import { brief, occasion } from '../plan/trip.ts';

const market = occasion('2027-10-02', 'Market', { at: '11:00' });
const concert = occasion('2027-10-02', 'Concert', { at: '20:00', part: 'evening' });
const walk = occasion('2027-10-03', 'Walk', { at: '10:00' });
const trip = brief({ occasions: [market, concert, walk] });

const planned = (id: string, worn: readonly string[], carried: readonly string[] = []): PlannedOccasion =>
  ({
    occasion: id,
    look: { id, worn: worn.map((piece) => ({ piece, slot: 'top' })) },
    layersOn: [],
    layersCarried: carried,
    cautions: [],
  }) as unknown as PlannedOccasion;

const days = [
  {
    date: '2027-10-02',
    occasions: [
      planned(market.id, ['shirt', 'coat'], ['coat']),
      planned(concert.id, ['shirt', 'dress', 'wrap'], ['wrap']),
    ],
    wash: [],
  },
  { date: '2027-10-03', occasions: [planned(walk.id, ['coat'])], wash: [] },
] as unknown as Parameters<typeof wearingOf>[0]['days'];

describe('what a piece does on a day', () => {
  const first = (piece: string) => [...wearingOf({ days }, trip, piece).values()];

  it('is worn by day, in the evening only, taken along, or not', () => {
    expect(first('shirt')).toEqual(['day', 'not']);
    expect(first('dress')).toEqual(['evening', 'not']);
    expect(first('coat')).toEqual(['carried', 'day']);
    expect(first('wrap')).toEqual(['carried', 'not']);
    expect(first('hat')).toEqual(['not', 'not']);
  });
});
