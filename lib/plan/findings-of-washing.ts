import { hoursOf } from '../comfort/index.ts';
import type { Brief, Finding, IsoDate, Occasion, Piece, Plan } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import { addDays, daysBetween, hourAfter } from './moments.ts';
import { dryAt, dryBy, hangsUpBy, isLimited, isWashable, WASHED_AT_HOUR } from './washing.ts';

/** An occasion and when it begins, hours since midnight before the first day. */
interface Start {
  readonly occasion: Occasion;
  readonly start: number;
}

/** What one traveller dresses for, in order of time. */
const startsOf = (brief: Brief, traveller: string): readonly Start[] =>
  brief.occasions
    .filter(({ travellers }) => travellers.length === 0 || travellers.includes(traveller))
    .filter(({ on }) => brief.from <= on && on <= brief.to)
    .map((occasion) => ({ occasion, start: daysBetween(brief.from, occasion.on) * 24 + hoursOf(occasion)[0] }))
    .sort((a, b) => a.start - b.start);

/**
 * What hangs on the line after a wash day: of the pieces worn by then those that do not last the trip unwashed; where
 * every one does, all that can be washed.
 */
const washedOn = (on: IsoDate, plan: Plan, pieces: readonly Piece[], daysDressed: number): readonly Piece[] => {
  const worn = new Set(
    plan.days
      .filter(({ date }) => date <= on)
      .flatMap(({ occasions }) => occasions.flatMap(({ look }) => look?.worn.map(({ piece }) => piece) ?? [])),
  );
  const washable = pieces.filter((piece) => worn.has(piece.id) && isWashable(piece) && !piece.places.includes('swim'));
  const limited = washable.filter((piece) => isLimited(piece, daysDressed));
  return limited.length > 0 ? limited : washable;
};

const byDrying = (day: number) => (a: Piece, b: Piece) => dryAt(a, day) - dryAt(b, day);

/**
 * Wash days after which nothing, or not everything, is dry for the last thing there is to dress for, and what the plan
 * washes that would still be damp on the next journey. Hours are the pieces' own, estimates at their long end.
 */
export const findingsOfWashing = (plan: Plan, brief: Brief, pieces: readonly Piece[]): readonly Finding[] => {
  const starts = startsOf(brief, plan.traveller);
  const daysDressed = new Set(starts.map(({ occasion }) => occasion.on)).size;
  const say = (level: Finding['level'], message: Phrase, mend: Phrase, about: Occasion): Finding => ({
    level,
    rule: 'wash-day',
    message,
    mend,
    file: brief.file,
    ...(brief.washDaysLine === undefined ? {} : { line: brief.washDaysLine }),
    about: [about.id],
  });
  return brief.washDays.flatMap((on): Finding[] => {
    const day = daysBetween(brief.from, on);
    const later = starts.filter(({ occasion }) => occasion.on > on);
    const last = later.at(-1);
    if (last === undefined) return [];
    const begins = ({ occasion, start }: Start) => ({
      occasion: occasion.what,
      day: occasion.on,
      at: hourAfter(brief.from, start).at,
    });
    const washed = washedOn(on, plan, pieces, daysDressed).toSorted(byDrying(day));
    const damp = washed.filter((piece) => dryAt(piece, day) > last.start);
    const latestFor = (piece: Piece): IsoDate => {
      const latest = hangsUpBy(piece, last.start);
      return latest < 0 ? '' : addDays(brief.from, latest);
    };
    const [quickest] = washed;
    if (quickest !== undefined && damp.length === washed.length) {
      const dry = dryBy(quickest, brief.from, day);
      const message = phrase('plan', 'nothing dries', {
        on,
        hung: hourAfter(on, WASHED_AT_HOUR).at,
        ...begins(last),
        piece: quickest.name,
        dryBy: dry.on,
        dryAt: dry.at,
      });
      const mend = phrase('plan', 'nothing dries mend', { latest: latestFor(quickest) });
      return [say('warning', message, mend, last.occasion)];
    }
    const slowest = damp.at(-1);
    const tooSlow =
      slowest === undefined
        ? []
        : [
            say(
              'advice',
              phrase('plan', 'some never dry', { on, pieces: damp.map(({ name }) => name), ...begins(last) }),
              phrase('plan', 'some never dry mend', { pieces: damp.length, latest: latestFor(slowest) }),
              last.occasion,
            ),
          ];
    const journey = later.find(({ occasion }) => occasion.transit);
    const planned = new Set(plan.days.find(({ date }) => date === on)?.wash.map(({ piece }) => piece) ?? []);
    const packedDamp = pieces.filter(
      (piece) => planned.has(piece.id) && journey !== undefined && dryAt(piece, day) > journey.start,
    );
    if (journey === undefined || packedDamp.length === 0) return tooSlow;
    const names = packedDamp.map(({ name }) => name);
    const message = phrase('plan', 'packed damp', { on, pieces: names, ...begins(journey) });
    return [...tooSlow, say('warning', message, phrase('plan', 'packed damp mend', {}), journey.occasion)];
  });
};
