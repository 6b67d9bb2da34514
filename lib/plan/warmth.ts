import { isLeftAtTheDoor } from '../comfort/index.ts';
import type { Piece } from '../model/index.ts';
import type { KindId } from '../vocabulary/index.ts';
import { isCoat, warmestCoat } from './coats.ts';
import { type Moment, requiredAt } from './moments.ts';

/** Outdoors up to this, head, neck and hands are covered where the bag has something for them. Own choice, °C. */
const COLD_C = 5;
/** A day that comes down to this has frost, °C. */
const FROST_C = 0;
/** Outdoors from this no layer is carried. Own choice, °C. */
export const HOT_C = 25;
/** Cost of each clo that is missing: a coat less outweighs the ranking. Own choice. */
const MISSING_CLO = 30;
/** Beyond this no garment of a bag makes the difference, and the search is left to its other wishes. Own choice, clo. */
const MISSING_AT_MOST_CLO = 1;
/** Degrees by which clothes are chosen for more cold than the day's low, which nobody knows to the degree. Own choice. */
const MARGIN_C = 2;
/** Out of doors for longer than this on a day of frost, the warmest coat is the right one. Own choice, hours. */
const SHORT_HOURS = 1;
/** Cost of each clo by which a coat is less warm than another of the bag, in frost: what the warmest gives outweighs the ranking. Own choice. */
const COLDER_COAT_CLO = 60;
/** Thermal underwear. */
export const THERMAL: ReadonlySet<KindId> = new Set<KindId>(['thermal leggings', 'thermal top']);
/** Costs of thermal underwear in an ordinary room, of each piece of it out of doors in mild air or where the look is warm enough without, and of each layer to carry in the heat. Own choice. */
const THERMAL_INDOORS = 6;
const THERMAL_NEEDLESS = 24;
const LAYER_IN_THE_HEAT = 6;

const sumOfClo = (pieces: readonly Piece[]): number => pieces.reduce((sum, { clo }) => sum + clo.value, 0);

const lowOfDay = ({ air, weather }: Moment): number =>
  Math.min(air?.lowC ?? Number.POSITIVE_INFINITY, weather?.lowC ?? Number.POSITIVE_INFINITY);

const isOutdoors = ({ occasion, swims }: Moment): boolean => occasion.setting.where === 'outdoors' && !swims;

export const isColdOutdoors = (moment: Moment): boolean =>
  isOutdoors(moment) && moment.air !== undefined && moment.air.lowC <= COLD_C;

/** Out of doors for more than a moment in the cold of a day of frost. */
export const isFrosty = (moment: Moment): boolean =>
  isColdOutdoors(moment) && moment.end - moment.start > SHORT_HOURS && lowOfDay(moment) <= FROST_C;

export const isHotOutdoors = (moment: Moment): boolean =>
  isOutdoors(moment) && moment.air !== undefined && moment.air.lowC >= HOT_C;

/** Clothes that are wanted against the cold, clo; 0 where nothing beyond what is asked for is. */
const wantedClo = (moment: Moment): number => {
  const { air, occasion } = moment;
  if (air === undefined) return 0;
  if (isColdOutdoors(moment)) return requiredAt(moment, { ...air, lowC: lowOfDay(moment) - MARGIN_C }).min;
  return (occasion.degreesOff ?? 0) > 0 ? requiredAt(moment, air).min : 0;
};

/**
 * What is against a look in cold and heat, given its clo with every layer on and the layers it could do without. The
 * cold end counts in full, whatever `degrees off` allows: that is a way out, and not a wish. Out of doors in the cold
 * the low of the whole day counts, and some degrees less. `pieces` are all of the bag.
 */
export const createWarmthCost = (
  moment: Moment,
  pieces: readonly Piece[],
): ((cloOn: number, worn: readonly Piece[], carriedLayers: number) => number) => {
  const { air, occasion } = moment;
  if (air === undefined || moment.swims || moment.required?.method === 'none') return () => 0;
  const wanted = wantedClo(moment);
  const indoors = occasion.setting.where === 'indoors';
  const coatClo = isFrosty(moment) ? (warmestCoat(pieces, occasion.dress)?.clo.value ?? 0) : 0;
  const coatOf = (worn: readonly Piece[]): number =>
    worn.reduce((warmest, piece) => (isCoat(piece) ? Math.max(warmest, piece.clo.value) : warmest), 0);
  const asked = indoors ? (moment.required?.min ?? 0) : wanted || (moment.required?.min ?? 0);
  const thermalCost = (cloOn: number, worn: readonly Piece[]): number => {
    const thermals = worn.filter(({ kind }) => THERMAL.has(kind));
    if (thermals.length === 0) return 0;
    // in a room the coat is off
    const atTheDoor = indoors ? sumOfClo(worn.filter(isLeftAtTheDoor)) : 0;
    const without = cloOn - atTheDoor - sumOfClo(thermals);
    const isNeedless = without >= asked || (!indoors && !isColdOutdoors(moment));
    return thermals.length * ((indoors ? THERMAL_INDOORS : 0) + (isNeedless ? THERMAL_NEEDLESS : 0));
  };
  return (cloOn, worn, carriedLayers) =>
    COLDER_COAT_CLO * Math.max(0, coatClo - coatOf(worn)) +
    MISSING_CLO * Math.min(MISSING_AT_MOST_CLO, Math.max(0, wanted - cloOn)) +
    thermalCost(cloOn, worn) +
    (isHotOutdoors(moment) ? LAYER_IN_THE_HEAT * carriedLayers : 0);
};
