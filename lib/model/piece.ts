import type { Coverage } from '../vocabulary/coverage.ts';
import type { Cut, Length } from '../vocabulary/cuts.ts';
import type { FabricId } from '../vocabulary/fabrics.ts';
import type { KindId } from '../vocabulary/kinds.ts';
import type { Need } from '../vocabulary/needs.ts';
import type { PatternScale, PatternType } from '../vocabulary/patterns.ts';
import type { JewellerySite, Place } from '../vocabulary/places.ts';
import type { PieceColour } from './colour.ts';
import type { Measure } from './measure.ts';

/** Formality as an interval of indices into `DRESS_CODES`, both ends included. */
export interface DressInterval {
  readonly low: number;
  readonly high: number;
}

/** Where the text of a piece's field stands, so that a finding can point at it. */
export interface SourceFile {
  /** Path below the content folder, with `/`. */
  readonly file: string;
}

/** Fields of a piece that a finding may point at. */
export type PieceField = 'name' | 'colours' | 'length cm' | 'heel cm' | 'photo';

/** One garment, pair of shoes or accessory with every default filled in. */
export interface Piece extends SourceFile {
  /** File name without `.md`; unique within its wardrobe. */
  readonly id: string;
  readonly wardrobe: string;
  /** Lines of fields as they are written in the file. */
  readonly lines?: Readonly<Partial<Record<PieceField, number>>>;
  readonly name: string;
  readonly kind: KindId;
  readonly places: readonly Place[];
  /** For jewellery only: where on the body. */
  readonly site?: JewellerySite;
  /** Never empty; the first is the ground. */
  readonly colours: readonly PieceColour[];
  /** `plain` when there is no pattern. */
  readonly pattern: { readonly type: PatternType; readonly scale: PatternScale };
  readonly cut: Cut;
  readonly length: Length;
  /** Length in centimetres when the stylist measured it: garment length, shaft of a boot, strap drop of a bag. */
  readonly lengthCm?: number;
  readonly heelCm: number;
  readonly fabric: FabricId;
  /** As written: `brushed cotton flannel`. */
  readonly fabricText: string;
  /** True on a trip whose client does not wear this cloth against the skin. */
  readonly offSkin?: true;
  readonly grams: Measure;
  readonly litres: Measure;
  /** Insulation of the single garment, I_clu, in clo. */
  readonly clo: Measure;
  readonly dress: DressInterval;
  readonly covers: readonly Coverage[];
  /** Needs this piece meets: shoes for uneven ground, a coat for rain. */
  readonly suits: readonly Need[];
  readonly care: {
    /** Degrees Celsius, by hand, or not in a machine. */
    readonly wash: number | 'hand' | 'dry clean' | 'wipe';
    readonly dryHours: Measure;
  };
  /** Wears between washes. */
  readonly wears: Measure;
  readonly status: 'owned' | 'borrowed' | 'to buy';
  readonly price?: { readonly amount: number; readonly currency: string };
  readonly size?: string;
  /** Path of a photo below the content folder. */
  readonly photo?: string;
  /** A bold piece of jewellery, bag, scarf, hat or belt that carries a plain look. */
  readonly statement: boolean;
  /** The stylist's note, Markdown, published. */
  readonly note: string;
  /** For the stylist only; never published outside the stylist's own edition. */
  readonly noteToSelf?: string;
  /** Front-matter names of the fields that were not given and came from the kind or the fabric. */
  readonly estimated: readonly string[];
}
