import type { Piece } from '../model/index.ts';
import { SHORTS } from '../outfit/index.ts';
import type { Moment } from '../plan/index.ts';
import { KINDS } from '../vocabulary/index.ts';
import type { Demand } from './serving.ts';
import { FROST_C, HOT_COAT_CLO } from './traits.ts';

/** Difference of clo that nobody notices in what is worn over the rest. Own choice. */
const SAME_CLASS_CLO = 0.1;

/** How cold it is outside on the day of an occasion, on the way to a room as well, °C; undefined where nobody knows, and for a swim. */
export const outsideOf = ({ air, weather, occasion, swims }: Moment): number | undefined => {
  const out = [weather?.lowC, occasion.setting.where === 'outdoors' ? air?.lowC : undefined].filter(
    (celsius) => celsius !== undefined,
  );
  return swims || out.length === 0 ? undefined : Math.min(...out);
};

const isOpenShoe = ({ places, covers }: Piece): boolean => places[0] === 'shoes' && !covers.includes('feet');

/** A coat that keeps off rain and wind but not frost. */
const isThinCoat = ({ kind, clo }: Piece): boolean => KINDS[kind].group === 'coats' && clo.value <= HOT_COAT_CLO;

/** True where a piece is one for the weather of an occasion: near frost no shorts and open shoes, and a thin coat for rain only. */
export const isInSeason = (piece: Piece, { outC, restriction: { needs = [] } }: Demand): boolean => {
  if (outC === undefined || outC > FROST_C) return true;
  const keepsOffRain = needs.includes('rain') && piece.suits.includes('rain');
  return !SHORTS.has(piece.kind) && !isOpenShoe(piece) && (!isThinCoat(piece) || keepsOffRain);
};

const swims = ({ restriction }: Demand): boolean => restriction.needs?.includes('swim') === true;
const isForWater = ({ places, suits }: Piece): boolean => places.includes('swim') || suits.includes('swim');

/** True where a piece is in season for some occasion, of swims only what is made for water, or there is none to judge by. */
export const isForTheTrip = (piece: Piece, demands: readonly Demand[]): boolean => {
  const judged = demands.filter((demand) => !swims(demand) || isForWater(piece));
  return judged.length === 0 || judged.some((demand) => isInSeason(piece, demand));
};

/** True where one piece keeps as warm as another, and as dry and fit for snow where occasions ask for that. */
export const keepsAsWarm = (other: Piece, one: Piece, demands: readonly Demand[]): boolean => {
  const isCold = demands.some(({ outC }) => outC !== undefined && outC <= FROST_C);
  if (!isCold) return true;
  const asked = new Set(demands.flatMap(({ restriction }) => restriction.needs ?? []));
  const weather = (['rain', 'snow'] as const).filter((need) => asked.has(need) && one.suits.includes(need));
  return other.clo.value >= one.clo.value - SAME_CLASS_CLO && weather.every((need) => other.suits.includes(need));
};
