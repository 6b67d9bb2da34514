import type { Point } from '../drawing.ts';
import { distance, move, type Node, offsetLine, type Reach, reversed, towards } from './geometry.ts';

type Cubic = readonly [from: Point, control1: Point, control2: Point, to: Point];

const decimalsFor = (points: readonly Point[]): number => {
  let left = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let top = left;
  let bottom = right;
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return Math.max(right - left, bottom - top) < 3 ? 1000 : 100;
};

const writer = (points: readonly Point[]) => {
  const unit = decimalsFor(points);
  return (p: Point): string => `${Math.round(p[0] * unit) / unit} ${Math.round(p[1] * unit) / unit}`;
};

/** Cubic pieces of a smooth curve through the nodes, sharp at corners. */
export const cubics = (nodes: readonly Node[], closed = true): Cubic[] => {
  const count = nodes.length;
  const at = (i: number): Node => nodes[((i % count) + count) % count] ?? [0, 0];
  const tangent = (i: number): Point | undefined => {
    if (at(i)[2] === 'corner') return undefined;
    if (!closed && (i === 0 || i === count - 1)) return undefined;
    const before = at(i - 1);
    const after = at(i + 1);
    const length = Math.hypot(after[0] - before[0], after[1] - before[1]) || 1;
    return [(after[0] - before[0]) / length, (after[1] - before[1]) / length];
  };
  const result: Cubic[] = [];
  for (let i = 0; i < (closed ? count : count - 1); i++) {
    const from: Point = [at(i)[0], at(i)[1]];
    const to: Point = [at(i + 1)[0], at(i + 1)[1]];
    const reach = distance(from, to) * 0.36;
    const leaving = tangent(i);
    const arriving = tangent(i + 1);
    const held1 = leaving && move(from, leaving, reach);
    const held2 = arriving && move(to, arriving, -reach);
    const control1 = held1 ?? (held2 ? towards(from, held2, 0.5) : towards(from, to, 0.33));
    const control2 = held2 ?? (held1 ? towards(to, held1, 0.5) : towards(from, to, 0.67));
    result.push([from, control1, control2, to]);
  }
  return result;
};

/** Path of a smooth curve through the nodes. */
export const curvePath = (nodes: readonly Node[], closed = true): string => {
  const pieces = cubics(nodes, closed);
  const write = writer(nodes.map((node) => [node[0], node[1]]));
  const start = pieces[0]?.[0];
  if (start === undefined) return '';
  const body = pieces.map((p) =>
    // two corners in a row are joined by a straight edge
    isStraight(p) ? `L${write(p[3])}` : `C${write(p[1])} ${write(p[2])} ${write(p[3])}`,
  );
  return `M${write(start)}${body.join('')}${closed ? 'Z' : ''}`;
};

const isStraight = ([from, control1, control2, to]: Cubic): boolean => {
  const length = distance(from, to) || 1;
  const away = (p: Point) =>
    Math.abs((to[0] - from[0]) * (p[1] - from[1]) - (to[1] - from[1]) * (p[0] - from[0])) / length;
  return away(control1) < 0.005 && away(control2) < 0.005;
};

/** Straight edges between points. */
export const polygonPath = (points: readonly Point[], closed = true): string => {
  const write = writer(points);
  return `M${points.map(write).join('L')}${closed ? 'Z' : ''}`;
};

/** A soft line near the points (through their midpoints), sharp at both ends: few numbers for a smooth shape. */
export const softPath = (points: readonly Point[]): string => {
  const write = writer(points);
  return `M${softRun(points, write)}`;
};

const softRun = (points: readonly Point[], write: (p: Point) => string): string => {
  const last = points.length - 1;
  const first = points[0];
  if (first === undefined) return '';
  let path = write(first);
  for (let i = 1; i < last; i++) {
    const p = points[i] ?? first;
    const next = points[i + 1] ?? p;
    path += `Q${write(p)} ${write(i === last - 1 ? next : towards(p, next, 0.5))}`;
  }
  return last === 1 ? `${path}L${write(points[1] ?? first)}` : path;
};

/** A closed shape along a line, reaching `left` and `right` of it, pointed at both ends. */
export const ribbonPath = (points: readonly Point[], left: Reach, right: Reach): string => {
  const one = offsetLine(points, left);
  const other = reversed(offsetLine(points, (t) => -right(t)));
  const write = writer([...one, ...other]);
  return `M${softRun(one, write)}L${softRun(other, write)}Z`;
};

/** Points along a smooth curve, `steps` a piece. */
export const sampleCurve = (nodes: readonly Node[], closed = false, steps = 8): Point[] => {
  const pieces = cubics(nodes, closed);
  const result: Point[] = pieces[0] ? [pieces[0][0]] : [];
  for (const [p, a, c, q] of pieces)
    for (let i = 1; i <= steps; i++) {
      const t = i / steps;
      const u = 1 - t;
      const [k0, k1, k2, k3] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
      result.push([k0 * p[0] + k1 * a[0] + k2 * c[0] + k3 * q[0], k0 * p[1] + k1 * a[1] + k2 * c[1] + k3 * q[1]]);
    }
  return result;
};

/** Axis-parallel rectangle. */
export const rectanglePath = (x: number, y: number, width: number, height: number): string =>
  polygonPath([
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ]);

const ROUND = 0.5523;

/** Ellipse as four cubics, turned by `degrees`. */
export const ellipsePath = (centre: Point, rx: number, ry = rx, degrees = 0): string => {
  const cos = Math.cos((degrees * Math.PI) / 180);
  const sin = Math.sin((degrees * Math.PI) / 180);
  const at = (x: number, y: number): Point => [
    centre[0] + rx * x * cos - ry * y * sin,
    centre[1] + rx * x * sin + ry * y * cos,
  ];
  const write = writer([at(-1, 0), at(1, 0), at(0, -1), at(0, 1)]);
  const arc = (...p: Point[]) => `C${p.map(write).join(' ')}`;
  return (
    `M${write(at(1, 0))}` +
    arc(at(1, ROUND), at(ROUND, 1), at(0, 1)) +
    arc(at(-ROUND, 1), at(-1, ROUND), at(-1, 0)) +
    arc(at(-1, -ROUND), at(-ROUND, -1), at(0, -1)) +
    `${arc(at(ROUND, -1), at(1, -ROUND), at(1, 0))}Z`
  );
};
