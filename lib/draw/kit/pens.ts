import type { Mark, MarkGroup, Paint, Point } from '../drawing.ts';
import { type Node, resample, swell, towards } from './geometry.ts';
import { curvePath, ribbonPath, sampleCurve, softPath } from './paths.ts';

/** Anything that can be painted. */
export type Painted = Mark | MarkGroup;

const rounded = (value: number): number => Math.round(value * 1000) / 1000;
const path = (shape: readonly Node[] | string, closed = false): string =>
  typeof shape === 'string' ? shape : curvePath(shape, closed);

/** A flat shape: a path, or nodes closed into one. */
export const shape = (outline: readonly Node[] | string, fill: Paint, opacity = 1): Mark => ({
  path: path(outline, true),
  fill,
  ...(opacity < 1 && { opacity: rounded(opacity) }),
});

/** A pen stroke that swells and tapers; width in centimetres. */
export const pen = (nodes: readonly Node[], width: number, fill: string, opacity = 1, peak = 0.4): Mark => {
  const points = resample(sampleCurve(nodes), nodes.length > 3 ? 6 : 4);
  const half = swell(peak, 0.7);
  const reach = (t: number) => (width / 2) * half(t);
  return shape(ribbonPath(points, reach, reach), fill, opacity);
};

/** An even line. */
export const line = (
  nodes: readonly Node[] | string,
  width: number,
  stroke: string,
  opacity = 1,
  dash?: readonly number[],
): Mark => ({
  path: path(nodes),
  stroke,
  width: rounded(width),
  round: true,
  ...(dash && { dash }),
  ...(opacity < 1 && { opacity: rounded(opacity) }),
});

/** A row of stitches. */
export const stitch = (nodes: readonly Node[] | string, stroke: string, opacity = 0.75): Mark => ({
  // square ends: round ones on hundreds of dashes are the dearest thing in a picture
  ...line(nodes, 0.15, stroke, opacity, [0.5, 0.34]),
  round: false,
});

/** Marks painted together; `clip` is a path, `move` shifts them. */
export const group = (
  marks: readonly Painted[],
  options: { readonly clip?: string; readonly move?: Point; readonly opacity?: number } = {},
): MarkGroup => ({
  marks,
  ...(options.clip !== undefined && { clip: options.clip }),
  ...(options.move && { transform: [1, 0, 0, 1, rounded(options.move[0]), rounded(options.move[1])] as const }),
  ...(options.opacity !== undefined && { opacity: options.opacity }),
});

/** Lines spread between two edges: ribs, pleats, wales. `from` and `to` are shares of the way from edge to edge. */
export const linesBetween = (
  edge: readonly Node[],
  other: readonly Node[],
  count: number,
  width: number,
  stroke: string,
  opacity: number,
  from = 0,
  to = 1,
): Mark => {
  const steps = edge.length <= 2 && other.length <= 2 ? 1 : Math.min(5, Math.max(edge.length, other.length));
  const a = resample(sampleCurve(edge), steps);
  const b = resample(sampleCurve(other), steps);
  let d = '';
  for (let i = 1; i < count; i++) {
    const t = from + ((to - from) * i) / count;
    d += softPath(a.map((p, k) => towards(p, b[k] ?? p, t)));
  }
  return { path: d, stroke, width: rounded(width), ...(opacity < 1 && { opacity: rounded(opacity) }) };
};

/** Ribs between two edges: a dark line and, a little to its right, a light one. */
export const ribsBetween = (
  edge: readonly Node[],
  other: readonly Node[],
  count: number,
  cloth: { readonly ink: string; readonly bright: string },
  options: {
    readonly dark?: number;
    readonly light?: number;
    readonly width?: number;
    readonly to?: number;
    readonly small?: boolean;
    readonly aside?: Point;
  } = {},
): MarkGroup => {
  if (options.small)
    return group([
      linesBetween(edge, other, Math.max(3, Math.round(count / 3)), 0.4, cloth.ink, 0.15, 0, options.to ?? 1),
    ]);
  const width = options.width ?? 0.2;
  const dark = linesBetween(edge, other, count, width, cloth.ink, options.dark ?? 0.2, 0, options.to ?? 1);
  return group([
    dark,
    group([{ ...dark, stroke: cloth.bright, opacity: options.light ?? 0.5 }], {
      move: options.aside ?? [width * 1.3, 0],
    }),
  ]);
};
