import type { FontStyle, Fonts } from '../../type/index.ts';
import { MILLIMETRES_A_POINT } from '../paper.ts';
import type { SetRun } from '../pdf/surface.ts';
import type { Typefaces } from '../pdf/typefaces.ts';

/** Type as it is set. */
export interface Type {
  readonly style: FontStyle;
  /** Size in points. */
  readonly points: number;
  /** Distance of baselines, millimetres. */
  readonly leading: number;
  readonly colour: string;
  /** Extra space between letters, millimetres. */
  readonly tracking?: number;
}

/** A stretch of text in one type. */
export interface Span {
  readonly text: string;
  readonly type: Type;
}

/** One set line. */
export interface Line {
  readonly runs: readonly SetRun[];
  /** Millimetres. */
  readonly width: number;
}

/** A text that is set without some of its characters, which no font has. */
export interface Trouble {
  readonly text: string;
  readonly characters: readonly string[];
}

export interface Setter {
  line(spans: readonly Span[]): Line;
  /** Breaks into lines no wider than the measure; never drops a letter. */
  wrap(spans: readonly Span[], measure: number, balance: boolean): readonly Line[];
  troubles(): readonly Trouble[];
}

/** Nothing legible is smaller (the issue of older eyes and poor printers). */
const LEAST_POINTS = 7;

const SOFT_HYPHEN = '\u00AD';
const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });

interface Word {
  readonly spans: readonly Span[];
  /** True when a space stands before it. */
  readonly spaced: boolean;
  /** True when a hyphen is shown if the line ends after it. */
  readonly soft: boolean;
}

const BREAK_AFTER = /(?<=[\p{L}\d][-–—/])(?=\p{L})/u;

/** Words of a text: at spaces, after hyphens, dashes and slashes between letters, and at soft hyphens. */
const wordsOf = (spans: readonly Span[]): readonly Word[] => {
  const words: Word[] = [];
  let glue = false;
  let spaced = false;
  for (const { text, type } of spans) {
    for (const [index, chunk] of text.split(/[ \t\r\n]+/u).entries()) {
      if (index > 0) {
        glue = false;
        spaced = true;
      }
      if (chunk === '') continue;
      const pieces = chunk
        .split(SOFT_HYPHEN)
        .flatMap((part, at, all) =>
          part
            .split(BREAK_AFTER)
            .map((piece, k, row) => ({ piece, soft: k === row.length - 1 && at < all.length - 1 })),
        );
      pieces.forEach(({ piece, soft }, at) => {
        const last = words.at(-1);
        if (glue && at === 0 && last !== undefined) {
          words[words.length - 1] = { ...last, spans: [...last.spans, { text: piece, type }], soft };
        } else words.push({ spans: [{ text: piece, type }], spaced: at === 0 && spaced && words.length > 0, soft });
      });
      glue = true;
      spaced = false;
    }
  }
  return words;
};

