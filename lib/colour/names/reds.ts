import type { NameTable } from './table.ts';

/** Cloth reds as OKLCH: lightness 0 to 1, chroma, hue in degrees. Our own choice, by eye, for dyed cloth in daylight. */
export const reds: NameTable = {
  red: [0.52, 0.187, 23],
  scarlet: [0.556, 0.201, 27],
  crimson: [0.472, 0.174, 20],
  cherry: [0.457, 0.164, 18],
  ruby: [0.423, 0.157, 12],
  poppy: [0.594, 0.202, 30],
  'tomato red': [0.583, 0.187, 30],
  brick: [0.499, 0.116, 32],
  'brick red': [0.468, 0.124, 29],
  cardinal: [0.469, 0.166, 22],
  'pillar-box red': [0.537, 0.2, 24],
  'lacquer red': [0.501, 0.178, 29],
  cranberry: [0.425, 0.144, 11],
  raspberry: [0.489, 0.172, 4],
  berry: [0.401, 0.131, 358],
  wine: [0.339, 0.094, 8],
  burgundy: [0.351, 0.1, 11],
  oxblood: [0.296, 0.079, 20],
  maroon: [0.335, 0.089, 17],
  claret: [0.358, 0.114, 5],
  bordeaux: [0.321, 0.087, 8],
  garnet: [0.369, 0.117, 14],
  madder: [0.51, 0.134, 24],
  beetroot: [0.371, 0.114, 354],
};
