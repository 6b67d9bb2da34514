import { scaleLinear } from 'd3-scale';

export interface Tick {
  readonly at: number;
  readonly long: boolean;
  readonly label?: string;
}

/** A scale of degrees with the comfortable span marked: positions in the units of its own view box. */
export interface DegreeTape {
  readonly width: number;
  readonly ticks: readonly Tick[];
  readonly from: number;
  readonly to: number;
  /** The air that is expected. */
  readonly expected?: { readonly from: number; readonly to: number };
}

const WIDTH = 340;
/** Degrees that every tape holds, so that two looks compare at a glance, °C; a label every few of them. */
const USUAL: Degrees = [-5, 35];
const LABEL_EVERY = 5;

type Degrees = readonly [low: number, high: number];

const scaleOf = (held: readonly Degrees[]): Degrees => [
  Math.floor(Math.min(...held.map(([low]) => low)) / LABEL_EVERY) * LABEL_EVERY,
  Math.ceil(Math.max(...held.map(([, high]) => high)) / LABEL_EVERY) * LABEL_EVERY,
];

/** A tape of °C, a tick a degree and a label every five, long enough for the span on it and the air that is expected. */
export const degreeTape = (
  span: Degrees,
  expected: Degrees | undefined,
  label: (celsius: number) => string,
): DegreeTape => {
  const scale = scaleOf([USUAL, span, ...(expected === undefined ? [] : [expected])]);
  const x = scaleLinear().domain([scale[0], scale[1]]).range([0, WIDTH]);
  const round = (value: number): number => Math.round(x(value) * 10) / 10;
  const ticks: Tick[] = [];
  for (let degree = scale[0]; degree <= scale[1]; degree += 1) {
    const long = degree % LABEL_EVERY === 0;
    ticks.push({ at: round(degree), long, ...(long ? { label: label(degree) } : {}) });
  }
  const drawn = ([low, high]: Degrees): { readonly from: number; readonly to: number } => ({
    from: round(low),
    to: Math.max(round(high), round(low) + 2),
  });
  return { width: WIDTH, ticks, ...drawn(span), ...(expected === undefined ? {} : { expected: drawn(expected) }) };
};

export interface Strip {
  readonly x: number;
  readonly width: number;
  readonly fill: string;
  readonly title: string;
}

/** The weight bar: every piece a strip of its own colour, as wide as it is heavy; then the rest; the limit as a pin. */
export interface WeightBar {
  readonly width: number;
  readonly strips: readonly Strip[];
  readonly rest: { readonly x: number; readonly width: number };
  readonly ticks: readonly Tick[];
  readonly limit?: number;
}

const BAR_WIDTH = 500;
/** Two numbers under a bar stand at least so far apart, in its units. */
const LABEL_APART = 120;

export const weightBar = (
  pieces: readonly { readonly grams: number; readonly fill: string; readonly title: string }[],
  restGrams: number,
  limitKg: number | undefined,
  label: (kilograms: number) => string,
): WeightBar => {
  const total = pieces.reduce((sum, { grams }) => sum + grams, 0) + restGrams;
  const whole = Math.max(limitKg ?? 0, Math.ceil(total / 1000));
  const x = scaleLinear()
    .domain([0, whole * 1000])
    .range([0, BAR_WIDTH]);
  const round = (value: number): number => Math.round(value * 10) / 10;
  let at = 0;
  const strips = pieces
    .toSorted((a, b) => b.grams - a.grams)
    .map(({ grams, fill, title }): Strip => {
      const strip = { x: round(x(at)), width: round(Math.max(0.6, x(grams) - 1)), fill, title };
      at += grams;
      return strip;
    });
  const ticks: Tick[] = [];
  const every = whole > 12 ? 5 : 3;
  // the end has its number too, where the last whole step leaves room for it
  const endHasRoom = (whole % every) * (BAR_WIDTH / whole) >= LABEL_APART;
  for (let half = 0; half <= whole * 2; half += 1) {
    const kilograms = half / 2;
    const labelled = kilograms % every === 0 || (kilograms === whole && endHasRoom);
    ticks.push({
      at: round(x(kilograms * 1000)),
      long: half % 2 === 0,
      ...(labelled ? { label: label(kilograms) } : {}),
    });
  }
  return {
    width: BAR_WIDTH,
    strips,
    rest: { x: round(x(at)), width: round(x(restGrams)) },
    ticks,
    ...(limitKg === undefined ? {} : { limit: round(x(limitKg * 1000)) }),
  };
};
