import { cloOfLook, inARoom, isLeftAtTheDoor } from '../comfort/index.ts';
import type { Look, Occasion, Piece } from '../model/index.ts';
import { type Candidate, candidateOf, candidatesFor, leftForLater, type Scale, withoutPieces } from './candidates.ts';
import { isCoat } from './coats.ts';
import type { LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';

/** Looks that get a coat for the way, the best first. */
const COATED = 8;

/** True where people sit down in a room and hang their coats up; on a train or plane a coat is at hand. */
export const isInARoom = ({ setting, transit, needs }: Occasion): boolean =>
  setting.where === 'indoors' && !transit && !needs.includes('swim');

/** Less than this nobody misses: a pair of thick socks. Own choice, clo. */
const HARDLY_CLO = 0.06;

/** Clo that a look lacks indoors once its coat is left at the door; 0 where it is warm enough, and out of doors. */
export const lackingInside = (
  { occasion, required, swims }: Pick<Moment, 'occasion' | 'required' | 'swims'>,
  look: Look,
  pieces: ReadonlyMap<string, Piece>,
): number => {
  if (swims || required === undefined || occasion.setting.where === 'outdoors') return 0;
  const lacking = required.min - cloOfLook(inARoom(look, pieces), pieces).on;
  return lacking > HARDLY_CLO ? lacking : 0;
};

/** The coats of a look, which are at hand on a train or plane; hats, scarves and gloves without one. */
export const coatsAtHand = (look: Look, pieces: ReadonlyMap<string, Piece>): readonly Piece[] => {
  const outer = look.worn.flatMap(({ piece }) => pieces.get(piece) ?? []).filter(isLeftAtTheDoor);
  const coats = outer.filter(isCoat);
  return coats.length > 0 ? coats : outer;
};

/** What of a look is left at the door of a room that it is too cool for without; empty where it is warm enough. */
export const missedInside = (moment: Moment, look: Look, pieces: ReadonlyMap<string, Piece>): readonly Piece[] =>
  isInARoom(moment.occasion) && lackingInside(moment, look, pieces) > 0
    ? look.worn.flatMap(({ piece }) => pieces.get(piece) ?? []).filter(isLeftAtTheDoor)
    : [];

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
  const coats = pieces.filter(isLeftAtTheDoor).map(({ id }) => id);
  const restriction = withoutPieces(moment.restriction, [...leftForLater(moment, pieces), ...coats]);
  const { candidates } = candidatesFor(source, restriction, favourites, { scale });
  const coated = candidates
    .toSorted((a, b) => b.quality - a.quality)
    .slice(0, COATED)
    .flatMap((candidate) =>
      coats.flatMap((coat) => {
        const { goes, look } = source.explain([...candidate.pieces, coat], moment.restriction);
        return goes && look !== undefined ? [candidateOf(look, candidate.quality, () => [], favourites)] : [];
      }),
    );
  return [...coated, ...candidates];
};
