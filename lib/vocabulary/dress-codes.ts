/** Dress codes from least to most formal; a piece covers an interval, an occasion asks for one. */
export const DRESS_CODES = ['casual', 'smart casual', 'business', 'cocktail', 'formal'] as const;
export type DressCode = (typeof DRESS_CODES)[number];

/** Index on the scale: casual 0, formal 4. */
export const dressIndex = (code: DressCode): number => DRESS_CODES.indexOf(code);
