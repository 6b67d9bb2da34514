import type { NameTable } from './table.ts';

/** Cloth oranges and rusts as OKLCH: lightness 0 to 1, chroma, hue in degrees. Our own choice, by eye, for dyed cloth in daylight. */
export const orangesRusts: NameTable = {
  rust: [0.518, 0.129, 39],
  terracotta: [0.587, 0.124, 38],
  'burnt orange': [0.576, 0.15, 43],
  orange: [0.669, 0.165, 51],
  tangerine: [0.708, 0.16, 53],
  pumpkin: [0.634, 0.155, 50],
  apricot: [0.808, 0.092, 53],
  peach: [0.852, 0.072, 53],
  coral: [0.696, 0.151, 29],
  salmon: [0.752, 0.11, 32],
  melon: [0.784, 0.11, 46],
  'copper brown': [0.511, 0.1, 48],
  sienna: [0.523, 0.107, 43],
  paprika: [0.533, 0.156, 33],
  clay: [0.628, 0.078, 47],
  ginger: [0.579, 0.122, 55],
  marmalade: [0.665, 0.147, 59],
  persimmon: [0.619, 0.174, 38],
  amber: [0.689, 0.14, 71],
  cayenne: [0.453, 0.125, 32],
};
