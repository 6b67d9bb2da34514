import type { Formats } from '../formats.ts';

/** English sentences of the print room. */
export const print = {
  // Each sentence takes its values and the formats: (v: { name: string }, f: Formats) => string
} satisfies Record<string, (values: never, formats: Formats) => string>;
