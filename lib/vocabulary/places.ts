/** Where a piece is worn in a look, in the order looks are written and drawn. */
export const PLACES = [
  'one-piece',
  'top',
  'bottom',
  'swim',
  'cover-up',
  'mid layer',
  'outer layer',
  'base layer',
  'leg layer',
  'legwear',
  'shoes',
  'bag',
  'jewellery',
  'eyewear',
  'headwear',
  'scarf',
  'tie',
  'gloves',
  'belt',
] as const;
export type Place = (typeof PLACES)[number];

/** Where on the body jewellery sits; at most one piece a site. */
export const JEWELLERY_SITES = ['ears', 'neck', 'wrist', 'finger', 'lapel'] as const;
export type JewellerySite = (typeof JEWELLERY_SITES)[number];

/** A seat in a look: a place, with jewellery split by site. */
export type Slot = Exclude<Place, 'jewellery'> | `jewellery ${JewellerySite}`;

/** All slots in the fixed order of looks. */
export const SLOTS: readonly Slot[] = PLACES.flatMap((place): Slot[] =>
  place === 'jewellery' ? JEWELLERY_SITES.map((site): Slot => `jewellery ${site}`) : [place],
);

/** The slots that make the core of a look. */
export const CORE_SLOTS: ReadonlySet<Slot> = new Set<Slot>(['one-piece', 'top', 'bottom', 'swim']);
/** Layers over the core: a cover-up is to swimwear what a jacket is to a shirt. */
export const LAYER_SLOTS: ReadonlySet<Slot> = new Set<Slot>(['cover-up', 'mid layer', 'outer layer']);
