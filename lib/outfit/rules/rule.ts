import type { RuleSeverity } from '../../model/house-rules.ts';
import type { Piece } from '../../model/piece.ts';
import type { Slot } from '../../vocabulary/places.ts';
import type { Phrase } from '../../words/phrase.ts';
import type { Restriction } from '../restriction.ts';
import type { Worn } from '../worn.ts';

export interface Threshold {
  readonly default: number;
  readonly low: number;
  readonly high: number;
  /** What the number counts or measures. */
  readonly unit: Phrase;
}

interface RuleBase {
  /** As written in the house rules. */
  readonly id: string;
  /** What it says to a stylist. */
  readonly says: Phrase;
  readonly severity: RuleSeverity;
  readonly threshold?: Threshold;
  /** Points a look loses for each breach when the rule only lowers the score. */
  readonly points: number;
  /** Where rule and default come from. */
  readonly source: string;
}

/** Two worn pieces, `a` in the earlier slot. Says what is wrong, or nothing. */
export interface PairRule extends RuleBase {
  readonly shape: 'pair';
  readonly between: (a: Worn, b: Worn, threshold: number) => Phrase | undefined;
}

/** At most `threshold` pieces of a class in one look. */
export interface CapRule extends RuleBase {
  readonly shape: 'cap';
  readonly threshold: Threshold;
  readonly counts: (worn: Worn) => boolean;
  readonly tooMany: (pieces: readonly Piece[], most: number) => Phrase;
}

/** At most `threshold` different marks over all pieces of a look. */
export interface MarksRule extends RuleBase {
  readonly shape: 'marks';
  readonly threshold: Threshold;
  readonly marks: (worn: Worn) => readonly string[];
  readonly tooMany: (marks: readonly string[], most: number) => Phrase;
}

/** A worn piece that asks for something in a slot: says what is wrong with leaving it empty, or nothing. */
export interface EmptyRule extends RuleBase {
  readonly shape: 'empty';
  readonly slot: Slot;
  readonly without: (worn: Worn, threshold: number) => Phrase | undefined;
}

/** One worn piece at what is asked for. */
export interface OccasionRule extends RuleBase {
  readonly shape: 'occasion';
  readonly at: (worn: Worn, asked: Restriction, threshold: number) => Phrase | undefined;
}

/** The stylist's sets of pieces: never together, or always together. The sets come from the capsule. */
export interface SetRule extends RuleBase {
  readonly shape: 'never' | 'always';
}

export type HouseRule = PairRule | CapRule | MarksRule | EmptyRule | OccasionRule | SetRule;

export const COMMON_PRACTICE = 'common practice, no source';
/** Points lost by a breach of ordinary weight. A pair of core pieces earns up to some 100. */
export const ORDINARY_POINTS = 40;
