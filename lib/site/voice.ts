import MarkdownIt from 'markdown-it';
import type { Studio } from '../model/index.ts';
import {
  createFormats,
  type English,
  type Formats,
  languageKey,
  languageOf,
  type Phrase,
  phrase,
  say,
} from '../words/index.ts';

type SiteWords = English['site'];

/** How the site speaks: the studio's language, its units, and Markdown without HTML. */
export interface SiteVoice {
  readonly formats: Formats;
  readonly language: string;
  /** Under which key of `LANGUAGES` it speaks. */
  readonly sentences: string;
  say(phrase: Phrase): string;
  /** A sentence of the site's own. */
  word<K extends keyof SiteWords & string>(
    key: K,
    ...values: Parameters<SiteWords[K]> extends [] ? [] : [values: Parameters<SiteWords[K]>[0]]
  ): string;
  markdown(text: string): string;
}

export const siteVoice = (studio: Studio): SiteVoice => {
  const formats = createFormats(studio);
  const language = languageOf(studio.language);
  const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false });
  const sayIt = (said: Phrase): string => say(language, formats, said);
  return {
    formats,
    language: studio.language,
    sentences: languageKey(studio.language),
    say: sayIt,
    word: (key, ...[values]) => sayIt(phrase('site', key, (values ?? {}) as never)),
    markdown: (text) => (text.trim() === '' ? '' : markdown.render(text)),
  };
};
