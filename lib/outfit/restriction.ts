import type { DressCode } from '../vocabulary/dress-codes.ts';
import type { Need } from '../vocabulary/needs.ts';
import type { CoreForm } from './grammar/forms.ts';

/** What a question asks for. Every field narrows; an empty restriction asks nothing. */
export interface Restriction {
  /** Piece ids that must be worn. */
  readonly pieces?: readonly string[];
  /** Piece ids that must not be worn. */
  readonly without?: readonly string[];
  /** Forms of core that may be worn; all when absent. */
  readonly cores?: readonly CoreForm[];
  readonly dress?: DressCode;
  readonly needs?: readonly Need[];
  /** Sum of the garments' clo: with everything on at least `min`, with the removable layers off at most `max`. */
  readonly clo?: { readonly min: number; readonly max: number };
  readonly heelCmAtMost?: number;
  /** True asks for shoes without a heel, at most `FLAT_HEEL_CM`. */
  readonly flat?: boolean;
}

/** Highest heel that is still called flat, centimetres. common practice, no source */
export const FLAT_HEEL_CM = 3;

/** True when it describes an occasion, and so asks something of the finished look and not only of its pieces. */
export const isForOccasion = (restriction: Restriction): boolean =>
  restriction.dress !== undefined ||
  restriction.needs !== undefined ||
  restriction.clo !== undefined ||
  restriction.heelCmAtMost !== undefined ||
  restriction.flat === true;
