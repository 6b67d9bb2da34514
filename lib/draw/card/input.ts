import type { LayItem } from '../flat-lay/index.ts';

/** A piece of a card: how it lies, and how its swatch is called. */
export interface CardPiece extends LayItem {
  readonly name: string;
  /** Ground colour, `#rrggbb`; the swatch of a piece that is a photo. */
  readonly colour: string;
}

export const CARD_SIZES = {
  /** To keep and to send. */
  portrait: { width: 1080, height: 1350 },
  /** For link previews. */
  landscape: { width: 1200, height: 630 },
} as const;
export type CardFormat = keyof typeof CARD_SIZES;

/** Everything a card shows, as plain data; every text is already in the reader's language. */
export interface CardInput {
  readonly format: CardFormat;
  /** The look's number, as it is written. */
  readonly number: string;
  readonly title: string;
  /** A short line over the title: when, where, how warm. May be empty. */
  readonly eyebrow: string;
  /** When to wear it, in a sentence. May be empty. */
  readonly wear: string;
  /** The studio's name, and what stands at the other end of the last line (the trip). May be empty. */
  readonly studio: string;
  readonly footer: string;
  /** Small print at the foot: what is not drawn to the card's scale. May be empty. */
  readonly note: string;
  readonly pieces: readonly CardPiece[];
  /** Colours, `#rrggbb`; undefined takes the house's own. */
  readonly accent: string;
  readonly paper?: string | undefined;
  readonly ink?: string | undefined;
  /** The tape at the edge: its unit and what it is called there. */
  readonly tape: { readonly unit: 'cm' | 'in'; readonly label: string };
  /** Written along the grain-line arrow. */
  readonly grain: string;
}
