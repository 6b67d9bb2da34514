import type { NameTable } from './table.ts';

/** Cloth teals as OKLCH: lightness 0 to 1, chroma, hue in degrees. Our own choice, by eye, for dyed cloth in daylight. */
export const teals: NameTable = {
  teal: [0.476, 0.074, 199],
  petrol: [0.393, 0.056, 218],
  peacock: [0.469, 0.08, 219],
  'duck egg': [0.855, 0.029, 180],
  aqua: [0.802, 0.079, 192],
  turquoise: [0.689, 0.108, 192],
  lagoon: [0.587, 0.093, 204],
  verdigris: [0.646, 0.07, 183],
  'sea green': [0.585, 0.083, 174],
  'deep teal': [0.382, 0.059, 202],
  mallard: [0.375, 0.053, 206],
};
