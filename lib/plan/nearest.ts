import type { UnservedOccasion } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';

/** How near the packed pieces come to an occasion without a look, and what is lacking; the same words wherever it is told. */
export const nearestInWords = (
  { nearest, lacks }: Pick<UnservedOccasion, 'nearest' | 'lacks'>,
  nameOf: (piece: string) => string,
): Phrase =>
  nearest === undefined
    ? phrase('plan', 'what is lacking', { lacks })
    : phrase('plan', 'nearest lacks', { look: nearest.worn.map(({ piece }) => nameOf(piece)), lacks });
