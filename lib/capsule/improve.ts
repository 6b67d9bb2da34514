import type { Piece } from '../model/index.ts';
import { layeredLookTable } from '../outfit/index.ts';
import { KINDS } from '../vocabulary/index.ts';
import { type CostOfPiece, costsOf } from './costs.ts';
import { refusalOf } from './eligible.ts';
import { type Addition, additionOf, byWorth } from './gains.ts';
import { type Dressed, dressedBy, engineWith, hasLook, type ImproveQuestion, MOST_LOOKS } from './improve-question.ts';
import { createPricer, type Pricing } from './pricing.ts';
import { bestPurchases, type Purchase } from './purchases.ts';
import { isForTheTrip } from './season.ts';
import { demandsOf } from './serving.ts';
import { isCold } from './traits.ts';

export interface Swap {
  readonly out: Piece;
  readonly in: Piece;
  /** Layered looks more than before. */
  readonly adds: bigint;
  /** Occasion ids that have a look with the swap and none before. */
  readonly serves: readonly string[];
}

export interface Improvements {
  /** Layered looks now. */
  readonly looks: bigint;
  /**
   * Swaps within a line of the list that leave no occasion without a look, and on a cold trip none for a thinner piece;
   * first those that dress an occasion, then most looks, one for each piece that comes in.
   */
  readonly swaps: readonly Swap[];
  /** Pieces of the wardrobe, best first. */
  readonly additions: readonly Addition[];
  /** Pieces that nobody owns yet, best first, of different kinds. */
  readonly purchases: readonly Purchase[];
  /** How many things to buy were tried and counted. */
  readonly tried: number;
  readonly costs: readonly CostOfPiece[];
  /** Pieces of the capsule that are still to be bought. */
  readonly shopping: readonly Piece[];
}

const SHOWN = 5;

/** True when one may stand in for the other: on one line of the list, or of one group when there is no list. */
const standsIn = (a: Piece, b: Piece, { list }: ImproveQuestion): boolean =>
  list === undefined
    ? KINDS[a.kind].group === KINDS[b.kind].group
    : list.lines.some(({ kinds }) => kinds.includes(a.kind) && kinds.includes(b.kind));

/** The swap, counted anew; undefined when an occasion would be left without a look. */
const swapOf = (
  out: Piece,
  inn: Piece,
  before: bigint,
  dressed: readonly Dressed[],
  question: ImproveQuestion,
): Swap | undefined => {
  const after = [...question.pieces.filter((piece) => piece !== out), inn];
  const engine = engineWith(after, question);
  const has = new Set(
    demandsOf(question.brief, question.traveller, after)
      .filter((demand) => hasLook(engine, demand))
      .map(({ occasion }) => occasion),
  );
  if (dressed.some((each) => each.hasLook && !has.has(each.demand.occasion))) return undefined;
  const serves = dressed.filter((each) => !each.hasLook && has.has(each.demand.occasion));
  return {
    out,
    in: inn,
    adds: engine.count().layered - before,
    serves: serves.map(({ demand }) => demand.occasion),
  };
};

const bestSwaps = (
  others: readonly Piece[],
  pricing: Pricing,
  before: bigint,
  dressed: readonly Dressed[],
  question: ImproveQuestion,
): readonly Swap[] => {
  const { pieces, keep = [], brief } = question;
  const cold = isCold(brief);
  const keepsWarm = (out: Piece, inn: Piece): boolean => !cold || inn.clo.value >= out.clo.value;
  const priced = pieces.flatMap((out, outNumber) =>
    keep.includes(out.id)
      ? []
      : others.flatMap((inn, number) => {
          const adds = pricing.swap(outNumber, pieces.length + number);
          return adds > 0 && standsIn(out, inn, question) && keepsWarm(out, inn) ? [{ out, inn, adds }] : [];
        }),
  );
  const swaps: Swap[] = [];
  const seen = new Set<string>();
  for (const { out, inn } of priced.toSorted((a, b) => b.adds - a.adds)) {
    if (swaps.length === SHOWN) break;
    if (seen.has(inn.id)) continue;
    const swap = swapOf(out, inn, before, dressed, question);
    if (swap === undefined || swap.adds <= 0n) continue;
    seen.add(inn.id);
    swaps.push(swap);
  }
  return swaps.toSorted((a, b) => b.serves.length - a.serves.length || Number(b.adds - a.adds));
};

/** Prices every piece of the wardrobe and every swap with it, in one pass over the looks. */
const fromWardrobe = (question: ImproveQuestion, dressed: readonly Dressed[], before: bigint) => {
  const { pieces, wardrobe, brief, palette, rules, never = [], always = [], leaveOut = [] } = question;
  const ids = new Set(pieces.map(({ id }) => id));
  const demands = dressed.map(({ demand }) => demand);
  const others = wardrobe.filter(
    (piece) =>
      !ids.has(piece.id) &&
      refusalOf(piece, { brief, palette, keep: [], leaveOut }) === undefined &&
      isForTheTrip(piece, demands),
  );
  const all = [...pieces, ...others];
  const table = layeredLookTable({ pieces: all, rules, never, always }, MOST_LOOKS);
  const additions = others.map((piece) => additionOf(piece, dressed, question)).toSorted(byWorth);
  if (table === undefined) return { swaps: [], additions };
  const inside = Uint8Array.from(all, (_, number) => (number < pieces.length ? 1 : 0));
  const pricing = createPricer(table, all.length)(inside);
  return { swaps: bestSwaps(others, pricing, before, dressed, question), additions };
};

/** How a capsule could be better by one piece: swapped, added from the wardrobe or bought; and what its pieces cost. */
export const improve = (question: ImproveQuestion): Improvements => {
  const engine = engineWith(question.pieces, question);
  const looks = engine.count().layered;
  const dressed = dressedBy(question, engine);
  const { swaps, additions } = fromWardrobe(question, dressed, looks);
  return {
    looks,
    swaps,
    additions: additions
      .filter(({ wornFor }) => dressed.length === 0 || wornFor.length > 0)
      .filter(({ adds, level, serves }) => (adds > 0n && level === 'layered') || serves.length > 0)
      .slice(0, SHOWN),
    ...bestPurchases(question, dressed, additions, SHOWN),
    costs: question.pieces.some(({ price }) => price !== undefined)
      ? costsOf(question.pieces, engine.contributions(), question.plan?.wears ?? {})
      : [],
    shopping: question.pieces.filter(({ status }) => status === 'to buy'),
  };
};
