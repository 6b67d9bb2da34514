import type { Brief, Occasion, Piece, Plan } from '../../../lib/model/index.ts';
import { dayOf, hoursOf, WASH_HOUR } from './time.ts';

/** One thing that happens to a piece, at an hour of the trip. */
type Event =
  | { readonly at: number; readonly what: 'worn'; readonly until: number; readonly day: number }
  | { readonly at: number; readonly what: 'washed'; readonly saysDry: number };

/** A day's wash comes after all that is worn that day. */
const order = ({ at, what }: Event): number => (what === 'washed' ? Math.floor(at / 24) * 24 + 24 : at);

export const isSwimwear = ({ places }: Piece): boolean => places.includes('swim');
/** Socks and tights are rinsed overnight or packed by the day. common practice, no source */
export const isLegwear = ({ places }: Piece): boolean =>
  places.every((place) => place === 'legwear' || place === 'leg layer');
export const canBeWashed = ({ care }: Piece): boolean => care.wash !== 'dry clean' && care.wash !== 'wipe';
export const wearsBetween = ({ wears }: Piece): number => Math.max(1, Math.floor(wears.value));

/** Walks through the trip with one piece: how often it was worn since it was clean, and from when it is dry. */
const walked = (piece: Piece, events: readonly Event[]): readonly string[] => {
  const wrong: string[] = [];
  const dries = piece.care.dryHours.high;
  let worn = new Set<number>();
  let [dryFrom, onUntil] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const event of events.toSorted((a, b) => order(a) - order(b))) {
    if (event.what === 'washed') {
      if (!canBeWashed(piece)) wrong.push(`${piece.id} cannot be washed on the way`);
      worn = new Set();
      // what is still worn at the hour of the wash hangs later
      dryFrom = Math.max(event.at, onUntil) + dries;
      if (Math.abs(event.saysDry - dryFrom) > 1) wrong.push(`${piece.id} is dry at ${dryFrom}, not ${event.saysDry}`);
      continue;
    }
    if (event.at < dryFrom) wrong.push(`${piece.id} is worn wet at hour ${event.at}`);
    onUntil = Math.max(onUntil, event.until);
    if (isSwimwear(piece)) dryFrom = onUntil + dries;
    else if (!isLegwear(piece)) {
      worn.add(event.day);
      if (worn.size > wearsBetween(piece)) wrong.push(`${piece.id} is worn ${worn.size} times without a wash`);
    }
  }
  return wrong;
};

/** What is wrong with wears, washes and drying, walking the washes the plan states and no others. */
export const unwashed = (
  plan: Plan,
  brief: Brief,
  occasions: ReadonlyMap<string, Occasion>,
  pieces: readonly Piece[],
): readonly string[] => {
  const wrong: string[] = [];
  const events = new Map<string, Event[]>(pieces.map(({ id }) => [id, []]));
  for (const { date, wash, occasions: planned } of plan.days) {
    for (const { piece, dryBy, dryAt } of wash) {
      if (!brief.washDays.includes(date)) wrong.push(`${piece} is washed on ${date}, no wash day`);
      if (!events.has(piece)) wrong.push(`${piece} is washed and not in the bag`);
      const saysDry = dayOf(brief, dryBy) * 24 + Number(dryAt.slice(0, 2)) + Number(dryAt.slice(3)) / 60;
      events.get(piece)?.push({ at: dayOf(brief, date) * 24 + WASH_HOUR, what: 'washed', saysDry });
    }
    for (const { occasion: id, look } of planned) {
      const occasion = occasions.get(id);
      if (occasion === undefined || look === undefined) continue;
      const [at, until] = hoursOf(brief, occasion);
      for (const { piece } of look.worn)
        events.get(piece)?.push({ at, what: 'worn', until, day: dayOf(brief, occasion.on) });
    }
  }
  return [...wrong, ...pieces.flatMap((piece) => walked(piece, events.get(piece.id) ?? []))];
};
