import type { Brief, IsoDate, Piece, Plan, StockLine, Sundry, Weather } from '../model/index.ts';
import { dressIndex, type SundryTrait } from '../vocabulary/index.ts';
import { isFlight } from './journeys.ts';

const DAY_MS = 86_400_000;
/** Below this a trip is cold, °C; from this chance of rain it is wet, percent. Own choices. */
const COLD_C = 10;
const WET_PERCENT = 40;
/** Protection from the sun is advised from this index on. Source: WHO, Global Solar UV Index: a practical guide, 2002. */
const PROTECT_FROM_UV = 3;

const daysFromTo = (from: IsoDate, to: IsoDate): number => Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);

/** Days of the trip, both ends included. */
export const tripDays = ({ from, to }: Pick<Brief, 'from' | 'to'>): number => Math.max(1, daysFromTo(from, to) + 1);

/** The most days in a row that must be got through without a wash. A wash day is washed in the evening, and itself still worn through. */
export const longestStretch = ({ from, to, washDays }: Pick<Brief, 'from' | 'to' | 'washDays'>): number => {
  const ends = [...new Set(washDays.filter((day) => day >= from && day < to)), to].toSorted();
  let last = -1;
  let longest = 1;
  for (const end of ends) {
    const day = daysFromTo(from, end);
    longest = Math.max(longest, day - last);
    last = day;
  }
  return longest;
};

/** Shoes that close over the foot; open ones are worn without socks. */
const isClosedShoe = ({ places, covers }: Piece): boolean => places.includes('shoes') && covers.includes('feet');

/** What the trip of a plan's traveller is like, and the shoes that go with them. */
export const sundryTraits = (brief: Brief, plan: Plan, pieces: readonly Piece[]): ReadonlySet<SundryTrait> => {
  const occasions = brief.occasions.filter(
    ({ travellers }) => travellers.length === 0 || travellers.includes(plan.traveller),
  );
  const weathers = brief.places.flatMap(({ weather, days }): Weather[] => [
    ...(weather === undefined ? [] : [weather]),
    ...Object.values(days),
  ]);
  const asks = (need: 'swim' | 'sun' | 'rain'): boolean => occasions.some(({ needs }) => needs.includes(need));
  const burns = plan.days.some((day) => day.occasions.some(({ uvIndex = 0 }) => uvIndex >= PROTECT_FROM_UV));
  const holds: Readonly<Record<SundryTrait, boolean>> = {
    swim: asks('swim'),
    cold: weathers.some(({ lowC }) => lowC < COLD_C),
    sun: asks('sun') || burns,
    rain: asks('rain') || weathers.some(({ rainPercent }) => rainPercent >= WET_PERCENT),
    formal: occasions.some(({ dress }) => dressIndex(dress) >= dressIndex('cocktail')),
    'wash day': brief.washDays.length > 0,
    flight: occasions.some(isFlight),
    'closed shoes': pieces.some(isClosedShoe),
  };
  return new Set((Object.keys(holds) as SundryTrait[]).filter((trait) => holds[trait]));
};

const countOf = ({ count, per, spare, most }: StockLine, brief: Brief): number => {
  const paces = { trip: 1, day: tripDays(brief), 'day between washes': longestStretch(brief) };
  return Math.min(most ?? Number.POSITIVE_INFINITY, Math.ceil(count * paces[per]) + spare);
};

/** What of the studio's stock goes on this trip with this traveller, and how many of each, in the order of the stock. */
export const sundriesFor = (
  brief: Brief,
  plan: Plan,
  pieces: readonly Piece[],
  stock: readonly StockLine[],
): readonly Sundry[] => {
  const traits = sundryTraits(brief, plan, pieces);
  return stock
    .filter(({ when }) => when.length === 0 || when.some((trait) => traits.has(trait)))
    .filter(({ travellers }) => travellers.length === 0 || travellers.includes(plan.traveller))
    .map((line) => {
      const { per: _per, spare: _spare, most: _most, when: _when, travellers: _travellers, ...rest } = line;
      const { file: _file, line: _line, ...sundry } = rest;
      return { ...sundry, count: countOf(line, brief) };
    })
    .filter(({ count }) => count > 0);
};
