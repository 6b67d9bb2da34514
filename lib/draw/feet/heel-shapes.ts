import type { ShoeArtist } from './artist.ts';
import type { SoleStyle } from './soles.ts';
import type { HeelShape } from './solids.ts';
import { leatherSole } from './town.ts';

/** Heels by shape: how they narrow from the seat down. */
const HEELS = {
  stiletto: {
    breast: 0.15,
    taper: [
      [0, 0.2],
      [0.45, 0.23],
      [0.72, 0.42],
      [0.88, 0.74],
      [1, 1],
    ],
    over: 0.06,
  },
  kitten: {
    breast: 0.16,
    taper: [
      [0, 0.24],
      [0.35, 0.26],
      [0.7, 0.5],
      [0.88, 0.78],
      [1, 1],
    ],
    over: 0.07,
  },
  cone: {
    breast: 0.2,
    taper: [
      [0, 0.42],
      [1, 1],
    ],
    over: 0.09,
  },
  block: {
    breast: 0.22,
    taper: [
      [0, 0.84],
      [0.5, 0.86],
      [1, 1],
    ],
    over: 0.1,
  },
  slim: {
    breast: 0.17,
    taper: [
      [0, 0.5],
      [0.5, 0.54],
      [0.8, 0.72],
      [1, 1],
    ],
    over: 0.085,
  },
} as const satisfies Record<string, HeelShape>;
type HeelName = keyof typeof HEELS;

/** Sole and heel of a light shoe; the heel is covered in the upper's own leather. */
export const coveredHeel = (artist: ShoeArtist, heel: HeelName): SoleStyle => ({
  kind: 'plain',
  colour: leatherSole(artist.cloth.ground),
  welt: 0.03,
  heel: { ...HEELS[heel], colour: artist.cloth.ground },
});
