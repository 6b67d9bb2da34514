import type { Mark, Point } from '../drawing.ts';
import { turned } from '../kit/geometry.ts';
import { ellipsePath, polygonPath, softPath } from '../kit/paths.ts';
import { type Random, random, seedOf } from '../kit/random.ts';

export interface Spot {
  readonly x: number;
  readonly y: number;
  /** 0 to 1, for size and choice. */
  readonly roll: number;
  /** Degrees. */
  readonly turn: number;
}

/** Spots spread over a square tile that repeats, none nearer to another than `apart`, also across the edges. */
export const scatter = (seed: string, size: number, count: number, apart: number): Spot[] => {
  const next: Random = random(seedOf(seed));
  const spots: Spot[] = [];
  const round = (d: number) => Math.min(Math.abs(d), size - Math.abs(d));
  for (let attempt = 0; attempt < count * 60 && spots.length < count; attempt++) {
    const x = next() * size;
    const y = next() * size;
    const [roll, turn] = [next(), next() * 360];
    if (spots.every((spot) => Math.hypot(round(spot.x - x), round(spot.y - y)) >= apart))
      spots.push({ x, y, roll, turn });
  }
  return spots;
};

/** A shape drawn at a spot, and again across every edge of the tile that it crosses. */
export const wrapped = (spot: Spot, reach: number, size: number, draw: (at: Point) => string): string => {
  const shifts = (v: number): number[] => [0, ...(v < reach ? [size] : []), ...(v > size - reach ? [-size] : [])];
  return shifts(spot.x)
    .flatMap((dx) => shifts(spot.y).map((dy) => draw([spot.x + dx, spot.y + dy])))
    .join('');
};

export const fill = (path: string, colour: string, opacity = 1): Mark => ({
  path,
  fill: colour,
  ...(opacity < 1 && { opacity }),
});

export const stroke = (path: string, colour: string, width: number, opacity = 1): Mark => ({
  path,
  stroke: colour,
  width,
  round: true,
  ...(opacity < 1 && { opacity }),
});

/** Petals around a point. */
export const petals = (at: Point, radius: number, count: number, turn: number): string =>
  Array.from({ length: count }, (_, i) => {
    const angle = turn + (i * 360) / count;
    const [x, y] = turned([at[0], at[1] - radius * 0.6], angle, at);
    return ellipsePath([x, y], radius * 0.3, radius * 0.46, angle);
  }).join('');

/** A leaf from a point. */
export const leaf = (at: Point, length: number, turn: number): string => {
  const p = (x: number, y: number): Point => turned([at[0] + x, at[1] + y], turn, at);
  return `${softPath([p(0, 0), p(length * 0.34, -length * 0.3), p(length * 0.2, -length * 0.8), p(0, -length)])}${softPath([p(0, -length), p(-length * 0.22, -length * 0.62), p(-length * 0.16, -length * 0.2), p(0, 0)]).replace(/^M[^Q]+/, '')}Z`;
};

/** A drop with a curled tip. */
export const drop = (at: Point, length: number, turn: number): string => {
  const p = (x: number, y: number): Point => turned([at[0] + x * length, at[1] + y * length], turn, at);
  return `${softPath([p(0.3, -0.62), p(0.02, -0.5), p(-0.36, -0.12), p(-0.4, 0.28), p(-0.1, 0.5), p(0.24, 0.42), p(0.36, 0.12), p(0.2, -0.2), p(0.02, -0.42), p(0.3, -0.62)])}Z`;
};

/** A ragged ring broken in a few places: the rosette of a leopard. */
export const rosette = (at: Point, radius: number, turn: number): string =>
  [0, 115, 235]
    .map((start) => {
      const p = (angle: number, r: number): Point => turned([at[0], at[1] - r], turn + start + angle, at);
      return polygonPath([
        p(0, radius * 0.7),
        p(18, radius * 1.02),
        p(50, radius * 1.08),
        p(80, radius * 0.92),
        p(72, radius * 0.62),
        p(40, radius * 0.66),
      ]);
    })
    .join('');
