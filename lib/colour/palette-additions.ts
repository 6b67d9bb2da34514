import type { NamedColour, Piece } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { clothColour } from './cloth.ts';
import { differenceOf } from './difference.ts';
import { type HueFamily, hueFamily } from './hue.ts';
import { COLOUR_NAMES } from './names/index.ts';
import { isMetal, isNeutral } from './neutral.ts';
import { companions, worn } from './palette-pairs.ts';
import { type ColouredPiece, relatePieces } from './piece-relation.ts';

/** What one more plain piece of a colour would do for a capsule. */
export interface PaletteAddition {
  readonly colour: NamedColour;
  readonly as: 'top' | 'bottom';
  readonly family: HueFamily;
  /** Ids of the bottoms (for a top) or tops (for a bottom) it goes with: as many new pairs. */
  readonly goesWith: readonly string[];
  readonly of: number;
  /** Pieces that went with nothing and would have a partner. */
  readonly frees: readonly string[];
  /** Prints whose motif it picks up. */
  readonly ties: readonly string[];
  /** Mean score of its pairs, 0 to 1. */
  readonly score: number;
  readonly reason: Phrase;
}

const plainPiece = (colour: NamedColour): ColouredPiece => ({
  colours: [{ ...colour, share: 1 }],
  pattern: { type: 'plain', scale: 'medium' },
  fabric: 'cotton jersey',
});

const idsOf = (pieces: readonly Piece[]): readonly string[] => pieces.map(({ id }) => id);

const reasonFor = (
  colour: NamedColour,
  as: 'top' | 'bottom',
  goes: number,
  of: number,
  ties: readonly Piece[],
  frees: readonly Piece[],
): Phrase => {
  const values = { colour: colour.name, as, count: goes, of };
  if (frees.length > 0) return phrase('colour', 'addition frees', { ...values, pieces: frees.map(({ name }) => name) });
  if (ties.length > 0) return phrase('colour', 'addition ties', { ...values, pieces: ties.map(({ name }) => name) });
  return phrase('colour', 'addition goes', values);
};

/** What a plain top or bottom of a colour would bring to these pieces. */
export const whatColourDoes = (
  pieces: readonly Piece[],
  colour: NamedColour,
  as: 'top' | 'bottom',
): PaletteAddition => {
  const partners = worn(pieces, as === 'top' ? 'bottom' : 'top');
  const lonely = new Set(
    companions(pieces)
      .filter(({ of, goesWith }) => of > 0 && goesWith.length === 0)
      .map(({ piece }) => piece),
  );
  return judged(partners, lonely, colour, as);
};

const judged = (
  partners: readonly Piece[],
  lonely: ReadonlySet<string>,
  colour: NamedColour,
  as: 'top' | 'bottom',
): PaletteAddition => {
  const added = plainPiece(colour);
  const met = partners.map((piece) => ({ piece, relation: relatePieces(added, piece) }));
  const going = met.filter(({ relation }) => relation.goes);
  const ties = going.filter(({ relation }) => relation.relation === 'shared colour').map(({ piece }) => piece);
  const frees = going.map(({ piece }) => piece).filter(({ id }) => lonely.has(id));
  const score = met.length === 0 ? 0 : met.reduce((sum, { relation }) => sum + relation.score, 0) / met.length;
  return {
    colour,
    as,
    family: hueFamily(colour),
    goesWith: idsOf(going.map(({ piece }) => piece)),
    of: partners.length,
    frees: idsOf(frees),
    ties: idsOf(ties),
    score: Number(score.toFixed(4)),
    reason: reasonFor(colour, as, going.length, partners.length, ties, frees),
  };
};

/** A suggestion must stand at least this far (CIEDE2000) from what the place already has: a shade or more. */
const NEW_COLOUR = 14;
const MOST_A_PLACE = 2;
/** CIEDE2000 from a colour of the mood, and of its hue family, within which a suggestion keeps to it. Own choice. */
const IN_MOOD = 11;

/**
 * A colour makes one pair a partner, and that is what counts; a freed piece counts as three pairs, a picked-up print as
 * half a pair, then the mean score. A neutral pays a little: it always goes and adds no colour. Own choice.
 */
const worth = (addition: PaletteAddition): number =>
  addition.goesWith.length +
  3 * addition.frees.length +
  0.5 * addition.ties.length +
  addition.of * (addition.score - (isNeutral(addition.colour) ? 0.1 : 0));

/** One a hue family, the neutrals too, best first. */
const bestOf = (additions: readonly PaletteAddition[]): readonly PaletteAddition[] => {
  const chosen: PaletteAddition[] = [];
  for (const addition of [...additions].sort((a, b) => worth(b) - worth(a))) {
    if (chosen.length === MOST_A_PLACE) break;
    if (addition.goesWith.length > 0 && chosen.every(({ family }) => family !== addition.family)) chosen.push(addition);
  }
  return chosen;
};

/**
 * The colours of the dictionary that would do most for these pieces: at most two tops and two bottoms, one a hue family
 * and place, best first. They keep to the mood's colours; where none of those is new, or no mood is given, to any.
 */
export const paletteAdditions = (
  pieces: readonly Piece[],
  mood: readonly NamedColour[] = [],
): readonly PaletteAddition[] => {
  const lonely = new Set(
    companions(pieces)
      .filter(({ of, goesWith }) => of > 0 && goesWith.length === 0)
      .map(({ piece }) => piece),
  );
  const cloths = COLOUR_NAMES.flatMap((name) => clothColour(name) ?? []).filter((colour) => !isMetal(colour));
  const inMood = cloths.filter((cloth) =>
    mood.some((colour) => hueFamily(colour) === hueFamily(cloth) && differenceOf(colour.hex, cloth.hex) < IN_MOOD),
  );
  return (['top', 'bottom'] as const)
    .flatMap((as) => {
      const partners = worn(pieces, as === 'top' ? 'bottom' : 'top');
      const there = worn(pieces, as).flatMap(({ colours }) => colours[0] ?? []);
      if (partners.length === 0) return [];
      const judge = (from: readonly NamedColour[]): readonly PaletteAddition[] =>
        bestOf(
          from
            .filter((cloth) => there.every((colour) => differenceOf(cloth.hex, colour.hex) >= NEW_COLOUR))
            .map((cloth) => judged(partners, lonely, cloth, as)),
        );
      const kept = judge(inMood);
      return kept.length > 0 ? kept : judge(cloths);
    })
    .sort((a, b) => worth(b) - worth(a));
};
