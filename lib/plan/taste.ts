import type { Occasion, Piece } from '../model/index.ts';
import {
  CORE_SLOTS,
  dressIndex,
  FABRICS,
  FINE_SURFACES,
  isSkirt,
  type KindId,
  type Slot,
} from '../vocabulary/index.ts';

/** What taste adds to the cost of a look at an occasion. Own choice, on the scale of the plan's other costs. */
const COST = {
  /** A skirt or dress where the ground is uneven; next to it, on a long walk outdoors. */
  skirtOnUnevenGround: 14,
  skirtOnLongWalk: 5,
  /** A dressy cloth on rough ground or a journey, and at any other casual occasion out of doors. */
  dressyClothOnTheWay: 8,
  dressyClothOutdoors: 4,
  /** At a dressy occasion: each garment of a dressy cloth, up to two. */
  dressyClothInTheEvening: -5,
  /** Thermal underwear for the only top that is seen. */
  thermalForTop: 30,
  /** Each step on the scale of dress codes by which the middle of a garment's interval is off the occasion. */
  step: 2.5,
} as const;

const DRESSY_FROM = dressIndex('cocktail');
const DRESSY_CLOTHS_COUNTED = 2;
/** One-pieces with legs. */
const WITH_LEGS: ReadonlySet<KindId> = new Set<KindId>(['jumpsuit', 'playsuit', 'dungarees']);

export interface WornAs {
  readonly piece: Piece;
  readonly slot: Slot;
}

export const isSkirtOrDress = ({ piece, slot }: WornAs): boolean =>
  (slot === 'one-piece' && !WITH_LEGS.has(piece.kind)) || (slot === 'bottom' && isSkirt(piece));

const isDressyCloth = ({ piece }: WornAs): boolean => FINE_SURFACES.has(FABRICS[piece.fabric].surface);

/** What a skirt or dress costs where one walks. */
const skirtCost = ({ needs, setting }: Occasion): number => {
  if (needs.includes('uneven ground')) return COST.skirtOnUnevenGround;
  return setting.where === 'outdoors' && needs.includes('long walking') ? COST.skirtOnLongWalk : 0;
};

/** What each garment of a dressy cloth costs. */
const dressyClothCost = ({ dress, needs, setting, transit }: Occasion): number => {
  if (dressIndex(dress) >= DRESSY_FROM) return COST.dressyClothInTheEvening;
  if (transit || needs.includes('uneven ground')) return COST.dressyClothOnTheWay;
  return setting.where === 'outdoors' && dress === 'casual' ? COST.dressyClothOutdoors : 0;
};

/** Steps between the middle of a garment's interval on the scale of dress codes and what is asked. */
const stepsOff = ({ piece: { dress } }: WornAs, asked: number): number =>
  Math.abs((dress.low + dress.high) / 2 - asked);

/**
 * What taste says against a look at an occasion; lower is better, and nothing is forbidden. Trousers or shorts for
 * walks, dressy cloth for the evening rather than for trains and paths, garments that are neither too plain nor
 * too dressy, and no thermal top for a shirt. common practice, no source
 */
export const tasteCost = (occasion: Occasion, worn: readonly WornAs[]): number => {
  if (occasion.needs.includes('swim')) return 0;
  const core = worn.filter(({ slot }) => CORE_SLOTS.has(slot));
  const asked = dressIndex(occasion.dress);
  const steps = core.reduce((sum, garment) => sum + stepsOff(garment, asked), 0);
  const dressyCloths = Math.min(DRESSY_CLOTHS_COUNTED, core.filter(isDressyCloth).length);
  return (
    (core.some(isSkirtOrDress) ? skirtCost(occasion) : 0) +
    dressyClothCost(occasion) * dressyCloths +
    (core.some(({ piece, slot }) => slot === 'top' && piece.kind === 'thermal top') ? COST.thermalForTop : 0) +
    (COST.step * steps) / Math.max(1, core.length)
  );
};
