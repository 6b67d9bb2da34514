import type { Piece } from '../model/index.ts';
import type { Place } from '../vocabulary/index.ts';

/**
 * Share of the body a piece in this place shows, by the rule of nines (head 9, each arm 9, trunk 36, each leg 18
 * percent; Wallace 1951, from memory); what is carried or worn small is Wayfold's own estimate.
 */
const SHOWN: Readonly<Record<Place, number>> = {
  'one-piece': 0.72,
  top: 0.45,
  bottom: 0.36,
  swim: 0.3,
  'cover-up': 0.5,
  'mid layer': 0.45,
  'outer layer': 0.63,
  'base layer': 0,
  'leg layer': 0,
  legwear: 0.14,
  shoes: 0.07,
  bag: 0.08,
  jewellery: 0.01,
  eyewear: 0.01,
  headwear: 0.06,
  scarf: 0.07,
  tie: 0.03,
  gloves: 0.04,
  belt: 0.02,
};

/** Share of the body that a piece shows in its first place, 0 to 1. */
export const shownArea = (piece: Pick<Piece, 'places'>): number => {
  const [place] = piece.places;
  return place === undefined ? 0 : SHOWN[place];
};
