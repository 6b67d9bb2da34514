import { scaleSqrt } from 'd3-scale';
import { arc, pointRadial } from 'd3-shape';
import { displayHex, hueAtAngle, type PaletteColour, wheelAngle } from '../../colour/index.ts';
import { type Label, placeLabels } from './labels.ts';

export interface WheelDot {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly fill: string;
  readonly title: string;
}

/** The artist's wheel, red at the top: hue as the angle, chroma as the way out, what is seen of a colour as its size. */
export interface Wheel {
  readonly size: number;
  readonly middle: number;
  /** Circles of equal strength, in the units of the view box. */
  readonly rings: readonly number[];
  /** The rim, in its hues. */
  readonly rim: readonly { readonly path: string; readonly fill: string }[];
  readonly dots: readonly WheelDot[];
  readonly labels: readonly Label[];
}

const SIZE = 400;
const RIM = 178;
const RIM_WIDTH = 8;
const ROOM = 160;
/** OKLCH chroma at the rim: about the strongest dyed cloth; and the circles between, of one step of strength each. Own choice. */
const STRONGEST = 0.2;
const RINGS = [0.05, 0.1, 0.15] as const;
/** Steps of the rim, and how light and strong it is drawn, in OKLCH. */
const RIM_STEPS = 60;
const RIM_LIGHTNESS = 0.7;
const RIM_CHROMA = 0.11;
const LEAST_DOT = 4;
const LARGEST_DOT = 30;

const RADIANS = Math.PI / 180;
const round = (value: number): number => Math.round(value * 10) / 10;

const rimOf = (): Wheel['rim'] => {
  const step = 360 / RIM_STEPS;
  const slice = arc<number>()
    .innerRadius(RIM)
    .outerRadius(RIM + RIM_WIDTH)
    .startAngle((from) => from * RADIANS)
    // a hair over the next one, so that no gap shows between them
    .endAngle((from) => (from + step + 0.3) * RADIANS)
    .digits(1);
  return Array.from({ length: RIM_STEPS }, (_, index) => ({
    path: slice(index * step) ?? '',
    fill: displayHex({
      mode: 'oklch',
      l: RIM_LIGHTNESS,
      c: RIM_CHROMA,
      h: hueAtAngle(index * step + step / 2),
    }),
  }));
};

/** Places the swatches of a palette; names stand beside the dots where there is room for them. */
export const paletteWheel = (colours: readonly PaletteColour[], nameOf: (colour: string) => string): Wheel => {
  // the root spreads quiet cloth, of which wardrobes are mostly made
  const out = scaleSqrt().domain([0, STRONGEST]).range([0, ROOM]).clamp(true);
  const radius = scaleSqrt().domain([0, 1]).range([LEAST_DOT, LARGEST_DOT]);
  const dots = colours.map(({ colour, share }): WheelDot => {
    const [x, y] = pointRadial(wheelAngle(colour.oklch.h) * RADIANS, out(colour.oklch.c));
    return {
      x: round(SIZE / 2 + x),
      y: round(SIZE / 2 + y),
      radius: round(radius(share)),
      fill: colour.hex,
      title: nameOf(colour.name),
    };
  });
  return {
    size: SIZE,
    middle: SIZE / 2,
    rings: RINGS.map((chroma) => round(out(chroma))),
    rim: rimOf(),
    // small dots last, so that none is hidden under a large one
    dots: [...dots].sort((a, b) => b.radius - a.radius),
    labels: placeLabels(
      dots.map(({ x, y, radius: r, title }) => ({ x, y, radius: r, text: title })),
      { middle: SIZE / 2, radius: RIM - 1 },
    ),
  };
};
