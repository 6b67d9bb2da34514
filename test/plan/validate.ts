import { airOf, placeOf, requiredClo, sunDuring } from '../../lib/comfort/index.ts';
import type { Brief, Capsule, Look, Occasion, Piece, Plan } from '../../lib/model/index.ts';
import { meets } from './look-source.ts';

/** Clock hours of the parts of the day and of the evening wash, as the documentation states them. */
const HOURS = { morning: [8, 12], day: [10, 17], evening: [18, 23], night: [22, 30] } as const;
const WASH_HOUR = 22;

const dayOf = (brief: Brief, date: string): number =>
  Math.round((Date.parse(date) - Date.parse(brief.from)) / 86_400_000);

export const hours = (brief: Brief, { on, part, at }: Occasion): readonly [number, number] => {
  const day = dayOf(brief, on) * 24;
  if (at === undefined) return [day + HOURS[part][0], day + HOURS[part][1]];
  const from = Number(at.slice(0, 2)) + Number(at.slice(3)) / 60;
  return [day + from, day + from + 2];
};

/** Whether a look is right for an occasion by itself. */
export const suits = (brief: Brief, occasion: Occasion, look: Look, pieces: ReadonlyMap<string, Piece>): boolean => {
  const place = placeOf(brief, occasion);
  const air = airOf(occasion, place);
  const sunElevation = sunDuring(occasion, place);
  const off = occasion.degreesOff ?? 0;
  const required =
    air === undefined
      ? undefined
      : requiredClo({
          setting: occasion.setting,
          activity: occasion.activity,
          air: { ...air, lowC: air.lowC + off, highC: air.highC - off },
          dress: occasion.dress,
          swims: occasion.needs.includes('swim'),
          ...(sunElevation === undefined ? {} : { sunElevation }),
        });
  return meets(look, pieces, {
    dress: occasion.dress,
    needs: occasion.needs,
    // The plan rounds the clo it asks for outwards to the hundredth.
    ...(required === undefined || required.method === 'none'
      ? {}
      : { clo: { min: Math.floor(required.min * 100) / 100, max: Math.ceil(required.max * 100) / 100 } }),
    ...(brief.avoid.heelCmOver === undefined ? {} : { heelCmAtMost: brief.avoid.heelCmOver }),
  });
};

/** All ways of choosing some of these days. */
const choices = (days: readonly number[]): readonly (readonly number[])[] =>
  Array.from({ length: 2 ** days.length }, (_, chosen) => days.filter((__, index) => (chosen & (2 ** index)) !== 0));

/** Whether one piece can be worn on these occasions: by trying every choice of wash days and walking through the trip. */
export const wearable = (brief: Brief, piece: Piece, worn: readonly Occasion[]): boolean => {
  if (piece.places.includes('swim')) {
    return worn.every((later, index) =>
      worn
        .slice(0, index)
        .every((earlier) => hours(brief, later)[0] >= hours(brief, earlier)[1] + piece.care.dryHours.high),
    );
  }
  if (piece.places.every((place) => place === 'legwear')) return true;
  const canWash = piece.care.wash !== 'dry clean' && piece.care.wash !== 'wipe';
  const washDays = canWash ? brief.washDays.map((date) => dayOf(brief, date)) : [];
  const days = [...new Set(worn.map(({ on }) => dayOf(brief, on)))].sort((a, b) => a - b);
  return choices(washDays).some((washes) => {
    let left = Math.max(1, Math.floor(piece.wears.value));
    let dry = Number.NEGATIVE_INFINITY;
    const last = Math.max(0, ...days);
    for (let day = 0; day <= last; day += 1) {
      if (days.includes(day)) {
        left -= 1;
        const first = Math.min(...worn.filter(({ on }) => dayOf(brief, on) === day).map((o) => hours(brief, o)[0]));
        if (left < 0 || first < dry) return false;
      }
      if (washes.includes(day)) {
        left = Math.max(1, Math.floor(piece.wears.value));
        dry = day * 24 + WASH_HOUR + piece.care.dryHours.high;
      }
    }
    return true;
  });
};

