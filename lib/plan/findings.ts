import { airOf, isColdSwim, placeOf, sunDuring, sunNeverRises } from '../comfort/index.ts';
import type { Brief, Finding, Occasion } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { finding } from './finding.ts';
import { findingsOfHours } from './findings-of-hours.ts';

const ofOccasion = (brief: Brief, occasion: Occasion): readonly Finding[] => {
  const { what, on, needs, activity } = occasion;
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
  } else if (isColdSwim(occasion, air)) {
    const message = phrase('plan', 'cold swim', { occasion: what, low: air.lowC });
    say('warning', 'cold-swim', message, phrase('plan', 'cold swim mend', {}));
  }
  const inSun = occasion.setting.where === 'outdoors' && occasion.setting.sun === 'sun';
  const asks = needs.includes('sun') ? 'the need' : inSun ? 'the place' : undefined;
  if (asks !== undefined && place !== undefined && sunNeverRises(on, place)) {
    const message = phrase('plan', 'no sun', { occasion: what, place: place.name });
    say('warning', 'no-sun', message, phrase('plan', `no sun mend of ${asks}`, {}));
  } else if (asks !== undefined && (sunDuring(occasion, place) ?? 90) < 0) {
    const message = phrase('plan', 'sun is down', { occasion: what });
    say('warning', 'no-sun', message, phrase('plan', `sun is down mend of ${asks}`, {}));
  }
  return found;
};

/** Wash days that cannot help, whatever is washed; how long pieces take to dry is judged with the plan. */
const ofWashDays = (brief: Brief): readonly Finding[] =>
  brief.washDays.flatMap((on): Finding[] => {
    const say = (level: Finding['level'], message: Phrase, mend: Phrase): Finding[] => [
      {
        ...finding(level, 'wash-day', message, mend, brief),
        ...(brief.washDaysLine === undefined ? {} : { line: brief.washDaysLine }),
      },
    ];
    if (on < brief.from || on > brief.to)
      return say('error', phrase('plan', 'wash day outside', { on }), phrase('plan', 'wash day outside mend', {}));
    if (brief.occasions.some((occasion) => occasion.on > on && occasion.on <= brief.to)) return [];
    return say('warning', phrase('plan', 'wash day too late', { on }), phrase('plan', 'wash day too late mend', {}));
  });

/** What is wrong with a brief's occasions, weather and wash days before anything is planned. */
export const findingsOfBrief = (brief: Brief): readonly Finding[] => [
  ...brief.occasions.flatMap((occasion) => ofOccasion(brief, occasion)),
  ...findingsOfHours(brief),
  ...ofWashDays(brief),
];
