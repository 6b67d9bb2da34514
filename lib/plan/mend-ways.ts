import { DEGREES_OFF_AT_MOST } from '../comfort/index.ts';
import type { Brief, Occasion, Piece } from '../model/index.ts';
import { DRESS_CODES, type DressCode, dressIndex, NEEDS_OF_WEATHER, type Need } from '../vocabulary/index.ts';
import { type Candidate, candidatesFor, leftForLater, withoutPieces } from './candidates.ts';
import type { LookRestriction, LookSource } from './look-source.ts';
import type { Opening } from './mend.ts';
import { type Moment, requiredAt, restrictionOf } from './moments.ts';
import type { PlanProblem } from './problem.ts';

/** The wardrobe behind the capsule: what else the client could pack. */
export interface WardrobeBehind {
  /** All pieces, those of the capsule among them. */
  readonly pieces: readonly Piece[];
  /** A look source over all of them. */
  readonly engine: LookSource;
}

/** Changes that together open looks for an occasion. */
export interface Way {
  readonly changes: readonly Opening[];
  readonly candidates: readonly Candidate[];
}

interface Question {
  readonly brief: Brief;
  readonly problem: PlanProblem;
  readonly source: LookSource;
  readonly wardrobe?: WardrobeBehind;
  /** Pieces that are in the wardrobe but must not be offered. */
  readonly refused: ReadonlySet<string>;
}

/** Degrees by which an occasion may be off comfortable, beyond what the brief accepts already. */
const DEGREES = [1, 2, 3] as const;
const LOOKS_A_CHANGE = 12;
const EXTRA_PIECES = 80;
/** Pieces of which two together are tried against the cold. */
const WARMEST_TRIED = 6;

const nextDress = (code: DressCode): readonly DressCode[] =>
  [dressIndex(code) - 1, dressIndex(code) + 1].flatMap((index) => DRESS_CODES[index] ?? []);

/** What an occasion could do without: neither the water of a swim nor the weather. */
const canBeWaived = (need: Need): boolean => need !== 'swim' && !NEEDS_OF_WEATHER.has(need);

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
const occasionWay = ({ brief, source, problem }: Question, moment: Moment, changes: readonly Opening[]): Way => {
  const later = leftForLater(moment, [...problem.pieces.values()]);
  const restriction = askedBy(brief, moment, changes.reduce(changed, moment.occasion));
  return {
    changes,
    candidates: candidatesFor(source, withoutPieces(restriction, later), [], { asked: LOOKS_A_CHANGE }).candidates,
  };
};

/** Looks with one or two more pieces of the wardrobe, whatever else is in it left at home. */
const pieceWay = (
  { brief, wardrobe, problem }: Question,
  moment: Moment,
  more: readonly Piece[],
  changes: readonly Opening[] = [],
): Way => {
  const all: Way['changes'] = [...more.map((piece): Opening => ({ kind: 'piece', piece })), ...changes];
  const added = more.map(({ id }) => id);
  if (wardrobe === undefined) return { changes: all, candidates: [] };
  const others = wardrobe.pieces.filter(({ id }) => !added.includes(id) && !problem.pieces.has(id)).map(({ id }) => id);
  const asked = askedBy(brief, moment, changes.reduce(changed, moment.occasion));
  const restriction = withoutPieces({ ...asked, pieces: added }, [...others, ...leftForLater(moment, wardrobe.pieces)]);
  return {
    changes: all,
    candidates: candidatesFor(wardrobe.engine, restriction, [], { asked: LOOKS_A_CHANGE }).candidates,
  };
};

const offered = ({ wardrobe, problem, refused }: Question, moment: Moment): readonly Piece[] => {
  const pieces = wardrobe?.pieces ?? [];
  const later = new Set(leftForLater(moment, pieces));
  return pieces
    .filter(({ id }) => !problem.pieces.has(id) && !later.has(id) && !refused.has(id))
    .slice(0, EXTRA_PIECES);
};

/** True when warmth alone stands between an occasion and a look of the bag. */
const lacksWarmth = ({ source }: Question, { restriction }: Moment): boolean =>
  restriction.clo !== undefined &&
  source.rank(1, restriction).length === 0 &&
  source.rank(1, { ...restriction, clo: { ...restriction.clo, min: 0 } }).length > 0;

/** Two more layers against the cold, of the warmest that are left at home. */
const warmerWays = (question: Question, moment: Moment, pieces: readonly Piece[]): readonly Way[] => {
  const warmest = pieces.toSorted((a, b) => b.clo.value - a.clo.value).slice(0, WARMEST_TRIED);
  return warmest.flatMap((first, index) =>
    warmest.slice(index + 1).map((second) => pieceWay(question, moment, [first, second])),
  );
};

/**
 * Ways to serve an occasion: one change to it, or one more piece; two more against the cold where no one is enough;
 * where nothing of that opens a look, two changes together. When the stylist fixed a look, every way but that look itself
 * gives it up as well.
 */
export const waysToServe = (question: Question, moment: Moment, isFixed: boolean): readonly Way[] => {
  const single = changesTo(moment.occasion).filter((change) => isUseful(moment, change));
  const pieces = offered(question, moment);
  const opening = (ways: readonly Way[]): readonly Way[] => ways.filter(({ candidates }) => candidates.length > 0);
  const asIs = isFixed ? opening([occasionWay(question, moment, [])]) : [];
  const one = opening([
    ...single.map((change) => occasionWay(question, moment, [change])),
    ...pieces.map((piece) => pieceWay(question, moment, [piece])),
  ]);
  const isOneEnough = one.some(({ changes }) => changes.some(({ kind }) => kind === 'piece'));
  const warmer = !isOneEnough && lacksWarmth(question, moment) ? opening(warmerWays(question, moment, pieces)) : [];
  const two = (): readonly Way[] =>
    opening([
      ...single.flatMap((first, index) =>
        single
          .slice(index + 1)
          .filter(({ kind }) => kind !== first.kind || kind === 'need')
          .map((second) => occasionWay(question, moment, [first, second])),
      ),
      ...pieces.flatMap((piece) => single.map((change) => pieceWay(question, moment, [piece], [change]))),
    ]);
  const simple = [...asIs, ...one, ...warmer];
  const ways = simple.length > 0 ? simple : two();
  return isFixed
    ? ways.map(({ changes, candidates }) => ({ changes: [{ kind: 'free' }, ...changes], candidates }))
    : ways;
};
