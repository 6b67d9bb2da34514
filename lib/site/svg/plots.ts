import { scaleLinear, scalePoint, scaleSqrt } from 'd3-scale';

const round = (value: number): number => Math.round(value * 10) / 10;

export interface Axis {
  readonly at: number;
  readonly label: string;
}

/** Weather of each day as a band, the planned looks' comfortable spans as stitches beside it. */
export interface WarmthPlot {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly bottom: number;
  readonly degrees: readonly Axis[];
  readonly days: readonly (Axis & { readonly band?: { readonly y: number; readonly height: number } })[];
  readonly spans: readonly { readonly x: number; readonly from: number; readonly to: number }[];
  readonly step: number;
}

export interface WarmthDay {
  readonly label: string;
  readonly weather?: { readonly lowC: number; readonly highC: number };
  readonly looks: readonly { readonly lowC: number; readonly highC: number }[];
}

const PLOT = { width: 640, height: 280, left: 58, right: 12, top: 12, bottom: 34 } as const;
const DEGREES_EVERY = 5;

/** Positions for the plot of warmth; y grows downward, in the units of the view box. */
export const warmthPlot = (days: readonly WarmthDay[], label: (celsius: number) => string): WarmthPlot => {
  const known = days.flatMap(({ weather, looks }) => [...(weather === undefined ? [] : [weather]), ...looks]);
  const low = Math.floor(Math.min(0, ...known.map(({ lowC }) => lowC)) / DEGREES_EVERY) * DEGREES_EVERY;
  const high = Math.ceil(Math.max(20, ...known.map(({ highC }) => highC)) / DEGREES_EVERY) * DEGREES_EVERY;
  const bottom = PLOT.height - PLOT.bottom;
  const y = scaleLinear().domain([low, high]).range([bottom, PLOT.top]);
  const x = scalePoint()
    .domain(days.map((_, index) => String(index)))
    .range([PLOT.left, PLOT.width - PLOT.right])
    .padding(0.6);
  const degrees: Axis[] = [];
  for (let degree = low; degree <= high; degree += DEGREES_EVERY)
    degrees.push({ at: round(y(degree)), label: label(degree) });
  return {
    width: PLOT.width,
    height: PLOT.height,
    left: PLOT.left,
    bottom,
    degrees,
    step: round(Math.min(28, x.step() * 0.5)),
    days: days.map(({ label: said, weather }, index) => ({
      at: round(x(String(index)) ?? 0),
      label: said,
      ...(weather === undefined
        ? {}
        : { band: { y: round(y(weather.highC)), height: round(Math.max(2, y(weather.lowC) - y(weather.highC))) } }),
    })),
    spans: days.flatMap(({ looks }, index) =>
      looks.map(({ lowC, highC }, place) => ({
        x: round((x(String(index)) ?? 0) + (place - (looks.length - 1) / 2) * 9),
        from: round(y(lowC)),
        to: round(y(highC)),
      })),
    ),
  };
};

export interface Dot {
  readonly x: number;
  readonly y: number;
  readonly fill: string;
  readonly title: string;
}

/** Weight to the right, looks upward. */
export interface WorthPlot {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly bottom: number;
  readonly grams: readonly Axis[];
  readonly looks: readonly Axis[];
  readonly dots: readonly Dot[];
}

export const worthPlot = (
  pieces: readonly { readonly grams: number; readonly looks: number; readonly fill: string; readonly name: string }[],
  labels: { readonly grams: (value: number) => string; readonly count: (value: number) => string },
): WorthPlot => {
  const bottom = PLOT.height - PLOT.bottom;
  const x = scaleLinear()
    .domain([0, Math.max(100, ...pieces.map(({ grams }) => grams))])
    .nice(5)
    .range([PLOT.left + 12, PLOT.width - PLOT.right]);
  const y = scaleSqrt()
    .domain([0, Math.max(4, ...pieces.map(({ looks }) => looks))])
    .nice()
    .range([bottom, PLOT.top]);
  return {
    width: PLOT.width,
    height: PLOT.height,
    left: PLOT.left + 12,
    bottom,
    grams: x.ticks(5).map((value) => ({ at: round(x(value)), label: labels.grams(value) })),
    looks: y.ticks(5).map((value) => ({ at: round(y(value)), label: labels.count(value) })),
    dots: pieces.map(({ grams, looks, fill, name }) => ({ x: round(x(grams)), y: round(y(looks)), fill, title: name })),
  };
};
