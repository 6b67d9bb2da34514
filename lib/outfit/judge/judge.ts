import { type PackedRules, unpackRules } from './packed.ts';
import { judge, type Verdict } from './verdict.ts';

/** The part of the engine that a page needs to judge what a reader puts together: nothing is searched or counted. */
export interface Judge {
  readonly explain: (pieceIds: readonly string[]) => Verdict;
}

/** Gives the same verdicts as the engine for the pieces that were packed, without the rules, the colours and the tables. */
export const createJudge = (packed: PackedRules): Judge => {
  const bench = {
    rulings: unpackRules(packed),
    pieceById: new Map(packed.pieces.map((piece) => [piece.id, piece])),
  };
  return { explain: (pieceIds) => judge(bench, pieceIds) };
};
