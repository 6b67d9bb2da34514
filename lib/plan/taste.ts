import type { Occasion, Piece } from '../model/index.ts';
import { dressIndex, type FabricId, type KindId, type Slot } from '../vocabulary/index.ts';

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
  /** Each step on the scale of dress codes by which the middle of a garment's interval is off the occasion. */
  step: 2.5,
} as const;

/** Cloths that dress up. common practice, no source */
const DRESSY_CLOTH: ReadonlySet<FabricId> = new Set<FabricId>(['satin', 'silk', 'sequin', 'velvet', 'lace', 'chiffon']);
const DRESSY_FROM = dressIndex('cocktail');
const DRESSY_CLOTHS_COUNTED = 2;
const CORE: ReadonlySet<Slot> = new Set<Slot>(['one-piece', 'top', 'bottom']);
/** One-pieces with legs. */
const WITH_LEGS: ReadonlySet<KindId> = new Set<KindId>(['jumpsuit', 'playsuit', 'dungarees']);

export interface WornAs {
  readonly piece: Piece;
  readonly slot: Slot;
}

const isSkirtOrDress = ({ piece, slot }: WornAs): boolean =>
  (slot === 'one-piece' && !WITH_LEGS.has(piece.kind)) || (slot === 'bottom' && piece.kind.includes('skirt'));

/**
 * What taste says against a look at an occasion; lower is better, and nothing is forbidden. Trousers or shorts for
 * walks, dressy cloth for the evening rather than for trains and paths, and garments that are neither too plain nor
 * too dressy. common practice, no source
 */
export const tasteCost = ({ dress, needs, setting, transit }: Occasion, worn: readonly WornAs[]): number => {
  if (needs.includes('swim')) return 0;
  const core = worn.filter(({ slot }) => CORE.has(slot));
  const uneven = needs.includes('uneven ground');
  const outdoors = setting.where === 'outdoors';
  const skirted = core.some(isSkirtOrDress);
  const skirt = uneven
    ? COST.skirtOnUnevenGround
    : outdoors && needs.includes('long walking')
      ? COST.skirtOnLongWalk
      : 0;
  const dressyCloths = Math.min(
    DRESSY_CLOTHS_COUNTED,
    core.filter(({ piece }) => DRESSY_CLOTH.has(piece.fabric)).length,
  );
  const asked = dressIndex(dress);
  const clothCost =
    asked >= DRESSY_FROM
      ? COST.dressyClothInTheEvening
      : transit || uneven
        ? COST.dressyClothOnTheWay
        : outdoors && asked === 0
          ? COST.dressyClothOutdoors
          : 0;
  const steps = core.reduce((sum, { piece }) => sum + Math.abs((piece.dress.low + piece.dress.high) / 2 - asked), 0);
  return (skirted ? skirt : 0) + clothCost * dressyCloths + (COST.step * steps) / Math.max(1, core.length);
};
