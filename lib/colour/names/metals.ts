import type { NameTable } from './table.ts';

/** Metals as the flat colour of a brushed surface, OKLCH. They go with everything. */
export const metals: NameTable = {
  gold: [0.724, 0.112, 85],
  silver: [0.791, 0.005, 258],
  'rose gold': [0.74, 0.064, 41],
  copper: [0.609, 0.099, 48],
  brass: [0.678, 0.096, 85],
  bronze: [0.547, 0.07, 72],
  pewter: [0.648, 0.002, 197],
  gunmetal: [0.444, 0.01, 254],
  platinum: [0.866, 0.004, 106],
  'antique gold': [0.633, 0.097, 85],
};

/** Names that mean metal: gold, silver, gunmetal… */
export const METAL_NAMES: ReadonlySet<string> = new Set(Object.keys(metals));
