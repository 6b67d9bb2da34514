import type { Look, Piece } from '../model/index.ts';
import { isCoat } from './coats.ts';
import type { Moment } from './moments.ts';
import { coatForTheWay } from './way.ts';

/** With less time than this between two occasions nobody goes back for another coat. Own choice, hours. */
const HOURS_TO_CHANGE = 1.5;

/** True where an occasion follows another of the day at the same place too closely to go back in between. */
export const followsOn = (before: Moment | undefined, moment: Moment): boolean =>
  before !== undefined &&
  before.day === moment.day &&
  before.place?.name === moment.place?.name &&
  !before.occasion.transit &&
  !moment.occasion.transit &&
  moment.start - before.end < HOURS_TO_CHANGE;

/** The occasions from which nobody goes back before the next, together; places in `moments`. */
export const stretchesOf = (moments: readonly Moment[]): readonly (readonly number[])[] => {
  const stretches: number[][] = [];
  moments.forEach((moment, index) => {
    if (followsOn(moments[index - 1], moment)) stretches.at(-1)?.push(index);
    else stretches.push([index]);
  });
  return stretches;
};

export const coatIn = (look: Look, pieces: ReadonlyMap<string, Piece>): Piece | undefined =>
  look.worn.flatMap(({ piece }) => pieces.get(piece) ?? []).find(isCoat);

/** The coat an occasion is gone to in: that of its look, or the one told for its way. */
export const coatWornTo = (moment: Moment, look: Look, pieces: ReadonlyMap<string, Piece>): Piece | undefined =>
  coatIn(look, pieces) ?? coatForTheWay(moment, look, pieces);
