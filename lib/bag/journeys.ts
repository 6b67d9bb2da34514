import type { Brief, IsoDate, Occasion, Plan } from '../model/index.ts';
import { piecesOfWay } from '../plan/index.ts';

/** A journey with the luggage, and what the plan has the traveller wear or carry on the arm. */
export interface Journey {
  readonly occasion: Occasion;
  readonly on: IsoDate;
  readonly worn: ReadonlySet<string>;
}

/** The journeys of the plan's traveller, in order. */
export const journeysOf = (brief: Brief, plan: Plan): readonly Journey[] => {
  const planned = new Map(plan.days.flatMap(({ occasions }) => occasions).map((entry) => [entry.occasion, entry]));
  return brief.occasions
    .filter(({ transit, travellers }) => transit && (travellers.length === 0 || travellers.includes(plan.traveller)))
    .map((occasion) => {
      const entry = planned.get(occasion.id);
      const worn = [
        ...(entry?.look?.worn ?? []).map(({ piece }) => piece),
        ...(entry?.layersCarried ?? []),
        ...piecesOfWay(entry?.way),
      ];
      return { occasion, on: occasion.on, worn: new Set(worn) };
    });
};

/** Words by which a journey is known to be a flight; rules for liquids and batteries then apply. */
const FLIGHT = /\b(flight|fly|flying|plane|airport)\b|flug\b|\bflieg/iu;

export const isFlight = ({ what, transit }: Occasion): boolean => transit && FLIGHT.test(what);
