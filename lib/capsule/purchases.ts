import { relatePieces } from '../colour/index.ts';
import type { NamedColour, Piece } from '../model/index.ts';
import { layeredLookTable } from '../outfit/index.ts';
import { KINDS } from '../vocabulary/index.ts';
import { type Addition, additionOf, byWorth } from './gains.ts';
import { onlyFinishes, ownsLike, thingsOffList, thingsToBuy } from './grid.ts';
import { type Dressed, engineWith, type ImproveQuestion, MOST_LOOKS } from './improve-question.ts';
import { createPricer } from './pricing.ts';
import { isForTheTrip, keepsAsWarm } from './season.ts';
import type { Demand } from './serving.ts';

/** A piece nobody owns yet. */
export interface Purchase extends Addition {
  /** Other colours of the same piece that would add as many looks, best first. */
  readonly alsoIn: readonly NamedColour[];
  /** A piece of the wardrobe of the same group that brings as much and need not be bought. */
  readonly instead?: Addition;
}

/** Things to buy that are priced together: looks of two of them are listed in vain, so not too many. */
const BATCH = 24;
/** Shoes, bags and the like that are shown beside garments. Own choice. */
const FINISHING_SHOWN = 2;

interface Priced {
  readonly piece: Piece;
  readonly adds: number;
  readonly serves: ReadonlySet<string>;
  /** Place in the grid: plain and usual first. */
  readonly place: number;
}

/** Complete looks each thing would add to the capsule, none of the others with it. */
const finishedWith = (things: readonly Piece[], question: ImproveQuestion): readonly number[] => {
  const engine = engineWith([...question.pieces, ...things], question);
  return things.map(({ id }) => {
    const without = things.filter((thing) => thing.id !== id).map((thing) => thing.id);
    return Number(engine.count({ pieces: [id], without }).complete);
  });
};

/** Layered looks each thing would add to the capsule: exact, from one listing a batch. */
const gainsOf = (things: readonly Piece[], question: ImproveQuestion): readonly number[] => {
  const { pieces, rules, never = [], always = [] } = question;
  const all = [...pieces, ...things];
  const table = layeredLookTable({ pieces: all, rules, never, always }, MOST_LOOKS);
  if (table === undefined)
    return things.map((thing) =>
      Number(engineWith([...pieces, thing], question).count({ pieces: [thing.id] }).layered),
    );
  const { gain } = createPricer(table, all.length)(Uint8Array.from(all, (_, at) => (at < pieces.length ? 1 : 0)));
  return things.map((_, at) => gain[pieces.length + at] ?? 0);
};

/** Of these things, those with a look for an occasion that has none yet. */
const servedWith = (
  things: readonly Piece[],
  lacking: readonly Dressed[],
  question: ImproveQuestion,
): ReadonlyMap<string, ReadonlySet<string>> => {
  const served = new Map(things.map(({ id }) => [id, new Set<string>()]));
  if (lacking.length === 0) return served;
  const engine = engineWith([...question.pieces, ...things], question);
  for (const { demand } of lacking) {
    for (const { id } of things) {
      const others = things.filter((thing) => thing.id !== id).map((thing) => thing.id);
      const without = [...(demand.restriction.without ?? []), ...others];
      if (engine.rank(1, { ...demand.restriction, pieces: [id], without }).length > 0)
        served.get(id)?.add(demand.occasion);
    }
  }
  return served;
};

/** How well a colour stands to what it would be worn with, 0 to 1. */
const harmonyWith = (piece: Piece, pieces: readonly Piece[]): number =>
  pieces.reduce((sum, other) => sum + relatePieces(piece, other).score, 0) / Math.max(1, pieces.length);

const priceKind = (
  things: readonly Piece[],
  lacking: readonly Dressed[],
  question: ImproveQuestion,
): readonly Priced[] => {
  const priced: Priced[] = [];
  for (let at = 0; at < things.length; at += BATCH) {
    const batch = things.slice(at, at + BATCH);
    const gains = things.some(({ kind }) => onlyFinishes(kind))
      ? finishedWith(batch, question)
      : gainsOf(batch, question);
    const served = servedWith(batch, lacking, question);
    batch.forEach((piece, index) => {
      priced.push({ piece, adds: gains[index] ?? 0, serves: served.get(piece.id) ?? new Set(), place: at + index });
    });
  }
  return priced;
};

/**
 * The best thing of one kind: most occasions, most looks; of equals the plainest. Its colours that do as well, those of
 * the mood first, and then those that stand best to the rest.
 */
const bestOfKind = (things: readonly Piece[], lacking: readonly Dressed[], question: ImproveQuestion) => {
  const inMood = ({ colours: [ground] }: Piece): boolean => question.palette.some(({ hex }) => hex === ground?.hex);
  const priced = priceKind(things, lacking, question);
  const serves = Math.max(...priced.map((each) => each.serves.size));
  const able = priced.filter((each) => each.serves.size === serves);
  const adds = Math.max(...able.map((each) => each.adds));
  const most = able.filter((each) => each.adds === adds);
  const plainest = most.reduce((first, each) => (each.place < first.place ? each : first)).piece;
  const inColours = most
    .filter(({ piece }) => piece.pattern.type === plainest.pattern.type && piece.cut === plainest.cut)
    .map(({ piece }) => ({ piece, mood: inMood(piece), harmony: harmonyWith(piece, question.pieces) }))
    .toSorted((a, b) => Number(b.mood) - Number(a.mood) || b.harmony - a.harmony);
  const occasions = [...(most[0]?.serves ?? [])].sort().join();
  return { kind: plainest.kind, adds, serves, occasions, inColours };
};