/** Clothes that must not be seen on two days. */
export const seen = (look: Look): string =>
  look.worn.some(({ slot }) => slot === 'swim')
    ? ''
    : look.worn
        .filter(({ slot }) => ['one-piece', 'top', 'bottom', 'mid layer'].includes(slot))
        .map(({ piece }) => piece)
        .join('+');

/** Everything that is wrong with a set of looks for occasions; knows the constraints and nothing of how plans are made. */
export const broken = (
  brief: Brief,
  served: readonly { readonly occasion: Occasion; readonly look: Look }[],
  pieces: readonly Piece[],
  fixed: ReadonlySet<string> = new Set(),
): readonly string[] => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const wrong: string[] = [];
  for (const { occasion, look } of served) {
    if (!fixed.has(occasion.id) && !suits(brief, occasion, look, byId))
      wrong.push(`${look.id} does not suit ${occasion.id}`);
  }
  for (const piece of pieces) {
    const worn = served
      .filter(({ look }) => look.worn.some((w) => w.piece === piece.id))
      .map(({ occasion }) => occasion);
    if (!wearable(brief, piece, worn))
      wrong.push(`${piece.id} cannot be worn on ${worn.map(({ id }) => id).join(', ')}`);
  }
  const days = new Map<string, Set<string>>();
  for (const { occasion, look } of served) {
    const key = seen(look);
    if (key === '' || fixed.has(occasion.id)) continue;
    days.set(key, (days.get(key) ?? new Set()).add(occasion.on));
  }
  for (const [key, on] of days) if (on.size > 1) wrong.push(`${key} is worn on ${[...on].join(' and ')}`);
  return wrong;
};

export const brokenPlan = (
  plan: Plan,
  brief: Brief,
  pieces: readonly Piece[],
  capsule?: Capsule,
): readonly string[] => {
  const occasions = new Map(brief.occasions.map((occasion) => [occasion.id, occasion]));
  const planned = plan.days.flatMap((day) => day.occasions);
  const served = planned.flatMap(({ occasion: id, look }) => {
    const occasion = occasions.get(id);
    return occasion === undefined || look === undefined ? [] : [{ occasion, look }];
  });
  const fixed = new Set(capsule?.fixed.map(({ occasion }) => occasion) ?? []);
  const wrong = [...broken(brief, served, pieces, fixed)];
  const asked = brief.occasions.filter(
    ({ on, travellers }) =>
      on >= brief.from && on <= brief.to && (travellers.length === 0 || travellers.includes(plan.traveller)),
  );
  if (planned.length !== asked.length) wrong.push(`${planned.length} of ${asked.length} occasions are in the days`);
  if (served.length !== plan.served) wrong.push(`says ${plan.served} served, serves ${served.length}`);
  if (plan.served + plan.unserved.length !== plan.of) wrong.push('served and unserved do not add up');
  for (const day of plan.days)
    for (const { piece } of day.wash)
      if (!brief.washDays.includes(day.date)) wrong.push(`${piece} is washed on ${day.date}`);
  return wrong;
};

/** The most occasions any plan can serve, by trying everything. For tiny trips. */
export const mostServed = (brief: Brief, pieces: readonly Piece[], looks: readonly Look[]): number => {
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const occasions = brief.occasions.toSorted((a, b) => hours(brief, a)[0] - hours(brief, b)[0]);
  const options = occasions.map((occasion) => looks.filter((look) => suits(brief, occasion, look, byId)));
  const same = new Set<string>();
  let most = 0;
  const go = (index: number, served: readonly { occasion: Occasion; look: Look }[]): void => {
    if (served.length + occasions.length - index <= most) return;
    const occasion = occasions[index];
    if (occasion === undefined) {
      most = served.length;
      return;
    }
    same.clear();
    for (const look of options[index] ?? []) {
      const next = [...served, { occasion, look }];
      if (broken(brief, next, pieces).length === 0) go(index + 1, next);
    }
    go(index + 1, served);
  };
  go(0, []);
  return most;
};
