import type { Brief, Occasion } from '../../../lib/model/index.ts';

/** Clock hours of the parts of the day and of the evening wash, as the documentation states them. */
const HOURS = { morning: [8, 12], day: [10, 17], evening: [18, 23], night: [22, 30] } as const;
const HOURS_OF_A_LONG_WALK = 5;
const HOURS_OF_ALL_ELSE = 2;
export const WASH_HOUR = 22;

const clock = (time: string): number => Number(time.slice(0, 2)) + Number(time.slice(3)) / 60;

/** Days from the first of the trip. */
export const dayOf = (brief: Brief, date: string): number =>
  Math.round((Date.parse(date) - Date.parse(brief.from)) / 86_400_000);

/** From when until when an occasion lasts, hours since the trip's first midnight. */
export const hoursOf = (
  brief: Brief,
  { on, part, at, until, needs }: Occasion,
): readonly [from: number, to: number] => {
  const midnight = dayOf(brief, on) * 24;
  if (at === undefined) return [midnight + HOURS[part][0], midnight + HOURS[part][1]];
  const from = midnight + clock(at);
  if (until === undefined)
    return [from, from + (needs.includes('long walking') ? HOURS_OF_A_LONG_WALK : HOURS_OF_ALL_ELSE)];
  const to = midnight + clock(until);
  return [from, to > from ? to : to + 24];
};
