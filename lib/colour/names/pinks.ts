import type { NameTable } from './table.ts';

/** Cloth pinks as OKLCH: lightness 0 to 1, chroma, hue in degrees. Our own choice, by eye, for dyed cloth in daylight. */
export const pinks: NameTable = {
  pink: [0.768, 0.095, 3],
  blush: [0.883, 0.032, 40],
  'blush pink': [0.855, 0.042, 31],
  rose: [0.683, 0.1, 13],
  'dusty rose': [0.702, 0.062, 20],
  'dusty pink': [0.755, 0.052, 21],
  'old rose': [0.641, 0.074, 17],
  'shell pink': [0.898, 0.035, 38],
  'ballet pink': [0.897, 0.032, 15],
  'hot pink': [0.625, 0.205, 357],
  fuchsia: [0.554, 0.206, 352],
  magenta: [0.51, 0.189, 353],
  cerise: [0.553, 0.198, 7],
  'candy pink': [0.759, 0.122, 357],
  bubblegum: [0.801, 0.101, 354],
  'salmon pink': [0.775, 0.1, 27],
  'powder pink': [0.889, 0.03, 18],
  nude: [0.81, 0.054, 59],
  rosewood: [0.438, 0.09, 18],
  watermelon: [0.647, 0.177, 15],
  flamingo: [0.733, 0.135, 17],
};
