import { cautionsFor, comfortInWords, lookComfort, staysOn, weatherOn } from '../comfort/index.ts';
import type { Brief, IsoDate, Look, Piece, PlannedDay, PlannedOccasion, TripPlace } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import type { Candidate } from './candidates.ts';
import { layersFor } from './layers.ts';
import { addDays, type Moment } from './moments.ts';
import { type Assignment, type PlanProblem, wearingsOf } from './problem.ts';
import { changeBetween } from './quality.ts';
import { missedInside } from './room.ts';
import { dryBy, washesFor } from './washing.ts';
import { coatForTheWay } from './way.ts';

const namesOf = (ids: readonly string[], pieces: ReadonlyMap<string, Piece>): readonly string[] =>
  ids.map((id) => pieces.get(id)?.name ?? id);

const reasonsFor = (
  moment: Moment,
  candidate: Candidate,
  look: Look,
  carried: readonly string[],
  pieces: ReadonlyMap<string, Piece>,
): readonly Phrase[] => {
  const { occasion, weather } = moment;
  const reasons: Phrase[] = [];
  if (candidate.fixed) reasons.push(phrase('plan', 'fixed by the stylist', {}));
  if (candidate.favourite) reasons.push(phrase('plan', 'a favourite', {}));
  if (!moment.swims)
    reasons.push(comfortInWords(lookComfort(look, pieces, occasion.activity, occasion.setting.where, moment.feels)));
  if ((occasion.degreesOff ?? 0) > 0) {
    reasons.push(phrase('plan', 'degrees off', { degrees: occasion.degreesOff ?? 0 }));
  }
  const needs = occasion.needs.filter((need) => need !== 'swim');
  if (needs.length > 0) reasons.push(phrase('plan', 'made for', { needs }));
  const onTheWay = [
    ...namesOf(carried, pieces),
    ...[coatForTheWay(moment, look, pieces)].flatMap((coat) => coat?.name ?? []),
  ];
  if (onTheWay.length > 0 && occasion.setting.where === 'indoors' && weather !== undefined) {
    reasons.push(phrase('plan', 'for the way', { layers: onTheWay, low: weather.lowC }));
  } else if (carried.length > 0) reasons.push(phrase('plan', 'take along', { layers: namesOf(carried, pieces) }));
  return candidate.fixed ? reasons : [...reasons, ...candidate.reasons];
};

/** What a fixed look does not meet; its warmth is told in degrees. */
const missesOf = ({ air, occasion }: Moment, { fixed, reasons }: Candidate): readonly Phrase[] =>
  fixed
    ? reasons.map((reason) => {
        if (air === undefined) return reason;
        if (reason.key === 'too cold')
          return phrase('plan', 'too cool for it', { low: air.lowC, activity: occasion.activity });
        if (reason.key === 'too warm')
          return phrase('plan', 'too warm for it', { high: air.highC, activity: occasion.activity });
        return reason;
      })
    : [];

/** What a look is too cool for in a room, in words. */
const coolInside = (moment: Moment, look: Look | undefined, pieces: ReadonlyMap<string, Piece>): readonly Phrase[] => {
  const missed = look === undefined ? [] : missedInside(moment, look, pieces);
  return missed.length === 0 ? [] : [phrase('plan', 'cool inside', { coats: missed.map(({ name }) => name) })];
};

const plannedOccasion = (
  problem: PlanProblem,
  moment: Moment,
  candidate: Candidate | undefined,
  look: Look | undefined,
  before: Look | undefined,
): PlannedOccasion => {
  const { pieces } = problem;
  const { occasion, air, weather, uvIndex } = moment;
  const misses = candidate === undefined ? [] : missesOf(moment, candidate);
  const layers = look === undefined ? { on: [], carried: [] } : layersFor(moment, look, pieces);
  return {
    occasion: occasion.id,
    ...(look === undefined ? {} : { look }),
    layersOn: layers.on,
    layersCarried: layers.carried,
    change: look === undefined ? 'first' : changeBetween(before, look),
    ...(air === undefined ? {} : { airC: { low: air.lowC, high: air.highC } }),
    ...(uvIndex === undefined ? {} : { uvIndex }),
    reasons:
      look === undefined || candidate === undefined ? [] : reasonsFor(moment, candidate, look, layers.carried, pieces),
    cautions: [
      ...coolInside(moment, look, pieces),
      ...cautionsFor({
        occasion,
        pieces,
        ...(air === undefined ? {} : { air }),
        ...(weather === undefined ? {} : { weather }),
        ...(uvIndex === undefined ? {} : { uvIndex }),
        isPolarNight: moment.isPolarNight,
        ...(look === undefined ? { beyondClothes: moment.beyondClothes } : { look }),
      }),
    ],
    ...(misses.length === 0 ? {} : { misses }),
  };
};

