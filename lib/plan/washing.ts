import type { IsoDate, Piece } from '../model/index.ts';
import { hourAfter } from './moments.ts';

/** Clock hour at which the day's washing is hung up. Own choice. */
export const WASHED_AT_HOUR = 22;

/** A day on which one piece is worn, and from and until when; hours since the trip's first midnight. */
export interface Wearing {
  readonly day: number;
  readonly from: number;
  readonly until: number;
}

/** Wears between washes, never below one. A day in a piece is one wear, however many occasions it has. */
export const wearsOf = (piece: Piece): number => Math.max(1, Math.floor(piece.wears.value));

/** Whether the piece can be washed on the way and not only at home or at a cleaner's. */
export const isWashable = (piece: Piece): boolean => piece.care.wash !== 'dry clean' && piece.care.wash !== 'wipe';

/** Hours after which a piece is surely dry: an estimate is taken at its long end, since damp cloth cannot be worn. */
const hoursToDry = ({ care }: Piece): number => care.dryHours.high;

/** The hour at which a piece washed on a day is dry again; what was worn later than the hour of the wash hangs later. */
export const dryAt = (piece: Piece, washDay: number, wornUntil = Number.NEGATIVE_INFINITY): number =>
  Math.max(washDay * 24 + WASHED_AT_HOUR, wornUntil) + hoursToDry(piece);

/** The day and full hour by which a piece washed on a day is dry. */
export const dryBy = (piece: Piece, from: IsoDate, washDay: number, wornUntil?: number) =>
  hourAfter(from, Math.ceil(dryAt(piece, washDay, wornUntil)));

/** Until when a piece is worn on the day of its wash and before it. */
export const wornUntil = (wearings: readonly Wearing[], washDay: number): number =>
  Math.max(Number.NEGATIVE_INFINITY, ...wearings.filter(({ day }) => day <= washDay).map(({ until }) => until));

/** The last day, counted from the first, whose washing has this piece dry at an hour; negative when it is before the trip. */
export const hangsUpBy = (piece: Piece, hours: number): number =>
  Math.floor((hours - WASHED_AT_HOUR - hoursToDry(piece)) / 24);

/** Socks, tights and thermal leggings are rinsed overnight or packed by the day, so no look fails for them. common practice, no source */
const isLegwear = (piece: Piece): boolean =>
  piece.places.every((place) => place === 'legwear' || place === 'leg layer');

/** True when a piece cannot simply be worn on each of so many days: it needs washing in between, or drying after a swim. */
export const isLimited = (piece: Piece, daysWithOccasions: number): boolean =>
  piece.places.includes('swim') || (wearsOf(piece) < daysWithOccasions && !isLegwear(piece));

/**
 * The fewest washes (as days) that let a piece be worn at these times, earliest first; undefined when no choice of
 * wash days does. `wearings` are in order of day, one a day.
 */
export const washesFor = (
  piece: Piece,
  wearings: readonly Wearing[],
  washDays: readonly number[],
): readonly number[] | undefined => {
  const limit = wearsOf(piece);
  if (wearings.length <= limit) return [];
  if (!isWashable(piece)) return undefined;
  const days = wearings.map(({ day }) => day);
  const usable = washDays.filter((day) => days.some((worn) => worn <= day) && days.some((worn) => worn > day));
  let best: readonly number[] | undefined;
  for (let chosen = 1; chosen < 2 ** usable.length; chosen += 1) {
    const washes = usable.filter((_, index) => (chosen & (2 ** index)) !== 0);
    if (best !== undefined && washes.length >= best.length) continue;
    const allDry = washes.every((day) => {
      const dry = dryAt(piece, day, wornUntil(wearings, day));
      return wearings.every((wearing) => wearing.day <= day || wearing.from >= dry);
    });
    if (allDry && longestStretch(days, washes) <= limit) best = washes;
  }
  return best;
};

const longestStretch = (days: readonly number[], washes: readonly number[]): number => {
  const edges = [...washes, Number.POSITIVE_INFINITY];
  let longest = 0;
  let after = Number.NEGATIVE_INFINITY;
  for (const edge of edges) {
    longest = Math.max(longest, days.filter((day) => day > after && day <= edge).length);
    after = edge;
  }
  return longest;
};

/** True when swimwear worn until one hour is not yet dry at another. */
export const stillWet = (swimwear: Piece, wornUntil: number, wornFrom: number): boolean =>
  wornFrom < wornUntil + hoursToDry(swimwear);
