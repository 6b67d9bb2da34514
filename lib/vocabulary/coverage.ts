/** Parts of the body a piece covers when worn as meant; used for covers asked for and for sun. */
export const COVERAGE = [
  'head',
  'face shaded',
  'neck',
  'shoulders',
  'upper arms',
  'forearms',
  'hands',
  'torso',
  'thighs',
  'knees',
  'calves',
  'feet',
] as const;
export type Coverage = (typeof COVERAGE)[number];