/** What is washed on which day, each piece as seldom as the plan allows. */
const washingOf = (
  brief: Brief,
  problem: PlanProblem,
  assignment: Assignment,
): ReadonlyMap<number, PlannedDay['wash']> => {
  const byDay = new Map<number, PlannedDay['wash'][number][]>();
  for (const piece of problem.pieces.values()) {
    if (!problem.limited.has(piece.id) || piece.places.includes('swim')) continue;
    for (const day of washesFor(piece, wearingsOf(problem, assignment, piece.id), problem.washDays) ?? []) {
      const list = byDay.get(day) ?? [];
      byDay.set(day, list);
      const dry = dryBy(piece, brief.from, day);
      list.push({ piece: piece.id, dryBy: dry.on, dryAt: dry.at });
    }
  }
  return byDay;
};

/** Where a day is spent: where most of its occasions are, the later place where two have as many; journeys do not count. */
const placeOfDay = ({ places }: Brief, date: IsoDate, moments: readonly Moment[]): TripPlace | undefined => {
  const stays = staysOn(places, date);
  const spent = moments.flatMap(({ occasion, place }) => (occasion.transit || place === undefined ? [] : [place]));
  const count = (place: TripPlace): number => spent.filter((other) => other === place).length;
  return stays.toReversed().toSorted((a, b) => count(b) - count(a))[0];
};

/** True on a day without occasions that only a journey away from the last stay came before. */
const isHomeward = ({ places }: Brief, moments: readonly Moment[], day: number): boolean => {
  const last = moments.at(-1);
  return last?.occasion.transit === true && last.day < day && places.every(({ from }) => from < last.occasion.on);
};

/** The plan's days, from the first to the last of the trip, with or without occasions. */
export const daysOf = (
  brief: Brief,
  problem: PlanProblem,
  assignment: Assignment,
  looks: readonly (Look | undefined)[],
): readonly PlannedDay[] => {
  const washing = washingOf(brief, problem, assignment);
  return Array.from({ length: problem.days }, (_, day): PlannedDay => {
    const date = addDays(brief.from, day);
    const homeward = isHomeward(brief, problem.moments, day);
    const ofDay = problem.moments.filter((moment) => moment.day === day);
    const place = homeward ? undefined : placeOfDay(brief, date, ofDay);
    const weather = weatherOn(place, date);
    let before: Look | undefined;
    const occasions = problem.moments.flatMap((moment, index) => {
      if (moment.day !== day) return [];
      const look = looks[index];
      const planned = plannedOccasion(problem, moment, assignment[index], look, before);
      before = look ?? before;
      return [planned];
    });
    return {
      date,
      ...(place === undefined ? {} : { place: place.name }),
      ...(weather === undefined ? {} : { weather }),
      ...(homeward ? { homeward } : {}),
      occasions,
      wash: washing.get(day) ?? [],
    };
  });
};

/** Days on which each piece is worn; pieces that are never worn count 0. */
export const wearsByPiece = (
  problem: PlanProblem,
  looks: readonly (Look | undefined)[],
): Readonly<Record<string, number>> => {
  const days = new Map([...problem.pieces.keys()].map((id) => [id, new Set<number>()]));
  looks.forEach((look, index) => {
    const day = problem.moments[index]?.day;
    for (const { piece } of look?.worn ?? []) if (day !== undefined) days.get(piece)?.add(day);
  });
  return Object.fromEntries([...days].map(([id, worn]) => [id, worn.size]));
};
