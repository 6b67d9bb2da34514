import type { Finding } from '../model/index.ts';
import { phrase } from '../words/index.ts';
import type { Trouble } from './set/setter.ts';

const SHOWN = 60;
const short = (text: string): string => (text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text);

/** Without the sentences that only quote another text that is in the list itself. */
const shortest = (troubles: readonly Trouble[]): readonly Trouble[] =>
  troubles.filter(({ text }) => !troubles.some((other) => other.text !== text && text.includes(other.text)));

/** What the setter could not set, as findings; `refused` when the document must not be handed out. */
export const findTrouble = (troubles: readonly Trouble[]): { findings: readonly Finding[]; refused: boolean } => {
  const findings = shortest(troubles).map(({ text, characters, refused }): Finding => {
    if (refused !== undefined) {
      return {
        level: 'error',
        rule: 'print-script',
        message: phrase('print', 'script refused', { text: short(text), script: refused }),
        mend: phrase('print', 'script mend', {}),
        about: [],
      };
    }
    return {
      level: 'warning',
      rule: 'print-glyph',
      message: phrase('print', 'glyph missing', { text: short(text), characters: [...characters] }),
      mend: phrase('print', 'glyph mend', {}),
      about: [],
    };
  });
  return { findings, refused: troubles.some(({ refused }) => refused !== undefined) };
};
