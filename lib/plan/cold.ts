import type { Piece } from '../model/index.ts';
import { type Candidate, candidatesFor, leftForLater, type Scale, withoutPieces } from './candidates.ts';
import { warmestCoat } from './coats.ts';
import type { LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';
import { isFrosty } from './warmth.ts';

/** Looks in the warmest coat for an occasion in frost, of which the ranking by colour may have none among its first. */
export const coldLooks = (
  source: LookSource,
  moment: Moment,
  pieces: readonly Piece[],
  favourites: readonly (readonly string[])[],
  scale: Scale,
): readonly Candidate[] => {
  const coat = isFrosty(moment) ? warmestCoat(pieces, moment.occasion.dress) : undefined;
  if (coat === undefined) return [];
  const restriction = withoutPieces({ ...moment.restriction, pieces: [coat.id] }, leftForLater(moment, pieces));
  return candidatesFor(source, restriction, favourites, { scale }).candidates;
};
