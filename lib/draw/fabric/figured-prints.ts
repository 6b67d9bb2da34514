import type { Point } from '../drawing.ts';
import { turned } from '../kit/geometry.ts';
import { ellipsePath, polygonPath, softPath } from '../kit/paths.ts';
import { blend, oklch, tone } from '../kit/tone.ts';
import { drop, fill, leaf, petals, rosette, scatter, stroke, wrapped } from './motifs.ts';
import { type Draw, square } from './print-colours.ts';
export const dot: Draw = ({ first, second, count }) => {
  const spots: readonly Point[] = [
    [1, 1],
    [3, 3],
  ];
  const paths = spots.map((at) => ellipsePath(at, 0.55));
  return square(
    4,
    count > 2
      ? [fill(paths[0] ?? '', first, 0.95), fill(paths[1] ?? '', second, 0.95)]
      : [fill(paths.join(''), first, 0.95)],
  );
};

export const floral: Draw = ({ ground, first, second, third }, seed) => {
  const size = 13;
  const spots = scatter(`${seed} floral`, size, 13, 2.7);
  const large = spots.slice(0, 6);
  const small = spots.slice(6);
  const green = blend(tone(ground, oklch(ground).l > 0.6 ? -0.28 : 0.2, 1), '#5f7048', 0.55);
  const all = (list: typeof spots, reach: number, draw: (at: Point, s: (typeof spots)[number]) => string): string =>
    list.map((s) => wrapped(s, reach, size, (at) => draw(at, s))).join('');
  return square(size, [
    fill(
      all(spots, 2.4, (at, s) => leaf(at, 1.7 + s.roll * 0.7, s.turn) + leaf(at, 1.5 + s.roll * 0.6, s.turn + 70)),
      green,
      0.9,
    ),
    fill(
      all(large, 1.6, (at, s) => petals(at, 1.35 + s.roll * 0.25, 6, s.turn)),
      first,
      0.96,
    ),
    stroke(
      all(large, 1.6, (at, s) => petals(at, 0.85 + s.roll * 0.2, 6, s.turn + 30)),
      tone(first, -0.14),
      0.09,
      0.7,
    ),
    fill(
      all(small, 1.1, (at, s) => petals(at, 0.85 + s.roll * 0.25, 5, s.turn)),
      second,
      0.96,
    ),
    fill(
      all(large, 0.5, (at) => ellipsePath(at, 0.34)),
      third,
    ),
    fill(
      all(small, 0.4, (at) => ellipsePath(at, 0.2)),
      first,
    ),
  ]);
};

export const animal: Draw = ({ ground, first, second }, seed) => {
  const size = 12;
  const spots = scatter(`${seed} animal`, size, 44, 1.45);
  const rings = spots.slice(0, 30);
  const flecks = spots.slice(30);
  const heart = second === first ? blend(ground, first, 0.35) : second;
  const all = (list: typeof spots, reach: number, draw: (at: Point, s: (typeof spots)[number]) => string): string =>
    list.map((s) => wrapped(s, reach, size, (at) => draw(at, s))).join('');
  return square(size, [
    fill(
      all(rings, 0.8, (at, s) => ellipsePath(at, 0.52 + s.roll * 0.14, 0.44, s.turn)),
      heart,
      0.75,
    ),
    fill(
      all(rings, 1, (at, s) => rosette(at, 0.72 + s.roll * 0.16, s.turn)),
      first,
      0.94,
    ),
    fill(
      all(flecks, 0.6, (at, s) => ellipsePath(at, 0.3 + s.roll * 0.14, 0.2, s.turn)),
      first,
      0.94,
    ),
  ]);
};

export const abstract: Draw = ({ first, second, third }, seed) => {
  const size = 15;
  const spots = scatter(`${seed} abstract`, size, 11, 3.4);
  const blob = (at: Point, r: number, turn: number): string => {
    const p = (angle: number, k: number): Point => turned([at[0], at[1] - r * k], turn + angle, at);
    return `${softPath([p(0, 1), p(50, 1.25), p(105, 0.8), p(160, 1.2), p(215, 0.9), p(265, 1.3), p(315, 0.75), p(360, 1)])}Z`;
  };
  const sweep = (at: Point, r: number, turn: number): string => {
    const p = (x: number, y: number): Point => turned([at[0] + x * r, at[1] + y * r], turn, at);
    return softPath([p(-1.5, 0.4), p(-0.6, -0.7), p(0.4, 0.5), p(1.5, -0.4)]);
  };
  const all = (list: typeof spots, draw: (at: Point, s: (typeof spots)[number]) => string): string =>
    list.map((s) => wrapped(s, 3.2, size, (at) => draw(at, s))).join('');
  return square(size, [
    fill(
      all(spots.slice(0, 4), (at, s) => blob(at, 1.6 + s.roll * 0.7, s.turn)),
      first,
      0.92,
    ),
    fill(
      all(spots.slice(4, 7), (at, s) => blob(at, 1 + s.roll * 0.6, s.turn)),
      second,
      0.92,
    ),
    stroke(
      all(spots.slice(7), (at, s) => sweep(at, 1.5, s.turn)),
      third,
      0.55,
      0.9,
    ),
    stroke(
      all(spots.slice(0, 3), (at, s) => sweep(at, 1, s.turn + 40)),
      second,
      0.22,
      0.9,
    ),
  ]);
};

export const geometric: Draw = ({ first, second, third, count }) => {
  const s = 5;
  const diamond = (x: number, y: number, r: number): string =>
    polygonPath([
      [x, y - r],
      [x + r, y],
      [x, y + r],
      [x - r, y],
    ]);
  const half = (x: number, y: number): string =>
    `${softPath([
      [x - 1.1, y],
      [x - 1.1, y - 1.5],
      [x + 1.1, y - 1.5],
      [x + 1.1, y],
    ])}Z`;
  return square(s, [
    fill(diamond(s / 2, s / 2, 2.1), first, 0.94),
    fill(
      diamond(0, 0, 1.3) + diamond(s, 0, 1.3) + diamond(0, s, 1.3) + diamond(s, s, 1.3),
      count > 2 ? second : first,
      0.94,
    ),
    fill(half(s / 2, s / 2 + 0.2), count > 3 ? third : count > 2 ? second : blend(first, '#ffffff', 0.4), 0.9),
  ]);
};

export const paisley: Draw = ({ ground, first, second, third }, seed) => {
  const size = 13;
  const spots = scatter(`${seed} paisley`, size, 9, 3.5);
  const dots = scatter(`${seed} dots`, size, 34, 1.3);
  const all = (reach: number, draw: (at: Point, s: (typeof spots)[number]) => string): string =>
    spots.map((s) => wrapped(s, reach, size, (at) => draw(at, s))).join('');
  return square(size, [
    fill(dots.map((s) => wrapped(s, 0.2, size, (at) => ellipsePath(at, 0.14))).join(''), second, 0.9),
    fill(
      all(2.2, (at, s) => drop(at, 3.1, s.turn)),
      first,
      0.95,
    ),
    stroke(
      all(2.4, (at, s) => drop(at, 3.5, s.turn)),
      second,
      0.13,
      0.9,
    ),
    fill(
      all(1.6, (at, s) => drop(at, 1.9, s.turn)),
      ground,
    ),
    fill(
      all(1.2, (at, s) => drop(at, 1.2, s.turn)),
      second,
      0.95,
    ),
    fill(
      all(0.8, (at) => ellipsePath(at, 0.22)),
      third,
    ),
  ]);
};
