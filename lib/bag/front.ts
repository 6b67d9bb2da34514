import type { Piece } from '../model/index.ts';
import type { WardrobeEngine } from '../outfit/index.ts';

/** One choice of pieces that no other beats: nothing lighter makes as many looks. */
export interface FrontPoint {
  /** Grams of all pieces kept, worn or packed. */
  readonly grams: number;
  /** Layered looks of the pieces kept. */
  readonly looks: number;
  /** Pieces left at home. */
  readonly without: readonly string[];
}

export interface Front {
  /** From the lightest to the whole capsule. */
  readonly points: readonly FrontPoint[];
  /** True when every set of pieces was weighed; false when pieces were taken out one by one. */
  readonly proven: boolean;
}

/** All sets of so many pieces are weighed: a million. */
const EXACT_PIECES = 20;
/** Looks held at once; beyond it only the whole capsule is told. */
const MOST_LOOKS = 400_000;

interface Looks {
  /** Ids of the pieces that are in any layered look. */
  readonly ids: readonly string[];
  /** Each look as places in `ids`. */
  readonly looks: readonly (readonly number[])[];
}

const looksOf = (engine: WardrobeEngine): Looks | undefined => {
  const places = new Map<string, number>();
  const looks: number[][] = [];
  for (const { worn } of engine.enumerate({ level: 'layered' })) {
    if (looks.length >= MOST_LOOKS) return undefined;
    looks.push(
      worn.map(({ piece }) => {
        const place = places.get(piece) ?? places.size;
        places.set(piece, place);
        return place;
      }),
    );
  }
  return { ids: [...places.keys()], looks };
};

/** For each set of pieces the looks that need nothing else: sums over subsets, one piece at a time. */
const looksOfSets = ({ ids, looks }: Looks): Uint32Array => {
  const inside = new Uint32Array(2 ** ids.length);
  for (const look of looks) {
    const set = look.reduce((mask, place) => mask | (1 << place), 0);
    inside[set] = (inside[set] ?? 0) + 1;
  }
  for (let place = 0; place < ids.length; place += 1) {
    const bit = 1 << place;
    for (let set = 0; set < inside.length; set += 1) {
      if ((set & bit) !== 0) inside[set] = (inside[set] ?? 0) + (inside[set ^ bit] ?? 0);
    }
  }
  return inside;
};

const exactFront = (found: Looks, gramsOf: (id: string) => number, all: number): readonly FrontPoint[] => {
  const { ids } = found;
  const inside = looksOfSets(found);
  const weights = ids.map((id) => Math.round(gramsOf(id)));
  const grams = new Uint32Array(inside.length);
  const bestSet = new Map<number, number>();
  for (let set = 1; set < inside.length; set += 1) {
    const lowest = set & -set;
    const weight = (grams[set ^ lowest] ?? 0) + (weights[31 - Math.clz32(lowest)] ?? 0);
    grams[set] = weight;
    const before = bestSet.get(weight);
    if (before === undefined || (inside[set] ?? 0) > (inside[before] ?? 0)) bestSet.set(weight, set);
  }
  const rest = Math.round(all) - (grams.at(-1) ?? 0);
  let most = 0;
  return [...bestSet]
    .toSorted(([a], [b]) => a - b)
    .flatMap(([weight, set]): FrontPoint[] => {
      const looks = inside[set] ?? 0;
      if (looks <= most) return [];
      most = looks;
      return [{ grams: rest + weight, looks, without: ids.filter((_, place) => (set & (1 << place)) === 0) }];
    });
};

/** Takes out, again and again, the piece that loses the fewest looks a gram. */
const oneByOneFront = ({ ids, looks }: Looks, gramsOf: (id: string) => number, all: number): readonly FrontPoint[] => {
  const points: FrontPoint[] = [];
  const gone = new Set<number>();
  let left = looks;
  while (left.length > 0) {
    const out = [...gone];
    points.push({
      grams: Math.round(all - out.reduce((sum, place) => sum + gramsOf(ids[place] ?? ''), 0)),
      looks: left.length,
      without: out.map((place) => ids[place] ?? ''),
    });
    const lost = ids.map(() => 0);
    for (const look of left) for (const place of new Set(look)) lost[place] = (lost[place] ?? 0) + 1;
    const next = ids
      .map((id, place) => ({ place, price: (lost[place] ?? 0) / Math.max(1, gramsOf(id)) }))
      .filter(({ place }) => !gone.has(place))
      .toSorted((a, b) => a.price - b.price)[0];
    if (next === undefined) break;
    gone.add(next.place);
    left = left.filter((look) => !look.includes(next.place));
  }
  const lightestFirst = points.toReversed();
  return lightestFirst.filter((point, index) =>
    lightestFirst.slice(0, index).every(({ looks }) => looks < point.looks),
  );
};

/** Layered looks against grams. Shoes and accessories, which are in no layered look, are always kept and weighed. */
export const looksAgainstGrams = (pieces: readonly Piece[], engine: WardrobeEngine): Front => {
  const found = looksOf(engine);
  const weights = new Map(pieces.map(({ id, grams }) => [id, grams.value]));
  const gramsOf = (id: string): number => weights.get(id) ?? 0;
  const all = pieces.reduce((sum, { grams }) => sum + grams.value, 0);
  if (found === undefined || found.looks.length === 0) return { points: [], proven: found !== undefined };
  return found.ids.length <= EXACT_PIECES
    ? { points: exactFront(found, gramsOf, all), proven: true }
    : { points: oneByOneFront(found, gramsOf, all), proven: false };
};
