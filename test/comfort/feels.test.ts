import { describe, expect, it } from 'vitest';
import { type ComfortQuestion, requiredClo } from '../../lib/comfort/index.ts';
import { heatOfVote } from '../../lib/comfort/pmv.ts';
import { FEELS, type Feels } from '../../lib/vocabulary/index.ts';
import { number, table } from './table.ts';

const standingIn = (airC: number, feels?: Feels): ComfortQuestion => ({
  activity: 'standing',
  setting: { where: 'indoors', airC },
  air: { lowC: airC, highC: airC, windMs: 0, humidityPercent: 50 },
  feels,
});

const outAt = (airC: number, activity: ComfortQuestion['activity'], feels?: Feels): ComfortQuestion => ({
  activity,
  setting: { where: 'outdoors', sun: 'shade' },
  air: { lowC: airC, highC: airC, windMs: 2, humidityPercent: 60 },
  feels,
});

describe('who feels cold or warm is dressed half a unit of the scale apart', () => {
  const rooms = table('clo_range_from_pmv').filter(
    (row) => number(row, 'met') === 1.2 && number(row, 'v_air_ms') === 0.1 && number(row, 'ta_c') >= 18,
  );

  it('has rooms to check against', () => expect(rooms.length).toBeGreaterThan(3));

  it.each(rooms)('in a room of $ta_c °C', (row) => {
    const airC = number(row, 'ta_c');
    // Source: the reference table, ISO 7730 solved for clo by another programme; it ends a little early, 0.01 clo.
    const close = (clo: number, expected: number): void => expect(Math.abs(clo - expected)).toBeLessThanOrEqual(0.01);
    close(requiredClo(standingIn(airC, 'cold')).min, number(row, 'clo_at_pmv_0'));
    close(requiredClo(standingIn(airC)).min, number(row, 'clo_at_pmv_-0.5'));
    close(requiredClo(standingIn(airC)).max, Math.max(0.36, number(row, 'clo_at_pmv_+0.5')));
    close(requiredClo(standingIn(airC, 'warm')).max, Math.max(0.36, number(row, 'clo_at_pmv_0')));
  });

  it('by the heat that stands behind half a unit', () => {
    // Source: ISO 7730:2005, equation 1: 0.303 exp(−0.036 M) + 0.028 a W/m²; at 58.15 W/m² that is 0.0653.
    expect(heatOfVote(0.5, 1)).toBeCloseTo(0.5 / 0.0653, 1);
    expect(heatOfVote(-0.5, 1)).toBe(-heatOfVote(0.5, 1));
  });

  it.each([-10, -3, 4, 9, 12, 15, 18, 22])('outdoors at %d °C at both ends', (airC) => {
    for (const activity of ['sitting', 'strolling', 'walking'] as const) {
      const [cold, most, warm] = ['cold', undefined, 'warm'].map((feels) =>
        requiredClo(outAt(airC, activity, feels as Feels | undefined)),
      );
      expect(cold?.min).toBeGreaterThanOrEqual(most?.min ?? Number.NaN);
      expect(most?.min).toBeGreaterThanOrEqual(warm?.min ?? Number.NaN);
      expect(cold?.max).toBeGreaterThan(most?.max ?? Number.NaN);
      expect(most?.max).toBeGreaterThanOrEqual(warm?.max ?? Number.NaN);
    }
  });

  it('in the cold by no more than a heavy coat', () => {
    for (const feels of FEELS) {
      const apart = requiredClo(outAt(-3, 'strolling', feels)).min - requiredClo(outAt(-3, 'strolling')).min;
      expect(Math.abs(apart)).toBeGreaterThan(0.1);
      // Source: ISO 9920, parka 0.7 clo
      expect(Math.abs(apart)).toBeLessThan(0.7);
    }
  });
});
