/** How somebody feels where most people are comfortable. */
export const FEELS = ['cold', 'warm'] as const;
export type Feels = (typeof FEELS)[number];
