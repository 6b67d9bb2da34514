export { type English, english } from './english/index.ts';
export { createFormats, type Formats } from './formats.ts';
export { LANGUAGES, languageKey, languageOf, speaks } from './languages.ts';
export { capital } from './letters.ts';
export { type Language, type Phrase, phrase, say } from './phrase.ts';
