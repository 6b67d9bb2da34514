import type { Brief, HouseRuleSettings, NamedColour, PackingListPlan, Piece, Plan } from '../model/index.ts';
import { createWardrobeEngine, type WardrobeEngine } from '../outfit/index.ts';
import { type Demand, demandsOf } from './serving.ts';

export interface ImproveQuestion {
  readonly brief: Brief;
  readonly traveller: string;
  readonly pieces: readonly Piece[];
  readonly wardrobe: readonly Piece[];
  readonly list?: PackingListPlan;
  readonly palette: readonly NamedColour[];
  readonly rules: HouseRuleSettings;
  readonly never?: readonly (readonly string[])[];
  readonly always?: readonly (readonly string[])[];
  /** Piece ids that are never swapped out: those of looks the stylist has fixed. */
  readonly keep?: readonly string[];
  readonly leaveOut?: readonly string[];
  readonly plan?: Plan;
}

/** Looks a question lists at most before it gives up pricing; a wardrobe of 300 has some two million. */
export const MOST_LOOKS = 6_000_000;

export const engineWith = (pieces: readonly Piece[], { rules, never = [], always = [] }: ImproveQuestion) =>
  createWardrobeEngine({ pieces, rules, never, always });

/** Each occasion of the traveller, and whether these pieces have a look for it. */
export interface Dressed {
  readonly demand: Demand;
  readonly hasLook: boolean;
}

/** An occasion has a look when any look of the pieces serves it, whatever else is worn on the trip. */
export const hasLook = (engine: WardrobeEngine, { restriction }: Demand, pieces: readonly string[] = []): boolean =>
  engine.rank(1, { ...restriction, pieces }).length > 0;

export const dressedBy = (question: ImproveQuestion, engine: WardrobeEngine): readonly Dressed[] =>
  demandsOf(question.brief, question.traveller, question.pieces).map((demand) => ({
    demand,
    hasLook: hasLook(engine, demand),
  }));
