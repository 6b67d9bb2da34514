import type { NamedColour } from './colour.ts';
import type { HouseRuleSettings } from './house-rules.ts';
import type { SourceFile } from './piece.ts';

/** The pieces chosen for a trip in one mood. */
export interface Capsule extends SourceFile {
  /** File name without `.md`. */
  readonly id: string;
  readonly trip: string;
  readonly title: string;
  readonly traveller: string;
  readonly wardrobe: string;
  readonly list: string;
  readonly mood: { readonly palette: readonly NamedColour[]; readonly words: readonly string[] };
  /** Piece ids in the stylist's order; empty when `choose` is to find them. */
  readonly pieces: readonly string[];
  /** Line of the pieces. */
  readonly piecesLine?: number;
  readonly choose?: { readonly keep: readonly string[]; readonly leaveOut: readonly string[] };
  /** Pieces never worn together, as sets of ids. */
  readonly never: readonly (readonly string[])[];
  /** Pieces always worn together: whoever wears the first wears the others. */
  readonly always: readonly (readonly string[])[];
  readonly favourites: readonly FixedLook[];
  /** Looks the stylist has fixed to an occasion, named by its id or by its words. */
  readonly fixed: readonly (FixedLook & { readonly occasion: string; readonly line?: number })[];
  /** Lines that override the studio's house rules. */
  readonly rules: HouseRuleSettings;
  /** The rationale, Markdown, published. */
  readonly rationale: string;
}

export interface FixedLook {
  readonly title?: string;
  readonly pieces: readonly string[];
  readonly note?: string;
}
