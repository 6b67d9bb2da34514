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
