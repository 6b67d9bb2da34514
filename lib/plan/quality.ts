import { cloOfLook, warmLayers } from '../comfort/index.ts';
import { ACTIVITIES, CORE_SLOTS } from '../vocabulary/index.ts';
import type { Candidate } from './candidates.ts';
import { BASE_SLOTS, clothesOf } from './change.ts';
import type { Assignment, PlanProblem } from './problem.ts';
import { isInARoom, lackingInside } from './room.ts';
import { coatWornTo, followsOn } from './same-coat.ts';
import { tasteCost, type WornAs } from './taste.ts';
import { createWarmthCost, isColdOutdoors } from './warmth.ts';
import { wayWithoutCoat } from './way.ts';

/** What a plan is judged by once every occasion that can be served is. Own choice; lower is better. */
const COST = {
  /** Worst against best look of an occasion in the ranking. */
  rank: 6,
  favourite: -5,
  /** Clothes changed between two occasions of one day. */
  change: 3,
  /** Each change beyond two a day. */
  manyChanges: 6,
  /** The clothes of a walk kept on for what follows. */
  notFresh: 4,
  /** The same top and bottom, or dress, on another day, and so much more each day it comes again. */
  sameCore: 8,
  /** And that on the very next day; at another occasion people dress for; or with the same layers. More than any wish. */
  seenAgain: 60,
  /** A garment of the core seen again the next day. */
  nextDay: 1.5,
  /** Swimwear worn again within a day and a half, when another could take its turn. */
  sameSwimwear: 3,
  /** A piece that has to be packed, and each kilogram of it. */
  piece: 0.6,
  kilogram: 1.5,
  /** Each kilogram worn on a journey instead of carried in a bag: half of one outweighs the ranking. */
  kilogramInTransit: -12,
  /** A look too cool for a room with the coat left at the door, more than changing clothes, and each clo it lacks. */
  coolInARoom: 12,
  missingInside: 20,
  /** On a train or plane the coat is at hand. */
  coatOnAJourney: 5,
  /** Nothing warm for the way to an indoor occasion when it is cold outside, and when it is colder still. */
  wayWithoutCoat: { mild: 0, cold: 2, bitter: 8 },
  /** Another coat than to the occasion before, with no time to go back for it: more than any wish of colours. */
  anotherCoat: 14,
  /** An overshirt or cardigan with nothing under it out of doors in the cold. */
  layerOnTheSkin: 6,
  /** No piece for rain when rain is likely. */
  wet: 2,
} as const;

/** Chance of rain from which a look outdoors does better with something for it. Own choice, percent. */
const LIKELY_RAIN_PERCENT = 50;
/** Activity from which clothes are not fresh any more. Own choice, met. */
const TIRING_MET = 2.6;
const SWIM_TURN_HOURS = 36;

/** True where the only top is made to go over another. */
const isLayerOnTheSkin = (worn: readonly WornAs[]): boolean =>
  worn.some(({ piece, slot }) => slot === 'top' && piece.places[0] !== 'top') &&
  worn.every(({ slot }) => slot !== 'base layer');

const ownCost = (
  problem: PlanProblem,
  index: number,
  candidate: Candidate,
  warmthCost: ReturnType<typeof createWarmthCost>,
): number => {
  const moment = problem.moments[index];
  if (moment === undefined) return 0;
  let cost = COST.rank * (1 - candidate.quality) + (candidate.favourite ? COST.favourite : 0);
  const pieces = candidate.look.worn.flatMap(({ piece, slot }) => {
    const found = problem.pieces.get(piece);
    return found === undefined ? [] : [{ piece: found, slot }];
  });
  cost += tasteCost(moment.occasion, pieces);
  cost += warmthCost(
    cloOfLook(candidate.look, problem.pieces).on,
    pieces.map(({ piece }) => piece),
    warmLayers(candidate.look, problem.pieces).length,
  );
  const lacking = lackingInside(moment, candidate.look, problem.pieces);
  if (lacking > 0) {
    cost += isInARoom(moment.occasion) ? COST.coolInARoom + COST.missingInside * lacking : COST.coatOnAJourney;
  }
  cost += COST.wayWithoutCoat[wayWithoutCoat(moment, candidate.look, problem.pieces)];
  if (isColdOutdoors(moment) && isLayerOnTheSkin(pieces)) cost += COST.layerOnTheSkin;
  const outside = moment.weather;
  if (
    outside !== undefined &&
    moment.occasion.setting.where === 'outdoors' &&
    outside.rainPercent >= LIKELY_RAIN_PERCENT
  ) {
    if (!pieces.some(({ piece, slot }) => slot === 'outer layer' && piece.suits.includes('rain'))) cost += COST.wet;
  }
  if (moment.occasion.transit) {
    cost += (COST.kilogramInTransit * pieces.reduce((sum, { piece }) => sum + piece.grams.value, 0)) / 1000;
  }
  return cost;
};

/** What the judge needs of one candidate at one occasion, with pieces, cores and clothes as numbers. */
interface Facts {
  /** What it costs whatever else is worn. */
  readonly own: number;
  readonly pieces: readonly number[];
  readonly core: number;
  /** The clothes that are seen. */
  readonly clothes: number;
  readonly garments: readonly number[];
  readonly swims: boolean;
  /** Clothes without the layers. */
  readonly base: number;
  /** The coat it is gone to in; undefined without one. */
  readonly coat: string | undefined;
}

/** Numbers for texts, in the order they are first met. */
const numbering = (): ((text: string) => number) => {
  const known = new Map<string, number>();
  return (text) => {
    const number = known.get(text) ?? known.size;
    known.set(text, number);
    return number;
  };
};

