import type { Formats } from '../formats.ts';

/** English sentences of the site room. */
export const site = {
  // Each sentence takes its values and the formats: (v: { name: string }, f: Formats) => string
} satisfies Record<string, (values: never, formats: Formats) => string>;
