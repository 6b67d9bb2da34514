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
