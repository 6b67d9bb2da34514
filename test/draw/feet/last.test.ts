import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Along, along, last } from '../../../lib/draw/feet/last.ts';
import { courtLast } from '../../../lib/draw/feet/lasts.ts';

const knotsOf = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 20 }), fc.integer({ min: -50, max: 50 })), { minLength: 2, maxLength: 8 })
  .map((steps): Along => {
    let at = 0;
    return steps.map(([step, value]) => {
      at += step;
      return [at, value] as const;
    });
  });

describe('last', () => {
  test('a curve meets its knots and stays between neighbours', () => {
    fc.assert(
      fc.property(knotsOf, fc.double({ min: 0, max: 1, noNaN: true }), (knots, share) => {
        for (const [at, value] of knots) expect(along(knots, at)).toBeCloseTo(value, 6);
        knots.slice(1).forEach(([x, y], i) => {
          const [u, v] = knots[i] ?? [0, 0];
          const between = along(knots, u + (x - u) * share);
          expect(between).toBeGreaterThanOrEqual(Math.min(y, v) - 1e-9);
          expect(between).toBeLessThanOrEqual(Math.max(y, v) + 1e-9);
        });
      }),
    );
  });

  test('seen straight from the side, a heel stands as high as it is', () => {
    const view = { turn: 0, down: 0, tall: 1, at: [0, 0] as const };
    for (const heelCm of [2, 5, 9]) {
      const shape = courtLast(heelCm, 'almond');
      const on = last({ ...shape, inner: 'far' }, view);
      const seat = on.bed(0.05, 0)[1];
      const ball = on.bed(0.7, 0)[1];
      expect(ball - seat).toBeGreaterThan(heelCm - 0.6);
      expect(ball - seat).toBeLessThan(heelCm + 0.1);
    }
  });

  test('the two shoes of a pair mirror each other', () => {
    const view = { turn: 0, down: 90, tall: 0, at: [0, 0] as const };
    const shape = courtLast(2, 'round');
    const [left, right] = (['far', 'near'] as const).map((inner) => last({ ...shape, inner }, view));
    for (const t of [0.1, 0.4, 0.7, 0.9])
      expect(left?.rim(t, 'near', 1, 0)[1]).toBeCloseTo(-(right?.rim(t, 'far', 1, 0)[1] ?? 0), 9);
  });
});