export const createSetter = (fonts: Fonts, typefaces: Typefaces): Setter => {
  const lines = new Map<string, Line>();
  const troubles = new Map<string, Trouble>();

  /** A whole text as it can be set, before it is broken into lines; what is left out is filed. */
  const settable = (span: Span): Span => {
    const missing = fonts.uncovered(span.text);
    if (missing.length === 0) return span;
    troubles.set(span.text, { text: span.text, characters: missing });
    return { ...span, text: fonts.settable(span.text) };
  };
  const setSpan = ({ text, type }: Span): Line => {
    const key = `${type.style}|${type.points}|${type.colour}|${type.tracking ?? 0}|${text}`;
    const known = lines.get(key);
    if (known !== undefined) return known;
    if (type.points < LEAST_POINTS) throw new Error(`type of ${type.points} pt is under ${LEAST_POINTS} pt`);
    const tracking = type.tracking ?? 0;
    const runs = fonts.runs(text, type.style).map((run): SetRun => {
      const typeface = typefaces.of(run.face);
      const glyphs = typeface.shape(run.text);
      const thousandths = glyphs.reduce((sum, { advance, kern }) => sum + advance + kern, 0);
      const width = (thousandths * type.points * MILLIMETRES_A_POINT) / 1000 + tracking * glyphs.length;
      return { typeface, glyphs, points: type.points, colour: type.colour, tracking, width };
    });
    const line = { runs, width: runs.reduce((sum, run) => sum + run.width, 0) };
    lines.set(key, line);
    return line;
  };

  const joined = (spans: readonly Span[]): readonly Span[] => {
    const merged: Span[] = [];
    for (const span of spans) {
      const last = merged.at(-1);
      if (last?.type === span.type) merged[merged.length - 1] = { text: last.text + span.text, type: span.type };
      else merged.push(span);
    }
    return merged;
  };
  const line = (spans: readonly Span[]): Line => {
    const set = joined(spans)
      .filter((span) => span.text !== '')
      .map(setSpan);
    return { runs: set.flatMap((part) => part.runs), width: set.reduce((sum, part) => sum + part.width, 0) };
  };

  /** A word too wide for the measure, cut between letters. */
  const cut = (word: Word, measure: number): readonly Word[] => {
    if (line(word.spans).width <= measure) return [word];
    const parts: Word[] = [];
    let held: Span[] = [];
    for (const { text, type } of word.spans) {
      for (const { segment } of graphemes.segment(text)) {
        const more = joined([...held, { text: segment, type }]);
        if (held.length > 0 && line([...more, { text: '-', type }]).width > measure) {
          parts.push({ spans: held, spaced: parts.length === 0 && word.spaced, soft: true });
          held = [{ text: segment, type }];
        } else held = [...more];
      }
    }
    parts.push({ spans: held, spaced: parts.length === 0 && word.spaced, soft: word.soft });
    return parts;
  };

  const textOf = (words: readonly Word[]): readonly Span[] =>
    words.flatMap((word, index): readonly Span[] => {
      const first = word.spans[0];
      const space = index > 0 && word.spaced && first !== undefined ? [{ text: ' ', type: first.type }] : [];
      const last = word.spans.at(-1);
      const hyphen =
        index === words.length - 1 && word.soft && last !== undefined ? [{ text: '-', type: last.type }] : [];
      return [...space, ...word.spans, ...hyphen];
    });

  const fill = (words: readonly Word[], measure: number): readonly (readonly Word[])[] => {
    const rows: Word[][] = [];
    for (const word of words) {
      const row = rows.at(-1);
      if (row !== undefined && line(textOf([...row, word])).width <= measure) row.push(word);
      else rows.push([word]);
    }
    return rows;
  };

  return {
    line: (spans) => line(spans.map(settable)),
    troubles: () => [...troubles.values()],
    wrap: (written, measure, balance) => {
      const spans = written.map(settable);
      const whole = line(
        spans.map(({ text, type }) => ({ text: text.replaceAll(SOFT_HYPHEN, '').replaceAll(/\s+/gu, ' '), type })),
      );
      if (whole.width <= measure) return [whole];
      const words = wordsOf(spans).flatMap((word) => cut(word, measure));
      let rows = fill(words, measure);
      if (balance && rows.length > 1 && rows.length < 5) {
        let low = measure * 0.5;
        let high = measure;
        for (let step = 0; step < 7; step++) {
          const middle = (low + high) / 2;
          const tried = fill(words, middle);
          const fits = tried.length === rows.length && tried.every((row) => line(textOf(row)).width <= middle);
          if (fits) high = middle;
          else low = middle;
        }
        const balanced = fill(words, high);
        if (balanced.length === rows.length) rows = balanced;
      }
      return rows.map((row, index) => {
        const set = textOf(row);
        const tail = rows[index + 1]?.[0]?.spaced === true ? set.at(-1) : undefined;
        return line(tail === undefined ? set : [...set, { text: ' ', type: tail.type }]);
      });
    },
  };
};
