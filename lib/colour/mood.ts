import type { NamedColour, PieceColour } from '../model/index.ts';
import { differenceOf } from './difference.ts';
import { angleBetween, wheelAngle } from './hue.ts';
import { isMetal, isNeutral } from './neutral.ts';
import { type ColouredPiece, seenColours } from './piece-relation.ts';

/** CIEDE2000 from a mood colour up to which another is taken for it. Own choice. */
const NEAR = 22;
/** Shares below this are specks. common practice, no source */
const SEEN_SHARE = 0.2;
/** Degrees of the artist's wheel within which a tint or shade is of the mood colour's family. Itten 1961, from memory */
const ONE_FAMILY = 15;
/** The same for a tint so pale that it works as a neutral: two steps of the wheel of twelve, and a little. Own choice. */
const NEIGHBOURS = 65;
/** OKLCH chroma under which a tint is that pale, over which a colour has a hue to be of, and by which a tint may be brighter. Own choice. */
const PALE = 0.045;
const HAS_HUE = 0.03;
const NO_BRIGHTER = 0.03;

/** The colour of the mood that another is taken for, and how near it is, 0 at the edge to 1; undefined for any other. */
export const moodColourOf = (
  colour: NamedColour,
  mood: readonly NamedColour[],
): { readonly name: string; readonly nearness: number } | undefined => {
  let best: { readonly name: string; readonly nearness: number } | undefined;
  for (const { name, hex } of mood) {
    const nearness = 1 - differenceOf(hex, colour.hex) / NEAR;
    if (nearness >= 0 && nearness > (best?.nearness ?? -1)) best = { name, nearness };
  }
  return best;
};

/** True for a colour that is one of the mood's, a quiet tint or shade of one, or one that goes with everything. */
const isOfMood = (colour: NamedColour, mood: readonly NamedColour[]): boolean =>
  isNeutral(colour) ||
  isMetal(colour) ||
  moodColourOf(colour, mood) !== undefined ||
  mood.some((other) => {
    if (other.oklch.c < HAS_HUE) return false;
    const apart = angleBetween(wheelAngle(other.oklch.h), wheelAngle(colour.oklch.h));
    const quiet = colour.oklch.c <= other.oklch.c + NO_BRIGHTER;
    return quiet && apart <= (colour.oklch.c < PALE ? NEIGHBOURS : ONE_FAMILY);
  });

/** The first colour of a piece that people see and that the mood does not hold; an empty mood holds every colour. */
export const strayFromMood = (piece: ColouredPiece, mood: readonly NamedColour[]): PieceColour | undefined =>
  mood.length === 0
    ? undefined
    : seenColours(piece).find((colour) => colour.share >= SEEN_SHARE && !isOfMood(colour, mood));
