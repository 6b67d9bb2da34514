import { isNeutralPiece, relatePieces } from '../colour/index.ts';
import type { Look, Piece } from '../model/index.ts';
import { QUIET_PATTERNS } from '../vocabulary/index.ts';
import { type Phrase, phrase } from '../words/index.ts';

/** Whether two people's looks sit well together in a picture. */
export interface PictureVerdict {
  readonly goes: boolean;
  /** How their colours stand to each other, 0 to 1: the mean score of every piece of one beside every piece of the other. */
  readonly harmony: number;
  /** What stands against it, or what ties the two together. */
  readonly reasons: readonly Phrase[];
}

/** What people see from across a room. */
const SEEN: ReadonlySet<string> = new Set([
  'top',
  'bottom',
  'one-piece',
  'swim',
  'mid layer',
  'outer layer',
  'cover-up',
  'tie',
  'scarf',
]);
const COLOURS_NAMED = 4;

/** The pieces of a look that are seen, without layers that are carried. */
export const seenPieces = (
  look: Look,
  pieces: readonly Piece[],
  without: ReadonlySet<string> = new Set(),
): readonly Piece[] =>
  look.worn
    .filter(({ slot, piece }) => SEEN.has(slot) && !without.has(piece))
    .flatMap(({ piece }) => pieces.find(({ id }) => id === piece) ?? []);

const isPrint = ({ pattern }: Piece): boolean => !QUIET_PATTERNS.has(pattern.type);

/** The closest tie between two coloured pieces: one picks up the other, or they stand well to each other. */
const tieOf = (pairs: readonly { readonly one: Piece; readonly two: Piece }[]): readonly Phrase[] => {
  const ties = pairs
    .filter(({ one, two }) => !isNeutralPiece(one) && !isNeutralPiece(two))
    .map(({ one, two }) => ({ one, two, ...relatePieces(one, two) }))
    .toSorted((a, b) => b.score - a.score);
  return ties
    .slice(0, 1)
    .flatMap(({ one, two, reason }) => [phrase('capsule', 'answers', { one: one.name, two: two.name }), reason]);
};

/** Judges what two people wear side by side: no two prints of one type, no colours that clash; then what ties them. */
export const judgePicture = (mine: readonly Piece[], theirs: readonly Piece[]): PictureVerdict => {
  const pairs = mine.flatMap((one) => theirs.map((two) => ({ one, two })));
  const samePrint = pairs.find(({ one, two }) => isPrint(one) && isPrint(two) && one.pattern.type === two.pattern.type);
  const clash = pairs.find(({ one, two }) => !relatePieces(one, two).goes);
  const against = [
    ...(samePrint === undefined
      ? []
      : [
          phrase('capsule', 'same print', {
            one: samePrint.one.name,
            two: samePrint.two.name,
            pattern: samePrint.one.pattern.type,
          }),
        ]),
    ...(clash === undefined
      ? []
      : [
          phrase('capsule', 'clash in picture', { one: clash.one.name, two: clash.two.name }),
          relatePieces(clash.one, clash.two).reason,
        ]),
  ];
  const colours = [...new Set([...mine, ...theirs].flatMap(({ colours: [ground] }) => ground?.name ?? []))];
  const ties = tieOf(pairs);
  return {
    goes: against.length === 0,
    harmony: pairs.reduce((sum, { one, two }) => sum + relatePieces(one, two).score, 0) / Math.max(1, pairs.length),
    reasons:
      against.length > 0
        ? against
        : ties.length > 0
          ? ties
          : [phrase('capsule', 'sits well', { colours: colours.slice(0, COLOURS_NAMED) })],
  };
};
