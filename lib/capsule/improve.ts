import { isNeutral, parseColour } from '../colour/index.ts';
import type { Brief, HouseRuleSettings, NamedColour, PackingListPlan, Piece, Plan } from '../model/index.ts';
import { createWardrobeEngine, layeredLookTable, type WardrobeEngine } from '../outfit/index.ts';
import { CUTS, type Cut, KINDS, type KindId, type PatternType } from '../vocabulary/index.ts';
import { refusalOf } from './eligible.ts';
import { type ImaginedPiece, imagine } from './imagine.ts';
import { createPricer } from './pricing.ts';
import { type Demand, demandsOf } from './serving.ts';

export interface ImproveQuestion {
  readonly brief: Brief;
  readonly traveller: string;
  readonly pieces: readonly Piece[];
  readonly wardrobe: readonly Piece[];
  readonly list?: PackingListPlan;
  readonly palette: readonly NamedColour[];
  readonly rules: HouseRuleSettings;
  readonly never?: readonly (readonly string[])[];
  readonly always?: readonly (readonly string[])[];
  readonly leaveOut?: readonly string[];
  readonly plan?: Plan;
}

/** One piece more: layered looks it adds, and unserved occasions for which it makes a look. */
export interface Addition {
  readonly piece: Piece;
  readonly adds: bigint;
  readonly serves: readonly string[];
}

export interface Swap {
  readonly out: Piece;
  readonly in: Piece;
  readonly adds: bigint;
}

/** What a piece costs, by what comes of it; for pieces with a price. */
export interface CostOfPiece {
  readonly piece: string;
  readonly price: { readonly amount: number; readonly currency: string };
  readonly looks: bigint;
  readonly aLook?: number;
  readonly wears: number;
  readonly aWear?: number;
}

export interface Improvements {
  /** Swaps within a line of the list, best first. */
  readonly swaps: readonly Swap[];
  /** Pieces of the wardrobe, best first. */
  readonly additions: readonly Addition[];
  /** Pieces that nobody owns yet, best first, of different kinds. */
  readonly purchases: readonly Addition[];
  readonly costs: readonly CostOfPiece[];
  /** Pieces of the capsule that are still to be bought. */
  readonly shopping: readonly Piece[];
}

const SHOWN = 5;
const MOST_LOOKS = 6_000_000;
/** Accessories are bought for pleasure: they add no layered look. */
const BOUGHT: ReadonlySet<string> = new Set(['tops', 'knits', 'bottoms', 'one-pieces', 'layers', 'coats']);
const COLOURS_TRIED = 10;
const REFINED = 8;
const PATTERNS_TRIED: readonly PatternType[] = ['plain', 'stripe', 'check', 'floral'];

const same = (a: Piece, b: Piece, { list }: ImproveQuestion): boolean =>
  list === undefined
    ? KINDS[a.kind].group === KINDS[b.kind].group
    : list.lines.some(({ kinds }) => kinds.includes(a.kind) && kinds.includes(b.kind));

const engineOf = (pieces: readonly Piece[], { rules, never = [], always = [] }: ImproveQuestion): WardrobeEngine =>
  createWardrobeEngine({ pieces, rules, never, always });

const unservedDemands = ({ brief, traveller, plan, pieces }: ImproveQuestion): readonly Demand[] => {
  const unserved = new Set(plan?.unserved.map(({ occasion }) => occasion) ?? []);
  return demandsOf(brief, traveller, pieces).filter(({ occasion }) => unserved.has(occasion));
};

const servesWith = (piece: Piece, demands: readonly Demand[], question: ImproveQuestion): readonly string[] => {
  if (demands.length === 0) return [];
  const engine = engineOf([...question.pieces, piece], question);
  return demands
    .filter(({ restriction }) => engine.rank(1, { ...restriction, pieces: [piece.id] }).length > 0)
    .map(({ occasion }) => occasion);
};

const byWorth = (a: Addition, b: Addition): number =>
  b.serves.length - a.serves.length || Number(b.adds - a.adds) || (a.piece.id < b.piece.id ? -1 : 1);

/** Prices every piece of the wardrobe and every swap with it, in one pass over the looks. */
const fromWardrobe = (question: ImproveQuestion): Pick<Improvements, 'swaps' | 'additions'> => {
  const { pieces, wardrobe, brief, palette, rules, never = [], always = [], leaveOut = [] } = question;
  const ids = new Set(pieces.map(({ id }) => id));
  const others = wardrobe.filter(
    (piece) => !ids.has(piece.id) && refusalOf(piece, { brief, palette, keep: [], leaveOut }) === undefined,
  );
  const all = [...pieces, ...others];
  const table = layeredLookTable({ pieces: all, rules, never, always }, MOST_LOOKS);
  if (table === undefined) return { swaps: [], additions: [] };
  const inside = Uint8Array.from(all, (_, number) => (number < pieces.length ? 1 : 0));
  const pricing = createPricer(table, all.length)(inside);
  const swaps = pieces.flatMap((out, outNumber) =>
    others.flatMap((inn, number): Swap[] => {
      const adds = pricing.swap(outNumber, pieces.length + number);
      return adds > 0 && same(out, inn, question) ? [{ out, in: inn, adds: BigInt(adds) }] : [];
    }),
  );
  const demands = unservedDemands(question);
  const additions = others
    .map(
      (piece, number): Addition => ({
        piece,
        adds: BigInt(pricing.gain[pieces.length + number] ?? 0),
        serves: servesWith(piece, demands, question),
      }),
    )
    .filter(({ adds, serves }) => adds > 0n || serves.length > 0);
  return {
    swaps: swaps.toSorted((a, b) => Number(b.adds - a.adds) || (a.in.id < b.in.id ? -1 : 1)).slice(0, SHOWN),
    additions: additions.toSorted(byWorth).slice(0, SHOWN),
  };
};

