import { type Improvements, type ImproveQuestion, improve } from '../capsule/index.ts';
import type { HouseRuleSettings, PackingListPlan, Piece } from '../model/index.ts';
import type { Guide } from './record.ts';

/** What a guide is measured against when it is to be made better. */
export interface BetterQuestion {
  /** Every piece of the capsule's wardrobe. */
  readonly wardrobe: readonly Piece[];
  readonly list: PackingListPlan | undefined;
  readonly houseRules: HouseRuleSettings;
}

/** The question that `improve` answers for a guide; pieces of looks that the stylist has fixed are never swapped out. */
export const improveQuestion = (
  { brief, capsule, pieces, plan }: Pick<Guide, 'brief' | 'capsule' | 'pieces' | 'plan'>,
  { wardrobe, list, houseRules }: BetterQuestion,
): ImproveQuestion => ({
  brief,
  traveller: capsule.traveller,
  pieces,
  wardrobe,
  ...(list === undefined ? {} : { list }),
  palette: capsule.mood.palette,
  rules: { ...houseRules, ...capsule.rules },
  never: capsule.never,
  always: capsule.always,
  keep: [...capsule.fixed.flatMap((look) => look.pieces), ...(capsule.choose?.keep ?? [])],
  leaveOut: capsule.choose?.leaveOut ?? [],
  plan,
});

/** How the capsule of a guide could be better by one piece. */
export const improveGuide = (
  guide: Pick<Guide, 'brief' | 'capsule' | 'pieces' | 'plan'>,
  question: BetterQuestion,
): Improvements => improve(improveQuestion(guide, question));
