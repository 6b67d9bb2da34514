import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';

/** German sentences of the bag room. */
export const bag = {} satisfies Translation<typeof english.bag>;
