import type { Brief, IsoDate, Plan, PlannedOccasion } from '../model/index.ts';

/** What a piece does on a day, its most: worn by day, worn in the evening only, taken along and not put on, or none of these. */
export type Wearing = 'day' | 'evening' | 'carried' | 'not';

/** Pieces taken along to an occasion: layers not put on there, and a coat for the way. */
export const takenAlong = ({
  layersCarried,
  coatForTheWay,
}: Pick<PlannedOccasion, 'layersCarried' | 'coatForTheWay'>): readonly string[] =>
  coatForTheWay === undefined ? layersCarried : [...layersCarried, coatForTheWay];

/** What a piece does on each day of the plan. Every wear table shows it with the same signs. */
export const wearingOf = (
  plan: Pick<Plan, 'days'>,
  brief: Pick<Brief, 'occasions'>,
  piece: string,
): ReadonlyMap<IsoDate, Wearing> => {
  const parts = new Map(brief.occasions.map((occasion) => [occasion.id, occasion.part]));
  return new Map(
    plan.days.map(({ date, occasions }): [IsoDate, Wearing] => {
      const carried = occasions.some((planned) => takenAlong(planned).includes(piece));
      const worn = occasions
        .filter(
          ({ look, layersCarried }) =>
            look?.worn.some((seat) => seat.piece === piece) === true && !layersCarried.includes(piece),
        )
        .map(({ occasion }) => parts.get(occasion));
      if (worn.length === 0) return [date, carried ? 'carried' : 'not'];
      return [date, worn.every((part) => part === 'evening' || part === 'night') ? 'evening' : 'day'];
    }),
  );
};
