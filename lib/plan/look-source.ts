import type { Look } from '../model/index.ts';
import type { DressCode, Need } from '../vocabulary/index.ts';
import type { Phrase } from '../words/index.ts';

/** What a look must satisfy. Every field narrows. */
export interface LookRestriction {
  /** Piece ids that must be worn. */
  readonly pieces?: readonly string[];
  /** Piece ids that must not be worn. */
  readonly without?: readonly string[];
  readonly dress?: DressCode;
  readonly needs?: readonly Need[];
  /** All layers on at least `min`, removable layers off at most `max`, clo. */
  readonly clo?: { readonly min: number; readonly max: number };
  readonly heelCmAtMost?: number;
}

/** A look with its place in the ranking; a higher score is better. */
export interface RankedLook {
  readonly look: Look;
  readonly score: number;
  /** May be worded only when read. */
  readonly reasons: readonly Phrase[];
}

/** Where looks come from. The plan asks for nothing else of the outfit room. */
export interface LookSource {
  /** The best `k` looks, best first, always in the same order; fewer when there are no more. */
  rank(k: number, restriction?: LookRestriction): readonly RankedLook[];
  /** Whether exactly these pieces make a look, and if not, why not. */
  explain(
    pieces: readonly string[],
    restriction?: LookRestriction,
  ): { readonly goes: boolean; readonly look?: Look; readonly reasons: readonly Phrase[] };
}
