import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';

/** German sentences of the check room. */
export const check = {} satisfies Translation<typeof english.check>;
