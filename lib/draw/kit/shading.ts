import type { Detail, Mark, Point } from '../drawing.ts';
import type { Cloth } from '../fabric/index.ts';
import { lerp, type Node, offsetLine, resample, swell } from './geometry.ts';
import { polygonPath, ribbonPath, sampleCurve } from './paths.ts';
import { group, type Painted, pen, shape } from './pens.ts';

/** A fold as a valley: lopsided lenses of shade, light on the ridge beside it, a crisp mark at the root only. */
export const foldMarks = (
  nodes: readonly Node[],
  width: number,
  strength: number,
  peak: number,
  cloth: Cloth,
  detail: Detail,
): Painted => {
  const { drape } = cloth;
  const w = width * drape.width;
  const k = strength * drape.depth;
  const points = resample(sampleCurve(nodes), 12);
  const lens = (
    share: number,
    near: number,
    far: number,
    aside: number,
    colour: string,
    opacity: number,
    at = peak,
  ): Mark => {
    const kept = points.slice(0, Math.max(5, Math.round(13 * share)));
    const run = resample(offsetLine(kept, w * aside), 4);
    const b = swell(at, 1.15);
    return shape(
      ribbonPath(
        run,
        (t) => w * near * b(t),
        (t) => w * far * b(t),
      ),
      colour,
      opacity,
    );
  };
  const dark = cloth.depth * k;
  if (detail === 'small') {
    if (k < 0.55) return group([]);
    return group([
      lens(0.95, 0.95, 0.4, 0.1, cloth.ink, 0.16 * dark, 0.42),
      lens(0.9, 0.5, 0.5, -0.9, cloth.bright, 0.16 * cloth.sheen * k, 0.42),
    ]);
  }
  return group([
    lens(1, 1.1, 0.5, 0.12, cloth.ink, 0.075 * dark, 0.45),
    ...(k < 0.6
      ? [lens(0.85, 0.52, 0.2, 0.05, cloth.ink, 0.18 * dark, 0.36)]
      : [
          lens(0.9, 0.7, 0.27, 0.07, cloth.ink, 0.11 * dark, 0.38),
          lens(0.72, 0.34, 0.12, 0.03, cloth.ink, 0.15 * dark),
        ]),
    // on satin one hard leaf of light would read as a splinter
    ...(cloth.sheen > 1.4
      ? [
          lens(0.96, 0.62, 0.62, -0.92, cloth.bright, 0.08 * cloth.sheen * k, 0.42),
          lens(0.84, 0.36, 0.36, -0.92, cloth.bright, 0.06 * cloth.sheen * k, 0.42),
          lens(0.66, 0.15, 0.15, -0.92, cloth.bright, 0.06 * cloth.sheen * k, 0.42),
        ]
      : [lens(0.92, 0.5, 0.5, -0.92, cloth.bright, 0.17 * cloth.sheen * k, 0.42)]),
    pen(
      points.slice(0, 7).map(([x, y]): Node => [x, y]),
      0.05 + Math.abs(w) * 0.1,
      cloth.ink,
      Math.min(0.6, 0.42 * k) * (cloth.depth < 0.6 ? 0.7 : 1) * lerp(0.45, 1, drape.crisp),
      0.25,
    ),
  ]);
};

/** A plane stronger than this would show the edges of three layers. */
const STRONG = 0.38;

/** A broad soft plane of light or shade: stacked lenses along a line. */
export const planeMarks = (
  nodes: readonly Node[],
  width: number,
  colour: string,
  opacity: number,
  peak: number,
  detail: Detail,
): Painted => {
  const points = resample(sampleCurve(nodes), 4);
  const b = swell(peak, 0.65);
  const strong = opacity > STRONG;
  const layers = detail === 'small' ? [0.8] : strong ? [1, 0.8, 0.6, 0.4, 0.2] : [1, 0.66, 0.33];
  const each = opacity / (detail === 'small' ? 2 : strong ? 4.4 : 2.7);
  return group(
    layers.map((layer) => {
      const reach = (t: number) => width * layer * b(t);
      return shape(ribbonPath(points, reach, reach), colour, each);
    }),
  );
};

/** How far the edge of a band of shade wanders down the panel, shares of its breadth. */
const WANDERS = [0.012, -0.004, -0.016, 0.008, 0.018, 0.004, -0.014];

/** A panel shaded as a tube from `from` to `to`: light at a third, shade at both sides, deepest at `to`. */
export const roundMarks = (
  outline: readonly Node[],
  from: Point,
  to: Point,
  strength: number,
  cloth: Cloth,
  detail: Detail,
): Painted => {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const across: Point = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const along: Point = [-across[1], across[0]];
  const heights = outline.map(([x, y]) => (x - from[0]) * along[0] + (y - from[1]) * along[1]);
  const low = Math.min(...heights) - 0.2;
  const high = Math.max(...heights) + 0.2;
  // nothing is painted beyond the panel: what the clip would cut away costs time all the same
  const shares = outline.map(([x, y]) => ((x - from[0]) * across[0] + (y - from[1]) * across[1]) / length);
  const start = Math.min(...shares) - 0.02;
  const end = Math.max(...shares) + 0.02;
  const strip = (t0: number, t1: number, colour: string, opacity: number): Mark[] => {
    const at = (t: number, h: number): Point => [
      from[0] + across[0] * length * t + along[0] * h,
      from[1] + across[1] * length * t + along[1] * h,
    ];
    const [a, b] = [Math.max(start, t0), Math.min(end, t1)];
    if (a >= b) return [];
    /** An edge wanders as a brush does; where it ends with the panel it may stay straight. */
    const edge = (t: number): Point[] =>
      t <= start || t >= end
        ? [at(t, low), at(t, high)]
        : WANDERS.map((aside, i) =>
            at(t + aside * (i % 2 === 0 ? 1 : Math.sin(t * 61)), lerp(low, high, i / (WANDERS.length - 1))),
          );
    return [shape(polygonPath([...edge(a), ...edge(b).reverse()]), colour, opacity)];
  };
  const dark = 0.065 * strength * cloth.depth;
  const light = 0.085 * strength * Math.min(1.4, cloth.sheen);
  if (detail === 'small')
    return group([
      ...strip(0.84, end, cloth.ink, dark * 3),
      ...strip(start, 0.07, cloth.ink, dark * 2),
      ...strip(0.25, 0.45, cloth.bright, light * 2),
    ]);
  return group([
    ...[0.74, 0.81, 0.88, 0.95].flatMap((t) => strip(t, end, cloth.ink, dark * 1.2)),
    ...[0.13, 0.05].flatMap((t) => strip(start, t, cloth.ink, dark * 1.4)),
    ...[0.14, 0.09, 0.04].flatMap((half) => strip(0.35 - half, 0.35 + half, cloth.bright, light * 1.25)),
  ]);
};
