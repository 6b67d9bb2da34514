import type { NamedColour, Piece, PieceColour } from '../model/index.ts';
import { QUIET_PATTERNS } from '../vocabulary/patterns.ts';
import { phrase } from '../words/phrase.ts';
import { differenceOf } from './difference.ts';
import { isMetal, isNeutral } from './neutral.ts';
import { type ColourRelation, relate } from './relation.ts';

/** What a colour relation needs to know of a piece. */
export type ColouredPiece = Pick<Piece, 'colours' | 'pattern' | 'fabric'>;

/** Motif colours below this share are specks that neither tie nor clash. common practice, no source */
const SEEN_SHARE = 0.08;
/** Motif colours from this share can clash on their own. common practice, no source */
const STRONG_SHARE = 0.2;
/** CIEDE2000 within which a motif colour picks up a plain one: a shade apart still reads as the same word. common practice, no source */
const PICKS_UP = 9;

/** The ground and the motif colours that are seen; quiet patterns and metal are their ground alone. */
export const seenColours = (piece: ColouredPiece): readonly PieceColour[] => {
  const [ground, ...motifs] = piece.colours;
  if (ground === undefined) return [];
  if (QUIET_PATTERNS.has(piece.pattern.type)) return [ground];
  return [ground, ...motifs.filter(({ share }) => share >= SEEN_SHARE)];
};

/** True when every seen colour of the piece is a neutral: the piece goes with nearly everything. */
export const isNeutralPiece = (piece: ColouredPiece): boolean => seenColours(piece).every(isNeutral);

/** The shared colour of two pieces of which at least one is a print: a motif that picks up the other's colour. */
const sharedColour = (
  a: readonly PieceColour[],
  b: readonly PieceColour[],
): { readonly one: PieceColour; readonly two: PieceColour } | undefined => {
  const tying = a.flatMap((one, indexA) =>
    b
      // two grounds that agree make one cloth, not a print picked up
      .filter((two, indexB) => indexA + indexB > 0 && differenceOf(one.hex, two.hex) < PICKS_UP)
      .map((two) => ({ one, two })),
  );
  const coloured = tying.find(({ one, two }) => !isNeutral(one) && !isNeutral(two));
  return coloured ?? tying[0];
};

/** The pair of seen colours that stand worst to each other, weighing specks less. */
const worstPair = (a: readonly PieceColour[], b: readonly PieceColour[]): ColourRelation => {
  const [groundA] = a;
  const [groundB] = b;
  if (groundA === undefined || groundB === undefined) throw new Error('a piece has at least one colour');
  let worst = relate(groundA, groundB);
  for (const one of a) {
    for (const two of b) {
      const found = relate(one, two);
      const strong = one.share >= STRONG_SHARE && two.share >= STRONG_SHARE;
      // a near miss between a motif and a cloth is a tie, not a mistake
      const counts = strong && found.relation !== 'near miss';
      if (counts && (found.goes === worst.goes ? found.score < worst.score : !found.goes)) worst = found;
    }
  }
  return worst;
};

/**
 * How two pieces stand to each other by colour: plain pieces by their colours, prints by ground and motif colours with
 * their shares. A motif that picks up the other piece's colour ties the two (`shared colour`) unless strong colours of
 * the two clash. Symmetric but for the order of names in the reason.
 */
export const relatePieces = (a: ColouredPiece, b: ColouredPiece): ColourRelation => {
  const coloursA = metalAware(a);
  const coloursB = metalAware(b);
  const worst = worstPair(coloursA, coloursB);
  if (coloursA.length === 1 && coloursB.length === 1) return worst;
  const shared = sharedColour(coloursA, coloursB);
  if (shared === undefined || !worst.goes) return worst;
  return sharedBy(shared.one, shared.two, worst.score);
};

const sharedBy = (one: NamedColour, two: NamedColour, worst: number): ColourRelation => ({
  relation: 'shared colour',
  goes: true,
  score: Math.max(worst, sharedScore(one, two)),
  reason: phrase('colour', 'shared colour', { one: one.name, two: two.name }),
});

/** How a motif colour of a print stands to another colour: nearly matching it, the print picks it up. */
export const relateMotif = (motif: NamedColour, other: NamedColour): ColourRelation => {
  const found = relate(motif, other);
  return found.relation === 'near miss' && differenceOf(motif.hex, other.hex) < PICKS_UP
    ? sharedBy(motif, other, found.score)
    : found;
};

/** A shared colour ties more than a shared neutral, which every wardrobe has. Own choice. */
const sharedScore = (one: NamedColour, two: NamedColour): number => (isNeutral(one) && isNeutral(two) ? 0.85 : 0.95);

/** Colours of a piece of metal count as metal whatever the stylist calls them. */
const metalAware = (piece: ColouredPiece): readonly PieceColour[] => {
  const seen = seenColours(piece);
  return piece.fabric === 'metal'
    ? seen.map((colour) => (isMetal(colour) ? colour : { ...colour, neutral: true }))
    : seen;
};
