import { describe, expect, it } from 'vitest';
import { airRules, exactly, weightVerdict } from '../../lib/bag/index.ts';
import type { Bag, Measure, PackedBag, Sundry } from '../../lib/model/index.ts';
import { table } from '../reference/table.ts';

const sundry = (name: string, change: Partial<Sundry>): Sundry => ({
  name,
  group: 'liquids',
  count: 1,
  gramsEach: 50,
  litresEach: 0.1,
  basis: 'given',
  ...change,
});
const weight = (value: number, spread = 0): Measure => ({
  value,
  low: value - spread,
  high: value + spread,
  basis: 'estimated',
  source: 'test',
});
const packed = (bag: Partial<Bag>, sundries: readonly Sundry[], grams: Measure = weight(5000)): PackedBag => ({
  bag: { name: 'Case', role: 'cabin', litres: 40, ownGrams: 2000, ...bag },
  pieces: [],
  sundries: sundries.map((one) => ({ sundry: one, grams: exactly(one.gramsEach, 'test') })),
  grams,
  litres: weight(10),
});
const ruled = (...bags: readonly PackedBag[]) =>
  new Map(
    airRules({ bags, worn: [], wornGrams: weight(0), weighedShare: 1, notes: [] }).map((rule) => [rule.rule, rule]),
  );

describe('the rules of the air beside what is packed', () => {
  const limits = table('baggage_limits');
  const published = (what: string): number => {
    const row = limits.find((each) => each.rule === what);
    return Number(row?.value);
  };

  it.each([0, 1])('takes a container of the published limit, and none %d ml over it', (more) => {
    const millilitres = published('liquid container max') + more;
    const { keeps, amount, things } = ruled(packed({}, [sundry('Shampoo', { millilitres })])).get('container') ?? {};
    expect({ keeps, amount, things }).toEqual({ keeps: more === 0, amount: millilitres, things: ['Shampoo'] });
  });

  it('adds up all liquids of the cabin, and leaves out medicines and the hold', () => {
    const many = sundry('Cream', { millilitres: 100, count: 10 });
    const medicine = sundry('Drops', { millilitres: 500, group: 'medicines' });
    const hold = packed({ role: 'hold' }, [sundry('Bath oil', { millilitres: 900 })]);
    expect(ruled(packed({}, [many, medicine]), hold).get('liquids')).toMatchObject({ amount: 1000, keeps: true });
    const drop = sundry('Perfume', { millilitres: 1 });
    expect(ruled(packed({}, [many, drop])).get('liquids')).toMatchObject({ amount: 1001, keeps: false });
  });

  it('knows the strongest battery, and a spare one that went into the hold', () => {
    const bank = sundry('Power bank', { group: 'electrics', wattHours: 101, spareBattery: true });
    const lamp = sundry('Lamp', { group: 'electrics', wattHours: 5 });
    const found = ruled(packed({}, [lamp]), packed({ role: 'hold' }, [bank]));
    expect(found.get('battery')).toMatchObject({ things: ['Power bank'], amount: 101, keeps: false });
    expect(found.get('spare battery')).toMatchObject({ things: ['Power bank'], keeps: false });
    expect(ruled(packed({}, [bank])).get('spare battery')?.keeps).toBe(true);
  });

  it('names the cabin bags that are larger than the published guideline', () => {
    const small = packed({ name: 'Small', cm: [55, 40, 23] }, []);
    const large = packed({ name: 'Large', cm: [57, 40, 23] }, []);
    expect(ruled(small).get('cabin size')).toMatchObject({ things: ['Small'], keeps: true });
    expect(ruled(small, large).get('cabin size')).toMatchObject({ things: ['Large'], keeps: false });
  });
});

describe('a bag against its limit', () => {
  const judged = (grams: Measure, more: Partial<PackedBag> = {}) =>
    weightVerdict({ ...packed({ limitKg: 8 }, [], grams), ...more });

  it('tells an overrun of the best estimate from one of the heavy end alone', () => {
    expect(judged(weight(7000, 300))).toEqual({ is: 'spare', grams: 700, isOver: false });
    expect(judged(weight(7900, 300))).toEqual({ is: 'over', grams: 200, isOver: true });
    expect(judged(weight(8100, 300))).toEqual({ is: 'likely over', grams: 100, isOver: true });
    expect(judged(weight(8400, 300))).toEqual({ is: 'certainly over', grams: 400, isOver: true });
    expect(weightVerdict(packed({}, []))).toEqual({ is: 'no limit', grams: 0, isOver: false });
  });

  it('judges the heaviest journey', () => {
    const heaviest = { on: '2027-10-05', grams: weight(8100, 50) };
    expect(judged(weight(7000, 50), { heaviest }).is).toBe('certainly over');
  });
});
