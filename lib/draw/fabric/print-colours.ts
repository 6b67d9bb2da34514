import type { Mark, Tile } from '../drawing.ts';
import { blend, oklch, tone } from '../kit/tone.ts';

export interface PrintColours {
  readonly ground: string;
  readonly first: string;
  readonly second: string;
  readonly third: string;
  /** How many colours the piece itself has, the ground counted. */
  readonly count: number;
}

export type Draw = (colours: PrintColours, seed: string) => Omit<Tile, 'name'>;

export const square = (size: number, marks: readonly Mark[]): Omit<Tile, 'name'> => ({
  width: size,
  height: size,
  marks,
});

/** Colours of a print from the piece's own; what is missing is a tone of what is there. */
export const printColours = (colours: readonly string[]): PrintColours | undefined => {
  const ground = colours[0];
  if (ground === undefined) return undefined;
  const first = colours[1] ?? tone(ground, oklch(ground).l > 0.5 ? -0.24 : 0.26, 0.8);
  const second = colours[2] ?? blend(first, ground, 0.42);
  return {
    ground,
    first,
    second,
    third:
      colours[3] ??
      (colours[2] === undefined ? tone(first, oklch(first).l > 0.5 ? -0.16 : 0.2) : blend(second, ground, 0.3)),
    count: colours.length,
  };
};
