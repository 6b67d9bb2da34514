import type { Plan, PlannedDay } from '../model/index.ts';
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
