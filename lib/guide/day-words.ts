import type { PlannedDay } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';

/** Where a day is spent, as its heading says it; empty when nobody said. On the way home there is no place. */
export const placeOfDay = ({ homeward, place }: PlannedDay, say: (phrase: Phrase) => string): string =>
  homeward === true ? say(phrase('plan', 'homeward', {})) : (place ?? '');

/** What a day without occasions says. */
export const freeDay = ({ homeward }: PlannedDay): Phrase =>
  homeward === true ? phrase('plan', 'homeward day', {}) : phrase('plan', 'free day', {});
