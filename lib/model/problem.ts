import type { Phrase } from '../words/phrase.ts';

/** Something wrong in the content that stops a build. Data, formatted last. */
export interface Problem {
  /** Path below the content folder. */
  readonly file: string;
  /** 1-based line; undefined when the whole file is meant. */
  readonly line?: number;
  /** What is wrong: `there is no kind called "overshrt"`. */
  readonly wrong: string;
  /** What would be right: `write "overshirt"`. */
  readonly mend: string;
}

/** One thing the check has to say of valid content. */
export interface Finding {
  readonly level: 'error' | 'warning' | 'advice';
  /** Id of the rule or check that says it: `two-swimsuits`. */
  readonly rule: string;
  readonly message: Phrase;
  readonly reason?: Phrase;
  readonly mend?: Phrase;
  /** Other ways to mend it, best first. */
  readonly orElse?: readonly Phrase[];
  readonly file?: string;
  readonly line?: number;
  /** Piece ids or occasion ids concerned. */
  readonly about: readonly string[];
}
