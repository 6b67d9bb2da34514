import type { Detail, Point } from '../drawing.ts';
import { ellipsePath } from './paths.ts';
import { group, type Painted } from './pens.ts';
import { tone } from './tone.ts';

/** A sewn button with its own small shade; in small drawings only a disc. */
export const buttonMark = (centre: Point, radius: number, colour: string, shade: string, detail: Detail): Painted => {
  const [x, y] = centre;
  const disc = ellipsePath(centre, radius);
  if (detail === 'small') return { path: ellipsePath(centre, radius * 1.15), fill: colour };
  const dark = tone(colour, -0.16);
  const holes = [
    [-1, -1],
    [1, -1],
    [-1, 1],
    [1, 1],
  ] as const;
  return group([
    { path: ellipsePath([x + 0.2 * radius, y + 0.3 * radius], radius), fill: shade, opacity: 0.5 },
    { path: disc, fill: colour, stroke: dark, width: 0.12 },
    { path: ellipsePath(centre, radius * 0.68), stroke: tone(colour, 0.12), width: 0.14, opacity: 0.8 },
    {
      path: holes.map(([a, b]) => ellipsePath([x + a * radius * 0.24, y + b * radius * 0.24], radius * 0.13)).join(''),
      fill: dark,
    },
  ]);
};
