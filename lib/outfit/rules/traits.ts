import type { Piece } from '../../model/piece.ts';
import { CUTS, LENGTHS, type Length } from '../../vocabulary/cuts.ts';
import { FABRICS } from '../../vocabulary/fabrics.ts';
import { isForWarmth, isSkirt, KINDS, type KindId } from '../../vocabulary/kinds.ts';
import type { Slot } from '../../vocabulary/places.ts';
import type { Worn } from '../worn.ts';

/** What the trade reads off a piece; shared by the rules. */
const kinds = (...ids: KindId[]): ReadonlySet<KindId> => new Set(ids);

export const SHORTS = kinds('shorts', 'tailored shorts', 'playsuit');
const TAILORED = [
  'blazer',
  'double-breasted blazer',
  'suit jacket',
  'dinner jacket',
  'linen jacket',
  'waistcoat',
] as const satisfies readonly KindId[];
export const LAPELLED = kinds(...TAILORED, 'wool coat', 'trench coat');
export const TAKES_TIE = kinds('shirt', 'dress shirt', 'short-sleeved shirt', 'flannel shirt');
/** Middle layers that a tie is worn under: a jacket, a waistcoat, a knit that leaves the collar and the knot to be seen. common practice, no source */
export const OVER_TIE = kinds(...TAILORED, 'knitted jacket', 'cardigan', 'slipover', 'v-neck jumper');
/** What nobody wears with a tie: it asks for leather shoes. common practice, no source */
export const TOO_EASY_FOR_TIE = kinds(
  'trainers',
  'canvas shoes',
  'walking shoes',
  'hiking boots',
  'boat shoes',
  'espadrilles',
  'sandals',
  'flip-flops',
);
/** What is too heavy or too dressy below shorts. common practice, no source */
export const HEAVY_FOR_SHORTS = kinds(
  'oxford shoes',
  'derby shoes',
  'brogues',
  'ankle boots',
  'chelsea boots',
  'lace-up boots',
  'pumps',
);
export const NECK_BOWS = kinds('bow blouse');
export const WITHOUT_BELT = kinds('joggers', 'leggings', 'dungarees', 'slip dress', 'evening gown', 'sheath dress');
export const BOOTS = kinds(
  'hiking boots',
  'ankle boots',
  'chelsea boots',
  'knee boots',
  'walking shoes',
  'trainers',
  'canvas shoes',
);

/** Coats, gloves, woollen hats and scarves: taken off at the door, so that they set no dress code. common practice, no source */
export const isLeftAtDoor = (piece: Pick<Piece, 'kind' | 'places'>): boolean =>
  isForWarmth(piece) || (KINDS[piece.kind].group === 'coats' && piece.places.every((place) => place === 'outer layer'));

export const volumeOf = ({ cut }: Piece): number => CUTS[cut].volume;
export const lengthIndex = (length: Length): number => LENGTHS.indexOf(length);
export const surfaceOf = ({ fabric }: Piece): string => FABRICS[fabric].surface;

/** A dress, skirt, shorts or playsuit: legs are seen below it. */
export const showsLegs = ({ piece, slot }: Worn): boolean =>
  (slot === 'bottom' || slot === 'one-piece') &&
  (isSkirt(piece) ||
    SHORTS.has(piece.kind) ||
    (slot === 'one-piece' && lengthIndex(piece.length) < lengthIndex('full')) ||
    lengthIndex(piece.length) <= lengthIndex('midi'));

/** Bare sandals, flip-flops, mules: what leaves the foot open. */
export const isOpenShoe = ({ piece, slot }: Worn): boolean => slot === 'shoes' && !piece.covers.includes('feet');
/** Socks end on the foot or calf; tights and leggings cover the knee. */
export const isSock = ({ piece, slot }: Worn): boolean => slot === 'legwear' && !piece.covers.includes('knees');

const ACCESSORY_SLOTS: ReadonlySet<Slot> = new Set<Slot>([
  'jewellery ears',
  'jewellery neck',
  'jewellery wrist',
  'jewellery finger',
  'jewellery lapel',
  'headwear',
  'scarf',
  'belt',
]);
/** What ornaments a look; a bag, spectacles, gloves and a tie serve a purpose and are not counted. */
export const isOrnament = ({ slot }: Worn): boolean => ACCESSORY_SLOTS.has(slot);
export const isJewellery = ({ slot }: Worn): boolean => slot.startsWith('jewellery');
/** Worn under other clothes, where nobody sees it. */
export const UNDERLAYERS: ReadonlySet<Slot> = new Set<Slot>(['base layer', 'leg layer']);

/** Hidden or too small to take part in colour, pattern and hue. */
export const isUnseen = ({ slot }: Worn): boolean =>
  slot === 'eyewear' || UNDERLAYERS.has(slot) || slot.startsWith('jewellery');

/** Sorts a pair by wanted slots: `[top, bottom]` whichever came first; undefined when it is another pair of slots. */
export const pairIn = (
  a: Worn,
  b: Worn,
  first: (worn: Worn) => boolean,
  second: (worn: Worn) => boolean,
): readonly [Worn, Worn] | undefined => (first(a) && second(b) ? [a, b] : first(b) && second(a) ? [b, a] : undefined);

export const inSlot =
  (...slots: Slot[]) =>
  ({ slot }: Worn): boolean =>
    slots.includes(slot);
