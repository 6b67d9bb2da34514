import { KINDS, type KindId } from '../../vocabulary/kinds.ts';

/** A piece nobody has yet, as it would be asked for in a shop. An empty pattern is plain, an empty cut the usual one. */
export interface Thing {
  readonly colour: string;
  readonly pattern: string;
  readonly cut: string;
  readonly kind: string;
}

const PATTERNS: Readonly<Record<string, string>> = {
  stripe: 'striped',
  check: 'checked',
  dot: 'dotted',
  floral: 'flowered',
  gingham: 'gingham',
};

/** "charcoal striped slim t-shirt". */
export const thingWords = ({ colour, pattern, cut, kind }: Thing): string =>
  [colour, PATTERNS[pattern] ?? pattern, cut, kind].filter((word) => word !== '').join(' ');

/** "a charcoal cardigan", "an ecru shirt", "navy jeans", "tan sandals". */
export const aThing = (thing: Thing): string => {
  const words = thingWords(thing);
  const plural = KINDS[thing.kind as KindId]?.plural;
  if (plural === thing.kind || plural === `pairs of ${thing.kind}`) return words;
  return `${/^[aeiou]/i.test(words) ? 'an' : 'a'} ${words}`;
};
