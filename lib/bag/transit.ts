import type { Brief, Piece } from '../model/index.ts';
import type { WardrobeEngine } from '../outfit/index.ts';
import { momentsOf } from '../plan/index.ts';
import { fabricRefused } from '../vocabulary/index.ts';
import type { Journey } from './journeys.ts';

/** The look of a journey that suits it and takes most out of the bags, beside the planned one. */
export interface TransitSaving {
  readonly occasion: string;
  /** Pieces of the heaviest look that suits, and what it weighs and fills, in grams and litres. */
  readonly pieces: readonly string[];
  readonly grams: number;
  readonly litres: number;
  /** Grams by which it is more than what the plan wears. */
  readonly moreGrams: number;
  /** True when no suitable look weighs more. */
  readonly proven: boolean;
}

/** Questions put to the engine for one journey; a count, so that answers stay the same. */
const QUESTIONS = 1500;

const seatsOf = ({ places, site }: Piece): readonly string[] =>
  places.map((place) => (place === 'jewellery' ? `jewellery ${site ?? ''}` : place));

/** The most the pieces from here on could still add: the heaviest for each place. */
const atMost = (pieces: readonly Piece[]): number => {
  const heaviest = new Map<string, number>();
  for (const piece of pieces) {
    for (const seat of seatsOf(piece)) heaviest.set(seat, Math.max(heaviest.get(seat) ?? 0, piece.grams.value));
  }
  return [...heaviest.values()].reduce((sum, grams) => sum + grams, 0);
};

/** The heaviest set of pieces that some suitable look contains: heaviest first, with the places left as the bound. */
const heaviest = (pieces: readonly Piece[], suits: (ids: readonly string[]) => boolean) => {
  const order = pieces.toSorted((a, b) => b.grams.value - a.grams.value || (a.id < b.id ? -1 : 1));
  const bounds = order.map((_, index) => atMost(order.slice(index)));
  let best: { readonly ids: readonly string[]; readonly grams: number } = { ids: [], grams: 0 };
  let asked = 0;
  const descend = (index: number, ids: readonly string[], grams: number): void => {
    if (grams > best.grams) best = { ids, grams };
    const piece = order[index];
    if (piece === undefined || asked >= QUESTIONS || grams + (bounds[index] ?? 0) <= best.grams) return;
    asked += 1;
    if (suits([...ids, piece.id])) descend(index + 1, [...ids, piece.id], grams + piece.grams.value);
    descend(index + 1, ids, grams);
  };
  descend(0, [], 0);
  return { ...best, proven: asked < QUESTIONS };
};

/** For each journey the heaviest look that keeps its dress, needs, warmth and heels. Journeys that no look suits are left out. */
export const transitSavings = (
  brief: Brief,
  traveller: string,
  journeys: readonly Journey[],
  pieces: readonly Piece[],
  engine: WardrobeEngine,
): readonly TransitSaving[] => {
  const moments = new Map(momentsOf(brief, traveller).map((moment) => [moment.occasion.id, moment]));
  const wearable = pieces.filter((piece) => fabricRefused(piece, brief.avoid.fabrics) === undefined);
  const without = pieces.filter((piece) => !wearable.includes(piece)).map(({ id }) => id);
  const byId = new Map(pieces.map((piece) => [piece.id, piece]));
  const sum = (ids: Iterable<string>, of: (piece: Piece) => number): number =>
    [...ids].reduce((total, id) => {
      const piece = byId.get(id);
      return piece === undefined ? total : total + of(piece);
    }, 0);
  return journeys.flatMap(({ occasion, worn }): TransitSaving[] => {
    const asked = moments.get(occasion.id)?.restriction;
    const restriction = { ...asked, without };
    if (asked === undefined || engine.rank(1, restriction).length === 0) return [];
    const found = heaviest(wearable, (ids) => engine.rank(1, { ...restriction, pieces: ids }).length > 0);
    const grams = sum(found.ids, (piece) => piece.grams.value);
    return [
      {
        occasion: occasion.id,
        pieces: found.ids,
        grams,
        litres: sum(found.ids, (piece) => piece.litres.value),
        moreGrams: grams - sum(worn, (piece) => piece.grams.value),
        proven: found.proven,
      },
    ];
  });
};
