import { HOURS_OF_AN_OCCASION, hoursOf, shareATraveller } from '../comfort/index.ts';
import type { Brief, Finding, Occasion } from '../model/index.ts';
import { phrase } from '../words/index.ts';
import { finding } from './finding.ts';
import { daysBetween, hourAfter } from './moments.ts';

/** From and to, hours since midnight before the first day. */
type Span = readonly [from: number, to: number];

const spanOf = (brief: Brief, occasion: Occasion): Span => {
  const midnight = daysBetween(brief.from, occasion.on) * 24;
  const [from, to] = hoursOf(occasion);
  return [midnight + from, midnight + to];
};

/** Two clock times the same, or no clock times and the same part of the day. */
const beginTogether = (a: Occasion, b: Occasion): boolean =>
  a.on === b.on &&
  (a.at !== undefined && b.at !== undefined ? hoursOf(a)[0] === hoursOf(b)[0] : a.at === b.at && a.part === b.part);

const overlap = (a: Span, b: Span): boolean => a[0] < b[1] && b[0] < a[1];

/** True when what has an hour leaves what has only a part of the day less than an occasion's time in one go. */
const leavesNoRoom = (part: Span, fixed: Span): boolean =>
  overlap(part, fixed) && Math.max(fixed[0] - part[0], part[1] - fixed[1]) < HOURS_OF_AN_OCCASION;

/** What is to be said of two occasions of one person, the later in the brief second. */
const ofPair = (brief: Brief, first: Occasion, second: Occasion): readonly Finding[] => {
  const about = [second, first];
  if (beginTogether(first, second)) {
    const message = phrase('plan', 'two at one hour', { first: first.what, second: second.what, on: second.on });
    return [finding('error', 'two-at-one-hour', message, phrase('plan', 'two at one hour mend', {}), brief, about)];
  }
  const spans = { first: spanOf(brief, first), second: spanOf(brief, second) };
  if (first.at !== undefined && second.at !== undefined) {
    if (!overlap(spans.first, spans.second)) return [];
    const [before, after] = spans.first[0] < spans.second[0] ? [first, second] : [second, first];
    const end = hourAfter(brief.from, spanOf(brief, before)[1]);
    const message = phrase('plan', 'hours overlap', {
      first: before.what,
      second: after.what,
      on: after.on,
      until: end.at,
      starts: after.at ?? '',
    });
    const mend = phrase('plan', 'hours overlap mend', { first: before.what, starts: after.at ?? '' });
    return [finding('warning', 'hours-overlap', message, mend, brief, about)];
  }
  if (first.at === undefined && second.at === undefined) return [];
  const [vague, fixed] = first.at === undefined ? [first, second] : [second, first];
  if (!leavesNoRoom(spanOf(brief, vague), spanOf(brief, fixed))) return [];
  const said = { vague: vague.what, part: vague.part, fixed: fixed.what, on: vague.on };
  const message = phrase('plan', 'no room in the part', said);
  return [
    finding('warning', 'hours-overlap', message, phrase('plan', 'no room in the part mend', said), brief, [
      vague,
      fixed,
    ]),
  ];
};

/**
 * Occasions of one person that begin together, an error, or overlap by the hours the plan reckons with, a warning: no
 * end was written then, since one that overlaps is refused where the brief is read.
 */
export const findingsOfHours = (brief: Brief): readonly Finding[] =>
  brief.occasions.flatMap((second, index) =>
    brief.occasions
      .slice(0, index)
      .filter((first) => shareATraveller(first, second))
      .flatMap((first) => ofPair(brief, first, second)),
  );
