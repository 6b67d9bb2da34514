import type {
  Brief,
  Finding,
  HouseRuleSettings,
  LookCounts,
  NamedColour,
  PackingListPlan,
  Piece,
  Plan,
} from '../model/index.ts';
import type { Solver } from '../plan/index.ts';
import type { Phrase } from '../words/index.ts';

export interface ChooseQuestion {
  readonly wardrobe: readonly Piece[];
  readonly brief: Brief;
  readonly traveller: string;
  readonly list: PackingListPlan;
  readonly mood: { readonly palette: readonly NamedColour[]; readonly words: readonly string[] };
  /** Piece ids that are chosen, whatever else is. */
  readonly keep?: readonly string[];
  readonly leaveOut?: readonly string[];
  /** The list's number, or the brief's where that is larger, when absent. */
  readonly piecesAtMost?: number;
  /** Of the clothes in the bags, grams and litres; what the brief's bags hold when absent. */
  readonly gramsAtMost?: number;
  readonly litresAtMost?: number;
  /** The looks to have the most of: with every choice of layers when absent, or of cores alone. */
  readonly most?: 'core' | 'layered';
  readonly rules: HouseRuleSettings;
  readonly never?: readonly (readonly string[])[];
  readonly always?: readonly (readonly string[])[];
  /** For the plan of each proposal; without it proposals are not planned. */
  readonly solver?: Solver;
  readonly seed?: number;
  /** Steps after which the proof of the best stops with what it has; some seconds' worth when absent. */
  readonly effort?: number;
  /** How many different proposals are wanted; three when absent. */
  readonly proposals?: number;
}

export interface Proposal {
  /** In the order of the list. */
  readonly pieces: readonly Piece[];
  readonly counts: LookCounts;
  /** Looks that no such filling of the list exceeds, and how far below it this one is at most, 0 to 1. */
  readonly bound: number;
  readonly gapAtMost: number;
  /** What is in the bags, with the heaviest outer layer and shoes worn where there is a journey. */
  readonly packed: { readonly grams: number; readonly litres: number };
  /** Occasion ids for which the pieces have a look. */
  readonly serves: readonly string[];
  readonly unserved: readonly string[];
  /** The plan with wears, washes and drying; absent without a solver. */
  readonly plan?: Plan;
  /** Pieces that the first proposal does not have, and those of the first that it does without. */
  readonly brings: readonly Piece[];
  readonly leaves: readonly Piece[];
  /** Against the other proposals. */
  readonly wins: readonly Phrase[];
  readonly loses: readonly Phrase[];
  /** The list check and the trade's advice. */
  readonly findings: readonly Finding[];
}

export type Choice =
  | {
      readonly possible: true;
      readonly proposals: readonly Proposal[];
      readonly eligible: number;
      readonly notes: readonly Phrase[];
    }
  /** No set of pieces will do: why, and the least that would mend it. */
  | { readonly possible: false; readonly findings: readonly Finding[] };
