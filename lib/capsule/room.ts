import { briefToPack } from '../bag/index.ts';
import type { Finding, Piece } from '../model/index.ts';
import { createWardrobeEngine, type WardrobeEngine, type WardrobeRules } from '../outfit/index.ts';
import { type ChoiceLimits, refusalOf } from './eligible.ts';
import { fits, type Position, positionsOf } from './fill.ts';
import { keepFindings, listTooLong, nothingLeft, unfillableLines, unseatedKeeps } from './infeasible.ts';
import { type Limits, limitsOf } from './limits.ts';
import type { ChooseQuestion } from './record.ts';
import { bestLooks, type Demand, demandsOf, type LooksFor } from './serving.ts';
import { unmetLimits } from './unmet.ts';

/** A question made ready to be searched: what may be chosen, where it goes, and what it must hold to. */
export interface ChoosingRoom {
  readonly question: ChooseQuestion;
  readonly eligible: readonly Piece[];
  readonly numberOf: ReadonlyMap<string, number>;
  readonly engine: WardrobeEngine;
  readonly positions: readonly Position[];
  readonly limits: Limits;
  readonly demands: readonly Demand[];
  /** The best looks of the wardrobe for an occasion. */
  readonly looksFor: LooksFor;
  readonly keep: readonly string[];
}

export const rulesOf = (
  { rules, never = [], always = [] }: ChooseQuestion,
  pieces: readonly Piece[],
): WardrobeRules => ({ pieces, rules, never, always });

export const piecesAt = (at: Iterable<number>, eligible: readonly Piece[]): readonly Piece[] =>
  [...at].flatMap((number) => eligible[number] ?? []);

export const numbersOf = (ids: Iterable<string>, { numberOf }: ChoosingRoom): readonly number[] =>
  [...ids].flatMap((id) => numberOf.get(id) ?? []);

/** Makes a question ready, or says why no set of pieces can answer it and the least that would mend that. */
export const prepareRoom = (question: ChooseQuestion): ChoosingRoom | readonly Finding[] => {
  const { wardrobe, brief, list, mood, keep = [], leaveOut = [] } = question;
  const choice: ChoiceLimits = { brief, palette: mood.palette, keep, leaveOut };
  const askedFor = keepFindings(wardrobe, keep, leaveOut);
  if (askedFor.length > 0) return askedFor;
  const listed = list.lines.reduce((sum, { count }) => sum + count, 0);
  const piecesAtMost = question.piecesAtMost ?? Math.max(listed, brief.piecesAtMost ?? 0);
  const positions = positionsOf(list.lines, piecesAtMost);
  const wanted = wardrobe.filter((piece) => refusalOf(piece, choice) === undefined);
  if (wanted.length === 0) return [nothingLeft(wardrobe)];
  const eligible = wanted.filter((piece) => positions.some((position) => fits(piece, position, list.lines)));
  const kept = wardrobe.filter(({ id }) => keep.includes(id));
  const unfillable = unfillableLines(list, eligible, wardrobe, positions, choice);
  if (listed > piecesAtMost) return [listTooLong(listed, piecesAtMost), ...unfillable];
  const unseated = unseatedKeeps(kept, positions, list);
  if (unfillable.length > 0 || unseated.length > 0) return [...unfillable, ...unseated];
  const limits = limitsOf(briefToPack(brief, question.traveller), question);
  const unmet = unmetLimits({ eligible, kept, positions, lines: list.lines, limits });
  if (unmet.length > 0) return unmet;
  const engine = createWardrobeEngine(rulesOf(question, eligible));
  return {
    question,
    eligible,
    numberOf: new Map(eligible.map(({ id }, number) => [id, number])),
    engine,
    positions,
    limits,
    demands: demandsOf(brief, question.traveller, eligible),
    looksFor: bestLooks(engine),
    keep,
  };
};
