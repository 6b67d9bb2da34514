import type { Brief, Capsule, Finding, Piece, Studio } from '../model/index.ts';
import { phrase } from '../words/index.ts';

/** What is known of the fonts that set cards and paper. */
export interface Lettering {
  /** Characters of a text that none of them has, each once. */
  uncovered(text: string): readonly string[];
  /** The text as it is set. */
  settable(text: string): string;
}

/** A name as a file has it, and the piece or occasion it is of. */
interface Written {
  readonly text: string | undefined;
  readonly file: string;
  readonly line?: number | undefined;
  readonly about?: string;
}

const STUDIO_FILE = 'studio.md';
/** Characters told of one name. */
const TOLD = 6;

/** The names that cards and paper show, each where it is written. */
const namesIn = (
  pieces: readonly Piece[],
  brief: Brief,
  capsule: Capsule,
  studio: Pick<Studio, 'name' | 'line'>,
): readonly Written[] => [
  ...pieces.map(({ id, name, file, lines }) => ({ text: name, file, line: lines?.name, about: id })),
  ...brief.occasions.map(({ id, what, line }) => ({ text: what, file: brief.file, line, about: id })),
  ...[brief.title, ...brief.travellers.map(({ name }) => name), ...brief.places.map(({ name }) => name)].map(
    (text) => ({ text, file: brief.file }),
  ),
  { text: capsule.title, file: capsule.file },
  ...capsule.favourites.map(({ title }) => ({ text: title, file: capsule.file })),
  ...capsule.fixed.map(({ title, line }) => ({ text: title, file: capsule.file, line })),
  ...[studio.name, studio.line].map((text) => ({ text, file: STUDIO_FILE })),
];

/** Names with letters that the fonts of cards and paper lack: one finding a name, with how they show it. */
export const findingsOfLetters = (
  { pieces, brief, capsule, studio }: { pieces: readonly Piece[]; brief: Brief; capsule: Capsule; studio: Studio },
  { uncovered, settable }: Lettering,
): readonly Finding[] =>
  namesIn(pieces, brief, capsule, studio).flatMap(({ text = '', file, line, about }): Finding[] => {
    const characters = uncovered(text);
    if (characters.length === 0) return [];
    return [
      {
        level: 'warning',
        rule: 'letters',
        message: phrase('guide', 'letters lacking', {
          text,
          shown: settable(text),
          characters: characters.slice(0, TOLD),
          more: Math.max(0, characters.length - TOLD),
        }),
        mend: phrase('guide', 'letters lacking mend', {}),
        file,
        ...(line === undefined ? {} : { line }),
        about: about === undefined ? [] : [about],
      },
    ];
  });
