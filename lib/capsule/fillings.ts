import { moodColourOf } from '../colour/index.ts';
import type { NamedColour, Piece } from '../model/index.ts';
import { isGarment, mayShare } from './difference.ts';
import { fits, seatPieces } from './fill.ts';
import { overLimits } from './limits.ts';
import { type ChoosingRoom, numbersOf, piecesAt } from './room.ts';
import { climb, type Filled, type Guard, type SearchProblem, searchFillings } from './search.ts';
import { barestLooks, type LooksFor, type Serving, servedBy, serveOccasions } from './serving.ts';
import { isLong, silhouetteOf } from './trade.ts';
import { fillingWithin, type LimitsQuestion } from './unmet.ts';

/** Sets of pieces the search starts from, less in large wardrobes so that it stays within seconds. */
const RESTARTS = 36;
const RESTARTS_LARGE = 14;
/** Ends of the search that are made to serve and climbed from once more. */
const ENDS = 4;
/** What a piece of an earlier proposal costs beside its place when occasions are dressed. */
const USED_BEFORE = 0.8;

/** What a piece brings to variety: a shape and a colour, a colour of the mood, or the place that it finishes. */
const traitsOf = (piece: Piece, mood: readonly NamedColour[]): readonly string[] => {
  const { places, kind, colours, length, dress } = piece;
  const silhouette = silhouetteOf(piece);
  // a bag and a scarf rather than three pairs of earrings, and shoes of two sorts
  if (silhouette === undefined) return [places.includes('shoes') ? `shoes ${dress.high}` : (places[0] ?? kind)];
  const [ground] = colours;
  const ofMood = ground === undefined ? undefined : moodColourOf(ground, mood);
  const outer = isLong(length) ? 'long' : 'short';
  return [
    silhouette,
    ...(ground === undefined ? [] : [ground.name]),
    ...(ofMood === undefined ? [] : [`mood ${ofMood.name}`]),
    // a short and a long coat matter more than one more colour
    ...(places[0] === 'outer layer' ? [`outer ${outer}`, `coat ${outer}`] : []),
  ];
};

/** What nearness to a colour of the mood, and each step of dress that a piece reaches over, is worth. Own choice. */
const OF_MOOD = 10;
const DRESS_STEP = 3;

/** How near a piece is to the mood, and how far a garment goes: what is casual alone serves fewer evenings. */
const meritOf = (piece: Piece, mood: readonly NamedColour[]): number => {
  const { colours, dress } = piece;
  const nearness = colours[0] === undefined ? undefined : moodColourOf(colours[0], mood)?.nearness;
  return OF_MOOD * (nearness ?? 0) + (isGarment(piece) ? DRESS_STEP * (dress.high - dress.low) : 0);
};

/** An earlier proposal, and how many of its garments a new one may share. */
export interface Earlier {
  readonly garments: ReadonlySet<number>;
  readonly all: ReadonlySet<number>;
  readonly mayShare: number;
}

export const earlierOf = (pieces: readonly Piece[], room: ChoosingRoom): Earlier => ({
  garments: new Set(
    numbersOf(
      pieces.filter(isGarment).map(({ id }) => id),
      room,
    ),
  ),
  all: new Set(
    numbersOf(
      pieces.map(({ id }) => id),
      room,
    ),
  ),
  mayShare: mayShare(pieces, room.keep),
});

export const searchProblem = (
  { eligible, positions, limits, question }: ChoosingRoom,
  price: SearchProblem['price'],
  earlier: readonly Earlier[],
): SearchProblem => ({
  pieces: eligible,
  may: positions.map((position) =>
    eligible.flatMap((piece, number) => (fits(piece, position, question.list.lines) ? [number] : [])),
  ),
  mayBeEmpty: positions.map(({ line }) => line === undefined),
  price,
  excess: (chosen) =>
    earlier.reduce(
      (sum, { garments, mayShare: most }) =>
        sum + Math.max(0, chosen.filter((piece) => garments.has(piece)).length - most),
      overLimits(piecesAt(chosen, eligible), limits) * 10,
    ),
  traits: eligible.map((piece) => traitsOf(piece, question.mood.palette)),
  merits: eligible.map((piece) => meritOf(piece, question.mood.palette)),
});

/** Refuses a change after which an occasion that was dressed is not. Only looks that lose a piece are asked for again. */
const guardOccasions = (
  { demands, engine, eligible, keep }: ChoosingRoom,
  witnesses: ReadonlyMap<string, readonly string[]>,
): Guard => {
  const known = new Map(witnesses);
  return (out, _inn, after) => {
    const left = eligible[out]?.id;
    if (left === undefined) return true;
    if (keep.includes(left)) return false;
    const inside = new Set(piecesAt(after, eligible).map(({ id }) => id));
    const fresh = new Map<string, readonly string[]>();
    for (const demand of demands) {
      const witness = known.get(demand.occasion);
      if (witness === undefined || witness.every((id) => inside.has(id))) continue;
      const look = servedBy(demand, engine, eligible, inside);
      if (look === undefined) return false;
      fresh.set(demand.occasion, look);
    }
    for (const [occasion, look] of fresh) known.set(occasion, look);
    return true;
  };
};

