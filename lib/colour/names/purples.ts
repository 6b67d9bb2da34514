import type { NameTable } from './table.ts';

/** Cloth purples as OKLCH: lightness 0 to 1, chroma, hue in degrees. Our own choice, by eye, for dyed cloth in daylight. */
export const purples: NameTable = {
  purple: [0.442, 0.128, 311],
  aubergine: [0.295, 0.053, 333],
  plum: [0.37, 0.09, 341],
  mulberry: [0.398, 0.109, 347],
  violet: [0.531, 0.141, 300],
  lavender: [0.77, 0.063, 298],
  lilac: [0.778, 0.06, 314],
  mauve: [0.67, 0.051, 333],
  heather: [0.631, 0.043, 314],
  amethyst: [0.568, 0.118, 308],
  grape: [0.382, 0.102, 312],
  damson: [0.313, 0.067, 334],
  fig: [0.38, 0.048, 341],
  thistle: [0.79, 0.037, 322],
  wisteria: [0.709, 0.082, 296],
  orchid: [0.659, 0.125, 331],
  iris: [0.508, 0.13, 285],
};
