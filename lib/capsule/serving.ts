import type { Brief, Piece } from '../model/index.ts';
import type { Restriction, WardrobeEngine } from '../outfit/index.ts';
import { leftForLater, type Moment, momentsOf } from '../plan/index.ts';

/** What one occasion asks of a set of pieces. */
export interface Demand {
  readonly occasion: string;
  readonly what: string;
  readonly day: number;
  readonly restriction: Restriction;
  /** The same without finishing pieces the occasion has no use for. */
  readonly bare: Restriction;
}

/** Looks asked of the whole wardrobe for one occasion. */
const ASKED = 160;

export const demandsOf = (brief: Brief, traveller: string, pieces: readonly Piece[]): readonly Demand[] =>
  momentsOf(brief, traveller).map((moment: Moment): Demand => {
    const later = leftForLater(moment, pieces);
    return {
      occasion: moment.occasion.id,
      what: moment.occasion.what,
      day: moment.day,
      restriction: moment.restriction,
      bare: { ...moment.restriction, without: later },
    };
  });

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

export interface ServingQuestion {
  readonly demands: readonly Demand[];
  readonly engine: WardrobeEngine;
  readonly pieces: readonly Piece[];
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
const MOST_ORDERS = 8;

/**
 * Looks for each occasion, adding as few pieces as can be and no core twice if it can be helped. An occasion for which
 * the list has no place left is put first, and all begin again.
 */
export const serveOccasions = ({ demands, engine, pieces, taken, fits, cost }: ServingQuestion): Serving => {
  const known = new Map<string, readonly (readonly string[])[]>();
  const looksFor = (demand: Demand): readonly (readonly string[])[] => {
    const key = JSON.stringify(demand.restriction);
    const found =
      known.get(key) ??
      [demand.bare, demand.restriction]
        .map((restriction) => engine.rank(ASKED, restriction))
        .find((ranked) => ranked.length > 0)
        ?.map(({ look }) => look.worn.map(({ piece }) => piece)) ??
      [];
    known.set(key, found);
    return found;
  };
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
  for (let tried = 1; tried < MOST_ORDERS; tried += 1) {
    const hard = best.unserved.filter((demand) => looksFor(demand).length > 0);
    if (hard.length === 0) return best;
    order = [...hard, ...order.filter((demand) => !hard.includes(demand))];
    const again = serveInOrder(order);
    if (again.unserved.length >= best.unserved.length) return best;
    best = again;
  }
  return best;
};