/** The garments it is about, and what is known of serving the occasions with them. */
export interface Served {
  readonly filled: Filled;
  readonly witnesses: Serving['witnesses'];
}

const limitsQuestion = (
  { eligible, positions, limits, question }: ChoosingRoom,
  kept: readonly Piece[],
): LimitsQuestion => ({
  eligible,
  kept,
  positions,
  lines: question.list.lines,
  limits,
});

const serve = (
  room: ChoosingRoom,
  looksFor: LooksFor,
  taken: readonly string[],
  earlier: readonly Earlier[],
): Serving => {
  const { eligible, positions, question, demands, engine } = room;
  const used = new Set(earlier.flatMap(({ all }) => [...all]));
  return serveOccasions({
    demands,
    engine,
    pieces: eligible,
    looksFor,
    taken,
    // the list must still be filled round what serves, and within the limits
    fits: (ids) => {
      const pieces = piecesAt(numbersOf(ids, room), eligible);
      const seated = seatPieces(pieces, positions, question.list.lines);
      return (
        seated.filter((at) => at >= 0).length === pieces.length &&
        fillingWithin(limitsQuestion(room, pieces)) !== undefined
      );
    },
    cost: (id) => (used.has(room.numberOf.get(id) ?? -1) ? USED_BEFORE : 0),
  });
};

const seated = (pieces: readonly Piece[], room: ChoosingRoom): readonly number[] => {
  const seats = seatPieces(pieces, room.positions, room.question.list.lines);
  return seats.map((index) => room.numberOf.get(pieces[index]?.id ?? '') ?? -1);
};

/** Climbs from what serves, filled up with what is within the limits and then with anything that fits. */
const searchRound = (
  serving: Serving,
  room: ChoosingRoom,
  problem: SearchProblem,
  earlier: readonly Earlier[],
  restarts: number,
): readonly Filled[] => {
  const locked = numbersOf(serving.pieces, room);
  const taken = piecesAt(locked, room.eligible);
  return searchFillings(seated(taken, room), problem, {
    locked: new Set(locked),
    restarts,
    seed: (room.question.seed ?? 1) + earlier.length * 1009,
    first: seated(fillingWithin(limitsQuestion(room, taken)) ?? taken, room),
  });
};

/** Serves the occasions, fills the list around them, then lets go of what was only one way of serving them. */
export const fillByClimbing = (
  room: ChoosingRoom,
  problem: SearchProblem,
  earlier: readonly Earlier[],
  large: boolean,
): Served | undefined => {
  const serving = serve(room, room.looksFor, room.keep, earlier);
  const ends = searchRound(serving, room, problem, earlier, large ? RESTARTS_LARGE : RESTARTS);
  const kept = new Set(numbersOf(room.keep, room));
  const [filled] = ends
    .slice(0, ENDS)
    .map((end) => climb(end, problem, kept, guardOccasions(room, serving.witnesses)))
    .toSorted((a, b) => b.worth - a.worth);
  return filled === undefined ? undefined : { filled, witnesses: serving.witnesses };
};

/**
 * Makes a bag of garments: shoes and what finishes are added so that the occasions of `toServe` are dressed, and the
 * rest of the list is filled. Undefined when that cannot be done within the limits.
 */
export const fillAround = (
  room: ChoosingRoom,
  problem: SearchProblem,
  earlier: readonly Earlier[],
  garments: readonly number[],
  /** By number: pieces that are a garment of some look. */
  working: ReadonlySet<number>,
  toServe: ReadonlySet<string>,
): Served | undefined => {
  const { eligible, keep } = room;
  const inside = new Set(garments);
  const taken = [...new Set([...keep, ...piecesAt(garments, eligible).map(({ id }) => id)])];
  const without = eligible.flatMap(({ id }, number) =>
    working.has(number) && !inside.has(number) && !keep.includes(id) ? [id] : [],
  );
  const shoes = eligible.flatMap(({ id, places }) => (places.includes('shoes') ? [id] : []));
  const serving = serve(room, barestLooks(room.engine, without, shoes), taken, earlier);
  if (serving.unserved.some(({ occasion }) => toServe.has(occasion))) return undefined;
  const [filled] = searchRound(serving, room, problem, earlier, 1);
  return filled === undefined || filled.excess > 0 ? undefined : { filled, witnesses: serving.witnesses };
};

/** Swaps for variety and lightness that lose neither looks nor an occasion. */
export const polish = (room: ChoosingRoom, problem: SearchProblem, { filled, witnesses }: Served): Filled =>
  climb(filled, problem, new Set(numbersOf(room.keep, room)), guardOccasions(room, witnesses));
