import { isColdSwim } from '../comfort/index.ts';
import type { Brief, Look, Piece, Way } from '../model/index.ts';
import { dressIndex, fabricRefused, isForWarmth, PLACES } from '../vocabulary/index.ts';
import { coatsByWarmth, isCoat } from './coats.ts';
import { layersFor } from './layers.ts';
import type { Moment } from './moments.ts';
import { type Assignment, type PlanProblem, wearingsOf } from './problem.ts';
import { isInARoom } from './room.ts';
import { coatIn, stretchesOf } from './same-coat.ts';
import { washesFor } from './washing.ts';
import { BITTER_WAY_C, COLD_WAY_C, coatForTheWay, hasBareLegs, ICY_WAY_C, isTights } from './way.ts';

/** What is at hand for the way to one occasion. */
interface Wanting {
  readonly moment: Moment;
  readonly look: Look;
  readonly pieces: ReadonlyMap<string, Piece>;
  /** Pieces the client may wear, those already worn in the same stretch of the day first, then those right for the dress, then the warmest. */
  readonly choice: readonly Piece[];
  /** Whether a piece may be worn once more without a wash that is not planned. */
  readonly lasts: (piece: Piece) => boolean;
  /** A coat of the same stretch of the day. */
  readonly coat: Piece | undefined;
}

/** A coat that is so much colder than the best one is still worn on from the occasion before. Own choice, clo. */
const HARDLY_COLDER_CLO = 0.2;
const HEAD_NECK_HANDS = ['headwear', 'scarf', 'gloves'] as const;

/** Warm things for head, neck and hands that a look leaves bare, one for each. */
const warmThings = ({ choice }: Pick<Wanting, 'choice'>, look: Look): readonly Piece[] =>
  HEAD_NECK_HANDS.filter((slot) => look.worn.every((one) => one.slot !== slot)).flatMap(
    (slot) => choice.find((piece) => isForWarmth(piece) && piece.places.includes(slot)) ?? [],
  );

const shoesForSnow = (choice: readonly Piece[]): Piece | undefined =>
  choice.find(({ places, suits }) => places.includes('shoes') && suits.includes('snow'));

const standsOnSnow = ({ worn }: Look, pieces: ReadonlyMap<string, Piece>): boolean =>
  worn.some(({ piece, slot }) => slot === 'shoes' && pieces.get(piece)?.suits.includes('snow') === true);

const placeOf = (piece: Piece | undefined): number =>
  Math.max(...(piece?.places ?? []).map((place) => PLACES.indexOf(place)));

/** The way to a room: what of the look comes off at the door, and what the bag has beside it for such cold. */
const wayToARoom = ({ moment, look, pieces, choice, coat }: Wanting, lowC: number): Way | undefined => {
  const { carried } = layersFor(moment, look, pieces);
  const own = coatIn(look, pieces);
  const told = own === undefined ? coatForTheWay(moment, look, pieces) : undefined;
  const isWarm = (coat?.clo.value ?? 0) >= (told?.clo.value ?? 0) - HARDLY_COLDER_CLO;
  const over = told === undefined ? undefined : isWarm ? (coat ?? told) : told;
  const isBitter = lowC <= BITTER_WAY_C;
  const tights = isBitter && hasBareLegs(look, pieces) ? choice.find(isTights) : undefined;
  const isIcy = lowC <= ICY_WAY_C || moment.occasion.needs.includes('snow');
  const shoes = isIcy && isInARoom(moment.occasion) && !standsOnSnow(look, pieces) ? shoesForSnow(choice) : undefined;
  const worn = [
    ...carried,
    ...(over === undefined ? [] : [over.id]),
    ...(isBitter ? warmThings({ choice }, look).map(({ id }) => id) : []),
  ].toSorted((a, b) => placeOf(pieces.get(a)) - placeOf(pieces.get(b)));
  if (worn.length === 0 && tights === undefined && shoes === undefined) return undefined;
  return {
    worn,
    ...(tights === undefined ? {} : { under: tights.id }),
    ...(shoes === undefined ? {} : { shoes: shoes.id }),
    lowC,
  };
};

