import type { Measure } from '../model/index.ts';

/** An exact figure. */
export const exactly = (value: number, source: string): Measure => ({
  value,
  low: value,
  high: value,
  basis: 'given',
  source,
});

/** So many of the same thing: if the estimate of one is wrong, it is wrong for all, so the half-width grows with the number. */
export const times = (count: number, each: Measure): Measure => ({
  ...each,
  value: each.value * count,
  low: each.low * count,
  high: each.high * count,
});

/**
 * The sum of independent figures: values add, half-widths add in quadrature, since one piece being heavy says nothing of
 * the next (Guide to the expression of uncertainty in measurement, JCGM 100:2008, 5.1.2). Estimated when any part is.
 */
export const sumOf = (parts: readonly Measure[]): Measure => {
  const value = parts.reduce((sum, part) => sum + part.value, 0);
  const spread = Math.sqrt(parts.reduce((sum, part) => sum + ((part.high - part.low) / 2) ** 2, 0));
  const estimated = parts.some(({ basis }) => basis === 'estimated');
  return {
    value,
    low: value - spread,
    high: value + spread,
    basis: estimated ? 'estimated' : 'given',
    source: estimated ? 'sum, partly estimated' : 'sum',
  };
};

/** Share of the total that was weighed or measured, 0 to 1; 1 of nothing. */
export const givenShare = (parts: readonly Measure[]): number => {
  const all = parts.reduce((sum, { value }) => sum + value, 0);
  const given = parts.filter(({ basis }) => basis === 'given').reduce((sum, { value }) => sum + value, 0);
  return all === 0 ? 1 : given / all;
};
