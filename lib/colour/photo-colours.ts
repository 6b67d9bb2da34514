import type { NamedColour, PieceColour } from '../model/index.ts';
import { type Cluster, clustersOf, medianOf, nearestOf, type Point3, pick } from './cluster.ts';
import { namedColour } from './convert.ts';
import { cutGround } from './ground.ts';
import { nameOf } from './name-of.ts';
import {
  linearPlanes,
  neighboursOf,
  oklabPlanes,
  type Pixels,
  type Planes,
  pixelDistance,
  smoothed,
} from './pixels.ts';

/** The colours read out of a picture. */
export interface PhotoColours {
  /** Largest share first; at least one when any pixel is seen. Shares add up to 1. */
  readonly colours: readonly PieceColour[];
  /** The ground that was taken away; absent when none was found. */
  readonly ground?: NamedColour;
}

/** Weight of lightness in clustering: folds and light change it more than they change hue. Own choice. */
const LIGHTNESS_WEIGHT = 0.55;
/** OKLab distance, so weighted, below which two groups are one cloth seen in different light. Own choice. */
const ONE_CLOTH = 0.065;
/** Colours with less of the garment than this are buttons and labels. Own choice. */
const LEAST_SHARE = 0.03;
/** A pixel whose neighbours differ more than this (OKLab) lies on an edge and mixes two colours. */
const EDGE = 0.06;
/** A small group that lies this near the line between two larger ones is their mixture. */
const MIXTURE = 0.035;
const MIXTURE_SHARE = 0.12;
/** How far uneven light may be evened out, as a factor. */
const MOST_EVENING = 1.8;
/** Linear light below which a ground is too dark to tell of the light. */
const LEAST_GROUND_LIGHT = 0.06;

const meanOf = (plane: Float64Array): number =>
  plane.reduce((sum, value) => sum + value, 0) / Math.max(1, plane.length);

/** The garment's light divided by how much brighter than its own mean the ground is at that place. */
const evened = (light: Planes, ground: Planes | undefined): Planes => {
  if (ground === undefined) return light;
  const even = (plane: Float64Array, over: Float64Array): Float64Array => {
    const mean = meanOf(over);
    if (mean < LEAST_GROUND_LIGHT) return plane;
    return plane.map((value, pixel) => {
      const factor = mean / Math.max(1e-3, over[pixel] ?? mean);
      return value * Math.min(MOST_EVENING, Math.max(1 / MOST_EVENING, factor));
    });
  };
  return { one: even(light.one, ground.one), two: even(light.two, ground.two), three: even(light.three, ground.three) };
};

/** Pixels of the garment away from edges between its colours; all of them when it is too busy for that. */
const flatPixels = (garment: Uint8Array, lab: Planes, width: number, height: number): number[] => {
  const inside: number[] = [];
  garment.forEach((is, pixel) => {
    if (is === 1) inside.push(pixel);
  });
  const flat = inside.filter((pixel) =>
    neighboursOf(pixel, width, height).every((other) => pixelDistance(lab, pixel, lab, other) < EDGE),
  );
  return flat.length >= inside.length / 5 ? flat : inside;
};

const isMixture = (cluster: Cluster, larger: readonly Cluster[], all: number): boolean =>
  cluster.members.length < all * MIXTURE_SHARE &&
  larger.some((one, index) =>
    larger.slice(index + 1).some((two) => fromSegment(cluster.centre, one.centre, two.centre) < MIXTURE),
  );

/** Distance of a point from the line between two others; infinite beyond its ends. */
const fromSegment = (point: Point3, from: Point3, to: Point3): number => {
  const along: Point3 = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const length = along[0] ** 2 + along[1] ** 2 + along[2] ** 2;
  const off: Point3 = [point[0] - from[0], point[1] - from[1], point[2] - from[2]];
  const at = (off[0] * along[0] + off[1] * along[1] + off[2] * along[2]) / length;
  if (!(at > 0.15 && at < 0.85)) return Number.POSITIVE_INFINITY;
  return Math.hypot(off[0] - at * along[0], off[1] - at * along[1], off[2] - at * along[2]);
};

/** How many pixels of the garment, edges and all, are nearest to each colour: thin stripes count in full. */
const countNearest = (garment: Uint8Array, lab: Planes, colours: readonly Point3[]): readonly number[] => {
  const counts = colours.map(() => 0);
  const weighted = colours.map(weightedPoint);
  garment.forEach((inside, pixel) => {
    if (inside === 0) return;
    const index = nearestOf(weightedPoint([lab.one[pixel] ?? 0, lab.two[pixel] ?? 0, lab.three[pixel] ?? 0]), weighted);
    counts[index] = (counts[index] ?? 0) + 1;
  });
  return counts;
};

const weightedPoint = ([l, a, b]: Point3): Point3 => [l * LIGHTNESS_WEIGHT, a, b];

/** Shares to four digits that add up to 1 exactly enough: the largest takes the rounding. */
const withShares = (found: readonly { readonly colour: NamedColour; readonly count: number }[]): PieceColour[] => {
  const whole = found.reduce((sum, { count }) => sum + count, 0);
  const rest = found.slice(1).map(({ colour, count }) => ({ ...colour, share: Number((count / whole).toFixed(4)) }));
  const [first] = found;
  const taken = rest.reduce((sum, { share }) => sum + share, 0);
  return first === undefined ? [] : [{ ...first.colour, share: Number((1 - taken).toFixed(4)) }, ...rest];
};

const oklabColour = ([l, a, b]: Point3): NamedColour => {
  const { hex } = namedColour('', { mode: 'oklab', l, a, b });
  return namedColour(nameOf(hex), { mode: 'oklab', l, a, b });
};

/**
 * The colours of a garment on a plain ground, with shares. The ground is removed, uneven light is evened out by it, and
 * the rest is grouped in OKLab. Deterministic. Names are those of the nearest cloth of the dictionary.
 */
export const coloursOfPixels = (pixels: Pixels): PhotoColours => {
  const { width, height } = pixels;
  const light = linearPlanes(pixels);
  const cut = cutGround(pixels, light);
  const even = evened(light, cut.light);
  const lab = smoothed(oklabPlanes(even), width, height);
  const flat = flatPixels(cut.garment, lab, width, height);
  const trueLab = flat.map((pixel): Point3 => [lab.one[pixel] ?? 0, lab.two[pixel] ?? 0, lab.three[pixel] ?? 0]);
  const weighted = trueLab.map(weightedPoint);
  const clusters = clustersOf(weighted, ONE_CLOTH);
  const kept = clusters.filter(
    (cluster, index) =>
      cluster.members.length >= weighted.length * LEAST_SHARE &&
      !isMixture(cluster, clusters.slice(0, index), weighted.length),
  );
  const chosen = (kept.length > 0 ? kept : clusters.slice(0, 1)).map(({ members }) => medianOf(pick(trueLab, members)));
  const counts = countNearest(cut.garment, oklabPlanes(even), chosen);
  const seen = chosen
    .map((point, index) => ({ colour: oklabColour(point), count: counts[index] ?? 0 }))
    .sort((one, two) => two.count - one.count);
  const ground = cut.light === undefined ? undefined : groundColour(cut.light);
  return { colours: withShares(seen), ...(ground === undefined ? {} : { ground }) };
};

const groundColour = (light: Planes): NamedColour => {
  const mean = { mode: 'lrgb' as const, r: meanOf(light.one), g: meanOf(light.two), b: meanOf(light.three) };
  const { hex } = namedColour('', mean);
  return namedColour(nameOf(hex), mean);
};
