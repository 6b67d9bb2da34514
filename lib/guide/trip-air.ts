import { type ComfortQuestion, cloAt, cloOfLook, ORDINARY_AIR, skyOf } from '../comfort/index.ts';
import type { Look, Piece, Plan } from '../model/index.ts';
import type { Feels } from '../vocabulary/index.ts';
import { isForWater } from './wear-it.ts';

/** The weather of a whole trip, as far as its brief tells it. */
export interface TripAir {
  /** Coldest and warmest of all days, °C. */
  readonly lowC: number;
  readonly highC: number;
  /** On some day showers are possible. */
  readonly wet: boolean;
}

/** Undefined when no day has weather. */
export const tripAirOf = ({ days }: Pick<Plan, 'days'>): TripAir | undefined => {
  const told = days.flatMap(({ weather }) => weather ?? []);
  if (told.length === 0) return undefined;
  return {
    lowC: Math.min(...told.map(({ lowC }) => lowC)),
    highC: Math.max(...told.map(({ highC }) => highC)),
    wet: told.some(({ rainPercent }) => skyOf(rainPercent) !== 'dry'),
  };
};

const STROLL: ComfortQuestion = {
  activity: 'strolling',
  setting: { where: 'outdoors', sun: 'shade' },
  air: { lowC: 0, highC: 0, ...ORDINARY_AIR },
};

/**
 * Whether a look is comfortable strolling outdoors somewhere between a trip's coldest and its warmest: warm enough for
 * the warmest with all layers on, and light enough for the coldest with them off. Swimwear always is, and every look
 * where no weather is told.
 */
export const createSuitsTrip = (
  air: TripAir | undefined,
  byId: ReadonlyMap<string, Piece>,
  feels?: Feels,
): ((look: Look) => boolean) => {
  if (air === undefined) return () => true;
  const least = cloAt({ ...STROLL, feels }, air.highC, 'min');
  const most = cloAt({ ...STROLL, feels }, air.lowC, 'max');
  return (look) => {
    const { off, on } = cloOfLook(look, byId);
    return isForWater(look) || (on >= least && off <= most);
  };
};
