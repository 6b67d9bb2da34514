import {
  airOf,
  hoursOf,
  isBeyondTravelClothes,
  placeOf,
  shareATraveller,
  sunDuring,
  sunNeverRises,
} from '../comfort/index.ts';
import type { Brief, Finding, Occasion } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { daysBetween } from './moments.ts';
import { WASHED_AT_HOUR } from './washing.ts';

/** A finding about some occasions of a brief, at the line of the first. */
export const finding = (
  level: Finding['level'],
  rule: string,
  message: Phrase,
  mend: Phrase,
  brief: Brief,
  about: readonly Occasion[] = [],
): Finding => {
  const line = about[0]?.line;
  return {
    level,
    rule,
    message,
    mend,
    file: brief.file,
    ...(line === undefined ? {} : { line }),
    about: about.map(({ id }) => id),
  };
};

const ofOccasion = (brief: Brief, occasion: Occasion): readonly Finding[] => {
  const { what, on, needs, setting, activity } = occasion;
  const found: Finding[] = [];
  const say = (level: Finding['level'], rule: string, message: Phrase, mend: Phrase): void => {
    found.push(finding(level, rule, message, mend, brief, [occasion]));
  };
  if (on < brief.from || on > brief.to) {
    const message = phrase('plan', 'outside the trip', { occasion: what, on, from: brief.from, to: brief.to });
    say('error', 'occasion-outside-trip', message, phrase('plan', 'outside the trip mend', {}));
    return found;
  }
  if (activity === 'swimming' && !needs.includes('swim')) {
    say(
      'warning',
      'swims-without-need',
      phrase('plan', 'swims without need', { occasion: what }),
      phrase('plan', 'swims without need mend', {}),
    );
  }
  const place = placeOf(brief, occasion);
  const air = airOf(occasion, place);
  if (air === undefined) {
    const message = phrase('plan', 'missing weather', { occasion: what, place: place?.name ?? '' });
    say('warning', 'missing-weather', message, phrase('plan', 'missing weather mend', {}));
  } else if (isBeyondTravelClothes(setting, air)) {
    const message = phrase('plan', 'too cold for clothes', { occasion: what, low: air.lowC });
    say('error', 'too-cold-for-clothes', message, phrase('plan', 'too cold for clothes mend', {}));
  }
  if (place !== undefined && needs.includes('sun') && sunNeverRises(on, place)) {
    const message = phrase('plan', 'no sun', { occasion: what, place: place.name });
    say('warning', 'no-sun', message, phrase('plan', 'no sun mend', {}));
  } else if (needs.includes('sun') && (sunDuring(occasion, place) ?? 90) < 0) {
    const message = phrase('plan', 'sun is down', { occasion: what });
    say('warning', 'no-sun', message, phrase('plan', 'sun is down mend', {}));
  }
  return found;
};

/** Two clock times the same, or no clock times and the same part of the day. */
const clash = (a: Occasion, b: Occasion): boolean =>
  a.on === b.on &&
  shareATraveller(a, b) &&
  (a.at !== undefined && b.at !== undefined ? hoursOf(a)[0] === hoursOf(b)[0] : a.at === b.at && a.part === b.part);

const twoAtOneHour = (brief: Brief): readonly Finding[] =>
  brief.occasions.flatMap((second, index) =>
    brief.occasions
      .slice(0, index)
      .filter((first) => clash(first, second))
      .map((first) =>
        finding(
          'error',
          'two-at-one-hour',
          phrase('plan', 'two at one hour', { first: first.what, second: second.what, on: second.on }),
          phrase('plan', 'two at one hour mend', {}),
          brief,
          [second, first],
        ),
      ),
  );

/** Hours an ordinary wash needs to dry. Own choice, as no published drying times were found. */
const DRYING_HOURS = 12;

const ofWashDays = (brief: Brief): readonly Finding[] =>
  brief.washDays.flatMap((on): Finding[] => {
    if (on < brief.from || on > brief.to) {
      return [
        finding(
          'error',
          'wash-day',
          phrase('plan', 'wash day outside', { on }),
          phrase('plan', 'wash day outside mend', {}),
          brief,
        ),
      ];
    }
    if (!brief.occasions.some((occasion) => occasion.on > on && occasion.on <= brief.to)) {
      return [
        finding(
          'warning',
          'wash-day',
          phrase('plan', 'wash day too late', { on }),
          phrase('plan', 'wash day too late mend', {}),
          brief,
        ),
      ];
    }
    const journey = brief.occasions
      .filter(({ transit, on: day }) => transit && day > on)
      .map((occasion) => ({
        occasion,
        hours: daysBetween(on, occasion.on) * 24 + hoursOf(occasion)[0] - WASHED_AT_HOUR,
      }))
      .sort((a, b) => a.hours - b.hours)[0];
    if (journey === undefined || journey.hours >= DRYING_HOURS) return [];
    const message = phrase('plan', 'no drying time', {
      on,
      journey: journey.occasion.what,
      hours: Math.floor(journey.hours),
    });
    return [
      finding('warning', 'wash-day', message, phrase('plan', 'no drying time mend', {}), brief, [journey.occasion]),
    ];
  });

/** What is wrong with a brief's occasions, weather and wash days before anything is planned. */
export const findingsOfBrief = (brief: Brief): readonly Finding[] => [
  ...brief.occasions.flatMap((occasion) => ofOccasion(brief, occasion)),
  ...twoAtOneHour(brief),
  ...ofWashDays(brief),
];
