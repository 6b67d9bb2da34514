import type { Piece } from '../model/index.ts';
import { silhouetteOf } from './trade.ts';

/** Proposals differ in at least this share of the garments that the stylist did not ask to keep. Own choice. */
const DIFFERENT_SHARE = 0.4;

/** What proposals must differ in: a second bag is no second proposal. */
export const isGarment = (piece: Piece): boolean => silhouetteOf(piece) !== undefined || piece.places.includes('swim');

/** Garments that a proposal may share with an earlier one: all that are kept, and three fifths of the others. */
export const mayShare = (earlier: readonly Piece[], keep: readonly string[]): number => {
  const garments = earlier.filter(isGarment);
  const free = garments.filter(({ id }) => !keep.includes(id)).length;
  return garments.length - Math.ceil(free * DIFFERENT_SHARE);
};
