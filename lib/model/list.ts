import type { KindId } from '../vocabulary/kinds.ts';
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
