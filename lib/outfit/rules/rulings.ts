import type { RuleSeverity } from '../../model/house-rules.ts';
import type { Piece } from '../../model/piece.ts';
import type { Slot } from '../../vocabulary/places.ts';
import type { Phrase } from '../../words/phrase.ts';
import type { Worn } from '../worn.ts';
import type { HouseRuleId } from './index.ts';

/** A rule in force, with what the studio and the capsule set. */
export interface InForce<R> {
  readonly id: HouseRuleId;
  readonly rule: R;
  readonly severity: Exclude<RuleSeverity, 'off'>;
  readonly threshold: number;
}

/**
 * What judging asks of the rules in force: enough to say what stands against pieces worn together. A rulebook answers
 * from the rules themselves, a page from the answers that were packed for its pieces.
 */
export interface Rulings<P = Piece> {
  /** Ids of rules in the order in which reasons are told. */
  readonly order: readonly HouseRuleId[];
  readonly pairs: readonly InForce<{
    readonly between: (a: Worn<P>, b: Worn<P>, threshold: number) => Phrase | undefined;
  }>[];
  readonly caps: readonly {
    readonly id: HouseRuleId;
    readonly severity: Exclude<RuleSeverity, 'off'>;
    readonly most: number;
    readonly counts: (worn: Worn<P>) => boolean;
    readonly tooMany: (pieces: readonly P[], most: number) => Phrase;
  }[];
  readonly marks: readonly InForce<{
    readonly marks: (worn: Worn<P>) => readonly string[];
    readonly tooMany: (marks: readonly string[], most: number) => Phrase;
  }>[];
  readonly empties: readonly InForce<{
    readonly slot: Slot;
    readonly without: (worn: Worn<P>, threshold: number) => Phrase | undefined;
  }>[];
  readonly companions: readonly {
    readonly id: HouseRuleId;
    readonly severity: Exclude<RuleSeverity, 'off'>;
    readonly piece: string;
    readonly partner: string;
  }[];
}
