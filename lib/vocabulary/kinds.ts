import { ACCESSORIES, BAGS, JEWELLERY } from './kinds/accessories.ts';
import { BOTTOMS } from './kinds/bottoms.ts';
import { LEGWEAR, SHOES } from './kinds/feet.ts';
import type { Kind } from './kinds/kind.ts';
import { KNITS } from './kinds/knits.ts';
import { COATS, LAYERS } from './kinds/layers.ts';
import { ONE_PIECES, SWIMWEAR } from './kinds/one-pieces.ts';
import { TOPS } from './kinds/tops.ts';

export { KIND_GROUPS, type Kind, type KindGroup } from './kinds/kind.ts';

const TABLE = {
  ...TOPS,
  ...KNITS,
  ...BOTTOMS,
  ...ONE_PIECES,
  ...SWIMWEAR,
  ...LAYERS,
  ...COATS,
  ...LEGWEAR,
  ...SHOES,
  ...BAGS,
  ...JEWELLERY,
  ...ACCESSORIES,
};
export type KindId = keyof typeof TABLE;

/** Every kind the studio knows, in the order lists are written. */
export const KINDS: Readonly<Record<KindId, Kind>> = TABLE;
export const KIND_IDS = Object.keys(TABLE) as readonly KindId[];

/** What a kind says of a piece. */
interface OfKind {
  readonly kind: KindId;
}

/** For head, neck and hands, there for warmth and not seen indoors. common practice, no source */
const FOR_WARMTH: ReadonlySet<KindId> = new Set<KindId>([
  'beanie',
  'scarf',
  'chunky scarf',
  'gloves',
  'leather gloves',
  'mittens',
]);
export const isForWarmth = ({ kind }: OfKind): boolean => FOR_WARMTH.has(kind);

export const isSkirt = ({ kind }: OfKind): boolean => kind.endsWith('skirt');
