import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BAG_GUIDELINES, BATTERIES, exactly, givenShare, LIQUIDS, sumOf, times } from '../../lib/bag/index.ts';
import type { Measure } from '../../lib/model/index.ts';
import { createFormats } from '../../lib/words/index.ts';
import { table } from '../reference/table.ts';

const about = (value: number, half: number): Measure => ({
  value,
  low: value - half,
  high: value + half,
  basis: half === 0 ? 'given' : 'estimated',
  source: 'test',
});
const halfOf = ({ low, high }: Measure): number => (high - low) / 2;

describe('sums with their uncertainty', () => {
  it('adds independent half-widths in quadrature: 3 and 4 make 5', () => {
    // JCGM 100:2008, 5.1.2, equation 10 with unit sensitivities
    const sum = sumOf([about(100, 3), about(200, 4), exactly(50, 'scale')]);
    expect(sum.value).toBe(350);
    expect(halfOf(sum)).toBeCloseTo(5, 10);
    expect(sum.basis).toBe('estimated');
  });

  it('adds the same error for every one of the same thing', () => {
    expect(times(5, about(35, 9))).toMatchObject({ value: 175, low: 130, high: 220 });
  });

  it('is never surer than its least sure part and never less sure than all errors at once', () => {
    const part = fc
      .tuple(fc.double({ min: 1, max: 2000, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }))
      .map(([value, share]) => about(value, value * share));
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 20 }), (parts) => {
        const halves = parts.map(halfOf);
        const half = halfOf(sumOf(parts));
        expect(half).toBeGreaterThanOrEqual(Math.max(...halves) - 1e-6);
        expect(half).toBeLessThanOrEqual(halves.reduce((a, b) => a + b, 0) + 1e-6);
      }),
    );
  });

  it('says which share was weighed', () => {
    expect(givenShare([about(600, 0), about(400, 50)])).toBe(0.6);
    expect(givenShare([])).toBe(1);
  });
});

describe('published limits', () => {
  const rows = table('baggage_limits');
  const value = (rule: string): number => {
    const row = rows.find((one) => one.rule === rule);
    if (row === undefined) throw new Error(rule);
    return Number(row.value);
  };

  it('has the cabin guideline of 56 × 45 × 25 cm, which is 63 litres', () => {
    const [length, width, depth] = BAG_GUIDELINES.cabin.cm;
    expect(length).toBe(value('cabin bag length (guideline, incl. wheels/handles)'));
    expect(width).toBe(value('cabin bag width'));
    expect(depth).toBe(value('cabin bag depth'));
    expect((length * width * depth) / 1000).toBe(value('cabin bag box volume'));
    expect(BAG_GUIDELINES.cabin.sumCm).toBe(value('cabin bag sum of sides'));
  });

  it('has the hold piece within the published mass and sum of sides', () => {
    const { cm, kg, sumCm } = BAG_GUIDELINES.hold;
    expect(kg).toBe(value('checked piece concept mass'));
    expect(sumCm).toBe(value('checked piece concept linear sum'));
    expect(cm.reduce((a, b) => a + b, 0)).toBeLessThanOrEqual(sumCm);
  });

  it('has the limits for liquids and batteries', () => {
    expect(LIQUIDS.containerMl).toBe(value('liquid container max'));
    expect(LIQUIDS.bagMl).toBe(value('liquid bag max'));
    expect(BATTERIES.freeWh).toBe(value('Li-ion battery free limit'));
    expect(BATTERIES.approvedWh).toBe(value('Li-ion battery with approval'));
  });

  it('agrees with the published equivalents in pounds and inches', () => {
    // IATA writes 23 kg as 50 lb and 158 cm as 62 in; 1 lb = 0.45359237 kg and 1 in = 2.54 cm exactly (international yard and pound agreement, 1959)
    const imperial = createFormats({ language: 'en-US', temperature: 'F', length: 'in', weight: 'lb' });
    expect(Math.floor(Number.parseFloat(imperial.kilograms(23)))).toBe(50);
    expect(Math.round(Number.parseFloat(imperial.centimetres(158)))).toBe(62);
    expect(imperial.kilograms(0.45359237, 3)).toBe('1 lb');
    expect(imperial.grams(28.349523125)).toBe('1 oz');
    expect(imperial.centimetres(2.54)).toBe('1 in');
  });
});