/** Colours to buy in: the mood's, those worn already, and the neutrals the trade buys most. */
const coloursTried = ({ palette, pieces, brief }: ImproveQuestion): readonly NamedColour[] => {
  const staple = ['navy', 'charcoal', 'mid grey', 'white', 'black', 'camel'].flatMap((name) => parseColour(name) ?? []);
  const worn = pieces.flatMap(({ colours: [ground] }) => (ground !== undefined && isNeutral(ground) ? [ground] : []));
  const all = new Map(
    [...palette, ...worn, ...staple].map(({ name, hex, oklch }) => [name, { name, hex, oklch }] as const),
  );
  return [...all.values()]
    .filter(({ hex }) => !brief.avoid.colours.some((refused) => refused.hex === hex))
    .slice(0, COLOURS_TRIED);
};

const bestPurchases = (question: ImproveQuestion): readonly Addition[] => {
  const { pieces, list, brief } = question;
  const owner = pieces[0]?.wardrobe ?? '';
  const demands = unservedDemands(question);
  const listed = new Set(list?.lines.flatMap(({ kinds }) => kinds));
  const worn = new Set(pieces.map(({ kind }) => kind));
  const kinds = (Object.keys(KINDS) as KindId[]).filter(
    (id) =>
      BOUGHT.has(KINDS[id].group) &&
      (listed.size === 0 ? worn.has(id) : listed.has(id)) &&
      !brief.avoid.fabrics.includes(KINDS[id].fabric),
  );
  const price = (wish: ImaginedPiece): Addition & { readonly wish: ImaginedPiece } => {
    const piece = imagine(wish, owner);
    return {
      wish,
      piece,
      adds: engineOf([...pieces, piece], question).count({ pieces: [piece.id] }).layered,
      serves: [],
    };
  };
  const first = coloursTried(question)
    .flatMap((colour) => kinds.map((kind) => price({ kind, colour, pattern: 'plain', cut: KINDS[kind].cut })))
    .toSorted(byWorth);
  const kindsSeen = new Set<KindId>();
  const best = first.filter(({ wish }) => !kindsSeen.has(wish.kind) && kindsSeen.add(wish.kind)).slice(0, REFINED);
  const volumes: readonly Cut[] = ['slim', 'regular', 'relaxed', 'wide'];
  return best
    .map(({ wish, ...plain }) => {
      const cuts = [wish.cut, ...volumes.filter((cut) => CUTS[cut].volume !== CUTS[wish.cut].volume)];
      const tried = PATTERNS_TRIED.flatMap((pattern) => cuts.map((cut) => price({ ...wish, pattern, cut })));
      const [finest] = tried.toSorted((a, b) => Number(b.adds - a.adds));
      const taken = finest !== undefined && finest.adds > plain.adds ? finest : plain;
      return { piece: taken.piece, adds: taken.adds, serves: servesWith(taken.piece, demands, question) };
    })
    .filter(({ adds, serves }) => adds > 0n || serves.length > 0)
    .toSorted(byWorth)
    .slice(0, SHOWN);
};

const costsOf = ({ pieces, plan }: ImproveQuestion, engine: WardrobeEngine): readonly CostOfPiece[] => {
  const priced = pieces.filter(({ price }) => price !== undefined);
  if (priced.length === 0) return [];
  const looks = new Map(engine.contributions().map(({ piece, layered, complete }) => [piece, { layered, complete }]));
  return priced.flatMap(({ id, price }): CostOfPiece[] => {
    if (price === undefined) return [];
    const made = looks.get(id);
    // what is in no layered look, shoes and accessories, is measured by the complete ones
    const count = made === undefined ? 0n : made.layered > 0n ? made.layered : made.complete;
    const wears = plan?.wears[id] ?? 0;
    return [
      {
        piece: id,
        price,
        looks: count,
        ...(count > 0n ? { aLook: price.amount / Number(count) } : {}),
        wears,
        ...(wears > 0 ? { aWear: price.amount / wears } : {}),
      },
    ];
  });
};

/** How a capsule could be better by one piece: swapped, added from the wardrobe or bought; and what its pieces cost. */
export const improve = (question: ImproveQuestion): Improvements => ({
  ...fromWardrobe(question),
  purchases: bestPurchases(question),
  costs: costsOf(question, engineOf(question.pieces, question)),
  shopping: question.pieces.filter(({ status }) => status === 'to buy'),
});
