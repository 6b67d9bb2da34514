import { describe, expect, it } from 'vitest';
import { warmthPlot, worthPlot } from '../../lib/site/svg/plots.ts';

/** Letters of a plot on a phone, in units of its view box, as templates/styles/more.css sets them. */
const LETTERS = 20;

const nearest = (axis: readonly { readonly at: number; readonly label: string }[]): number => {
  const at = axis
    .filter(({ label }) => label !== '')
    .map((tick) => tick.at)
    .toSorted((a, b) => a - b);
  return Math.min(...at.slice(1).map((place, index) => place - (at[index] ?? 0)));
};
const day = (lowC: number, highC: number) => ({ label: '28', weather: { lowC, highC }, looks: [{ lowC, highC }] });
const degrees = (celsius: number): string => `${celsius}°C`;

describe('labels of the plots', () => {
  it.each([
    [1, 12, 18],
    [9, 3, 26],
    [21, -25, 40],
    [60, -40, 45],
  ])('keep apart on %i days from %i to %i °C', (days, lowC, highC) => {
    const plot = warmthPlot(
      Array.from({ length: days }, () => day(lowC, highC)),
      degrees,
    );
    expect(nearest(plot.degrees)).toBeGreaterThan(LETTERS);
    // two figures are somewhat wider than one letter is tall
    expect(nearest(plot.days)).toBeGreaterThan(1.4 * LETTERS);
    expect(plot.days).toHaveLength(days);
    for (const { from, to } of plot.spans) for (const y of [from, to]) expect(y).toBeLessThanOrEqual(plot.bottom);
  });

  it.each([3, 12, 60, 900, 48_000])('keep apart when a piece is in %i looks', (most) => {
    const pieces = [0, most / 3, most].map((looks, at) => ({ grams: 200 * at, looks, fill: '#888888', name: 'Piece' }));
    const plot = worthPlot(pieces, { grams: (value) => `${value} g`, count: String });
    expect(nearest(plot.looks)).toBeGreaterThan(LETTERS);
    expect(plot.looks.length).toBeGreaterThan(2);
    expect(plot.looks.at(-1)?.label).toBe('0');
  });
});
