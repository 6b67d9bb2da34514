import { colorsNamed } from 'culori';
import { distance } from 'fastest-levenshtein';
import { plainName } from './cloth.ts';
import { SHADE_WORDS } from './modifiers.ts';
import { COLOUR_NAMES } from './names/index.ts';

const MOST_SUGGESTIONS = 3;

/** Letters that may be wrong: one in a short word, a third of a long one. common practice, no source */
const allowedDistance = (word: string): number => Math.max(1, Math.floor(word.length / 3));

const CANDIDATES: readonly string[] = [...new Set([...COLOUR_NAMES, ...Object.keys(colorsNamed)])];

/** Letters at the start that agree: people misspell the end of a word more than its start. */
const sharedStart = (a: string, b: string): number => {
  let count = 0;
  while (count < a.length && a[count] === b[count]) count += 1;
  return count;
};

const closest = (wrong: string): string[] =>
  CANDIDATES.map((name, order) => ({
    name,
    order,
    away: distance(wrong, plainName(name)),
    begins: sharedStart(wrong, name),
  }))
    .filter(({ away }) => away <= allowedDistance(wrong))
    .sort((a, b) => a.away - b.away || b.begins - a.begins || a.order - b.order)
    .map(({ name }) => name);

/**
 * Up to three colour names near a misspelt one, nearest first; empty when nothing is near. A shade word in front is
 * kept: `dark oxblod` gives `dark oxblood`.
 */
export const nearestColourNames = (text: string): string[] => {
  const wrong = plainName(text).slice(0, 60);
  if (wrong === '') return [];
  const [shade = '', ...rest] = wrong.split(' ');
  const whole = closest(wrong);
  const afterShade =
    SHADE_WORDS.includes(shade) && rest.length > 0 ? closest(rest.join(' ')).map((name) => `${shade} ${name}`) : [];
  return [...new Set([...whole, ...afterShade])].slice(0, MOST_SUGGESTIONS);
};