type BestOfKind = ReturnType<typeof bestOfKind>;

/** A colour for each: of colours that do as well, one of the mood that was not proposed yet. */
const colourEach = (best: readonly BestOfKind[]): readonly (readonly Piece[])[] => {
  const proposed = new Set<string>();
  return best.map(({ inColours }) => {
    const nameOf = ({ colours: [ground] }: Piece): string => ground?.name ?? '';
    const fresh = inColours.find(({ piece, mood }) => mood && !proposed.has(nameOf(piece)));
    const chosen = (fresh ?? inColours[0])?.piece;
    if (chosen === undefined) return [];
    proposed.add(nameOf(chosen));
    return [chosen, ...inColours.map(({ piece }) => piece).filter((piece) => piece !== chosen)];
  });
};

const byGain = (a: BestOfKind, b: BestOfKind): number =>
  b.serves - a.serves || Number(onlyFinishes(a.kind)) - Number(onlyFinishes(b.kind)) || b.adds - a.adds;

const firstOfEach = <Item>(items: readonly Item[], keyOf: (item: Item) => string): readonly Item[] => {
  const seen = new Set<string>();
  return items.filter((item) => {
    const key = keyOf(item);
    const fresh = !seen.has(key);
    seen.add(key);
    return fresh;
  });
};

/** The best kinds: garments for their looks and anything for an occasion; then what finishes a look, one a place. */
const worthShowing = (listed: readonly BestOfKind[], offList: readonly BestOfKind[], shown: number) => {
  // five sorts of swimwear are one answer to a swim
  const answers = firstOfEach(offList.filter(({ serves }) => serves > 0).toSorted(byGain), ({ kind, occasions }) =>
    [KINDS[kind].places[0], occasions].join(),
  );
  const first = [...listed.filter(({ kind, serves }) => serves > 0 || !onlyFinishes(kind)), ...answers]
    .filter(({ adds, serves }) => adds > 0 || serves > 0)
    .toSorted(byGain)
    .slice(0, shown);
  const finishing = listed
    // nobody buys socks for their looks
    .filter(({ kind }) => onlyFinishes(kind) && KINDS[kind].group !== 'legwear')
    .filter((best) => best.adds > 0 && !first.includes(best))
    .toSorted(byGain);
  return [...first, ...firstOfEach(finishing, ({ kind }) => KINDS[kind].places[0] ?? kind).slice(0, FINISHING_SHOWN)];
};

/** True when one would be asked for where the other is: of one group, and what finishes a look in one place. */
const likeIt = ({ piece: other }: Addition, { piece, level }: Addition): boolean =>
  KINDS[other.kind].group === KINDS[piece.kind].group && (level === 'layered' || other.places[0] === piece.places[0]);

/** True when `other` makes as many looks as `one`, keeps as warm and can be worn wherever it can. */
const doesAsMuch = (other: Addition, one: Addition, demands: readonly Demand[]): boolean =>
  other.adds >= one.adds &&
  keepsAsWarm(other.piece, one.piece, demands) &&
  one.wornFor.every((occasion) => other.wornFor.includes(occasion));

/**
 * The best pieces to buy, one a kind, best first. Every kind the list names is tried in every colour, pattern and cut of
 * the grid, and its looks counted exactly; where an occasion has no look, every other kind is tried for it as well.
 */
export const bestPurchases = (
  question: ImproveQuestion,
  dressed: readonly Dressed[],
  owned: readonly Addition[],
  shown: number,
): { readonly purchases: readonly Purchase[]; readonly tried: number } => {
  const demands = dressed.map(({ demand }) => demand);
  const lacking = dressed.filter(({ hasLook, demand }) => !hasLook && demand.beyondClothes !== true);
  const mine = [...question.pieces, ...question.wardrobe];
  const worthTrying = (some: readonly (readonly Piece[])[]): readonly (readonly Piece[])[] =>
    some
      .map((ofKind) => ofKind.filter((piece) => !ownsLike(piece, mine) && isForTheTrip(piece, demands)))
      .filter((ofKind) => ofKind.length > 0);
  const things = worthTrying(thingsToBuy(question));
  const offList = lacking.length === 0 ? [] : worthTrying(thingsOffList(question));
  const [listed, others] = [things, offList].map((some) => some.map((ofKind) => bestOfKind(ofKind, lacking, question)));
  const best = worthShowing(listed ?? [], others ?? [], shown);
  const purchases = colourEach(best)
    .flatMap(([piece, ...others]): Purchase[] => {
      if (piece === undefined) return [];
      const addition = additionOf(piece, dressed, question);
      const instead = owned.find((other) => likeIt(other, addition) && doesAsMuch(other, addition, demands));
      const alsoIn = others.flatMap(({ colours: [ground] }) => ground ?? []);
      return [{ ...addition, alsoIn, ...(instead === undefined ? {} : { instead }) }];
    })
    .toSorted((a, b) => Number(a.instead !== undefined) - Number(b.instead !== undefined) || byWorth(a, b));
  return { purchases, tried: [...things, ...offList].flat().length };
};
