import { KINDS, type Place } from '../vocabulary/index.ts';
import { roundClo, SOCKS_CLO, UNDERTHINGS_CLO } from './clo.ts';
import { type ComfortQuestion, requiredClo } from './required.ts';

/** Everything that warms somebody dressed for the cold out of a bag: a layer of each sort, and head, neck, hands and feet covered. */
const DRESSED_FOR_COLD: readonly Place[] = [
  'top',
  'mid layer',
  'outer layer',
  'base layer',
  'leg layer',
  'bottom',
  'legwear',
  'shoes',
  'headwear',
  'scarf',
  'gloves',
];

const warmestIn = (place: Place): number =>
  Math.max(...Object.values(KINDS).flatMap(({ places, clo }) => (places.includes(place) ? [clo[0]] : [])));

/** Insulation of the warmest kind in every place at once, clo: what clothes for travelling reach as they usually are. */
export const WARMEST_TRAVEL_CLO = roundClo(
  UNDERTHINGS_CLO + SOCKS_CLO + DRESSED_FOR_COLD.reduce((sum, place) => sum + warmestIn(place), 0),
);

/** Cold in which clothes for travelling keep nobody warm: not at this activity but walking, or not even so. */
export type BeyondClothes = 'keeping still' | 'altogether';

const asksTooMuch = (question: ComfortQuestion): boolean => requiredClo(question).min > WARMEST_TRAVEL_CLO;

/** How far the cold of an occasion is beyond clothes for travelling; undefined where they can do. */
export const beyondTravelClothes = (question: ComfortQuestion): BeyondClothes | undefined => {
  if (question.setting.where === 'indoors' || !asksTooMuch(question)) return undefined;
  return asksTooMuch({ ...question, activity: 'walking' }) ? 'altogether' : 'keeping still';
};
