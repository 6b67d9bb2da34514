import type { English } from './english/index.ts';
import type { Formats } from './formats.ts';

export type PhraseValue = string | number | readonly string[] | Phrase | readonly Phrase[];

/**
 * A sentence as data: which one, and what goes into it, other phrases among them. The core makes phrases; the edges say
 * them in a language.
 */
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
/** Where a sentence takes text, a phrase will do: it is said first. */
type OrPhrases<V> = {
  readonly [Key in keyof V]: V[Key] extends string
    ? V[Key] | Phrase
    : V[Key] extends readonly string[]
      ? V[Key] | readonly Phrase[]
      : V[Key];
};

/** Makes a phrase; room, key and values are checked against the English sentences. */
export const phrase = <R extends keyof English & string, K extends keyof English[R] & string>(
  room: R,
  key: K,
  values: OrPhrases<Values<English[R][K]>> & Readonly<Record<string, PhraseValue>>,
): Phrase => ({ room, key, values });

const isPhrase = (value: PhraseValue): value is Phrase => typeof value === 'object' && 'room' in value;

/** Says a phrase in a language. Throws on a phrase the language does not have: a bug, never content. */
export const say = (language: Partial<Language>, formats: Formats, said: Phrase): string => {
  const sentence = language[said.room as keyof English]?.[said.key];
  if (sentence === undefined) throw new Error(`no sentence ${said.room}/${said.key}`);
  const saidOf = (value: PhraseValue): PhraseValue => {
    if (isPhrase(value)) return say(language, formats, value);
    return Array.isArray(value)
      ? value.map((item: string | Phrase) => (isPhrase(item) ? saidOf(item) : item) as string)
      : value;
  };
  const values = Object.entries(said.values).map(([name, value]) => [name, saidOf(value)]);
  return sentence(Object.fromEntries(values), formats);
};
