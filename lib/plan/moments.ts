import {
  type Air,
  airOf,
  type BeyondClothes,
  beyondTravelClothes,
  type ComfortQuestion,
  endHour,
  feelsOf,
  placeOf,
  type RequiredClo,
  requiredClo,
  startHour,
  sunDuring,
  sunNeverRises,
  uvIndex,
  weatherOn,
} from '../comfort/index.ts';
import type { Brief, ClockTime, IsoDate, Occasion, TripPlace, Weather } from '../model/index.ts';
import type { Feels } from '../vocabulary/index.ts';
import type { LookRestriction } from './look-source.ts';

/** An occasion with everything the plan needs to know of its time and place. */
export interface Moment {
  readonly occasion: Occasion;
  /** Days since the first day of the trip. */
  readonly day: number;
  /** Hours since midnight before the first day. */
  readonly start: number;
  readonly end: number;
  readonly place?: TripPlace;
  readonly weather?: Weather;
  /** Undefined when the brief has no weather for it: then comfort asks for nothing. */
  readonly air?: Air;
  readonly required?: RequiredClo;
  /** Least that the middle of its temperatures asks for, clo. Reckoned once, since many looks are asked what is on then. */
  readonly minAtMiddle?: number;
  /** How high the sun climbs during it, degrees; undefined indoors or off the map. Reckoned once, since it is slow. */
  readonly sunElevation?: number | undefined;
  /** Clear-sky index at its highest outdoors; undefined indoors or off the map. */
  readonly uvIndex?: number;
  readonly swims: boolean;
  /** How the traveller feels where most people are comfortable. */
  readonly feels?: Feels | undefined;
  /** True where the sun does not rise that day. */
  readonly isPolarNight: boolean;
  /** Set where it is so cold outdoors that clothes for travelling do not do, unless pieces are warmer than their kind. */
  readonly beyondClothes?: BeyondClothes | undefined;
  readonly restriction: LookRestriction;
}

const DAY_MS = 86_400_000;

/** Whole days from one date to another. */
export const daysBetween = (from: IsoDate, to: IsoDate): number =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);

export const addDays = (date: IsoDate, days: number): IsoDate =>
  new Date(Date.parse(`${date}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);

/** A moment of the trip as people read it, from hours since midnight before the first day; to the minute. */
export const hourAfter = (from: IsoDate, hours: number): { readonly on: IsoDate; readonly at: ClockTime } => {
  const minutes = Math.round(hours * 60);
  const two = (value: number): string => String(value).padStart(2, '0');
  return {
    on: addDays(from, Math.floor(minutes / 1440)),
    at: `${two(Math.floor(minutes / 60) % 24)}:${two(minutes % 60)}`,
  };
};

/** Tables are printed to the hundredth; rounding outwards lets occasions share their questions. */
const outwards = (required: RequiredClo): { readonly min: number; readonly max: number } => ({
  min: Math.floor(required.min * 100) / 100,
  max: Number.isFinite(required.max) ? Math.ceil(required.max * 100) / 100 : Number.MAX_SAFE_INTEGER,
});

export const restrictionOf = (
  occasion: Occasion,
  required: RequiredClo | undefined,
  heelCmAtMost: number | undefined,
): LookRestriction => ({
  dress: occasion.dress,
  needs: occasion.needs,
  ...(required === undefined || required.method === 'none' ? {} : { clo: outwards(required) }),
  ...(heelCmAtMost === undefined ? {} : { heelCmAtMost }),
});

type Asking = Pick<Moment, 'occasion' | 'sunElevation' | 'feels'>;

const questionAt = ({ occasion, sunElevation, feels }: Asking, air: Air, offC = 0): ComfortQuestion => ({
  setting: occasion.setting,
  activity: occasion.activity,
  air: { ...air, lowC: air.lowC + offC, highC: air.highC - offC },
  dress: occasion.dress,
  swims: occasion.needs.includes('swim'),
  feels,
  ...(sunElevation === undefined ? {} : { sunElevation }),
});

/** What the air of an occasion asks for; `offC` moves the cold end up and the warm end down by that many degrees. */
export const requiredAt = (moment: Asking, air: Air, offC = 0): RequiredClo =>
  requiredClo(questionAt(moment, air, offC));

/** Nothing against the sun is asked of a look while it is down; a finding says that the brief asks for it. */
const inTheDark = (occasion: Occasion, sunElevation: number | undefined): Occasion =>
  sunElevation === undefined || sunElevation >= 0
    ? occasion
    : { ...occasion, needs: occasion.needs.filter((need) => need !== 'sun') };

const momentOf = (brief: Brief, written: Occasion, feels: Feels | undefined): Moment => {
  const place = placeOf(brief, written);
  const weather = weatherOn(place, written.on);
  const air = airOf(written, place);
  const sunElevation = written.setting.where === 'outdoors' ? sunDuring(written, place) : undefined;
  const occasion = inTheDark(written, sunElevation);
  const required =
    air === undefined ? undefined : requiredAt({ occasion, sunElevation, feels }, air, occasion.degreesOff);
  const middleC = air === undefined ? undefined : (air.lowC + air.highC) / 2;
  const day = daysBetween(brief.from, occasion.on);
  return {
    occasion,
    day,
    start: day * 24 + startHour(occasion),
    end: day * 24 + endHour(occasion),
    ...(place === undefined ? {} : { place }),
    ...(weather === undefined ? {} : { weather }),
    ...(air === undefined ? {} : { air }),
    ...(required === undefined ? {} : { required }),
    ...(air === undefined || middleC === undefined
      ? {}
      : { minAtMiddle: requiredAt({ occasion, sunElevation, feels }, { ...air, lowC: middleC, highC: middleC }).min }),
    ...(sunElevation === undefined ? {} : { sunElevation, uvIndex: uvIndex(sunElevation) }),
    isPolarNight: place !== undefined && sunNeverRises(occasion.on, place),
    swims: occasion.needs.includes('swim'),
    feels,
    beyondClothes:
      air === undefined
        ? undefined
        : beyondTravelClothes(questionAt({ occasion, sunElevation, feels }, air, occasion.degreesOff)),
    restriction: restrictionOf(occasion, required, brief.avoid.heelCmOver),
  };
};

/** The occasions of one traveller in order of time; those outside the trip's dates are left out (a finding says so). */
export const momentsOf = (brief: Brief, traveller: string): readonly Moment[] =>
  brief.occasions
    .filter(({ travellers }) => travellers.length === 0 || travellers.includes(traveller))
    .filter(({ on }) => brief.from <= on && on <= brief.to)
    .map((occasion) => momentOf(brief, occasion, feelsOf(brief, traveller)))
    .sort((a, b) => a.start - b.start || a.end - b.end || (a.occasion.id < b.occasion.id ? -1 : 1));
