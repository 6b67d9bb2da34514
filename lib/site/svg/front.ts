import { scaleLinear } from 'd3-scale';
import type { Tick } from './tape.ts';

/** Looks against weight as a stair: positions in the units of its own view box. */
export interface FrontPlot {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly bottom: number;
  /** Outline of what can be had. */
  readonly stair: string;
  readonly dots: readonly { readonly x: number; readonly y: number; readonly title: string }[];
  readonly weights: readonly Tick[];
  readonly looks: readonly Tick[];
}

const WIDTH = 640;
const HEIGHT = 280;
const LEFT = 52;
const BOTTOM = HEIGHT - 36;
const TOP = 12;
const RIGHT = WIDTH - 28;

const round = (value: number): number => Math.round(value * 10) / 10;

/** Points from light to heavy. The weight axis starts near the lightest choice, the looks at none. */
export const frontPlot = (
  points: readonly { readonly grams: number; readonly looks: number }[],
  words: {
    readonly weight: (kilograms: number) => string;
    readonly count: (looks: number) => string;
    readonly title: (point: { readonly grams: number; readonly looks: number }) => string;
  },
): FrontPlot => {
  const grams = points.map((point) => point.grams);
  const low = Math.floor(Math.min(...grams) / 500) * 500;
  const high = Math.max(low + 500, Math.ceil(Math.max(...grams) / 500) * 500);
  const x = scaleLinear().domain([low, high]).range([LEFT, RIGHT]);
  const y = scaleLinear()
    .domain([0, Math.max(1, ...points.map((point) => point.looks))])
    .nice(4)
    .range([BOTTOM, TOP]);
  const at = points.map((point) => ({ x: round(x(point.grams)), y: round(y(point.looks)), title: words.title(point) }));
  return {
    width: WIDTH,
    height: HEIGHT,
    left: LEFT,
    bottom: BOTTOM,
    stair: at.map((dot, index) => (index === 0 ? `M${dot.x} ${BOTTOM}V${dot.y}` : `H${dot.x}V${dot.y}`)).join(''),
    dots: at,
    weights: x.ticks(5).map((value) => ({ at: round(x(value)), long: true, label: words.weight(value / 1000) })),
    looks: y.ticks(4).map((value) => ({ at: round(y(value)), long: true, label: words.count(value) })),
  };
};
