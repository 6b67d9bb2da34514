import type { Point } from '../drawing.ts';

/** A point of an outline; `corner` keeps it sharp, otherwise the curve runs through it smoothly. */
export type Node = readonly [x: number, y: number, corner?: 'corner' | undefined];

export const lerp = (a: number, b: number, t: number): number => a + (b - a) * t;
export const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));
export const distance = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** The point a share `t` of the way from `a` to `b`. */
export const towards = (a: Point, b: Point, t: number): Point => [lerp(a[0], b[0], t), lerp(a[1], b[1], t)];

/** `a` moved by `amount` times `by`. */
export const move = (a: Point, by: Point, amount = 1): Point => [a[0] + by[0] * amount, a[1] + by[1] * amount];

/** Unit vector: 0 degrees is straight down, positive turns to the right. */
export const direction = (degrees: number): Point => [
  Math.sin((degrees * Math.PI) / 180),
  Math.cos((degrees * Math.PI) / 180),
];

/** A point turned by `degrees` (clockwise on paper) about `centre`. */
export const turned = (p: Point, degrees: number, centre: Point = [0, 0]): Point => {
  const angle = (degrees * Math.PI) / 180;
  const [x, y] = [p[0] - centre[0], p[1] - centre[1]];
  return [centre[0] + x * Math.cos(angle) - y * Math.sin(angle), centre[1] + x * Math.sin(angle) + y * Math.cos(angle)];
};

export const corner = (x: number, y: number): Node => [x, y, 'corner'];
export const nodeAt = (p: Point): Node => [p[0], p[1]];
export const cornerAt = (p: Point): Node => [p[0], p[1], 'corner'];

/** Nodes reflected in the vertical axis; the order stays. */
export const mirrored = (nodes: readonly Node[]): Node[] => nodes.map(([x, y, c]) => [-x, y, c]);
export const reversed = <T>(list: readonly T[]): T[] => [...list].reverse();

/** Twice the signed area of a ring; positive when it runs clockwise on paper. */
export const signedArea = (ring: readonly Point[]): number =>
  ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    return sum + a[0] * b[1] - b[0] * a[1];
  }, 0);

const normals = (points: readonly Point[]): Point[] =>
  points.map((p, i) => {
    const a = points[Math.max(0, i - 1)] ?? p;
    const b = points[Math.min(points.length - 1, i + 1)] ?? p;
    const length = distance(a, b) || 1;
    return [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
  });

/** How far something reaches at a share of the way along a line. */
export type Reach = (t: number) => number;

/** The line moved sideways; positive is to the left of its run on paper. */
export const offsetLine = (points: readonly Point[], by: number | Reach): Point[] => {
  const sideways = normals(points);
  return points.map((p, i) =>
    move(p, sideways[i] ?? [0, 0], typeof by === 'number' ? by : by(i / Math.max(1, points.length - 1))),
  );
};

/** Swells from 0 to 1 at `peak` and back to 0. */
export const swell =
  (peak = 0.5, power = 1): Reach =>
  (t) =>
    Math.max(0, Math.sin(Math.PI * t ** (Math.log(0.5) / Math.log(peak)))) ** power;

/** `count + 1` points at equal steps along a line. */
export const resample = (points: readonly Point[], count: number): Point[] => {
  const first = points[0];
  if (first === undefined) return [];
  const along = [0];
  points.forEach((p, i) => {
    const before = points[i - 1];
    if (before !== undefined) along.push((along[i - 1] ?? 0) + distance(p, before));
  });
  const total = along[along.length - 1] ?? 0;
  const result: Point[] = [];
  let at = 0;
  for (let i = 0; i <= count; i++) {
    const target = (total * i) / count;
    while (at < points.length - 2 && (along[at + 1] ?? 0) < target) at++;
    const a = points[at] ?? first;
    const b = points[at + 1] ?? a;
    const step = (along[at + 1] ?? 0) - (along[at] ?? 0);
    result.push(towards(a, b, step > 0 ? (target - (along[at] ?? 0)) / step : 0));
  }
  return result;
};
