import type { NamedColour, Piece } from '../model/index.ts';
import { shownArea } from './area.ts';
import { differenceOf, NEARLY_THE_SAME } from './difference.ts';
import { type HueFamily, hueFamily } from './hue.ts';
import { isMetal, isNeutral } from './neutral.ts';
import { seenColours } from './piece-relation.ts';

/** What a colour does in a palette. */
export type PaletteRole = 'base' | 'support' | 'accent';

/** One swatch of a palette. */
export interface PaletteColour {
  readonly colour: NamedColour;
  readonly role: PaletteRole;
  /** Share of everything the pieces show, 0 to 1; the shares of a palette add up to 1. */
  readonly share: number;
  /** Ids of the pieces that show it, those that show most of it first. */
  readonly pieces: readonly string[];
  readonly family: HueFamily;
  /** True when a piece has it as its ground; a colour of prints alone is a motif. */
  readonly ground: boolean;
  readonly neutral: boolean;
  readonly metal: boolean;
}

interface Gathered {
  colour: NamedColour;
  amount: number;
  ground: boolean;
  readonly pieces: Map<string, number>;
}

/** Neutrals and colours from this share on carry the palette; from the 60–30–10 rule. common practice, no source */
const BASE_SHARE = 0.1;
const SUPPORT_SHARE = 0.1;

/** Colours of one palette that nearly match are one swatch, named after the one that shows most. */
const gather = (pieces: readonly Piece[]): Gathered[] => {
  const shown = pieces
    .flatMap((piece) =>
      seenColours(piece).map((colour, index) => ({
        piece,
        colour,
        amount: colour.share * shownArea(piece),
        ground: index === 0,
      })),
    )
    .sort((a, b) => b.amount - a.amount || (a.colour.hex < b.colour.hex ? -1 : a.colour.hex > b.colour.hex ? 1 : 0));
  const gathered: Gathered[] = [];
  for (const { piece, colour, amount, ground } of shown) {
    const found = gathered.find(
      (other) =>
        isMetal(other.colour) === isMetal(colour) &&
        isNeutral(other.colour) === isNeutral(colour) &&
        differenceOf(other.colour.hex, colour.hex) < NEARLY_THE_SAME,
    );
    const into = found ?? { colour, amount: 0, ground: false, pieces: new Map<string, number>() };
    if (found === undefined) gathered.push(into);
    into.amount += amount;
    into.ground ||= ground;
    into.pieces.set(piece.id, (into.pieces.get(piece.id) ?? 0) + amount);
  }
  return gathered;
};

/** A record without the share of the piece it was found in. */
const plain = ({ name, hex, oklch, neutral, metal }: NamedColour): NamedColour => ({
  name,
  hex,
  oklch,
  ...(neutral === undefined ? {} : { neutral }),
  ...(metal === undefined ? {} : { metal }),
});

/**
 * The role of a swatch: seen neutrals are the base, seen colours and rarer neutrals support, rare colours are accents.
 * A palette without neutrals has its largest colour as base.
 */
const roleOf = (neutral: boolean, share: number, largest: boolean, anyNeutral: boolean): PaletteRole => {
  if (!anyNeutral && largest) return 'base';
  if (neutral) return share >= BASE_SHARE ? 'base' : 'support';
  return share >= SUPPORT_SHARE ? 'support' : 'accent';
};

/**
 * The distinct colours of some pieces, largest first, weighted by what each piece shows on the body and by the shares
 * of its own colours. Colours that nearly match are one swatch.
 */
export const paletteColours = (pieces: readonly Piece[]): readonly PaletteColour[] => {
  const gathered = gather(pieces).sort((a, b) => b.amount - a.amount);
  const whole = gathered.reduce((sum, { amount }) => sum + amount, 0);
  const anyNeutral = gathered.some(({ colour }) => isNeutral(colour) && !isMetal(colour));
  return gathered.map(({ colour, amount, ground, pieces: from }, index) => {
    const neutral = isNeutral(colour);
    const share = whole === 0 ? 0 : amount / whole;
    return {
      colour: plain(colour),
      role: isMetal(colour) ? 'accent' : roleOf(neutral, share, index === 0, anyNeutral),
      share,
      pieces: [...from].sort((a, b) => b[1] - a[1]).map(([id]) => id),
      family: hueFamily(colour),
      ground,
      neutral,
      metal: isMetal(colour),
    };
  });
};
