import { type ParseArgsConfig, parseArgs } from 'node:util';
import { writeInstead } from '../content/index.ts';

/** What a verb may use of the outside world; handed in so that tests can watch. */
export interface Surroundings {
  readonly out: (line: string) => void;
  readonly err: (line: string) => void;
  /** True when progress may be shown: a person watches a terminal. */
  readonly watched: boolean;
  /** Folder relative paths start from. */
  readonly folder: string;
}

/** 0 fine, 1 problems in the content, 2 wrong usage. */
export type ExitCode = 0 | 1 | 2;

export interface Option {
  readonly type: 'string' | 'boolean';
  /** Shown in help in place of the value: `--content <folder>`. */
  readonly value?: string;
  readonly help: string;
}

/** The options as given, by name. */
export type Given = Readonly<Record<string, string | boolean | undefined>>;

export interface Verb {
  readonly name: string;
  /** Words after the verb: `<trip>/<capsule> <piece>…`. */
  readonly words: string;
  readonly summary: string;
  readonly options: Readonly<Record<string, Option>>;
  readonly fewestWords: number;
  readonly mostWords: number;
  run(words: readonly string[], options: Given, world: Surroundings): Promise<ExitCode>;
}

/** Wrong usage; ends the program with exit 2 and one line that says what would be right. */
export class UsageError extends Error {}

export const CONTENT_OPTION: Option = { type: 'string', value: 'folder', help: 'the content folder (content)' };
export const JSON_OPTION: Option = { type: 'boolean', help: 'print JSON instead of text' };

/** Reads a whole number given to an option. */
export const wholeNumber = (value: string | boolean | undefined, name: string, fallback: number): number => {
  if (value === undefined) return fallback;
  const number = Number(value);
  if (!Number.isSafeInteger(number) || number < 0)
    throw new UsageError(`--${name} wants a whole number, not "${String(value)}"`);
  return number;
};

/** Splits a verb's words and options; every mistake is a `UsageError` with the nearest right word. */
export const readArguments = (verb: Verb, args: readonly string[]) => {
  const options: NonNullable<ParseArgsConfig['options']> = { help: { type: 'boolean', short: 'h' } };
  for (const [name, { type }] of Object.entries(verb.options)) options[name] = { type };
  const stranger = args.find((word) => word.startsWith('--') && !((word.slice(2).split('=')[0] ?? '') in options));
  if (stranger !== undefined && stranger !== '--') {
    const typed = stranger.slice(2).split('=')[0] ?? '';
    throw new UsageError(
      `there is no option --${typed}; ${writeInstead(typed, Object.keys(options)).replaceAll(/"(.+?)"/g, '--$1')}`,
    );
  }
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
    return { words: positionals, options: values as Given };
  } catch (error) {
    throw new UsageError(error instanceof Error ? error.message : String(error));
  }
};

const column = (rows: readonly (readonly [string, string])[]): string[] => {
  const width = Math.max(...rows.map(([left]) => left.length));
  return rows.map(([left, right]) => `  ${left.padEnd(width)}  ${right}`);
};

/** The help of one verb. */
export const helpOf = (verb: Verb): string =>
  [
    `wayfold ${verb.name}${verb.words === '' ? '' : ` ${verb.words}`}`,
    '',
    verb.summary,
    '',
    ...column([
      ...Object.entries(verb.options).map(([name, option]): [string, string] => [
        `--${name}${option.value === undefined ? '' : ` <${option.value}>`}`,
        option.help,
      ]),
      ['--help', 'this text'],
    ]),
  ].join('\n');

/** The help of the whole program. */
export const helpOfAll = (verbs: readonly Verb[]): string =>
  [
    'wayfold <verb> [words] [options]',
    '',
    ...column(verbs.map(({ name, words, summary }) => [`${name} ${words}`.trim(), summary])),
    '',
    'wayfold <verb> --help says more. Exit 0: fine. 1: problems in the content. 2: wrong usage.',
  ].join('\n');
