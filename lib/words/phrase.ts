import type { English } from './english/index.ts';
import type { Formats } from './formats.ts';

export type PhraseValue = string | number | readonly string[];

/** A sentence as data: which one, and what goes into it. The core makes phrases; the edges say them in a language. */
export interface Phrase {
  readonly room: string;
  readonly key: string;
  readonly values: Readonly<Record<string, PhraseValue>>;
}

/** One sentence of a language: values and formats in, text out. */
// biome-ignore lint/suspicious/noExplicitAny: a function that takes any record of values is the widest there is
export type Sentence = (values: any, formats: Formats) => string;
export type Room = Readonly<Record<string, Sentence>>;
export type Language = Readonly<Record<keyof English, Room>>;

type Values<S> = S extends (values: infer V, ...rest: never[]) => string ? V : never;

/** Makes a phrase; room, key and values are checked against the English sentences. */
export const phrase = <R extends keyof English & string, K extends keyof English[R] & string>(
  room: R,
  key: K,
  values: Values<English[R][K]> & Readonly<Record<string, PhraseValue>>,
): Phrase => ({ room, key, values });

/** Says a phrase in a language. Throws on a phrase the language does not have: a bug, never content. */
export const say = (language: Partial<Language>, formats: Formats, said: Phrase): string => {
  const sentence = language[said.room as keyof English]?.[said.key];
  if (sentence === undefined) throw new Error(`no sentence ${said.room}/${said.key}`);
  return sentence(said.values, formats);
};
