import type { KindGroup } from '../vocabulary/kinds.ts';
import type { Phrase } from '../words/phrase.ts';
import type { Bag } from './brief.ts';
import type { Sundry } from './list.ts';
import type { IsoDate, Measure } from './measure.ts';

export interface PackedPiece {
  readonly piece: string;
  readonly group: KindGroup;
  readonly grams: Measure;
  readonly litres: Measure;
  /** Journeys on which it is worn and so not in the bag. */
  readonly wornOn: readonly IsoDate[];
  readonly fold: 'fold' | 'roll' | 'wear' | 'flat' | 'fill' | 'shoe bag' | 'pouch';
}

export interface PackedSundry {
  readonly sundry: Sundry;
  readonly grams: Measure;
}

export interface PackedBag {
  readonly bag: Bag;
  /** In packing order: what goes in first comes first. */
  readonly pieces: readonly PackedPiece[];
  readonly sundries: readonly PackedSundry[];
  /** Everything with the bag's own weight, as packed for the first departure. */
  readonly grams: Measure;
  readonly litres: Measure;
  /** The journey on which it is heaviest, when that is not the first: other clothes are worn then. */
  readonly heaviest?: { readonly on: IsoDate; readonly grams: Measure };
}

/** The packing list: every piece in one bag or on the body. */
export interface Packing {
  readonly bags: readonly PackedBag[];
  /** Worn at the first departure. */
  readonly worn: readonly PackedPiece[];
  readonly wornGrams: Measure;
  /** Share of the weight that was weighed rather than estimated, 0 to 1. */
  readonly weighedShare: number;
  readonly notes: readonly Phrase[];
}
