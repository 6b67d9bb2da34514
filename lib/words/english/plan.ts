import type { Formats } from '../formats.ts';

/** English sentences of the plan room. */
export const plan = {
  // Each sentence takes its values and the formats: (v: { name: string }, f: Formats) => string
} satisfies Record<string, (values: never, formats: Formats) => string>;
