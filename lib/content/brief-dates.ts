import type { Say } from './brief-checks.ts';
import type { FrontMatter } from './front-matter.ts';
import type { WrittenBrief } from './schema/brief.ts';
import { isDate } from './schema/parts.ts';

/** One dated thing of the brief. */
interface Dated {
  readonly path: readonly (string | number)[];
  /** As a sentence names it: `"Opera"`, `the stay in Graz`. */
  readonly name: string;
  /** What the sentence says of its dates: `is on 2027-05-02, outside the trip`. */
  readonly says: string;
  readonly first: string;
  readonly last: string;
}

const datedOf = (written: WrittenBrief): readonly Dated[] => [
  ...written.places
    .map(({ name, from, to }, index) => ({
      path: ['places', index],
      name: `the stay in ${name}`,
      says: `is from ${from} to ${to}, outside the trip`,
      first: from,
      last: to,
    }))
    .filter(({ first, last }) => first <= last),
  ...written.occasions.map(({ what, on }, index) => ({
    path: ['occasions', index, 'on'],
    name: `"${what}"`,
    says: `is on ${on}, outside the trip`,
    first: on,
    last: on,
  })),
  ...written['wash days'].map((on, index) => ({
    path: ['wash days', index],
    name: `the wash day ${on}`,
    says: 'is outside the trip',
    first: on,
    last: on,
  })),
];

/** From here on it is the trip's own date that is likelier to be wrong than each of the others. Own choice. */
const MANY = 3;
const NAMED_AT_MOST = 3;

const checkEnd = (
  written: WrittenBrief,
  end: 'from' | 'to',
  outside: readonly Dated[],
  say: Say,
  lineOf: FrontMatter['lineOf'],
): void => {
  const { from, to } = written;
  if (outside.length < MANY) {
    for (const { path, name, says } of outside) say(path, `${name} ${says}`, `write a date between ${from} and ${to}`);
    return;
  }
  const named = outside.slice(0, NAMED_AT_MOST).map(({ name, path }) => `${name} (line ${lineOf(path)})`);
  const more = outside.length - named.length;
  const [happens, side, reached] =
    end === 'to'
      ? [
          'ends',
          'after',
          outside
            .map(({ last }) => last)
            .toSorted()
            .at(-1),
        ]
      : ['begins', 'before', outside.map(({ first }) => first).toSorted()[0]];
  say(
    [end],
    `the trip ${happens} on ${end === 'to' ? to : from}, but ${outside.length} dates are ${side} that: ${named.join(', ')}${more > 0 ? ` and ${more} more` : ''}`,
    `write "${end}: ${reached}", or mend those dates`,
  );
};

/**
 * Every date against the trip and the stays. One wrong date is told once: when the trip ends before it begins nothing
 * else is measured by it, and when many things lie beyond one end of the trip, that end is what is told.
 */
export const checkDates = (written: WrittenBrief, say: Say, lineOf: FrontMatter['lineOf']): void => {
  const { from, to, places } = written;
  for (const [index, place] of places.entries()) {
    if (place.to < place.from)
      say(['places', index, 'to'], `the stay in ${place.name} ends before it begins`, 'swap the two dates or mend one');
    for (const date of Object.keys(place.days)) {
      if (!isDate(date))
        say(['places', index, 'days', date], `there is no ${date} in the calendar`, 'write a date that exists');
      else if (place.from <= place.to && (date < place.from || date > place.to))
        say(
          ['places', index, 'days', date],
          `the weather of ${date} is outside the stay in ${place.name}`,
          `write a date between ${place.from} and ${place.to}`,
        );
    }
  }
  if (to < from) {
    say(['to'], `the trip ends (${to}) before it begins (${from})`, 'swap the two dates or mend one');
    return;
  }
  const dated = datedOf(written);
  const late = dated.filter(({ last }) => last > to);
  const early = dated.filter(({ first, last }) => first < from && last <= to);
  checkEnd(written, 'to', late, say, lineOf);
  checkEnd(written, 'from', early, say, lineOf);
};
