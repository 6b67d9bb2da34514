import type { Point } from '../drawing.ts';
import { polygonPath, rectanglePath } from '../kit/paths.ts';
import { blend, tone } from '../kit/tone.ts';
import { fill, stroke } from './motifs.ts';
import { type Draw, type PrintColours, square } from './print-colours.ts';
export interface Band {
  readonly at: number;
  readonly width: number;
  readonly colour: string;
}

/** Bands of one repeat of a stripe, centimetres: two colours make an even stripe, three and more a grouped one. */
export const stripeBands = ({
  first,
  second,
  third,
  count,
}: PrintColours): { readonly repeat: number; readonly bands: readonly Band[] } => {
  if (count <= 2) return { repeat: 3.3, bands: [{ at: 1, width: 1.25, colour: first }] };
  if (count === 3)
    return {
      repeat: 5.6,
      bands: [
        { at: 0.8, width: 1.8, colour: first },
        { at: 3.5, width: 0.7, colour: second },
      ],
    };
  return {
    repeat: 8,
    bands: [
      { at: 0.6, width: 1.9, colour: first },
      { at: 3.2, width: 0.6, colour: second },
      { at: 4.6, width: 1.3, colour: third },
      { at: 6.6, width: 0.6, colour: second },
    ],
  };
};

export const stripe: Draw = (colours) => {
  const { repeat, bands } = stripeBands(colours);
  return {
    width: 6,
    height: repeat,
    marks: bands.map(({ at, width, colour }) => fill(rectanglePath(-1, at, 8, width), colour, 0.93)),
  };
};

export const pinstripe: Draw = ({ first }) => ({
  width: 2.4,
  height: 6,
  marks: [fill(rectanglePath(1.1, -1, 0.17, 8), first, 0.62)],
});

export const gingham: Draw = ({ first }) =>
  square(2.4, [
    fill(rectanglePath(0.6, -1, 1.2, 4.4), first, 0.52),
    fill(rectanglePath(-1, 0.6, 4.4, 1.2), first, 0.52),
  ]);

export const check: Draw = ({ first, second, count }) =>
  square(6, [
    fill(rectanglePath(1, -1, 0.42, 8) + rectanglePath(-1, 1, 8, 0.42), first, 0.72),
    fill(
      rectanglePath(4.1, -1, 0.24, 8) + rectanglePath(-1, 4.1, 8, 0.24),
      count > 2 ? second : first,
      count > 2 ? 0.7 : 0.34,
    ),
  ]);

export const tartan: Draw = ({ ground, first, second, third, count }) => {
  const size = 9.6;
  const ink = tone(ground, -0.14, 0.9);
  const bands: readonly (readonly [number, number, string, number])[] = [
    [0, 2.4, first, 0.55],
    [3.1, 0.32, second, 0.8],
    [4.3, 2.6, ink, 0.4],
    [5.45, 0.3, second, 0.6],
    [7.8, 0.42, count > 3 ? third : blend(second, '#efe6d2', 0.5), 0.6],
  ];
  let twill = '';
  for (let k = -size; k < size; k += 0.8)
    twill += polygonPath(
      [
        [-0.4, k - 0.4],
        [size + 0.4, k + size + 0.4],
      ],
      false,
    );
  return square(size, [
    ...bands.map(([x, width, colour, opacity]) => fill(rectanglePath(x + 0.4, -1, width, size + 2), colour, opacity)),
    ...bands.map(([y, width, colour, opacity]) =>
      fill(rectanglePath(-1, y + 0.4, size + 2, width), colour, opacity * 0.8),
    ),
    stroke(twill, ground, 0.12, 0.36),
  ]);
};

export const houndstooth: Draw = ({ first }) => {
  const u = 3.2 / 24;
  const at = (...points: readonly number[]): string =>
    polygonPath(
      Array.from(
        { length: points.length / 2 },
        (_, i): Point => [(points[i * 2] ?? 0) * u, (points[i * 2 + 1] ?? 0) * u],
      ),
    );
  return square(3.2, [
    fill(
      at(0, 18, 6, 18, 12, 12, 12, 18, 18, 18, 12, 24, 0, 24) +
        at(24, 18, 24, 24, 18, 24) +
        at(24, 0, 18, 6, 12, 6, 18, 0) +
        at(12, 0, 12, 6, 0, 18, 0, 12, 6, 6, 0, 6, 0, 0),
      first,
      0.94,
    ),
  ]);
};

export const herringbone: Draw = ({ ground, first }) => {
  const wide = 1.7;
  const pitch = 0.95;
  let path = '';
  for (let c = 0; c < 2; c++)
    for (let k = -3; k < 11; k++) {
      const rising = c % 2 === 0;
      path += polygonPath(
        [
          [c * wide, k * pitch + (rising ? wide : 0)],
          [c * wide + wide, k * pitch + (rising ? 0 : wide)],
        ],
        false,
      );
    }
  return {
    width: wide * 2,
    height: pitch * 8,
    marks: [
      { path, stroke: first, width: 0.36, opacity: 0.55 },
      fill(
        rectanglePath(0.1, -1, 0.09, pitch * 8 + 2) + rectanglePath(wide + 0.1, -1, 0.09, pitch * 8 + 2),
        tone(ground, -0.2),
        0.3,
      ),
    ],
  };
};
