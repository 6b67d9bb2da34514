import type { Piece } from '../model/index.ts';
import { isForWarmth, type Place } from '../vocabulary/index.ts';
import { type Candidate, candidatesFor, leftForLater, type Scale, withoutPieces } from './candidates.ts';
import { warmestCoat } from './coats.ts';
import type { LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';
import { isFrosty } from './warmth.ts';

/** The warmest of the bag in each place, where it has something made for that. */
const warmestIn = (
  pieces: readonly Piece[],
  places: readonly Place[],
  isMeant: (piece: Piece) => boolean = () => true,
): readonly string[] =>
  places.flatMap((place) => {
    const [warmest] = pieces
      .filter((piece) => piece.places.includes(place) && isMeant(piece))
      .toSorted((a, b) => b.clo.value - a.clo.value);
    return warmest?.id ?? [];
  });

/**
 * Looks for an occasion in frost: in the warmest coat, with head, neck and hands covered and thermal underwear, and the
 * same with less of that. The ranking by colour has few of them among its first, and those around few clothes.
 */
export const coldLooks = (
  source: LookSource,
  moment: Moment,
  pieces: readonly Piece[],
  favourites: readonly (readonly string[])[],
  scale: Scale,
): readonly Candidate[] => {
  const coat = isFrosty(moment) ? warmestCoat(pieces, moment.occasion.dress) : undefined;
  if (coat === undefined) return [];
  const covered = warmestIn(pieces, ['headwear', 'scarf', 'gloves'], isForWarmth);
  const legs = warmestIn(pieces, ['leg layer']);
  const body = warmestIn(pieces, ['base layer']);
  const kits = [[...covered, ...legs, ...body], [...covered, ...legs], covered, []];
  const restriction = withoutPieces(moment.restriction, leftForLater(moment, pieces));
  return kits.flatMap(
    (kit) => candidatesFor(source, { ...restriction, pieces: [coat.id, ...kit] }, favourites, { scale }).candidates,
  );
};
