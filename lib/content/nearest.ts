import { distance } from 'fastest-levenshtein';
import { FABRIC_WORDS, KIND_IDS, OTHER_WORDS } from '../vocabulary/index.ts';

/** Share of a word's letters that may differ before another word stops being a likely slip of the pen. */
const LARGEST_SLIP = 0.4;

/** A word with its hyphens and spaces left out: `tshirt`. */
const joined = (word: string): string => word.replaceAll(/[\s_-]+/g, '');
const letters = (word: string): string => [...word].toSorted().join('');

/** Letters swapped are one slip of the pen, not two. */
const slips = (typed: string, word: string): number =>
  letters(typed) === letters(word) ? Math.min(1, distance(typed, word)) : distance(typed, word);

/** The valid words nearest to a misspelt one, best first; empty when none is near. */
export const nearestWords = (word: string, valid: readonly string[], most = 3): readonly string[] => {
  const typed = word.trim().toLowerCase();
  const near = (candidate: string): number => {
    const plain = candidate.toLowerCase();
    if (joined(plain) === joined(typed)) return 0;
    if (typed.length > 2 && (plain.startsWith(typed) || typed.startsWith(plain) || plain.split(' ').includes(typed)))
      return 0.5;
    return slips(typed, plain);
  };
  const same = valid.filter((candidate) => near(candidate) === 0);
  if (same.length > 0) return same.slice(0, most);
  return valid
    .map((candidate) => ({ candidate, away: near(candidate) }))
    .filter(({ candidate, away }) => away <= Math.max(1, LARGEST_SLIP * Math.max(candidate.length, typed.length)))
    .sort((a, b) => a.away - b.away || (a.candidate < b.candidate ? -1 : 1))
    .slice(0, most)
    .map(({ candidate }) => candidate);
};

const quoted = (words: readonly string[]): string =>
  new Intl.ListFormat('en-GB', { type: 'disjunction' }).format(words.map((word) => `"${word}"`));

/** What to write instead of an unknown kind: by the everyday word for it, or by its letters. */
export const kindInstead = (word: string): string => {
  const typed = word.trim().toLowerCase();
  const meant = OTHER_WORDS[typed] ?? OTHER_WORDS[`${typed}s`] ?? OTHER_WORDS[typed.replace(/s$/, '')];
  return meant === undefined
    ? writeInstead(word, KIND_IDS, '"wayfold words kinds" lists them all')
    : `write ${quoted(meant)}`;
};

/** What to write instead of an unknown cloth. */
export const fabricInstead = (word: string): string =>
  writeInstead(word, FABRIC_WORDS, 'name the nearest fibre or cloth; "wayfold words fabrics" lists them all');

/** As many words as a line can name. */
const FEW = 20;

/**
 * What to write instead of a word that is not valid: the nearest words, or all of them when they are few and none is a mere
 * slip of the pen away.
 */
export const writeInstead = (
  word: string,
  valid: readonly string[],
  see = '"wayfold words" lists them all',
): string => {
  const near = nearestWords(word, valid);
  const [best] = near;
  if (best === undefined) return valid.length <= FEW ? `write ${quoted(valid)}` : see;
  const typed = word.trim().toLowerCase();
  const isSlip = joined(best).includes(joined(typed)) || slips(typed, best.toLowerCase()) <= 1;
  const others = valid.filter((each) => !near.includes(each));
  return isSlip || valid.length > FEW || others.length === 0
    ? `write ${quoted(near)}`
    : `write ${quoted(near)}; there is also ${quoted(others)}`;
};
