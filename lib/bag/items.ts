import type { Bag, Measure, Piece, Sundry } from '../model/index.ts';
import { UNCERTAINTY } from '../vocabulary/index.ts';
import { BATTERIES, LIQUIDS } from './guidelines.ts';
import { exactly, times } from './measures.ts';
import { goesIn, stiffBox } from './stiff.ts';

/** One thing to be put into a bag, as the assignment sees it. */
export interface Item {
  readonly grams: number;
  readonly litres: number;
  /** Cost of each bag, lower is better; undefined where it may not or cannot go. One entry a bag. */
  readonly places: readonly (number | undefined)[];
  /** Numbers of the journeys on which it is worn and so in no bag. */
  readonly wornOn: ReadonlySet<number>;
}

type Role = Bag['role'];
/** How little a thing belongs into each kind of bag: 0 is best. common practice, no source */
const CLOTHES: Readonly<Record<Role, number>> = { hold: 0, cabin: 0, personal: 3 };
const SHOES: Readonly<Record<Role, number>> = { hold: 0, cabin: 0, personal: 8 };
const AT_HAND: Readonly<Record<Role, number>> = { personal: 0, cabin: 2, hold: 9 };

const measureOf = (value: number, basis: Sundry['basis'], spread: number): Measure =>
  basis === 'given'
    ? exactly(value, 'entered by the stylist')
    : { value, low: value * (1 - spread), high: value * (1 + spread), basis, source: 'own' };

/** Grams of all of a sundry together. */
export const sundryGrams = ({ count, gramsEach, basis }: Sundry): Measure =>
  times(count, measureOf(gramsEach, basis, UNCERTAINTY.grams));

/** Litres in the bag of all of a sundry together. */
export const sundryLitres = ({ count, litresEach }: Sundry): Measure =>
  times(count, measureOf(litresEach, 'estimated', UNCERTAINTY.litres));

/** Whether the rules of the air keep a sundry out of a kind of bag. */
export const forbidden = (sundry: Sundry, role: Role, flies: boolean): boolean => {
  if (!flies) return false;
  const { millilitres = 0, wattHours = 0, spareBattery = false, group } = sundry;
  if (wattHours > BATTERIES.approvedWh) return true;
  if (role === 'hold') return spareBattery;
  return group !== 'medicines' && millilitres > LIQUIDS.containerMl;
};

export const pieceItem = (piece: Piece, bags: readonly Bag[], wornOn: ReadonlySet<number>): Item => {
  const box = stiffBox(piece);
  const likes = piece.places.includes('shoes') ? SHOES : CLOTHES;
  return {
    grams: piece.grams.value,
    litres: piece.litres.value,
    wornOn,
    places: bags.map((bag) => (goesIn(box, bag) ? likes[bag.role] : undefined)),
  };
};

export const sundryItem = (sundry: Sundry, bags: readonly Bag[], flies: boolean): Item => {
  const atHand =
    ['papers', 'medicines', 'electrics'].includes(sundry.group) ||
    sundry.spareBattery === true ||
    (flies && sundry.group === 'liquids' && (sundry.millilitres ?? 0) <= LIQUIDS.containerMl);
  const likes = atHand ? AT_HAND : CLOTHES;
  return {
    grams: sundryGrams(sundry).value,
    litres: sundryLitres(sundry).value,
    wornOn: new Set(),
    places: bags.map(({ role }) => (forbidden(sundry, role, flies) ? undefined : likes[role])),
  };
};
