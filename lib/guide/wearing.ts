import type { Brief, IsoDate, Plan, PlannedOccasion } from '../model/index.ts';
import { piecesOfWay } from '../plan/index.ts';

/** What a piece does on a day, its most: worn by day, there or on the way, worn in the evening only, taken along and not put on, or none of these. */
export type Wearing = 'day' | 'evening' | 'carried' | 'not';

/** What a piece does on each day of the plan. Every wear table shows it with the same signs. */
export const wearingOf = (
  plan: Pick<Plan, 'days'>,
  brief: Pick<Brief, 'occasions'>,
  piece: string,
): ReadonlyMap<IsoDate, Wearing> => {
  const parts = new Map(brief.occasions.map((occasion) => [occasion.id, occasion.part]));
  return new Map(
    plan.days.map(({ date, occasions }): [IsoDate, Wearing] => {
      const carried = occasions.some(({ layersCarried }) => layersCarried.includes(piece));
      const isOnTheWay = (planned: PlannedOccasion): boolean => piecesOfWay(planned.way).includes(piece);
      const worn = occasions
        .filter(
          (planned) =>
            isOnTheWay(planned) ||
            (planned.look?.worn.some((seat) => seat.piece === piece) === true &&
              !planned.layersCarried.includes(piece)),
        )
        .map(({ occasion }) => parts.get(occasion));
      if (worn.length === 0) return [date, carried ? 'carried' : 'not'];
      return [date, worn.every((part) => part === 'evening' || part === 'night') ? 'evening' : 'day'];
    }),
  );
};
