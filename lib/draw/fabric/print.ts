import type { PatternScale, PatternType } from '../../vocabulary/index.ts';
import type { Detail, Mark, Tile } from '../drawing.ts';
import { ellipsePath, rectanglePath } from '../kit/paths.ts';
import { tone } from '../kit/tone.ts';

interface Print {
  readonly ground: string;
  readonly first: string;
  readonly second: string;
}
type Draw = (print: Print) => Omit<Tile, 'name'>;

const fill = (path: string, colour: string, opacity = 1): Mark => ({
  path,
  fill: colour,
  ...(opacity < 1 && { opacity }),
});

const stripe: Draw = ({ first }) => ({
  width: 6.6,
  height: 3.3,
  marks: [fill(rectanglePath(0, 1, 6.6, 1.25), first, 0.93)],
});

const dot: Draw = ({ first }) => ({
  width: 4,
  height: 4,
  marks: [fill(ellipsePath([1, 1], 0.55) + ellipsePath([3, 3], 0.55), first, 0.93)],
});

const gingham: Draw = ({ first }) => ({
  width: 2.4,
  height: 2.4,
  marks: [fill(rectanglePath(0, 0, 1.2, 2.4), first, 0.5), fill(rectanglePath(0, 0, 2.4, 1.2), first, 0.5)],
});

export const PRINTS: Partial<Record<PatternType, Draw>> = { stripe, dot, gingham, check: gingham };

const SCALE: Readonly<Record<PatternScale, number>> = { small: 0.6, medium: 1, large: 1.7 };

/** The print of a cloth as a tile in the piece's own colours, or nothing for a plain one. */
export const print = (
  pattern: { readonly type: PatternType; readonly scale: PatternScale },
  colours: readonly string[],
  detail: Detail,
): Tile | undefined => {
  const draws = PRINTS[pattern.type];
  const ground = colours[0];
  if (draws === undefined || ground === undefined) return undefined;
  const first = colours[1] ?? tone(ground, -0.2);
  const tile = draws({ ground, first, second: colours[2] ?? first });
  const scale = SCALE[pattern.scale] * (detail === 'small' ? 1.8 : 1);
  return { name: 'print', ...tile, transform: [scale, 0, 0, scale, 0, 0] };
};
