import { type Phrase, phrase } from '../../words/phrase.ts';
import { CORE_FORMS, FORMS, slotsOf } from '../grammar/forms.ts';
import { slotsOfPiece } from '../grammar/seats.ts';
import type { Ground } from '../ground.ts';
import type { RuleId } from '../rules/index.ts';
import { relationOf } from '../rules/relation.ts';
import { benchOf } from './bench.ts';
import { pairReasons, type Reason } from './reasons.ts';
import { judge } from './verdict.ts';

export interface PairVerdict {
  readonly a: string;
  readonly b: string;
  readonly goes: boolean;
  /** What stands between them, or lowers them. */
  readonly reasons: readonly Reason[];
  /** How their colours stand to each other; absent when one of them is not in the wardrobe. */
  readonly colours?: Phrase;
}

/** Two pieces, by the best way of wearing them together. */
export const explainPair = (ground: Ground, a: string, b: string): PairVerdict => {
  const { goes, reasons } = judge(benchOf(ground), [a, b]);
  const one = ground.pieceById.get(a);
  const two = ground.pieceById.get(b);
  return {
    a,
    b,
    goes,
    reasons,
    ...(one === undefined || two === undefined ? {} : { colours: relationOf(one, two).reason }),
  };
};

export interface PairGrid {
  readonly top: string;
  readonly bottom: string;
  readonly goes: boolean;
  readonly reasons: readonly Reason[];
  readonly colours: Phrase;
}

/** Every top with every bottom, tops first, in the order the pieces were given. */
export const pairGrid = (ground: Ground): readonly PairGrid[] => {
  const tops = ground.seatsBySlot.get('top') ?? [];
  const bottoms = ground.seatsBySlot.get('bottom') ?? [];
  const n = ground.seats.length;
  return tops.flatMap((top) =>
    bottoms
      .filter((bottom) => bottom.piece.id !== top.piece.id)
      .map((bottom) => {
        const goes =
          ground.goes[top.index * n + bottom.index] === 1 &&
          ground.allowed[top.index] === 1 &&
          ground.allowed[bottom.index] === 1;
        const { reasons } = goes
          ? { reasons: pairReasons(top, bottom, ground.rulebook) }
          : judgeSeated(ground, top.piece.id, bottom.piece.id, pairReasons(top, bottom, ground.rulebook));
        return {
          top: top.piece.id,
          bottom: bottom.piece.id,
          goes,
          reasons,
          colours: relationOf(top.piece, bottom.piece).reason,
        };
      }),
  );
};

/** Pair rules say most of it; a cap of one or none (a veto, a print too many) is a reason of the two together. */
const judgeSeated = (ground: Ground, top: string, bottom: string, between: readonly Reason[]) =>
  between.some(({ severity }) => severity === 'rules out')
    ? { reasons: between }
    : judge(benchOf(ground), [top, bottom]);

export interface PieceVerdict {
  readonly piece: string;
  /** Pieces it can be worn with, pair by pair, by the place they take. */
  readonly goesWith: readonly { readonly place: string; readonly pieces: readonly string[]; readonly of: number }[];
  /** What stands between it and the others, the rule that costs most partners first; one example message each. */
  readonly byRule: readonly { readonly rule: RuleId; readonly pieces: readonly string[] }[];
  /** One reason for each piece it does not go with. */
  readonly reasons: readonly Reason[];
}

/** Why a piece pairs with so few. An unknown id is a reason, not an error. */
export const explainPiece = (ground: Ground, id: string): PieceVerdict => {
  const piece = ground.pieceById.get(id);
  if (piece === undefined)
    return { piece: id, goesWith: [], byRule: [], reasons: judge(benchOf(ground), [id]).reasons };
  const places = new Set(
    CORE_FORMS.map((form) => slotsOf(FORMS[form], 'complete'))
      .filter((slots) => slotsOfPiece(piece).some((slot) => slots.includes(slot)))
      .flat(),
  );
  const bench = benchOf(ground);
  const judged = ground.pieces
    .filter((other) => other.id !== id && slotsOfPiece(other).some((slot) => places.has(slot)))
    .map((other) => ({ other, ...judge(bench, [id, other.id]) }));
  const goesWith = [...places].flatMap((place) => {
    const there = judged.filter(({ other }) => slotsOfPiece(other)[0] === place);
    return there.length === 0
      ? []
      : [{ place, pieces: there.filter(({ goes }) => goes).map(({ other }) => other.id), of: there.length }];
  });
  const against = judged.flatMap(({ other, goes, reasons }) =>
    goes
      ? []
      : reasons
          // two pieces of one place are a choice, not a fault
          .filter(({ rule, severity }) => severity === 'rules out' && rule !== 'grammar')
          .map((reason) => ({ other: other.id, reason })),
  );
  const rules = [...new Set(against.map(({ reason }) => reason.rule))];
  const own: readonly string[] = slotsOfPiece(piece);
  const lonely = goesWith.filter(({ place, pieces }) => pieces.length === 0 && !own.includes(place));
  return {
    piece: id,
    goesWith,
    byRule: rules
      .map((rule) => ({
        rule,
        pieces: [...new Set(against.filter(({ reason }) => reason.rule === rule).map(({ other }) => other))],
      }))
      .toSorted((a, b) => b.pieces.length - a.pieces.length),
    reasons: [
      ...lonely.map(
        ({ place }): Reason => ({
          rule: 'grammar',
          severity: 'lowers the score',
          message: phrase('outfit', 'goes with none', { piece: piece.name, place }),
          pieces: [id],
        }),
      ),
      ...against.map(({ reason }) => reason),
    ],
  };
};
