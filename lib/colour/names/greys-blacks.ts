import type { NameTable } from './table.ts';

/** Cloth greys and blacks as OKLCH: lightness 0 to 1, chroma, hue in degrees. Our own choice, by eye, for dyed cloth in daylight. */
export const greysBlacks: NameTable = {
  black: [0.218, 0.002, 286],
  'soft black': [0.285, 0.002, 286],
  jet: [0.178, 0.002, 286],
  ink: [0.254, 0.028, 269],
  charcoal: [0.357, 0.007, 275],
  graphite: [0.423, 0.007, 264],
  anthracite: [0.335, 0.008, 256],
  slate: [0.487, 0.022, 248],
  'steel grey': [0.585, 0.014, 244],
  'mid grey': [0.62, 0.006, 275],
  grey: [0.64, 0.005, 271],
  'light grey': [0.823, 0.003, 265],
  'pale grey': [0.888, 0.002, 248],
  'dark grey': [0.413, 0.005, 271],
  'dove grey': [0.73, 0.003, 49],
  'pearl grey': [0.849, 0.006, 85],
  ash: [0.76, 0.007, 97],
  smoke: [0.691, 0.003, 229],
  'marl grey': [0.728, 0.004, 271],
  'pewter grey': [0.609, 0.006, 107],
  storm: [0.506, 0.019, 251],
  greige: [0.756, 0.025, 76],
};
