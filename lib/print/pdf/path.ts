import type { Box, Matrix, Point } from '../../draw/drawing.ts';
import { num } from './numbers.ts';

/** One command of a path in absolute coordinates; quadratic curves are already cubic. */
export type Segment =
  | { readonly command: 'M' | 'L'; readonly to: Point }
  | { readonly command: 'C'; readonly first: Point; readonly second: Point; readonly to: Point }
  | { readonly command: 'Z' };

const TOKEN = /([MLCQZ])|(-?(?:\d+\.?\d*|\.\d+)(?:e-?\d+)?)/gi;

const third = (from: Point, control: Point): Point => [
  from[0] + (2 / 3) * (control[0] - from[0]),
  from[1] + (2 / 3) * (control[1] - from[1]),
];

/** Reads M, L, C, Q and Z. Throws on any other command, which no drawing may hold. */
export const readPath = (path: string): readonly Segment[] => {
  const foreign = /[^MLCQZe\d\s.,+-]/.exec(path);
  if (foreign !== null) throw new Error(`a path may hold M, L, C, Q and Z only, not "${foreign[0]}"`);
  const segments: Segment[] = [];
  let command = '';
  let numbers: number[] = [];
  let at: Point = [0, 0];
  const take = (count: number): void => {
    if (numbers.length < count) return;
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers;
    numbers = [];
    if (command === 'C') {
      segments.push({ command: 'C', first: [a, b], second: [c, d], to: [e, f] });
      at = [e, f];
    } else if (command === 'Q') {
      segments.push({ command: 'C', first: third(at, [a, b]), second: third([c, d], [a, b]), to: [c, d] });
      at = [c, d];
    } else {
      segments.push({ command: command === 'M' ? 'M' : 'L', to: [a, b] });
      at = [a, b];
      if (command === 'M') command = 'L';
    }
  };
  for (const [, letter, number] of path.matchAll(TOKEN)) {
    if (letter !== undefined) {
      if (letter === 'Z') segments.push({ command: 'Z' });
      command = letter;
      numbers = [];
    } else if (number !== undefined) {
      numbers.push(Number(number));
      take(command === 'C' ? 6 : command === 'Q' ? 4 : 2);
    }
  }
  return segments;
};

/** Path operators of a content stream (ISO 32000-1, 8.5.2). */
export const pathOperators = (segments: readonly Segment[], digits = 3): string => {
  const write = (...values: readonly number[]): string => values.map((value) => num(value, digits)).join(' ');
  return segments
    .map((segment) => {
      if (segment.command === 'Z') return 'h';
      if (segment.command === 'C') return `${write(...segment.first, ...segment.second, ...segment.to)} c`;
      return `${write(...segment.to)} ${segment.command === 'M' ? 'm' : 'l'}`;
    })
    .join('\n');
};

/** A box that holds the whole path: that of its points and control points. */
export const pathBox = (segments: readonly Segment[]): Box => {
  const points = segments.flatMap((segment): readonly Point[] =>
    segment.command === 'Z' ? [] : segment.command === 'C' ? [segment.first, segment.second, segment.to] : [segment.to],
  );
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const left = Math.min(...xs);
  const top = Math.min(...ys);
  return points.length === 0
    ? { x: 0, y: 0, width: 0, height: 0 }
    : { x: left, y: top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
};

const CURVE_STEPS = 6;

/** The path as closed rings of points, curves in short straight steps. */
export const pathRings = (segments: readonly Segment[]): readonly (readonly Point[])[] => {
  const rings: Point[][] = [];
  for (const segment of segments) {
    if (segment.command === 'M') rings.push([segment.to]);
    const ring = rings.at(-1);
    if (ring === undefined) continue;
    if (segment.command === 'L') ring.push(segment.to);
    if (segment.command === 'C') {
      const from = ring.at(-1) ?? segment.first;
      for (let step = 1; step <= CURVE_STEPS; step++) {
        const t = step / CURVE_STEPS;
        const u = 1 - t;
        const mix = (i: 0 | 1): number =>
          u ** 3 * from[i] +
          3 * u * u * t * segment.first[i] +
          3 * u * t * t * segment.second[i] +
          t ** 3 * segment.to[i];
        ring.push([mix(0), mix(1)]);
      }
    }
  }
  return rings;
};

export const ringArea = (ring: readonly Point[]): number =>
  Math.abs(
    ring.reduce((sum, [x, y], index) => {
      const [nextX, nextY] = ring[(index + 1) % ring.length] ?? [x, y];
      return sum + (x * nextY - nextX * y) / 2;
    }, 0),
  );

export const ringLength = (ring: readonly Point[]): number =>
  ring.slice(1).reduce((sum, [x, y], index) => {
    const [beforeX, beforeY] = ring[index] ?? [x, y];
    return sum + Math.hypot(x - beforeX, y - beforeY);
  }, 0);

export const invert = ([a, b, c, d, e, f]: Matrix): Matrix => {
  const determinant = a * d - b * c;
  return [
    d / determinant,
    -b / determinant,
    -c / determinant,
    a / determinant,
    (c * f - d * e) / determinant,
    (b * e - a * f) / determinant,
  ];
};

export const apply = ([a, b, c, d, e, f]: Matrix, [x, y]: Point): Point => [a * x + c * y + e, b * x + d * y + f];
