import type { Occasion, Piece } from '../model/index.ts';
import { type Candidate, candidateOf, candidatesFor, leftForLater, type Scale, withoutPieces } from './candidates.ts';
import { COAT_SLOTS } from './layers.ts';
import type { LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';

/** Looks that get a coat for the way, the best first. */
const COATED = 8;

const isCoat = ({ places }: Piece): boolean => places.every((place) => COAT_SLOTS.has(place));

/** True where people sit down in a room and hang their coats up; on a train or plane a coat is at hand. */
export const isInARoom = ({ setting, transit, needs }: Occasion): boolean =>
  setting.where === 'indoors' && !transit && !needs.includes('swim');

/**
 * Looks for a room that are warm enough without a coat, and the best of them with one to take along. The ranking asks
 * only that everything together keeps warm, so that few of these may be among its first.
 */
export const roomLooks = (
  source: LookSource,
  moment: Moment,
  pieces: readonly Piece[],
  favourites: readonly (readonly string[])[],
  scale: Scale,
): readonly Candidate[] => {
  if (!isInARoom(moment.occasion) || moment.restriction.clo === undefined) return [];
  const coats = pieces.filter(isCoat).map(({ id }) => id);
  const restriction = withoutPieces(moment.restriction, [...leftForLater(moment, pieces), ...coats]);
  const { candidates } = candidatesFor(source, restriction, favourites, { scale });
  const coated = candidates
    .toSorted((a, b) => b.quality - a.quality)
    .slice(0, COATED)
    .flatMap((candidate) =>
      coats.flatMap((coat) => {
        const { goes, look } = source.explain([...candidate.pieces, coat], moment.restriction);
        return goes && look !== undefined ? [candidateOf(look, candidate.quality, [], favourites)] : [];
      }),
    );
  return [...coated, ...candidates];
};
