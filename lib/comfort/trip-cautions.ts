import type { IsoDate } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';

/** What is told of a day: its cautions, occasion by occasion. */
export interface ToldDay {
  readonly date: IsoDate;
  readonly occasions: readonly { readonly cautions: readonly Phrase[] }[];
}

/** What holds for the whole bag, and so for the whole trip. */
const OF_THE_BAG: ReadonlySet<string> = new Set(['take a hat', 'take sunglasses']);

/** How strong the sun gets at an occasion. */
export const isOfTheSun = ({ key }: Phrase): boolean => key === 'uv index' || key === 'uv index if it clears';

/** What returns on day after day: told once with its days, and by a short mark on each of them. */
const RETURNING = {
  'dark all day': { trip: 'dark on the trip', mark: 'dark mark' },
  'wet ground': { trip: 'wet on the trip', mark: 'wet mark' },
  'wet and uneven': { trip: 'wet and uneven on the trip', mark: 'wet and uneven mark' },
} as const;
const MARKS: ReadonlySet<string> = new Set(Object.values(RETURNING).map(({ mark }) => mark));

const isReturning = (key: string): key is keyof typeof RETURNING => key in RETURNING;

/** Two or three words for what the trip tells in full. */
export const isMark = ({ key }: Phrase): boolean => MARKS.has(key);

/** True for what is told once of the whole trip. */
export const isOfTheTrip = (caution: Phrase): boolean => isOfTheSun(caution) || isReturning(caution.key);

/** The cautions of an occasion as a day tells them: without those of the whole bag, and with a mark for what the trip tells in full. */
export const ofOccasion = (cautions: readonly Phrase[]): readonly Phrase[] =>
  cautions
    .filter(({ key }) => !OF_THE_BAG.has(key))
    .map((caution) => (isReturning(caution.key) ? phrase('comfort', RETURNING[caution.key].mark, {}) : caution));

const indexOf = ({ values: { index } }: Phrase): number => (typeof index === 'number' ? index : 0);

const DAY_MS = 86_400_000;
const follows = (date: IsoDate, before: IsoDate | undefined): boolean =>
  before !== undefined && Date.parse(date) - Date.parse(before) === DAY_MS;

/** Days in a row told as one stretch each. */
const stretches = (
  dates: readonly IsoDate[],
): { readonly firstDays: readonly IsoDate[]; readonly lastDays: readonly IsoDate[] } => ({
  firstDays: dates.filter((date, index) => !follows(date, dates[index - 1])),
  lastDays: dates.filter((date, index) => !follows(dates[index + 1] ?? '', date)),
});

type Told = readonly { readonly date: IsoDate; readonly cautions: readonly Phrase[] }[];

/** What returns on days of the trip, each kind once with its days. */
const returning = (told: Told): readonly Phrase[] =>
  (Object.keys(RETURNING) as (keyof typeof RETURNING)[]).flatMap((kind) => {
    const dates = told.filter(({ cautions }) => cautions.some(({ key }) => key === kind)).map(({ date }) => date);
    return dates.length === 0 ? [] : [phrase('comfort', RETURNING[kind].trip, { ...stretches(dates) })];
  });

/**
 * What is told once of a trip: how strong the sun gets and on which days it asks for protection, with the usual caution,
 * and what against it nobody packed; then on which days the sun does not rise and the ground is wet.
 */
export const cautionsOfTrip = (trip: readonly ToldDay[]): readonly Phrase[] => {
  const told = trip.map(({ date, occasions }) => ({ date, cautions: occasions.flatMap(({ cautions }) => cautions) }));
  const sunny = told.filter(({ cautions }) => cautions.some(isOfTheSun));
  const strongest = sunny
    .flatMap(({ cautions }) => cautions.filter(isOfTheSun))
    .toSorted((a, b) => indexOf(b) - indexOf(a))[0];
  const days = returning(told);
  if (strongest === undefined) return days;
  const lacking = told.flatMap(({ cautions }) => cautions).filter(({ key }) => OF_THE_BAG.has(key));
  return [
    phrase('comfort', strongest.key === 'uv index' ? 'sun on the trip' : 'sun on the trip if it clears', {
      index: indexOf(strongest),
      band: String(strongest.values.band),
      ...stretches(sunny.map(({ date }) => date)),
    }),
    ...new Map(lacking.map((caution) => [caution.key, caution])).values(),
    ...days,
  ];
};
