import { hoursOf } from '../comfort/index.ts';
import type { Brief, ClockTime, IsoDate, Plan } from '../model/index.ts';
import { hourAfter } from './moments.ts';

/** What is still damp when a journey sets off, and by when it is dry. */
export interface PackedDamp {
  readonly on: IsoDate;
  /** Occasion id of the journey. */
  readonly journey: string;
  /** Piece ids. */
  readonly pieces: readonly string[];
  readonly dryBy: IsoDate;
  readonly dryAt: ClockTime;
}

/** The washing that travels damp, journey by journey: hung up before it sets off, and dry after. */
export const packedDamp = ({ days }: Pick<Plan, 'days'>, brief: Pick<Brief, 'occasions'>): readonly PackedDamp[] =>
  days.flatMap(({ date, occasions }) =>
    occasions.flatMap(({ occasion: id }): PackedDamp[] => {
      const journey = brief.occasions.find((occasion) => occasion.id === id && occasion.transit);
      if (journey === undefined) return [];
      const { at } = hourAfter(date, hoursOf(journey)[0]);
      const damp = days
        .filter((earlier) => earlier.date < date)
        .flatMap(({ wash }) => wash)
        .filter(({ dryBy, dryAt }) => `${dryBy} ${dryAt}` > `${date} ${at}`)
        .toSorted((a, b) => (`${a.dryBy} ${a.dryAt}` < `${b.dryBy} ${b.dryAt}` ? -1 : 1));
      const last = damp.at(-1);
      return last === undefined
        ? []
        : [{ on: date, journey: id, pieces: damp.map(({ piece }) => piece), dryBy: last.dryBy, dryAt: last.dryAt }];
    }),
  );
