import type { KindId } from '../vocabulary/kinds.ts';
import type { SundryPace, SundryTrait } from '../vocabulary/sundry-traits.ts';
import type { SourceFile } from './piece.ts';

/** "n of these kinds". */
export interface ListLine {
  readonly what: string;
  readonly count: number;
  readonly kinds: readonly KindId[];
}

/** A generic packing list that can be filled in different moods. */
export interface PackingListPlan extends SourceFile {
  readonly id: string;
  readonly title: string;
  readonly lines: readonly ListLine[];
  readonly note: string;
}

/** Something that goes in the bag and is not worn in a look: linen, papers, liquids, leads. */
export interface Sundry {
  readonly name: string;
  readonly group: 'underthings' | 'wash bag' | 'liquids' | 'papers' | 'electrics' | 'medicines' | 'other';
  readonly count: number;
  readonly gramsEach: number;
  /** Litres in the bag, each. */
  readonly litresEach: number;
  readonly millilitres?: number;
  readonly wattHours?: number;
  /** A spare battery or power bank, which stays in the cabin. */
  readonly spareBattery?: boolean;
  readonly basis: 'given' | 'estimated';
}

/** A sundry the studio keeps in stock, and when and how often it is packed. */
export interface StockLine extends Omit<Sundry, 'count'> {
  /** How many for each of `per`. */
  readonly count: number;
  readonly per: SundryPace;
  /** Packed on top of what the pace asks for. */
  readonly spare: number;
  /** Never more than this. */
  readonly most?: number;
  /** Packed when the trip has any of these; always when empty. */
  readonly when: readonly SundryTrait[];
  /** Names of the travellers who pack it; all when empty. */
  readonly travellers: readonly string[];
  readonly file: string;
  readonly line?: number;
}
