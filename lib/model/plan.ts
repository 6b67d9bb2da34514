import type { Phrase } from '../words/phrase.ts';
import type { Weather } from './brief.ts';
import type { Look } from './look.ts';
import type { ClockTime, IsoDate } from './measure.ts';

/** What is worn out of doors on the way to an occasion and back, and not there. */
export interface Way {
  /** Put on over the look, or after a swim; piece ids, from the body outwards. */
  readonly worn: readonly string[];
  /** Tights under bare legs. */
  readonly under?: string;
  /** Shoes for the ground, changed for those of the look on arriving. */
  readonly shoes?: string;
  /** Lowest air of the day, °C. */
  readonly lowC: number;
}

export interface PlannedOccasion {
  /** Occasion id. */
  readonly occasion: string;
  /** Undefined when no look serves. */
  readonly look?: Look;
  /** Layers worn, and layers to take along; piece ids. */
  readonly layersOn: readonly string[];
  readonly layersCarried: readonly string[];
  /** Absent where the way asks for nothing. */
  readonly way?: Way;
  /** Against the look before it on the same day. */
  readonly change: 'first' | 'goes on' | 'layers only' | 'changes clothes';
  /** Air temperature that was planned for, °C, lowest and highest. */
  readonly airC?: { readonly low: number; readonly high: number };
  readonly uvIndex?: number;
  readonly reasons: readonly Phrase[];
  readonly cautions: readonly Phrase[];
  /** What of the occasion a look the stylist fixed does not meet; absent when it meets everything. */
  readonly misses?: readonly Phrase[];
}

export interface PlannedDay {
  readonly date: IsoDate;
  /** Where most of the day is spent; undefined when no stay covers it, or on the way home. */
  readonly place?: string;
  readonly weather?: Weather;
  /** After the last journey, with nothing more planned: the client is on the way home, in no place of the brief. */
  readonly homeward?: true;
  readonly occasions: readonly PlannedOccasion[];
  /** Pieces washed at the end of this day, and the day and full hour by which each is dry. */
  readonly wash: readonly { readonly piece: string; readonly dryBy: IsoDate; readonly dryAt: ClockTime }[];
}

/** What a stylist writes into a content file. */
export interface PlanEntry {
  /** Path below the content folder. */
  readonly file: string;
  /** Line of the list or the occasion; undefined when there is none yet. */
  readonly line?: number;
  readonly action: 'add' | 'write' | 'take out';
  /** The field as it is written in content. */
  readonly field: string;
  readonly value: string;
}

/** One change that would let an occasion be served, smallest first. */
export interface PlanMend {
  /** The change, and what to write where. */
  readonly what: Phrase;
  readonly entries: readonly PlanEntry[];
  readonly serves: readonly string[];
}

export interface UnservedOccasion {
  readonly occasion: string;
  readonly nearest?: Look;
  readonly lacks: readonly Phrase[];
  readonly mends: readonly PlanMend[];
  /** So many occasions have no look that no mend was sought for this one. */
  readonly untried?: true;
}

/** What happens to the plan when one piece is spoilt, or a day turns wet. */
export interface WeakPoint {
  readonly what: Phrase;
  /** Piece id, when it is about a piece. */
  readonly piece?: string;
  readonly loses: readonly string[];
  /** Those of them that a cleverer plan may yet serve; absent when all are lost for certain. */
  readonly perhaps?: readonly string[];
}

/** The plan of one traveller: every occasion with its look. */
export interface Plan {
  readonly traveller: string;
  readonly days: readonly PlannedDay[];
  readonly served: number;
  readonly of: number;
  /** True when no plan with these pieces serves more. */
  readonly proven: boolean;
  readonly unserved: readonly UnservedOccasion[];
  readonly weakPoints: readonly WeakPoint[];
  /** Days on which each piece is worn or taken along, by piece id. */
  readonly wears: Readonly<Record<string, number>>;
}
