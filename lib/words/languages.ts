import { english } from './english/index.ts';
import { german } from './german/index.ts';
import type { Language } from './phrase.ts';

/** The languages the interface is written in, by the first part of a language tag. */
export const LANGUAGES: Readonly<Record<string, Language>> = { en: english, de: german };

/** True when the interface is written in this language. */
export const speaks = (tag: string): boolean => (tag.split('-')[0] ?? '') in LANGUAGES;

/** Under which key of `LANGUAGES` a language tag is spoken; English when the interface is not written in that language. */
export const languageKey = (tag: string): string => (speaks(tag) ? (tag.split('-')[0] ?? 'en') : 'en');

/** The sentences for a language tag. */
export const languageOf = (tag: string): Language => LANGUAGES[languageKey(tag)] ?? english;
