import { DEGREES_OFF_AT_MOST, isLeftAtTheDoor } from '../comfort/index.ts';
import type { Brief, Occasion, Piece } from '../model/index.ts';
import {
  DRESS_CODES,
  type DressCode,
  dressIndex,
  NEEDS_OF_WEATHER,
  NEEDS_ON_FOOT,
  type Need,
} from '../vocabulary/index.ts';
import { type Candidate, candidatesFor, leftForLater, type Pool, withoutPieces } from './candidates.ts';
import { bestFew, byLacks, lacksOf } from './lacks.ts';
import type { LookRestriction, LookSource } from './look-source.ts';
import type { Opening } from './mend.ts';
import { type Moment, requiredAt, restrictionOf } from './moments.ts';
import type { Assignment, PlanProblem } from './problem.ts';
import { isInARoom } from './room.ts';

/** The wardrobe behind the capsule: what else the client could pack. */
export interface WardrobeBehind {
  /** All pieces, those of the capsule among them. */
  readonly pieces: readonly Piece[];
  /** A look source over all of them. */
  readonly engine: LookSource;
}

/** Changes that together open looks for an occasion. */
export interface Way {
  /** Which occasion, by its place in the plan. */
  readonly moment: number;
  readonly changes: readonly Opening[];
  readonly candidates: readonly Candidate[];
}

interface Question {
  readonly brief: Brief;
  readonly problem: PlanProblem;
  readonly pools: readonly Pool[];
  readonly assignment: Assignment;
  readonly source: LookSource;
  readonly wardrobe?: WardrobeBehind;
  /** Pieces that are in the wardrobe but must not be offered. */
  readonly refused: ReadonlySet<string>;
}

/** Degrees by which an occasion may be off comfortable, beyond what the brief accepts already. */
const DEGREES = [1, 2, 3] as const;
const LOOKS_A_CHANGE = 12;
const EXTRA_PIECES = 80;
/** Pieces tried together with another piece or change: the best few for what lacks. */
const PAIRED_PIECES = 24;
/** Other occasions whose look a new piece may free, and pieces tried for each. */
const MAKING_WAY = 8;
const PIECES_MAKING_WAY = 16;
/** Pieces of which two together are tried against the cold. */
const WARMEST_TRIED = 6;

const nextDress = (code: DressCode): readonly DressCode[] =>
  [dressIndex(code) - 1, dressIndex(code) + 1].flatMap((index) => DRESS_CODES[index] ?? []);

/** What an occasion could do without: not the water of a swim, nor the weather, nor the ground one walks on. */
const canBeWaived = (need: Need): boolean => need !== 'swim' && !NEEDS_OF_WEATHER.has(need) && !NEEDS_ON_FOOT.has(need);

/** Single changes to what an occasion asks for. */
const changesTo = ({ dress, needs, degreesOff = 0 }: Occasion): readonly Opening[] => [
  ...nextDress(dress).map((code): Opening => ({ kind: 'dress', dress: code })),
  ...needs.filter(canBeWaived).map((need): Opening => ({ kind: 'need', need })),
  ...DEGREES.map((degrees) => degreesOff + degrees)
    .filter((degrees) => degrees <= DEGREES_OFF_AT_MOST)
    .map((degrees): Opening => ({ kind: 'degrees', degrees })),
];

const changed = (occasion: Occasion, change: Opening): Occasion => {
  if (change.kind === 'dress') return { ...occasion, dress: change.dress };
  if (change.kind === 'degrees') return { ...occasion, degreesOff: change.degrees };
  if (change.kind === 'need') return { ...occasion, needs: occasion.needs.filter((need) => need !== change.need) };
  return occasion;
};

/** What the occasion would ask for if it were another. */
const askedBy = (brief: Brief, moment: Moment, occasion: Occasion): LookRestriction =>
  restrictionOf(
    occasion,
    moment.air === undefined ? undefined : requiredAt({ ...moment, occasion }, moment.air, occasion.degreesOff),
    brief.avoid.heelCmOver,
  );

const isUseful = (moment: Moment, change: Opening): boolean =>
  change.kind !== 'degrees' || (moment.air !== undefined && moment.restriction.clo !== undefined);

/** Looks of the bag for an occasion changed so. */
const occasionWay = ({ brief, source, problem }: Question, index: number, changes: readonly Opening[]): Way => {
  const moment = problem.moments[index];
  if (moment === undefined) return { moment: index, changes, candidates: [] };
  const later = leftForLater(moment, [...problem.pieces.values()]);
  const restriction = askedBy(brief, moment, changes.reduce(changed, moment.occasion));
  const { candidates } = candidatesFor(source, withoutPieces(restriction, later), [], { asked: LOOKS_A_CHANGE });
  return { moment: index, changes, candidates };
};

/** Looks that wear some more pieces of the wardrobe, whatever else is in it left at home. */
const piecesWay = (
  { brief, wardrobe, problem }: Question,
  index: number,
  pieces: readonly Piece[],
  changes: readonly Opening[] = [],
): Way => {
  const all = [...pieces.map((piece): Opening => ({ kind: 'piece', piece })), ...changes];
  const moment = problem.moments[index];
  if (wardrobe === undefined || moment === undefined) return { moment: index, changes: all, candidates: [] };
  const more = pieces.map(({ id }) => id);
  const others = wardrobe.pieces.map(({ id }) => id).filter((id) => !more.includes(id) && !problem.pieces.has(id));
  const asked = askedBy(brief, moment, changes.reduce(changed, moment.occasion));
  const restriction = withoutPieces({ ...asked, pieces: more }, [...others, ...leftForLater(moment, wardrobe.pieces)]);
  const { candidates } = candidatesFor(wardrobe.engine, restriction, [], { asked: LOOKS_A_CHANGE });
  return { moment: index, changes: all, candidates };
};

