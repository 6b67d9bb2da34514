import { isLeftAtTheDoor } from '../comfort/index.ts';
import type { Piece } from '../model/index.ts';
import { dressIndex, NEEDS_ON_FOOT, type Need, type Place } from '../vocabulary/index.ts';
import type { LookSource } from './look-source.ts';
import type { Moment } from './moments.ts';

/** What an occasion asks for and no piece of the bag gives: how well another piece would, 0 where it would not. */
type Lack = (piece: Piece) => number;

const worn = (piece: Piece, ...places: readonly Place[]): boolean =>
  places.some((place) => piece.places.includes(place));

const gives = (need: Need, piece: Piece): boolean => {
  if (need === 'swim') return worn(piece, 'swim');
  if (need === 'rain') return worn(piece, 'mid layer', 'outer layer') && piece.suits.includes('rain');
  if (need === 'shoulders covered') return piece.covers.includes('shoulders');
  if (need === 'knees covered') return piece.covers.includes('knees');
  if (need === 'head covered') return worn(piece, 'headwear') || piece.covers.includes('head');
  return piece.suits.includes(need);
};

/** Lighter first, since what is packed has to be carried. */
const lightness = ({ grams }: Piece): number => 1 / (1 + grams.value / 1000);

/** What keeps the bag's pieces from an occasion, each by itself: its ground, its weather and cover, its dress code, its cold. */
export const lacksOf = (moment: Moment, bag: readonly Piece[], source: LookSource): readonly Lack[] => {
  const { needs, dress } = moment.occasion;
  const asked = dressIndex(dress);
  const isDressedFor = (piece: Piece): boolean =>
    isLeftAtTheDoor(piece) || (piece.dress.low <= asked && asked <= piece.dress.high);
  const onFoot = needs.filter((need) => NEEDS_ON_FOOT.has(need));
  const wanted: readonly ((piece: Piece) => boolean)[] = [
    (piece) => worn(piece, 'shoes') && onFoot.every((need) => piece.suits.includes(need)),
    ...needs.filter((need) => !NEEDS_ON_FOOT.has(need)).map((need) => (piece: Piece) => gives(need, piece)),
    ...(moment.swims ? [] : garmentsWanted(bag.filter(isDressedFor))),
  ];
  const lacking = wanted
    .map((wants) => (piece: Piece) => wants(piece) && isDressedFor(piece))
    .filter((wants) => !bag.some(wants))
    .map(
      (wants): Lack =>
        (piece) =>
          wants(piece) ? lightness(piece) : 0,
    );
  const { clo } = moment.restriction;
  const isCold =
    clo !== undefined &&
    source.rank(1, { clo }).length === 0 &&
    source.rank(1, { clo: { min: 0, max: clo.max } }).length > 0;
  return isCold ? [...lacking, (piece) => (isDressedFor(piece) ? piece.clo.value : 0)] : lacking;
};

/** Garments that make a core with what is there; where nothing is, each of them. */
const garmentsWanted = (dressed: readonly Piece[]): readonly ((piece: Piece) => boolean)[] => {
  const has = (place: Place): boolean => dressed.some((piece) => worn(piece, place));
  if (has('one-piece') || (has('top') && has('bottom'))) return [];
  return (['one-piece', 'top', 'bottom'] as const).map((place) => (piece) => worn(piece, place));
};

/** Pieces by how much of what lacks they give, in their order where they give as much. */
export const byLacks = (pieces: readonly Piece[], lacks: readonly Lack[]): readonly Piece[] => {
  const given = new Map(pieces.map((piece) => [piece, lacks.filter((lack) => lack(piece) > 0).length] as const));
  return pieces.toSorted((a, b) => (given.get(b) ?? 0) - (given.get(a) ?? 0));
};

/** The best few for each thing that lacks, in turn, and then the others, up to a number. */
export const bestFew = (pieces: readonly Piece[], lacks: readonly Lack[], most: number): readonly Piece[] => {
  const queues = lacks.map((lack) => pieces.filter((piece) => lack(piece) > 0).toSorted((a, b) => lack(b) - lack(a)));
  const chosen = new Set<Piece>();
  const longest = Math.max(0, ...queues.map(({ length }) => length));
  for (let turn = 0; turn < longest; turn += 1) {
    for (const queue of queues) {
      const piece = queue[turn];
      if (piece !== undefined && chosen.size < most) chosen.add(piece);
    }
  }
  for (const piece of byLacks(pieces, lacks)) if (chosen.size < most) chosen.add(piece);
  return [...chosen];
};
