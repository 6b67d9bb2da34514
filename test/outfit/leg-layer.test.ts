import { describe, expect, it } from 'vitest';
import { cloOfLook } from '../../lib/comfort/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { piece } from '../plan/trip.ts';

const PIECES = [
  piece('tee', 'long-sleeved tee'),
  piece('jeans', 'jeans'),
  piece('shorts', 'shorts'),
  piece('skirt', 'denim skirt'),
  piece('boots', 'snow boots'),
  piece('loafers', 'loafers'),
  piece('leggings', 'thermal leggings'),
  piece('socks', 'walking socks'),
  piece('tights', 'wool tights'),
];
const ENGINE = createWardrobeEngine({ pieces: PIECES, rules: {}, never: [], always: [] });
const worn = (...ids: readonly string[]) => ENGINE.explain(['tee', ...ids]);

/** What is worn below trousers in snow: common practice, no source. */
describe('thermal leggings', () => {
  it('are worn below trousers, and socks beside them', () => {
    const { goes, look } = worn('jeans', 'boots', 'leggings', 'socks');
    expect(goes).toBe(true);
    expect(look?.worn).toContainEqual({ piece: 'leggings', slot: 'leg layer' });
    expect(look?.worn).toContainEqual({ piece: 'socks', slot: 'legwear' });
    expect(worn('jeans', 'boots', 'leggings').goes).toBe(true);
  });

  it('are not shown below a skirt or shorts', () => {
    for (const bottom of ['skirt', 'shorts']) {
      const { goes, reasons } = worn(bottom, 'loafers', 'leggings');
      expect(goes).toBe(false);
      expect(reasons.map(({ rule }) => rule)).toContain('underlayer-hidden');
    }
  });

  it('make no second pair of legwear, and are one way of wearing a set of pieces', () => {
    expect(worn('jeans', 'boots', 'socks', 'tights').goes).toBe(false);
    const pieces = ['tee', 'jeans', 'boots', 'leggings', 'socks'];
    const looks = [...ENGINE.enumerate()].filter(
      (look) => look.worn.length === pieces.length && look.worn.every((seat) => pieces.includes(seat.piece)),
    );
    expect(looks).toHaveLength(1);
  });

  it('warm by all they are, beside socks', () => {
    const byId = new Map(PIECES.map((one) => [one.id, one]));
    const cloOf = (...ids: readonly string[]): number => {
      const { look } = worn(...ids);
      if (look === undefined) throw new Error('these make a look');
      return cloOfLook(look, byId).on;
    };
    // Source: ASHRAE Handbook ch. 9 table 9, long underwear bottoms 0.15 clo.
    expect(cloOf('jeans', 'boots', 'leggings', 'socks') - cloOf('jeans', 'boots', 'socks')).toBeCloseTo(0.15, 6);
  });
});
