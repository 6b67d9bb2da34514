import type { Look } from '../model/index.ts';
import { ACTIVITIES, type Slot } from '../vocabulary/index.ts';
import type { Candidate } from './candidates.ts';
import type { Assignment, PlanProblem } from './problem.ts';

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
  /** The same top and bottom, or dress, on another day. */
  sameCore: 7,
  /** A garment of the core seen again the next day. */
  nextDay: 1.5,
  /** Swimwear worn again within a day and a half, when another could take its turn. */
  sameSwimwear: 3,
  /** A piece that has to be packed, and each kilogram of it. */
  piece: 0.6,
  kilogram: 1.5,
  /** Each kilogram worn on a journey instead of carried in a bag: half of one outweighs the ranking. */
  kilogramInTransit: -12,
  /** Nothing warm for the way to an indoor occasion when it is cold outside. */
  coldWay: 2,
  /** No piece for rain when rain is likely. */
  wet: 2,
} as const;

/** Below this outside, people want something over an indoor look on the way. Own choice. */
const COLD_WAY_C = 14;
/** Chance of rain from which a look outdoors does better with something for it. Own choice, percent. */
const LIKELY_RAIN_PERCENT = 50;
const TIRING_MET = 2.6;
const SWIM_TURN_HOURS = 36;

export type Change = 'first' | 'goes on' | 'layers only' | 'changes clothes';

const clothes = (look: Look, belongs: (slot: Slot) => boolean): string =>
  look.worn
    .filter(({ slot }) => belongs(slot))
    .map(({ piece }) => piece)
    .join('+');

const LAYERS: ReadonlySet<Slot> = new Set(['mid layer', 'outer layer', 'cover-up']);
const BASE: ReadonlySet<Slot> = new Set(['one-piece', 'top', 'bottom', 'swim', 'legwear', 'shoes']);

/** What changes from one look to the next on the same day. Bags, jewellery and the like do not count as changing. */
export const changeBetween = (before: Look | undefined, after: Look): Change => {
  if (before === undefined) return 'first';
  const base = (slot: Slot): boolean => BASE.has(slot);
  if (clothes(before, base) !== clothes(after, base)) return 'changes clothes';
  const layers = (slot: Slot): boolean => LAYERS.has(slot);
  return clothes(before, layers) === clothes(after, layers) ? 'goes on' : 'layers only';
};

const ownCost = (problem: PlanProblem, index: number, candidate: Candidate): number => {
  const moment = problem.moments[index];
  if (moment === undefined) return 0;
  let cost = COST.rank * (1 - candidate.quality) + (candidate.favourite ? COST.favourite : 0);
  const pieces = candidate.look.worn.flatMap(({ piece, slot }) => {
    const found = problem.pieces.get(piece);
    return found === undefined ? [] : [{ piece: found, slot }];
  });
  const outside = moment.weather;
  if (outside !== undefined && moment.occasion.setting.where === 'indoors' && outside.lowC < COLD_WAY_C) {
    if (!pieces.some(({ slot }) => slot === 'outer layer')) cost += COST.coldWay;
  }
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

const CORE_SLOTS: ReadonlySet<Slot> = new Set(['one-piece', 'top', 'bottom']);

/** Judges assignments quickly: what does not depend on the others is reckoned once a candidate. */
export const createJudge = (problem: PlanProblem): ((assignment: Assignment) => number) => {
  const own = problem.moments.map(() => new Map<Candidate, number>());
  const garments = new Map<Candidate, readonly string[]>();
  const changes = new Map<Candidate, Map<Candidate, Change>>();
  const weights = new Map(
    [...problem.pieces].map(([id, piece]) => [id, COST.piece + (COST.kilogram * piece.grams.value) / 1000]),
  );
  const ownOf = (index: number, candidate: Candidate): number => {
    const known = own[index]?.get(candidate) ?? ownCost(problem, index, candidate);
    own[index]?.set(candidate, known);
    return known;
  };
  const garmentsOf = (candidate: Candidate): readonly string[] => {
    const known =
      garments.get(candidate) ??
      candidate.look.worn.filter(({ slot }) => CORE_SLOTS.has(slot)).map(({ piece }) => piece);
    garments.set(candidate, known);
    return known;
  };
  const changeOf = (before: Candidate, after: Candidate): Change => {
    const row = changes.get(before) ?? new Map<Candidate, Change>();
    changes.set(before, row);
    const known = row.get(after) ?? changeBetween(before.look, after.look);
    row.set(after, known);
    return known;
  };

  return (assignment) => {
    let cost = 0;
    const used = new Set<string>();
    const coreDays = new Map<string, Set<number>>();
    const garmentDay = new Map<string, number>();
    const swumUntil = new Map<string, number>();
    let previous: { readonly candidate: Candidate; readonly day: number; readonly tiring: boolean } | undefined;
    let changesToday = 0;
    for (let index = 0; index < assignment.length; index += 1) {
      const candidate = assignment[index];
      const moment = problem.moments[index];
      if (candidate === undefined || moment === undefined) continue;
      cost += ownOf(index, candidate);
      for (const piece of candidate.pieces) used.add(piece);
      if (previous?.day === moment.day) {
        const change = changeOf(previous.candidate, candidate);
        if (change === 'changes clothes') {
          changesToday += 1;
          cost += COST.change + (changesToday > 2 ? COST.manyChanges : 0);
        } else if (previous.tiring) cost += COST.notFresh;
      } else changesToday = 0;
      if (candidate.identity !== '') {
        const days = coreDays.get(candidate.core) ?? new Set<number>();
        coreDays.set(candidate.core, days.add(moment.day));
        for (const garment of garmentsOf(candidate)) {
          const last = garmentDay.get(garment);
          if (last !== undefined && last === moment.day - 1) cost += COST.nextDay;
          garmentDay.set(garment, moment.day);
        }
      }
      if (candidate.identity === '') {
        const last = swumUntil.get(candidate.core);
        if (last !== undefined && moment.start - last < SWIM_TURN_HOURS) cost += COST.sameSwimwear;
        swumUntil.set(candidate.core, moment.end);
      }
      const tiring = ACTIVITIES[moment.occasion.activity].met >= TIRING_MET;
      previous = { candidate, day: moment.day, tiring };
    }
    for (const days of coreDays.values()) cost += COST.sameCore * (days.size - 1);
    for (const piece of used) cost += weights.get(piece) ?? 0;
    return cost;
  };
};
