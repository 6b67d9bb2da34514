import type { Brief, ClockTime, DayPart, IsoDate, Occasion, TripPlace, Weather } from '../model/index.ts';
import type { Air } from './required.ts';

/** Local clock hours of the parts of a day, from and to; `night` runs past midnight. Own choice. */
const PART_HOURS: Readonly<Record<DayPart, readonly [from: number, to: number]>> = {
  morning: [8, 12],
  day: [10, 17],
  evening: [18, 23],
  night: [22, 30],
};
/** Hours an occasion with a clock time and no end is taken to last. Own choice. */
export const HOURS_OF_AN_OCCASION = 2;
/** The same of a long walk. Own choice. */
const HOURS_OF_A_LONG_WALK = 5;

/** Coldest and warmest hour of a day. common practice, no source: shortly before sunrise and mid-afternoon. */
const COLDEST_HOUR = 5;
const WARMEST_HOUR = 15;

/** What tells when an occasion begins and ends. */
export type Timed = Pick<Occasion, 'part' | 'at' | 'until'> & Partial<Pick<Occasion, 'needs'>>;

const hourOf = (time: ClockTime): number => {
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  return hours + minutes / 60;
};

/** Local clock hours of an occasion, from and to; the second may pass 24. */
export const hoursOf = ({ part, at, until, needs }: Timed): readonly [from: number, to: number] => {
  if (at === undefined) return PART_HOURS[part];
  const from = hourOf(at);
  if (until === undefined)
    return [from, from + (needs?.includes('long walking') ? HOURS_OF_A_LONG_WALK : HOURS_OF_AN_OCCASION)];
  const to = hourOf(until);
  return [from, to > from ? to : to + 24];
};

/** Hour of the day by which an occasion with no clock time is sorted and its end reckoned. */
export const startHour = (occasion: Timed): number => hoursOf(occasion)[0];
export const endHour = (occasion: Timed): number => hoursOf(occasion)[1];

/** Air temperature at an hour: half a cosine up from the coldest to the warmest hour, and down again. */
const temperatureAt = (weather: Pick<Weather, 'lowC' | 'highC'>, hour: number): number => {
  const clock = ((hour % 24) + 24) % 24;
  const rising = clock >= COLDEST_HOUR && clock <= WARMEST_HOUR;
  const sinceWarmest = clock > WARMEST_HOUR ? clock - WARMEST_HOUR : clock + 24 - WARMEST_HOUR;
  const share = rising
    ? (1 - Math.cos((Math.PI * (clock - COLDEST_HOUR)) / (WARMEST_HOUR - COLDEST_HOUR))) / 2
    : (1 + Math.cos((Math.PI * sinceWarmest) / (24 - WARMEST_HOUR + COLDEST_HOUR))) / 2;
  return weather.lowC + (weather.highC - weather.lowC) * share;
};

/** Lowest and highest air temperature outdoors during an occasion, °C, to the tenth. */
export const temperaturesDuring = (
  weather: Pick<Weather, 'lowC' | 'highC'>,
  occasion: Timed,
): { readonly low: number; readonly high: number } => {
  const [from, to] = hoursOf(occasion);
  const samples = [to];
  for (let hour = from; hour < to; hour += 0.5) samples.push(hour);
  const temperatures = samples.map((hour) => temperatureAt(weather, hour));
  const tenth = (c: number): number => Math.round(c * 10) / 10;
  return { low: tenth(Math.min(...temperatures)), high: tenth(Math.max(...temperatures)) };
};

/** The stays that cover a date, in the order they begin. */
export const staysOn = (places: readonly TripPlace[], date: IsoDate): readonly TripPlace[] =>
  places.filter((place) => place.from <= date && date <= place.to).sort((a, b) => (a.from < b.from ? -1 : 1));

/** True when somebody is at both occasions; one that names nobody is everybody's. */
export const shareATraveller = (a: Pick<Occasion, 'travellers'>, b: Pick<Occasion, 'travellers'>): boolean =>
  a.travellers.length === 0 || b.travellers.length === 0 || a.travellers.some((name) => b.travellers.includes(name));

/**
 * Where the client is during an occasion. On a day shared by several stays each journey begun before it leads on to the
 * next stay; where no journey is written the last stay takes the evening and the night.
 */
export const placeOf = (
  { places, occasions }: Pick<Brief, 'places' | 'occasions'>,
  occasion: Occasion,
): TripPlace | undefined => {
  const stays = staysOn(places, occasion.on);
  const journeys = occasions.filter(
    (other) => other.transit && other.on === occasion.on && shareATraveller(other, occasion),
  );
  if (journeys.length === 0) {
    return occasion.part === 'evening' || occasion.part === 'night' ? stays.at(-1) : stays[0];
  }
  const begun = journeys.filter((journey) => startHour(journey) < startHour(occasion)).length;
  return stays[Math.min(begun, stays.length - 1)];
};

/** The weather of a place on a day; undefined when the brief does not say. */
export const weatherOn = (place: TripPlace | undefined, date: IsoDate): Weather | undefined =>
  place?.days[date] ?? place?.weather;

/** Air in a room when nobody said how dry it is. Source: ISO 7730:2005 calls 30 to 70 % usual. */
const ROOM_HUMIDITY_PERCENT = 50;

/** The air of an occasion: the room's when indoors, else the place's at its hours. Undefined without weather. */
export const airOf = (occasion: Occasion, place: TripPlace | undefined): Air | undefined => {
  if (occasion.setting.where === 'indoors') {
    const { airC } = occasion.setting;
    return { lowC: airC, highC: airC, windMs: 0, humidityPercent: ROOM_HUMIDITY_PERCENT };
  }
  const weather = weatherOn(place, occasion.on);
  if (weather === undefined) return undefined;
  const { low, high } = temperaturesDuring(weather, occasion);
  return { lowC: low, highC: high, windMs: weather.windMs, humidityPercent: weather.humidityPercent };
};