/**
 * Judges assignments quickly, since the search asks many thousands of times: what does not depend on the others is
 * reckoned once a candidate, and what was worn when is noted in arrays that are stamped rather than emptied.
 */
const createJudge = (problem: PlanProblem): ((assignment: Assignment) => number) => {
  const known = problem.moments.map(() => new Map<Candidate, Facts>());
  const warmth = problem.moments.map((moment) => createWarmthCost(moment, [...problem.pieces.values()]));
  const tiring = problem.moments.map(({ occasion }) => ACTIVITIES[occasion.activity].met >= TIRING_MET);
  const keepsCoat = problem.moments.map((moment, index) => {
    const before = problem.moments[index - 1];
    const rains = [before, moment].some((one) => one?.occasion.needs.includes('rain'));
    return !rains && followsOn(before, moment);
  });
  const [pieceNumber, coreNumber, seenNumber, clothesNumber] = [numbering(), numbering(), numbering(), numbering()];
  const { dressed } = problem;
  const weights = [...problem.pieces].map(([id, piece]) => {
    pieceNumber(id);
    return COST.piece + (COST.kilogram * piece.grams.value) / 1000;
  });
  const factsOf = (index: number, candidate: Candidate): Facts => {
    const before = known[index]?.get(candidate);
    if (before !== undefined) return before;
    const { look, core } = candidate;
    const moment = problem.moments[index];
    const clothesSeen = problem.seen(index, candidate);
    const facts: Facts = {
      own: ownCost(problem, index, candidate, warmth[index] ?? (() => 0)),
      pieces: candidate.pieces.map(pieceNumber),
      core: coreNumber(core),
      clothes: seenNumber(clothesSeen),
      garments: look.worn.filter(({ slot }) => CORE_SLOTS.has(slot)).map(({ piece }) => pieceNumber(piece)),
      swims: clothesSeen === '',
      base: clothesNumber(clothesOf(look, (slot) => BASE_SLOTS.has(slot))),
      coat: moment === undefined ? undefined : coatWornTo(moment, look, problem.pieces)?.id,
    };
    known[index]?.set(candidate, facts);
    return facts;
  };
  let stamp = 0;
  const usedAt: number[] = [];
  const garmentAt: number[] = [];
  const garmentDay: number[] = [];
  const coreAt: number[] = [];
  const coreDay: number[] = [];
  const coreDays: number[] = [];
  const coreUntil: number[] = [];
  const dressedAt: number[] = [];
  const dressedDay: number[] = [];
  const seenAt: number[] = [];
  const seenDay: number[] = [];

  return (assignment) => {
    stamp += 1;
    let cost = 0;
    let before: Facts | undefined;
    let [beforeDay, beforeTiring, changesToday] = [-1, false, 0];
    for (let index = 0; index < assignment.length; index += 1) {
      const candidate = assignment[index];
      const moment = problem.moments[index];
      if (candidate === undefined || moment === undefined) continue;
      const { day } = moment;
      const facts = factsOf(index, candidate);
      cost += facts.own;
      for (const piece of facts.pieces) {
        if (usedAt[piece] === stamp) continue;
        usedAt[piece] = stamp;
        cost += weights[piece] ?? 0;
      }
      if (before === undefined || beforeDay !== day) changesToday = 0;
      else if (before.base !== facts.base) {
        changesToday += 1;
        cost += COST.change + (changesToday > 2 ? COST.manyChanges : 0);
      } else if (beforeTiring) cost += COST.notFresh;
      if (keepsCoat[index] && before?.coat !== undefined && facts.coat !== undefined && before.coat !== facts.coat)
        cost += COST.anotherCoat;
      const met = coreAt[facts.core] === stamp;
      if (facts.swims) {
        if (met && moment.start - (coreUntil[facts.core] ?? 0) < SWIM_TURN_HOURS) cost += COST.sameSwimwear;
        coreUntil[facts.core] = moment.end;
      } else {
        if (!met) coreDays[facts.core] = 1;
        else if (coreDay[facts.core] !== day) {
          cost += COST.sameCore * (coreDays[facts.core] ?? 1) + (coreDay[facts.core] === day - 1 ? COST.seenAgain : 0);
          coreDays[facts.core] = (coreDays[facts.core] ?? 1) + 1;
        }
        coreDay[facts.core] = day;
        if (seenAt[facts.clothes] === stamp && seenDay[facts.clothes] !== day) cost += COST.seenAgain;
        seenAt[facts.clothes] = stamp;
        seenDay[facts.clothes] = day;
        if (dressed[index]) {
          if (dressedAt[facts.core] === stamp && dressedDay[facts.core] !== day) cost += COST.seenAgain;
          dressedAt[facts.core] = stamp;
          dressedDay[facts.core] = day;
        }
        for (const garment of facts.garments) {
          if (garmentAt[garment] === stamp && garmentDay[garment] === day - 1) cost += COST.nextDay;
          garmentAt[garment] = stamp;
          garmentDay[garment] = day;
        }
      }
      coreAt[facts.core] = stamp;
      before = facts;
      [beforeDay, beforeTiring] = [day, tiring[index] === true];
    }
    return cost;
  };
};

const judges = new WeakMap<PlanProblem, ReturnType<typeof createJudge>>();

/** The judge of a problem, made once: what it knows of a look holds for every search over the same problem. */
export const judgeOf = (problem: PlanProblem): ReturnType<typeof createJudge> => {
  const judge = judges.get(problem) ?? createJudge(problem);
  judges.set(problem, judge);
  return judge;
};