/** Pieces that could help; no coat where it would hang at the door. */
const offered = ({ wardrobe, problem, refused }: Question, moment: Moment): readonly Piece[] => {
  const pieces = wardrobe?.pieces ?? [];
  const later = new Set(leftForLater(moment, pieces));
  const isHungUp = (piece: Piece): boolean => isInARoom(moment.occasion) && isLeftAtTheDoor(piece);
  return pieces
    .filter(({ id }) => !problem.pieces.has(id) && !later.has(id) && !refused.has(id))
    .filter((piece) => !isHungUp(piece));
};

const pairsOf = <T>(things: readonly T[]): readonly (readonly [T, T])[] =>
  things.flatMap((first, index) => things.slice(index + 1).map((second): readonly [T, T] => [first, second]));

/**
 * Looks with one more piece for other occasions that hold what this one could wear: they may then let it go. None where
 * nothing is held.
 */
const waysForOthers = (question: Question, index: number, pieces: readonly Piece[]): readonly Way[] => {
  const { problem, pools, assignment } = question;
  const wanted = pools[index]?.candidates ?? [];
  const held = new Set(wanted.flatMap((candidate) => candidate.pieces.filter((id) => problem.limited.has(id))));
  const shown = new Set(wanted.map((candidate) => problem.seen(index, candidate)));
  const others = assignment.flatMap((candidate, at) => {
    if (candidate === undefined || candidate.fixed || at === index) return [];
    return candidate.pieces.some((id) => held.has(id)) || shown.has(problem.seen(at, candidate)) ? [at] : [];
  });
  return others.slice(0, MAKING_WAY).flatMap((at) => {
    const moment = problem.moments[at];
    const useful = new Set(moment === undefined ? [] : offered(question, moment));
    return pieces
      .filter((piece) => useful.has(piece))
      .slice(0, PIECES_MAKING_WAY)
      .map((piece) => piecesWay(question, at, [piece]));
  });
};

/** True when warmth alone stands between an occasion and a look of the bag. */
const lacksWarmth = ({ source }: Question, { restriction }: Moment): boolean =>
  restriction.clo !== undefined &&
  source.rank(1, restriction).length === 0 &&
  source.rank(1, { ...restriction, clo: { ...restriction.clo, min: 0 } }).length > 0;

/** Two more layers against the cold, of the warmest that are left at home. */
const warmerWays = (question: Question, index: number, pieces: readonly Piece[]): readonly Way[] => {
  const warmest = pieces.toSorted((a, b) => b.clo.value - a.clo.value).slice(0, WARMEST_TRIED);
  return pairsOf(warmest).map((pair) => piecesWay(question, index, pair));
};

export interface Ways {
  /** One change each; two warm pieces where only warmth is lacking and no one piece gives it. */
  readonly one: readonly Way[];
  /** Two changes together; asked for when no single one serves. */
  readonly two: () => readonly Way[];
}

/**
 * Ways to serve an occasion: a change to it, one more piece, or two of these together; pieces that give what the bag
 * lacks are tried before others. When the stylist fixed a look, every way but that look itself gives it up as well.
 */
export const waysToServe = (question: Question, index: number, isFixed: boolean): Ways => {
  const moment = question.problem.moments[index];
  if (moment === undefined) return { one: [], two: () => [] };
  const single = changesTo(moment.occasion).filter((change) => isUseful(moment, change));
  const lacks = lacksOf(moment, [...question.problem.pieces.values()], question.source);
  const pieces = byLacks(offered(question, moment), lacks).slice(0, EXTRA_PIECES);
  const opening = (ways: readonly Way[]): readonly Way[] =>
    ways
      .filter(({ candidates }) => candidates.length > 0)
      .map((way) => (isFixed && way.moment === index ? { ...way, changes: [{ kind: 'free' }, ...way.changes] } : way));
  const more = opening(pieces.map((piece) => piecesWay(question, index, [piece])));
  const isTooCold = more.length === 0 && lacksWarmth(question, moment);
  return {
    one: [
      ...opening([
        ...(isFixed ? [occasionWay(question, index, [])] : []),
        ...single.map((change) => occasionWay(question, index, [change])),
        ...(isTooCold ? warmerWays(question, index, pieces) : []),
        ...waysForOthers(question, index, pieces),
      ]),
      ...more,
    ],
    two: () => {
      const few = bestFew(pieces, lacks, PAIRED_PIECES);
      return opening([
        ...pairsOf(single)
          .filter(([first, second]) => first.kind !== second.kind || first.kind === 'need')
          .map((changes) => occasionWay(question, index, changes)),
        ...few.flatMap((piece) => single.map((change) => piecesWay(question, index, [piece], [change]))),
        ...pairsOf(few).map((pair) => piecesWay(question, index, pair)),
      ]);
    },
  };
};
