import type { Plan, PlannedDay, PlannedOccasion } from '../model/index.ts';
import { nearestInWords } from '../plan/index.ts';
import { type Phrase, phrase } from '../words/index.ts';

/** Where a day is spent, as its heading says it; empty when nobody said. On the way home there is no place. */
export const placeOfDay = ({ homeward, place }: PlannedDay, say: (phrase: Phrase) => string): string =>
  homeward === true ? say(phrase('plan', 'homeward', {})) : (place ?? '');

/** What a day without occasions says. */
export const freeDay = ({ homeward }: PlannedDay): Phrase =>
  homeward === true ? phrase('plan', 'homeward day', {}) : phrase('plan', 'free day', {});

/** What is said in the place of a look: that there is none, and how near the packed pieces come. */
export const inPlaceOfLook = (
  { unserved }: Pick<Plan, 'unserved'>,
  occasion: string,
  nameOf: (piece: string) => string,
): readonly Phrase[] => [
  phrase('plan', 'no look', {}),
  ...unserved.filter((one) => one.occasion === occasion).map((one) => nearestInWords(one, nameOf)),
];

/** What is worn on the way to an occasion, what is put on after a swim, and what is carried. */
export const wayInWords = (
  { look, layersCarried, way }: PlannedOccasion,
  nameOf: (piece: string) => string,
): readonly Phrase[] => {
  const swims = look?.worn.some(({ slot }) => slot === 'swim') === true;
  const carried = layersCarried.filter((piece) => way?.worn.includes(piece) !== true);
  return [
    ...(way === undefined || way.worn.length === 0
      ? []
      : [
          phrase('plan', swims ? 'after the swim' : 'wear on the way', {
            layers: way.worn.map(nameOf),
            low: way.lowC,
          }),
        ]),
    ...(way?.under === undefined ? [] : [phrase('plan', 'tights for the way', { piece: nameOf(way.under) })]),
    ...(way?.shoes === undefined ? [] : [phrase('plan', 'shoes for the way', { shoes: nameOf(way.shoes) })]),
    ...(carried.length === 0 ? [] : [phrase('plan', 'take along', { layers: carried.map(nameOf) })]),
  ];
};
