import { english } from './english/index.ts';
import { german } from './german/index.ts';
import type { Language } from './phrase.ts';

/** The languages the interface is written in, by the first part of a language tag. */
export const LANGUAGES: Readonly<Record<string, Language>> = { en: english, de: german };

/** The sentences for a language tag; English when the interface is not written in that language. */
export const languageOf = (tag: string): Language => LANGUAGES[tag.split('-')[0] ?? 'en'] ?? english;

/** True when the interface is written in this language. */
export const speaks = (tag: string): boolean => (tag.split('-')[0] ?? '') in LANGUAGES;
