import type { Piece } from '../model/index.ts';
import { CORE_SLOTS } from '../vocabulary/index.ts';
import { type Candidate, candidatesFor, isFinishing, leftForLater, type Scale, withoutPieces } from './candidates.ts';
import type { LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';
import { THERMAL } from './warmth.ts';

/** Pieces that suit a journey together, the heaviest first as long as a look holds them all; nobody sits in thermal underwear to save weight. */
const heavyTogether = (source: LookSource, { restriction }: Moment, pieces: readonly Piece[]): readonly string[] => {
  const chosen: string[] = [];
  const heaviestFirst = pieces.toSorted((a, b) => b.grams.value - a.grams.value || (a.id < b.id ? -1 : 1));
  for (const { id } of heaviestFirst.filter((piece) => !isFinishing(piece) && !THERMAL.has(piece.kind))) {
    if (source.rank(1, { ...restriction, pieces: [...chosen, id] }).length > 0) chosen.push(id);
  }
  return chosen;
};

/**
 * Looks for a journey that take much out of the bags: the heaviest layers and shoes that suit it, with every core that
 * goes with them. The ranking alone prefers lighter ones, so few of these would be among its first.
 */
export const heavyLooks = (
  source: LookSource,
  moment: Moment,
  pieces: readonly Piece[],
  favourites: readonly (readonly string[])[],
  scale: Scale,
): readonly Candidate[] => {
  if (!moment.occasion.transit) return [];
  const heaviest = source.rank(1, { ...moment.restriction, pieces: [...heavyTogether(source, moment, pieces)] })[0]
    ?.look;
  if (heaviest === undefined) return [];
  const restriction = withoutPieces(moment.restriction, leftForLater(moment, pieces));
  const around = heaviest.worn.filter(
    ({ slot, piece }) => !CORE_SLOTS.has(slot) && !restriction.without?.includes(piece),
  );
  const withMid = around.map(({ piece }) => piece);
  const withoutMid = around.filter(({ slot }) => slot !== 'mid layer').map(({ piece }) => piece);
  const asked = withMid.length === withoutMid.length ? [withMid] : [withMid, withoutMid];
  return asked.flatMap(
    (worn) => candidatesFor(source, { ...restriction, pieces: worn }, favourites, { scale }).candidates,
  );
};
