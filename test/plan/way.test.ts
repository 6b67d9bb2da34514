import { describe, expect, it } from 'vitest';
import type { Occasion } from '../../lib/model/index.ts';
import { momentsOf } from '../../lib/plan/moments.ts';
import { coatForTheWay, wayWithoutCoat } from '../../lib/plan/way.ts';
import { brief, occasion, piece, sourceOf, weather } from './trip.ts';

const BAG = [
  piece('tee', 'long-sleeved tee'),
  piece('trousers', 'chinos'),
  piece('boots', 'lace-up boots'),
  piece('mac', 'raincoat'),
  piece('coat', 'wool coat', { dress: { low: 0, high: 3 } }),
];
const BY_ID = new Map(BAG.map((one) => [one.id, one]));

const asked = (lowC: number, change: Partial<Occasion>, ...coats: readonly string[]) => {
  const [moment] = momentsOf(
    brief({
      places: brief().places.map((place) => ({ ...place, weather: weather(lowC, lowC + 6) })),
      occasions: [occasion('2027-10-03', 'Museum', change)],
    }),
    'Ada',
  );
  const { look } = sourceOf(BAG).explain(['tee', 'trousers', 'boots', ...coats]);
  if (moment === undefined || look === undefined) throw new Error('there is an occasion and a look');
  return { way: wayWithoutCoat(moment, look, BY_ID), coat: coatForTheWay(moment, look, BY_ID)?.id };
};

/** Who goes out without a coat: common practice, no source. */
describe('the way to a room', () => {
  it('is told the warmest coat where it is cold and the look has none, whoever chose the look', () => {
    expect(asked(3, {})).toEqual({ way: 'bitter', coat: 'coat' });
    expect(asked(10, {})).toEqual({ way: 'cold', coat: 'coat' });
  });

  it('asks for no other coat where the look has one, where it is mild, and out of doors', () => {
    const none = { way: 'mild', coat: undefined };
    expect(asked(3, {}, 'mac')).toEqual(none);
    expect(asked(18, {})).toEqual(none);
    expect(asked(3, { setting: { where: 'outdoors', sun: 'shade' } })).toEqual(none);
  });
});
