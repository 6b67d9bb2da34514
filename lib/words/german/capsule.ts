import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';

/** German sentences of the capsule room. */
export const capsule = {} satisfies Translation<typeof english.capsule>;
