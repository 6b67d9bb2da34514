import type { Brief, Piece } from '../model/index.ts';
import type { Restriction, WardrobeEngine } from '../outfit/index.ts';
import { leftForLater, type Moment, momentsOf } from '../plan/index.ts';
import { refusedPieces } from './eligible.ts';
import { outsideOf } from './season.ts';

/** What one occasion asks of a set of pieces. */
export interface Demand {
  readonly occasion: string;
  readonly what: string;
  readonly day: number;
  readonly restriction: Restriction;
  /** The same without finishing pieces the occasion has no use for. */
  readonly bare: Restriction;
  /** How cold it is outside that day, °C; absent where nobody knows, and for a swim. */
  readonly outC?: number;
  /** Colder than clothes for travelling keep anyone warm in: what is bought in a shop mends nothing. */
  readonly beyondClothes?: true;
}

/** Looks asked of the whole wardrobe for one occasion. */
const ASKED = 160;

/** What every occasion asks; pieces of a cloth that the brief refuses serve none. */
export const demandsOf = (brief: Brief, traveller: string, pieces: readonly Piece[]): readonly Demand[] => {
  const refused = [...refusedPieces(pieces, brief)];
  return momentsOf(brief, traveller).map((moment: Moment): Demand => {
    const outC = outsideOf(moment);
    return {
      occasion: moment.occasion.id,
      what: moment.occasion.what,
      day: moment.day,
      restriction: { ...moment.restriction, without: refused },
      bare: { ...moment.restriction, without: [...refused, ...leftForLater(moment, pieces)] },
      ...(outC === undefined ? {} : { outC }),
      ...(moment.beyondClothes === undefined ? {} : { beyondClothes: true }),
    };
  });
};

const within = (restriction: Restriction, pieces: readonly Piece[], inside: ReadonlySet<string>): Restriction => ({
  ...restriction,
  without: [
    ...new Set([...(restriction.without ?? []), ...pieces.map(({ id }) => id).filter((id) => !inside.has(id))]),
  ],
});

/** A look of these pieces for an occasion, as piece ids; undefined when there is none. */
export const servedBy = (
  demand: Demand,
  engine: WardrobeEngine,
  pieces: readonly Piece[],
  inside: ReadonlySet<string>,
): readonly string[] | undefined => {
  for (const restriction of [demand.bare, demand.restriction]) {
    const [best] = engine.rank(1, within(restriction, pieces, inside));
    if (best !== undefined) return best.look.worn.map(({ piece }) => piece);
  }
  return undefined;
};

/** Looks for one occasion, as piece ids; the more, the more ways there are to serve it with few pieces. */
export type LooksFor = (demand: Demand) => readonly (readonly string[])[];

/** Asks each distinct question once. */
const remembered = (ask: LooksFor): LooksFor => {
  const known = new Map<string, readonly (readonly string[])[]>();
  return (demand) => {
    const key = JSON.stringify([demand.restriction, demand.bare]);
    const found = known.get(key) ?? ask(demand);
    known.set(key, found);
    return found;
  };
};

/** The best looks of a wardrobe for an occasion; finishing pieces it has no use for are tried only where nothing does without. */
export const bestLooks = (engine: WardrobeEngine): LooksFor =>
  remembered(({ bare, restriction }) => {
    const ranked = engine.rank(ASKED, bare);
    const best = ranked.length > 0 ? ranked : engine.rank(ASKED, restriction);
    return best.map(({ look }) => look.worn.map(({ piece }) => piece));
  });

/** With no other garments than these and each pair of shoes in turn: the barest look for an occasion. */
export const barestLooks = (engine: WardrobeEngine, without: readonly string[], shoes: readonly string[]): LooksFor =>
  remembered(({ restriction }) =>
    ['', ...shoes].flatMap((pair) => {
      const others = shoes.filter((id) => id !== pair);
      const asked = { ...restriction, without: [...(restriction.without ?? []), ...without, ...others] };
      // looks are listed with nothing before something in every place, so that the first is among the barest
      for (const { worn } of engine.enumerate({ restriction: asked })) return [worn.map(({ piece }) => piece)];
      return [];
    }),
  );

export interface ServingQuestion {
  readonly demands: readonly Demand[];
  readonly engine: WardrobeEngine;
  readonly pieces: readonly Piece[];
  readonly looksFor: LooksFor;
  /** Ids that are taken anyway. */
  readonly taken: readonly string[];
  /** Whether these ids can all be packed: the list has a place for each, and the limits hold. */
  readonly fits: (ids: readonly string[]) => boolean;
  /** What taking a piece costs beside its place; pieces of earlier proposals cost more. */
  readonly cost: (id: string) => number;
}

export interface Serving {
  /** By occasion id: the pieces of a look that serves it. */
  readonly witnesses: ReadonlyMap<string, readonly string[]>;
  /** Every piece taken. */
  readonly pieces: ReadonlySet<string>;
  readonly unserved: readonly Demand[];
}

/** Orders of the occasions tried before one is called impossible to serve. */
const MOST_ORDERS = 24;

/**
 * Looks for each occasion, adding as few pieces as can be and no core twice if it can be helped. Occasions for which
 * the list has no place left are put first, together or one alone, and all begin again.
 */
export const serveOccasions = (question: ServingQuestion): Serving => {
  const { demands, engine, pieces, looksFor, taken, fits, cost } = question;
  const serveInOrder = (order: readonly Demand[]): Serving => {
    const inside = new Set(taken);
    const witnesses = new Map<string, readonly string[]>();
    const worn = new Set<string>();
    const unserved: Demand[] = [];
    for (const demand of order) {
      const own = servedBy(demand, engine, pieces, inside);
      const priced = [...(own === undefined ? [] : [own]), ...looksFor(demand)]
        .map((look, rank) => {
          const fresh = look.filter((id) => !inside.has(id));
          const again = worn.has(look.slice(0, 2).join('+')) ? 1.5 : 0;
          return { look, fresh, price: fresh.reduce((sum, id) => sum + 1 + cost(id), 0) + again + rank / 1e3 };
        })
        .sort((a, b) => a.price - b.price);
      const best = priced.find(({ fresh }) => fresh.length === 0 || fits([...inside, ...fresh]));
      if (best === undefined) {
        unserved.push(demand);
        continue;
      }
      for (const id of best.fresh) inside.add(id);
      worn.add(best.look.slice(0, 2).join('+'));
      witnesses.set(demand.occasion, best.look);
    }
    return { witnesses, pieces: inside, unserved };
  };
  let order = demands.toSorted((a, b) => looksFor(a).length - looksFor(b).length || a.day - b.day);
  let best = serveInOrder(order);
  let left = MOST_ORDERS;
  for (let better = true; better; ) {
    const hard = best.unserved.filter((demand) => looksFor(demand).length > 0);
    better = false;
    // all of them first, or one: together they may ask for more than the list holds
    for (const ahead of [hard, ...(hard.length > 1 ? hard.map((demand) => [demand]) : [])]) {
      if (ahead.length === 0 || left-- <= 0) break;
      const tried = [...ahead, ...order.filter((demand) => !ahead.includes(demand))];
      const again = serveInOrder(tried);
      if (again.unserved.length >= best.unserved.length) continue;
      [best, order, better] = [again, tried, true];
      break;
    }
  }
  return best;
};