/** What to come in and to dress in at once after a swim, from the skin outwards: a dry layer, trousers, shoes, a coat. */
const wayFromTheWater = ({ look, choice, lasts }: Wanting, lowC: number): Way => {
  const warmest = (is: (piece: Piece) => boolean): readonly Piece[] =>
    [choice.filter((piece) => lasts(piece) && is(piece)).toSorted((a, b) => b.clo.value - a.clo.value)[0]].flatMap(
      (piece) => piece ?? [],
    );
  const layer = warmest((piece) => piece.places.includes('mid layer') && !isCoat(piece));
  const isIcy = lowC <= ICY_WAY_C;
  const snow = isIcy ? shoesForSnow(choice) : undefined;
  const clothes = [
    ...(layer.length > 0 ? layer : warmest(({ places }) => places.includes('top'))),
    ...warmest(({ places, covers }) => places.includes('bottom') && covers.includes('calves')),
    ...warmest((piece) => piece.places.includes('legwear') && !isTights(piece)),
    ...(snow === undefined ? warmest(({ places }) => places.includes('shoes')) : [snow]),
    ...coatsByWarmth(choice).slice(0, 1),
  ].map(({ id }) => id);
  const carried = look.worn.flatMap(({ piece, slot }) => (slot === 'headwear' ? [piece] : []));
  const warm = lowC <= BITTER_WAY_C ? warmThings({ choice }, look).map(({ id }) => id) : [];
  return { worn: [...clothes, ...carried, ...warm], lowC };
};

const wayOf = (wanting: Wanting): Way | undefined => {
  const { occasion, weather, air, swims } = wanting.moment;
  const isIndoors = occasion.setting.where === 'indoors';
  if (swims && isColdSwim(occasion, air) && air !== undefined) return wayFromTheWater(wanting, air.lowC);
  if (!isIndoors || weather === undefined || weather.lowC >= COLD_WAY_C) return undefined;
  return swims ? wayFromTheWater(wanting, weather.lowC) : wayToARoom(wanting, weather.lowC);
};

/** True where a piece may be worn once more on a day without a wash that is not planned. */
const lastsFor = (problem: PlanProblem, assignment: Assignment, { day, start, end }: Moment) => {
  return (piece: Piece): boolean => {
    if (!problem.limited.has(piece.id)) return true;
    const wearings = wearingsOf(problem, assignment, piece.id);
    if (wearings.some((wearing) => wearing.day === day)) return true;
    const more = [...wearings, { day, from: start, until: end }].toSorted((a, b) => a.day - b.day);
    return (
      (washesFor(piece, wearings, problem.washDays) ?? []).length ===
      (washesFor(piece, more, problem.washDays)?.length ?? -1)
    );
  };
};

/**
 * What is worn on the way to each occasion and not there, by its place in the plan: in the cold a coat, and something
 * for head, neck and hands; in frost tights under bare legs and shoes for the ground; after a swim dry clothes. One
 * coat, one hat and one pair of gloves from one occasion to the next where nobody could go back in between.
 */
export const waysOf = (
  brief: Pick<Brief, 'avoid'>,
  problem: PlanProblem,
  assignment: Assignment,
  looks: readonly (Look | undefined)[],
): readonly (Way | undefined)[] => {
  const { moments, pieces } = problem;
  const { fabrics, heelCmOver = Number.POSITIVE_INFINITY } = brief.avoid;
  const wearable = [...pieces.values()].filter(
    (piece) => fabricRefused(piece, fabrics) === undefined && piece.heelCm <= heelCmOver,
  );
  const ways: (Way | undefined)[] = moments.map(() => undefined);
  for (const stretch of stretchesOf(moments)) {
    const out = new Set(stretch.flatMap((index) => looks[index]?.worn.map(({ piece }) => piece) ?? []));
    for (const index of stretch) {
      const [moment, look] = [moments[index], looks[index]];
      if (moment === undefined || look === undefined) continue;
      const asked = dressIndex(moment.occasion.dress);
      const unfit = ({ id, dress: { low, high } }: Piece): number =>
        (out.has(id) ? 0 : 2) + (low <= asked && asked <= high ? 0 : 1);
      const way = wayOf({
        moment,
        look,
        pieces,
        lasts: lastsFor(problem, assignment, moment),
        choice: wearable.toSorted((a, b) => unfit(a) - unfit(b) || b.clo.value - a.clo.value),
        coat: coatsByWarmth([...pieces.values()].filter(({ id }) => out.has(id)))[0],
      });
      ways[index] = way;
      for (const id of way?.worn ?? []) out.add(id);
      if (way?.shoes !== undefined) out.add(way.shoes);
    }
  }
  return ways;
};

/** Every piece a way asks for. */
export const piecesOfWay = (way: Way | undefined): readonly string[] =>
  way === undefined ? [] : [...way.worn, way.under, way.shoes].flatMap((piece) => piece ?? []);
