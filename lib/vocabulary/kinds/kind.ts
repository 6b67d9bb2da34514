import type { Coverage } from '../coverage.ts';
import type { Cut, Length } from '../cuts.ts';
import type { DressCode } from '../dress-codes.ts';
import type { FabricId } from '../fabrics.ts';
import type { Need } from '../needs.ts';
import type { JewellerySite, Place } from '../places.ts';

/** What a kind of garment, shoe or accessory is by default; any field can be overridden in a piece's file. */
export interface Kind {
  /** Plural, for headings and counts. */
  readonly plural: string;
  /** How the kind is grouped for people: `tops`, `shoes`. */
  readonly group: KindGroup;
  readonly places: readonly Place[];
  readonly site?: JewellerySite;
  readonly fabric: FabricId;
  readonly cut: Cut;
  readonly length: Length;
  /** Insulation I_clu in clo for the default fabric, and the table's garment it is read from. */
  readonly clo: readonly [value: number, source: CloSource];
  /** Mass in grams, medium size, and where it comes from. */
  readonly grams: readonly [value: number, source: MassSource];
  /** Packed volume in litres, folded or rolled; Wayfold's own estimate for every kind. */
  readonly litres: number;
  readonly dress: readonly [low: DressCode, high: DressCode];
  /** Wears between washes, and where it comes from. */
  readonly wears: readonly [value: number, source: WearSource];
  /** Hours to dry indoors after a wash; no published times were found, so Wayfold's own estimate. */
  readonly dryHours: number;
  readonly covers: readonly Coverage[];
  readonly suits: readonly Need[];
  readonly heelCm: number;
}

/**
 * `ashrae: T-shirt` names a row of the ASHRAE table, `iso: coat` one of ISO 9920, `own` is an estimate; a name that
 * stands in two categories has its category before it, `ashrae: sweaters: sleeveless vest (thick)`.
 */
export type CloSource = `ashrae: ${string}` | `iso: ${string}` | `own: ${string}` | 'none';
/** `products: …` names a row of the public product masses; `own` is an estimate. */
export type MassSource = `products: ${string}` | 'own';
/** `care: …` names a row of the trade association's advice, `products: …` one of the public product table. */
export type WearSource = `care: ${string}` | `products: ${string}` | 'own';

export const KIND_GROUPS = [
  'tops',
  'knits',
  'bottoms',
  'one-pieces',
  'swimwear',
  'layers',
  'coats',
  'legwear',
  'shoes',
  'bags',
  'jewellery',
  'accessories',
] as const;
export type KindGroup = (typeof KIND_GROUPS)[number];

type Row = Partial<Kind> & Pick<Kind, 'plural' | 'grams' | 'litres'>;

/** A table of kinds that share most defaults: each row states only what differs. */
export const kinds = <const Id extends string>(
  shared: Omit<Kind, 'plural' | 'grams' | 'litres'>,
  rows: Readonly<Record<Id, Row>>,
): Readonly<Record<Id, Kind>> =>
  Object.fromEntries(Object.entries<Row>(rows).map(([id, row]) => [id, { ...shared, ...row }])) as Readonly<
    Record<Id, Kind>
  >;
