import type { Finding } from '../model/index.ts';
import { phrase } from '../words/index.ts';
import type { Trouble } from './set/setter.ts';

/** Letters of a text that a finding quotes; whole characters, so that none is cut in two. */
const SHOWN = 60;
const short = (text: string): string => {
  const letters = [...text];
  return letters.length > SHOWN ? `${letters.slice(0, SHOWN).join('')}…` : text;
};

/** Without the sentences that only quote another text that is in the list itself. */
const shortest = (troubles: readonly Trouble[]): readonly Trouble[] =>
  troubles.filter(({ text }) => !troubles.some((other) => other.text !== text && text.includes(other.text)));

/** What the setter had to leave out, as findings, one a text. */
export const findTrouble = (troubles: readonly Trouble[]): readonly Finding[] =>
  shortest(troubles).map(
    ({ text, characters }): Finding => ({
      level: 'warning',
      rule: 'print-glyph',
      message: phrase('print', 'glyph missing', { text: short(text), characters: [...characters] }),
      mend: phrase('print', 'glyph mend', {}),
      about: [],
    }),
  );
