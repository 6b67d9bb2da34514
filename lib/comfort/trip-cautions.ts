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

/** The cautions of an occasion that are not told once of the whole trip. */
export const ofOccasion = (cautions: readonly Phrase[]): readonly Phrase[] =>
  cautions.filter(({ key }) => !OF_THE_BAG.has(key));

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

/**
 * What is told once of a trip: how strong the sun gets and on which days it asks for protection, with the usual caution,
 * and what against it nobody packed.
 */
export const cautionsOfTrip = (days: readonly ToldDay[]): readonly Phrase[] => {
  const told = days.map(({ date, occasions }) => ({ date, cautions: occasions.flatMap(({ cautions }) => cautions) }));
  const sunny = told.filter(({ cautions }) => cautions.some(isOfTheSun));
  const strongest = sunny
    .flatMap(({ cautions }) => cautions.filter(isOfTheSun))
    .toSorted((a, b) => indexOf(b) - indexOf(a))[0];
  if (strongest === undefined) return [];
  const lacking = told.flatMap(({ cautions }) => cautions).filter(({ key }) => OF_THE_BAG.has(key));
  return [
    phrase('comfort', strongest.key === 'uv index' ? 'sun on the trip' : 'sun on the trip if it clears', {
      index: indexOf(strongest),
      band: String(strongest.values.band),
      ...stretches(sunny.map(({ date }) => date)),
    }),
    ...new Map(lacking.map((caution) => [caution.key, caution])).values(),
  ];
};
