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

const PLOT = { width: 640, height: 288, left: 58, right: 12, top: 12, bottom: 42 } as const;
/** Labels stand no closer than this, so that they keep apart where a phone shows the plot small and its letters large. */
const LABELS_APART = { down: 25, across: 34, weights: 105 } as const;
/** Steps of the scale of degrees, the finest that keeps its labels apart. */
const DEGREE_STEPS = [5, 10, 20] as const;

/** Labels in their order, leaving out those that stand too close to the last one kept. */
const keptApart = (axis: readonly Axis[], apart: number): readonly Axis[] => {
  let last: number | undefined;
  return axis.filter(({ at }) => {
    if (last !== undefined && Math.abs(at - last) < apart) return false;
    last = at;
    return true;
  });
};

/** Positions for the plot of warmth; y grows downward, in the units of the view box. */
export const warmthPlot = (days: readonly WarmthDay[], label: (celsius: number) => string): WarmthPlot => {
  const known = days.flatMap(({ weather, looks }) => [...(weather === undefined ? [] : [weather]), ...looks]);
  const coldest = Math.min(0, ...known.map(({ lowC }) => lowC));
  const warmest = Math.max(20, ...known.map(({ highC }) => highC));
  const bottom = PLOT.height - PLOT.bottom;
  const room = (bottom - PLOT.top) / LABELS_APART.down;
  const step = DEGREE_STEPS.find((every) => (warmest - coldest) / every + 2 <= room) ?? 20;
  const [low, high] = [Math.floor(coldest / step) * step, Math.ceil(warmest / step) * step];
  const y = scaleLinear().domain([low, high]).range([bottom, PLOT.top]);
  const x = scalePoint()
    .domain(days.map((_, index) => String(index)))
    .range([PLOT.left, PLOT.width - PLOT.right])
    .padding(0.6);
  const daysALabel = Math.max(1, Math.ceil(LABELS_APART.across / x.step()));
  const degrees: Axis[] = [];
  for (let degree = low; degree <= high; degree += step) degrees.push({ at: round(y(degree)), label: label(degree) });
  return {
    width: PLOT.width,
    height: PLOT.height,
    left: PLOT.left,
    bottom,
    degrees,
    step: round(Math.min(28, x.step() * 0.5)),
    days: days.map(({ label: said, weather }, index) => ({
      at: round(x(String(index)) ?? 0),
      label: index % daysALabel === 0 ? said : '',
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

/** As many weights as keep apart, five at the best. */
const weightTicks = (x: { readonly ticks: (count: number) => number[]; (value: number): number }): readonly number[] =>
  [5, 4, 3, 2]
    .map((count) => x.ticks(count))
    .find(([first = 0, second = Number.POSITIVE_INFINITY]) => x(second) - x(first) >= LABELS_APART.weights) ?? [0];

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
    grams: weightTicks(x).map((value) => ({ at: round(x(value)), label: labels.grams(value) })),
    looks: keptApart(
      y
        .ticks(5)
        .toReversed()
        .map((value) => ({ at: round(y(value)), label: labels.count(value) })),
      LABELS_APART.down,
    ),
    dots: pieces.map(({ grams, looks, fill, name }) => ({ x: round(x(grams)), y: round(y(looks)), fill, title: name })),
  };
};
