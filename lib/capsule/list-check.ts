import type { Finding, PackingListPlan, Piece } from '../model/index.ts';
import { phrase } from '../words/index.ts';
import { positionsOf, seatPieces } from './fill.ts';

/** One line of a list and what a capsule has for it. */
export interface LineCheck {
  readonly what: string;
  readonly wanted: number;
  /** Piece ids that fill it. */
  readonly pieces: readonly string[];
  /** Wanted and not there. */
  readonly under: number;
  /** Piece ids of its kinds beyond what any line wants. */
  readonly over: readonly string[];
}

export interface ListCheck {
  readonly lines: readonly LineCheck[];
  /** Piece ids of kinds that no line names. */
  readonly unlisted: readonly string[];
  readonly filled: boolean;
}

/** Lays a capsule beside its list: every piece counts once, so that the most lines are filled. */
export const checkList = (pieces: readonly Piece[], list: PackingListPlan): ListCheck => {
  const positions = positionsOf(list.lines, 0);
  const seated = seatPieces(pieces, positions, list.lines);
  const placed = new Set(seated);
  const spare = pieces.filter((_, index) => !placed.has(index));
  const lines = list.lines.map(({ what, count, kinds }, line): LineCheck => {
    const filling = seated.flatMap((piece, at) => (positions[at]?.line === line ? (pieces[piece]?.id ?? []) : []));
    // a spare piece is over on the first line that names its kind
    const over = spare
      .filter(
        ({ kind }) => list.lines.findIndex((other) => other.kinds.includes(kind)) === line && kinds.includes(kind),
      )
      .map(({ id }) => id);
    return { what, wanted: count, pieces: filling, under: count - filling.length, over };
  });
  return {
    lines,
    unlisted: spare.filter(({ kind }) => list.lines.every(({ kinds }) => !kinds.includes(kind))).map(({ id }) => id),
    filled: lines.every(({ under }) => under === 0),
  };
};

/** Under- and overfilled lines, and pieces the list does not ask for, as findings. */
export const findingsOfList = (check: ListCheck, pieces: readonly Piece[]): readonly Finding[] => {
  const nameOf = (id: string): string => pieces.find((piece) => piece.id === id)?.name ?? id;
  return [
    ...check.lines.flatMap(({ what, wanted, under, over, pieces: filling }): readonly Finding[] => [
      ...(under > 0
        ? [
            {
              level: 'warning' as const,
              rule: 'list-underfilled',
              message: phrase('capsule', 'line under', { what, wanted, has: wanted - under }),
              mend: phrase('capsule', 'line under mend', { what, under }),
              about: filling,
            },
          ]
        : []),
      ...(over.length > 0
        ? [
            {
              level: 'advice' as const,
              rule: 'list-overfilled',
              message: phrase('capsule', 'line over', { what, wanted, over: over.map(nameOf) }),
              mend: phrase('capsule', 'line over mend', {}),
              about: over,
            },
          ]
        : []),
    ]),
    ...(check.unlisted.length > 0
      ? [
          {
            level: 'advice' as const,
            rule: 'list-unlisted',
            message: phrase('capsule', 'unlisted', { pieces: check.unlisted.map(nameOf) }),
            about: check.unlisted,
          },
        ]
      : []),
  ];
};
