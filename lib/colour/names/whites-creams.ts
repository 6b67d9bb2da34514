import type { NameTable } from './table.ts';

/** Cloth whites and creams as OKLCH: lightness 0 to 1, chroma, hue in degrees. Our own choice, by eye, for dyed cloth in daylight. */
export const whitesCreams: NameTable = {
  white: [0.993, 0.003, 106],
  'optic white': [1, 0, 0],
  'off-white': [0.962, 0.013, 87],
  ivory: [0.954, 0.023, 93],
  cream: [0.933, 0.034, 88],
  ecru: [0.89, 0.034, 88],
  chalk: [0.943, 0.011, 90],
  milk: [0.959, 0.01, 87],
  pearl: [0.923, 0.016, 86],
  bone: [0.895, 0.024, 88],
  oyster: [0.868, 0.021, 89],
  champagne: [0.891, 0.044, 82],
  vanilla: [0.913, 0.059, 92],
  alabaster: [0.927, 0.014, 78],
};
