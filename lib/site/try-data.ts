import type { Shape } from '../draw/flat-lay/index.ts';
import type { Studio } from '../model/index.ts';
import type { PackedRules } from '../outfit/index.ts';
import type { Slot } from '../vocabulary/index.ts';

/** What the page for trying has to know of one piece to lay it out. Addresses are relative to the page. */
export interface TryPiece {
  /** The place it is made for. */
  readonly slot: Slot;
  readonly shape: Shape;
  readonly clear: string;
  readonly night: string;
  /** True size of what the picture shows, margins included. */
  readonly widthCm: number;
  readonly heightCm: number;
  /** Why the client does not wear it, when the brief refuses it. */
  readonly refused?: string;
}

/** Everything that the page for trying carries: the rules' answers, the shapes, the words. Plain data. */
export interface TryData {
  readonly studio: Pick<Studio, 'language' | 'temperature' | 'length' | 'weight'>;
  readonly rules: PackedRules;
  readonly pieces: Readonly<Record<string, TryPiece>>;
  /** Shown looks by the id of the look. */
  readonly looks: Readonly<Record<string, { readonly text: string; readonly href: string }>>;
  readonly words: Readonly<
    Record<'goes' | 'goesSoFar' | 'not' | 'empty' | 'board' | 'crowded' | 'copied' | 'heading', string>
  >;
}
