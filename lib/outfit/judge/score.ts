import type { Slot } from '../../vocabulary/places.ts';
import { relationOf } from '../rules/relation.ts';
import type { Worn } from '../worn.ts';

/** How much of a look a slot makes: core first, then what lies over it, then shoes, then the rest. Own choice. */
const PRESENCE: Readonly<Partial<Record<Slot, number>>> = {
  'one-piece': 3,
  top: 3,
  bottom: 3,
  swim: 3,
  'mid layer': 2,
  'outer layer': 2,
  'cover-up': 2,
  shoes: 2,
  bag: 1,
  scarf: 1,
  headwear: 1,
  tie: 1,
  belt: 1,
  legwear: 1,
};

/** A colour relation that neither earns nor costs. The plain "two neutrals" of the colour room stands a little above. */
const EVEN_RELATION = 0.75;
const POINTS_A_RELATION = 50;

/** Points a pair earns by its colours, weighed by how much of the look the two make. About −80 to 110. */
export const pairPoints = (a: Worn, b: Worn): number => {
  const presence = (PRESENCE[a.slot] ?? 0) * (PRESENCE[b.slot] ?? 0);
  if (presence === 0) return 0;
  return Math.round((relationOf(a.piece, b.piece).score - EVEN_RELATION) * POINTS_A_RELATION * presence);
};

/** Points a cover-up earns: more than its colour beside swimwear can cost, and more when it is made for the water. Own choice. */
const COVERED_UP = 60;
const MADE_FOR_IT = 40;

/**
 * Points of one seat: a bag and one or two ornaments finish a look, swimwear wants something over it, and a piece out of
 * its own place costs a little. Own choice.
 */
export const seatPoints = ({ slot }: Worn, choice: number): number => {
  if (slot === 'cover-up') return COVERED_UP + (choice === 0 ? MADE_FOR_IT : 0);
  return (slot === 'bag' ? 6 : slot.startsWith('jewellery') ? 2 : 0) - 3 * choice;
};
