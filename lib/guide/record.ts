import type { BagReport } from '../bag/index.ts';
import type { ListCheck } from '../capsule/index.ts';
import type { HardToTell, PaletteReport } from '../colour/index.ts';
import type {
  Brief,
  Capsule,
  DressInterval,
  Finding,
  Look,
  LookComfort,
  LookCounts,
  Packing,
  Piece,
  Plan,
  Studio,
} from '../model/index.ts';
import type { RuleId } from '../outfit/index.ts';
import type { Phrase } from '../words/index.ts';
import type { Swap } from './neighbours.ts';

/** A look that is shown: numbered, named, and with what a reader needs to wear it. */
export interface GuideLook {
  /** From 1, in the order of the lookbook. */
  readonly number: number;
  /** For addresses: `look-07`. */
  readonly slug: string;
  readonly title: Phrase;
  readonly look: Look;
  readonly dress: DressInterval;
  /** At what it is planned for outdoors; strolling where it is planned for nothing there. */
  readonly outdoors: LookComfort;
  /** At what it is planned for indoors; sitting where it is planned for nothing there. */
  readonly indoors: LookComfort;
  /** Occasion ids for which the plan uses it. */
  readonly occasions: readonly string[];
  readonly favourite: boolean;
  /** When to wear it, in words. */
  readonly wearIt: readonly Phrase[];
  /** For a card: what is worn on the way beside the look, and the caution of a cold swim. */
  readonly outInShort: readonly Phrase[];
  /** The stylist's note and the notes of its pieces, Markdown. */
  readonly note: string;
  /** Its pieces that a person with two-cone vision can hardly tell apart: its pictures need their names in words. */
  readonly hardToTell: readonly HardToTell[];
  /** Other shown looks that differ by one piece and do for what this one is planned for: which goes out, which comes in. */
  readonly neighbours: readonly { readonly number: number; readonly out: string; readonly in: string }[];
  /** A few exchanges of one piece after which it still does for what it is planned for. */
  readonly swaps: readonly Swap[];
}

/** A top and a bottom: whether they go, why not, and which shown looks use them. */
export interface GuidePair {
  readonly top: string;
  readonly bottom: string;
  readonly goes: boolean;
  readonly reasons: readonly Phrase[];
  /** The rules that rule it out, in the order of the reasons; empty when it goes. */
  readonly rules: readonly RuleId[];
  readonly looks: readonly number[];
}

/** What one piece brings. */
export interface GuidePiece {
  readonly piece: string;
  /** Layered looks that contain it: what is lost if it stays at home. */
  readonly layeredLooks: bigint;
  readonly completeLooks: bigint;
  /** Numbers of the shown looks with it. */
  readonly shownIn: readonly number[];
  readonly wears: number;
}

/** Everything computed for one capsule of one trip, and nothing drawn. Immutable; every deliverable reads only this. */
export interface Guide {
  /** `<trip>/<capsule>`. */
  readonly id: string;
  readonly studio: Studio;
  readonly brief: Brief;
  readonly capsule: Capsule;
  /** In the order of the kind groups. */
  readonly pieces: readonly Piece[];
  /** The one accent the guide takes from its own palette, legible on paper (light) and at night (dark). */
  readonly accent: { readonly light: string; readonly dark: string };
  readonly counts: LookCounts;
  readonly looks: readonly GuideLook[];
  readonly pairs: readonly GuidePair[];
  readonly earnings: readonly GuidePiece[];
  readonly palette: PaletteReport;
  readonly plan: Plan;
  readonly packing: Packing;
  readonly bagReport: BagReport;
  /** The pieces beside their list; absent without one. */
  readonly listCheck?: ListCheck;
  readonly findings: readonly Finding[];
}
