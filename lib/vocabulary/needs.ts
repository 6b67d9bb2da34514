/** What an occasion asks for beside formality. */
export const NEEDS = [
  'swim',
  'uneven ground',
  'long walking',
  'rain',
  'snow',
  'shoulders covered',
  'knees covered',
  'head covered',
  'sun',
] as const;
export type Need = (typeof NEEDS)[number];

/** Needs that the shoes alone answer. */
export const NEEDS_ON_FOOT: ReadonlySet<Need> = new Set<Need>(['uneven ground', 'long walking', 'snow']);

/** Needs that nobody can waive: the sky does as it likes. */
export const NEEDS_OF_WEATHER: ReadonlySet<Need> = new Set<Need>(['rain', 'snow', 'sun']);

/**
 * Needs that no one look meets: nothing keeps rain off swimwear, and nobody walks far in it. Covered shoulders, knees
 * or head are another matter: there is swimwear for that. common practice, no source
 */
export const CONTRADICTORY_NEEDS: readonly (readonly [Need, Need])[] = [
  ['swim', 'rain'],
  ['swim', 'snow'],
  ['swim', 'uneven ground'],
  ['swim', 'long walking'],
];
