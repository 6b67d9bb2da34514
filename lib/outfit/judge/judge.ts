import type { Piece } from '../../model/piece.ts';
import type { Restriction } from '../restriction.ts';
import { createRulebook, type WardrobeRules } from '../rules/rulebook.ts';
import { judge, type Verdict } from './verdict.ts';

/** The part of the engine that a page needs to judge what a reader puts together: nothing is searched or counted. */
export interface Judge {
  readonly explain: (pieceIds: readonly string[], restriction?: Restriction) => Verdict;
}

/** Gives the same verdicts as the engine, for a third of its weight. Throws RangeError on an unknown rule. */
export const createJudge = (wardrobe: WardrobeRules): Judge => {
  const bench = {
    rulebook: createRulebook(wardrobe.rules, wardrobe),
    pieceById: new Map(wardrobe.pieces.map((piece): [string, Piece] => [piece.id, piece])),
  };
  return { explain: (pieceIds, restriction = {}) => judge(bench, pieceIds, restriction) };
};
