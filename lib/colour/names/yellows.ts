import type { NameTable } from './table.ts';

/** Cloth yellows as OKLCH: lightness 0 to 1, chroma, hue in degrees. Our own choice, by eye, for dyed cloth in daylight. */
export const yellows: NameTable = {
  yellow: [0.84, 0.16, 95],
  mustard: [0.689, 0.128, 82],
  ochre: [0.668, 0.117, 77],
  saffron: [0.765, 0.15, 77],
  lemon: [0.899, 0.14, 100],
  butter: [0.911, 0.086, 95],
  primrose: [0.909, 0.092, 100],
  straw: [0.831, 0.082, 90],
  maize: [0.836, 0.13, 92],
  sunflower: [0.801, 0.158, 84],
  turmeric: [0.716, 0.141, 79],
  'old gold': [0.66, 0.107, 86],
  citron: [0.802, 0.147, 104],
  chartreuse: [0.779, 0.159, 115],
  buttermilk: [0.933, 0.05, 93],
  canary: [0.899, 0.161, 101],
};
