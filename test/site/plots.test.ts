import { describe, expect, it } from 'vitest';
import { lookComfort } from '../../lib/comfort/index.ts';
import type { GuideLook } from '../../lib/guide/index.ts';
import type { Look, PlannedOccasion } from '../../lib/model/index.ts';
import { warmthPlot, worthPlot } from '../../lib/site/svg/plots.ts';
import { degreeTape } from '../../lib/site/svg/tape.ts';
import { looksOfDay } from '../../lib/site/views/numbers.ts';
import { brief, occasion, piece } from '../plan/trip.ts';

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

  it.each([90, 330, 600, 1350, 2400])('keep apart when the heaviest piece has %i g', (grams) => {
    const plot = worthPlot([{ grams, looks: 9, fill: '#888888', name: 'Coat' }], {
      grams: (value) => `${value} g`,
      count: String,
    });
    // "1.4 kg" is five letters wide, and the last stands at the left of its tick
    expect(nearest(plot.grams)).toBeGreaterThan(5 * LETTERS);
    expect(plot.grams.length).toBeGreaterThan(1);
  });
});

describe('the tape of degrees of a look', () => {
  const plain = (celsius: number): string => String(celsius);
  const at = (tape: ReturnType<typeof degreeTape>, celsius: number): number | undefined =>
    tape.ticks.find(({ label }) => label === plain(celsius))?.at;

  it('is the same for looks of ordinary degrees', () => {
    const tape = degreeTape([5, 20], undefined, plain);
    expect(tape.ticks).toHaveLength(41);
    expect([tape.from, tape.to]).toEqual([at(tape, 5), at(tape, 20)]);
    expect(tape.expected).toBeUndefined();
  });

  it.each([
    [-12, 23, -6, -5],
    [10, 20, -8, 2],
    [15, 41, 38, 44],
  ])('holds %i to %i °C and what is expected, %i to %i °C, where its ticks say', (low, high, coldest, warmest) => {
    const tape = degreeTape([low, high], [coldest, warmest], plain);
    const degree = tape.width / (tape.ticks.length - 1);
    const lowest = Number(tape.ticks.find(({ label }) => label !== undefined)?.label);
    const place = (celsius: number): number => (celsius - lowest) * degree;
    expect(lowest).toBeLessThanOrEqual(Math.min(low, coldest));
    expect(tape.ticks[0]?.at).toBe(0);
    expect(tape.from).toBeCloseTo(place(low), 0);
    expect(tape.to).toBeCloseTo(place(high), 0);
    expect(tape.expected?.from).toBeCloseTo(place(coldest), 0);
    for (const end of [tape.to, tape.expected?.to ?? 0]) expect(end).toBeLessThanOrEqual(tape.width);
  });
});

describe('the looks of a day in the weather', () => {
  const pieces = [
    piece('shirt', 'shirt'),
    piece('jeans', 'jeans'),
    piece('boots', 'hiking boots'),
    piece('swimsuit', 'swimsuit'),
  ];
  const byId = new Map(pieces.map((one) => [one.id, one]));
  const look: Look = {
    id: 'clothes',
    worn: [
      { piece: 'shirt', slot: 'top' },
      { piece: 'jeans', slot: 'bottom' },
      { piece: 'boots', slot: 'shoes' },
    ],
  };
  const swim: Look = { id: 'swim', worn: [{ piece: 'swimsuit', slot: 'swim' }] };
  const shown = [look, swim].map(
    (one, index) =>
      ({ look: one, number: index + 1, outdoors: lookComfort(one, byId, 'strolling', 'outdoors') }) as GuideLook,
  );
  const hill = occasion('2027-10-03', 'Hill', {
    setting: { where: 'outdoors', sun: 'shade' },
    activity: 'brisk walking',
  });
  const supper = occasion('2027-10-03', 'Supper', { activity: 'sitting' });
  const baths = occasion('2027-10-03', 'Baths', { needs: ['swim'] });
  const worn = ({ id }: { id: string }, at: Look): PlannedOccasion => ({
    occasion: id,
    look: at,
    layersOn: [],
    layersCarried: [],
    change: 'first',
    reasons: [],
    cautions: [],
  });
  const guide = { brief: brief({ occasions: [hill, supper, baths] }), looks: shown, pieces };

  it('are told at what is done outdoors, and strolling where the occasion is in a room', () => {
    const { lowC, highC } = lookComfort(look, byId, 'brisk walking', 'outdoors');
    const { outdoors } = shown[0] as GuideLook;
    expect(lowC).toBeLessThan(outdoors.lowC);
    expect(looksOfDay(guide, [worn(supper, look), worn(hill, look)])).toEqual([{ number: 1, lowC, highC }]);
    expect(looksOfDay(guide, [worn(supper, look)])).toEqual([
      { number: 1, lowC: outdoors.lowC, highC: outdoors.highC },
    ]);
  });

  it('leave swimwear out', () => {
    expect(looksOfDay(guide, [worn(baths, swim)])).toEqual([]);
  });
});
