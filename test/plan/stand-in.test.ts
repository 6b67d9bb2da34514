import { describe, expect, it } from 'vitest';
import type { Piece } from '../../lib/model/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { createStandsIn, momentsOf } from '../../lib/plan/index.ts';
import { brief, occasion, piece, weather } from './trip.ts';

const PIECES: readonly Piece[] = [
  piece('thermal-top', 'thermal top'),
  piece('thermal-leggings', 'thermal leggings'),
  piece('cable-jumper', 'crew-neck jumper'),
  piece('oxford-shirt', 'shirt'),
  piece('flannel-shirt', 'shirt'),
  piece('cords', 'corduroy trousers'),
  piece('jeans', 'jeans'),
  piece('parka', 'parka'),
  piece('other-parka', 'parka'),
  piece('rain-jacket', 'rain jacket'),
  piece('snow-boots', 'snow boots'),
  piece('other-snow-boots', 'snow boots'),
  piece('lace-up-boots', 'lace-up boots'),
  piece('slip-dress', 'slip dress'),
  piece('pumps', 'pumps'),
  piece('sandals', 'heeled sandals'),
  piece('chelsea-boots', 'chelsea boots'),
];

describe('what may stand in for a planned look', () => {
  const engine = createWardrobeEngine({ pieces: PIECES, rules: {}, never: [], always: [] });
  const sky = occasion('2027-10-03', 'Sky', {
    setting: { where: 'outdoors', sun: 'shade' },
    activity: 'standing',
    needs: ['snow'],
    degreesOff: 10,
    at: '20:00',
  });
  const dinner = occasion('2027-10-03', 'Dinner', {
    dress: 'cocktail',
    activity: 'sitting',
    setting: { where: 'indoors', airC: 26 },
    at: '19:30',
  });
  const tea = occasion('2027-10-04', 'Tea', { activity: 'strolling indoors', at: '16:00' });
  const cold = brief({
    places: brief().places.map((place) => ({ ...place, weather: weather(-2, 2) })),
    occasions: [sky, dinner, tea],
  });
  const standsIn = createStandsIn(momentsOf(cold, 'Ada'), PIECES, engine);
  const judge = (worn: readonly string[], out: string, into: string, ...occasions: readonly string[]): boolean => {
    const { look } = engine.explain([...worn]);
    if (look === undefined) throw new Error(`${worn.join()} make no look`);
    const instead = worn.map((id) => (id === out ? into : id));
    // it goes by itself: only the occasion is judged
    expect(engine.explain(instead).goes, instead.join()).toBe(true);
    return standsIn(look, occasions, instead);
  };
  const WARM = ['thermal-top', 'thermal-leggings', 'cable-jumper', 'cords', 'parka', 'snow-boots'];

  it('meets the needs of the occasion: boots for town do not go into the snow', () => {
    expect(judge(WARM, 'snow-boots', 'lace-up-boots', sky.id)).toBe(false);
    expect(judge(WARM, 'snow-boots', 'lace-up-boots')).toBe(true);
    expect(judge(WARM, 'snow-boots', 'other-snow-boots', sky.id)).toBe(true);
  });

  it('is no less warm in the cold, though the brief accepts some degrees', () => {
    expect(judge(WARM, 'cable-jumper', 'oxford-shirt', sky.id)).toBe(false);
    expect(judge(WARM, 'parka', 'rain-jacket', sky.id)).toBe(false);
    expect(judge(WARM, 'parka', 'other-parka', sky.id)).toBe(true);
  });

  it('keeps as warm a coat for the way to a room on a day of frost', () => {
    const inside = ['oxford-shirt', 'jeans', 'parka', 'lace-up-boots'];
    expect(judge(inside, 'parka', 'rain-jacket', tea.id)).toBe(false);
    expect(judge(inside, 'parka', 'other-parka', tea.id)).toBe(true);
    expect(judge(inside, 'lace-up-boots', 'chelsea-boots', tea.id)).toBe(true);
  });

  it('meets the dress code, and every occasion where there are more', () => {
    const dressed = ['slip-dress', 'pumps'];
    expect(judge(dressed, 'pumps', 'chelsea-boots', dinner.id)).toBe(false);
    expect(judge(dressed, 'pumps', 'sandals', dinner.id)).toBe(true);
    expect(judge(dressed, 'pumps', 'sandals', dinner.id, sky.id)).toBe(false);
  });
});
