import { cautionsFor, staysOn, weatherOn } from '../comfort/index.ts';
import type { Brief, IsoDate, Look, Piece, PlannedDay, PlannedOccasion, TripPlace, Way } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';
import type { Candidate } from './candidates.ts';
import { changeBetween } from './change.ts';
import { layersFor } from './layers.ts';
import { addDays, type Moment } from './moments.ts';
import { type Assignment, type PlanProblem, wearingsOf } from './problem.ts';
import { reasonsFor } from './reasons.ts';
import { coatsAtHand, isInARoom, lackingInside, missedInside } from './room.ts';
import { dryBy, washesFor, wornUntil } from './washing.ts';
import { piecesOfWay } from './way-record.ts';

/** What a fixed look does not meet; its warmth is told in degrees. */
const missesOf = ({ air, occasion }: Moment, { fixed, reasons }: Candidate): readonly Phrase[] =>
  fixed
    ? reasons().map((reason) => {
        if (air === undefined) return reason;
        if (reason.key === 'too cold')
          return phrase('plan', 'too cool for it', { low: air.lowC, activity: occasion.activity });
        if (reason.key === 'too warm')
          return phrase('plan', 'too warm for it', { high: air.highC, activity: occasion.activity });
        return reason;
      })
    : [];

/** That a look is too cool for a room with its coat left at the door, or for a journey with its coat off, in words. */
const coolInside = (moment: Moment, look: Look | undefined, pieces: ReadonlyMap<string, Piece>): readonly Phrase[] => {
  if (look === undefined) return [];
  const { occasion, air } = moment;
  if (!isInARoom(occasion) && air !== undefined && lackingInside(moment, look, pieces) > 0) {
    const coats = coatsAtHand(look, pieces);
    const told = { low: air.lowC, activity: occasion.activity };
    return [
      coats.length === 0
        ? phrase('plan', 'too cool for it', told)
        : phrase('plan', 'cool without', { ...told, coats: coats.map(({ name }) => name) }),
    ];
  }
  const missed = missedInside(moment, look, pieces);
  return missed.length === 0 ? [] : [phrase('plan', 'cool inside', { coats: missed.map(({ name }) => name) })];
};

/** What was worn before an occasion. */
interface Before {
  /** The look before it on the same day. */
  readonly look: Look | undefined;
  /** Every piece worn on the trip so far. */
  readonly worn: ReadonlySet<string>;
}

const plannedOccasion = (
  problem: PlanProblem,
  moment: Moment,
  candidate: Candidate | undefined,
  look: Look | undefined,
  way: Way | undefined,
  before: Before,
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
    ...(way === undefined ? {} : { way }),
    change: look === undefined ? 'first' : changeBetween(before.look, look),
    ...(air === undefined ? {} : { airC: { low: air.lowC, high: air.highC } }),
    ...(uvIndex === undefined ? {} : { uvIndex }),
    reasons:
      look === undefined || candidate === undefined
        ? []
        : reasonsFor({ moment, candidate, look, way, wornBefore: before.worn, pieces }),
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
    const wearings = wearingsOf(problem, assignment, piece.id);
    for (const day of washesFor(piece, wearings, problem.washDays) ?? []) {
      const list = byDay.get(day) ?? [];
      byDay.set(day, list);
      const dry = dryBy(piece, brief.from, day, wornUntil(wearings, day));
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
  ways: readonly (Way | undefined)[],
): readonly PlannedDay[] => {
  const washing = washingOf(brief, problem, assignment);
  const worn = new Set<string>();
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
      const planned = plannedOccasion(problem, moment, assignment[index], look, ways[index], { look: before, worn });
      before = look ?? before;
      for (const { piece } of look?.worn ?? []) worn.add(piece);
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

/** Days on which each piece is worn, there or on the way; pieces that are never worn count 0. */
export const wearsByPiece = (
  problem: PlanProblem,
  looks: readonly (Look | undefined)[],
  ways: readonly (Way | undefined)[],
): Readonly<Record<string, number>> => {
  const days = new Map([...problem.pieces.keys()].map((id) => [id, new Set<number>()]));
  looks.forEach((look, index) => {
    const day = problem.moments[index]?.day;
    const worn = [...(look?.worn ?? []).map(({ piece }) => piece), ...piecesOfWay(ways[index])];
    for (const piece of worn) if (day !== undefined) days.get(piece)?.add(day);
  });
  return Object.fromEntries([...days].map(([id, worn]) => [id, worn.size]));
};
