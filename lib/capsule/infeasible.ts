import type { Finding, ListLine, PackingListPlan, Piece } from '../model/index.ts';
import { phrase } from '../words/index.ts';
import { type ChoiceLimits, type Refusal, refusalOf } from './eligible.ts';
import { type Position, seatPieces } from './fill.ts';

export const error = (
  rule: string,
  message: Finding['message'],
  mend: Finding['mend'],
  about: readonly string[] = [],
): Finding => ({
  level: 'error',
  rule,
  message,
  ...(mend === undefined ? {} : { mend }),
  about,
});

/** Pieces of a line that are refused, the refusal that keeps most away first. */
const refusedFor = (line: ListLine, wardrobe: readonly Piece[], limits: ChoiceLimits) => {
  const refused = wardrobe
    .filter(({ kind }) => line.kinds.includes(kind))
    .flatMap((piece) => {
      const why = refusalOf(piece, limits);
      return why === undefined ? [] : [{ piece, why }];
    });
  const reasons: readonly Refusal[] = ['outside the mood', 'left out', 'still to buy', 'refused by the brief'];
  return reasons
    .map((why) => ({ why, pieces: refused.filter((entry) => entry.why === why).map(({ piece }) => piece) }))
    .filter(({ pieces }) => pieces.length > 0);
};

/** Lines that the eligible pieces cannot fill together, each with the least that would mend it. */
export const unfillableLines = (
  list: PackingListPlan,
  eligible: readonly Piece[],
  wardrobe: readonly Piece[],
  positions: readonly Position[],
  limits: ChoiceLimits,
): readonly Finding[] => {
  const listed = positions.filter(({ line }) => line !== undefined);
  const seated = seatPieces(eligible, listed, list.lines);
  return list.lines.flatMap((line, number): readonly Finding[] => {
    const lacking = listed.filter((position, at) => position.line === number && (seated[at] ?? -1) < 0).length;
    if (lacking === 0) return [];
    const [refusal] = refusedFor(line, wardrobe, limits);
    const mend =
      refusal !== undefined && refusal.pieces.length >= lacking
        ? phrase('capsule', 'let in', {
            why: refusal.why,
            pieces: refusal.pieces.slice(0, 3).map(({ name }) => name),
            lacking,
          })
        : phrase('capsule', 'add to wardrobe', { lacking, kinds: line.kinds.slice(0, 3), what: line.what });
    return [
      error(
        'list-fillable',
        phrase('capsule', 'line unfillable', { what: line.what, wanted: line.count, lacking }),
        mend,
      ),
    ];
  });
};

export const nothingLeft = (wardrobe: readonly Piece[]): Finding =>
  error(
    'wardrobe-empty',
    phrase('capsule', 'nothing left', { wardrobe: wardrobe.length }),
    phrase('capsule', 'nothing left mend', {}),
  );

/** A piece to keep that is unknown, or that is left out as well. */
export const keepFindings = (
  wardrobe: readonly Piece[],
  keep: readonly string[],
  leaveOut: readonly string[],
): readonly Finding[] => [
  ...keep
    .filter((id) => !wardrobe.some((piece) => piece.id === id))
    .map((id) => error('keep-known', phrase('capsule', 'keep unknown', { piece: id }), undefined, [id])),
  ...keep
    .filter((id) => leaveOut.includes(id))
    .map((id) => error('keep-and-leave', phrase('capsule', 'keep and leave', { piece: id }), undefined, [id])),
];

/** Pieces to keep for which the list has no place. */
export const unseatedKeeps = (
  kept: readonly Piece[],
  positions: readonly Position[],
  list: PackingListPlan,
): readonly Finding[] => {
  const seated = new Set(seatPieces(kept, positions, list.lines));
  const standing = kept.filter((_, index) => !seated.has(index));
  return standing.length === 0
    ? []
    : [
        error(
          'keep-fits-list',
          phrase('capsule', 'keep without place', { pieces: standing.map(({ name }) => name) }),
          phrase('capsule', 'keep without place mend', { lacking: standing.length }),
          standing.map(({ id }) => id),
        ),
      ];
};

export const listTooLong = (listed: number, most: number): Finding =>
  error(
    'pieces-at-most',
    phrase('capsule', 'list too long', { listed, most }),
    phrase('capsule', 'list too long mend', { over: listed - most }),
  );

export const wardrobeTooLarge = (most: number): Finding =>
  error('wardrobe-size', phrase('capsule', 'too many looks', { most }), phrase('capsule', 'too many looks mend', {}));
