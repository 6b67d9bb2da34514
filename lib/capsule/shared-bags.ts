import { sumOf } from '../bag/index.ts';
import type { Measure, PackedBag, Packing } from '../model/index.ts';
import { type Phrase, phrase } from '../words/index.ts';

/** One bag as packed: of one traveller, or packed by several together. */
export interface TravellersBag {
  readonly travellers: readonly string[];
  readonly bag: string;
  /** With the bag's own weight. */
  readonly grams: Measure;
  /** Undefined when nothing limits it. */
  readonly gramsAtMost?: number;
  readonly litres: Measure;
  readonly litresAtMost: number;
  /** What it could still take; below 0 when it is over. Undefined when nothing limits its weight. */
  readonly gramsLeft?: number;
}

/** A piece that would go better in another's bag. */
export interface Move {
  readonly piece: string;
  readonly from: Pick<TravellersBag, 'travellers' | 'bag'>;
  readonly to: Pick<TravellersBag, 'travellers' | 'bag'>;
  readonly grams: number;
}

/** The bags of all travellers against the limits they share. */
export interface SharedBags {
  readonly bags: readonly TravellersBag[];
  /** Of the bags with a limit, all travellers together. */
  readonly grams: Measure;
  /** Undefined when no bag has a limit. */
  readonly gramsAtMost?: number;
  readonly litres: Measure;
  readonly litresAtMost: number;
  /** True when every bag of everybody holds what is in it. */
  readonly fits: boolean;
  /** Pieces to hand over so that no bag is too heavy; empty when none is, or when there is no room. */
  readonly moves: readonly Move[];
}

export interface Packer {
  readonly name: string;
  readonly packing: Packing;
}

/** At its heaviest on any journey. */
const heaviestOf = ({ grams, heaviest }: PackedBag): Measure => heaviest?.grams ?? grams;

/** What one or more have packed into one bag, and what it holds. */
interface Loaded {
  readonly travellers: readonly string[];
  readonly bag: string;
  readonly pieces: PackedBag['pieces'];
  readonly grams: Measure;
  readonly gramsAtMost: number | undefined;
  readonly litres: Measure;
  readonly litresAtMost: number;
}

const loadOf = (traveller: string, packed: PackedBag): Loaded => ({
  travellers: [traveller],
  bag: packed.bag.name,
  pieces: packed.pieces,
  grams: heaviestOf(packed),
  gramsAtMost: packed.bag.limitKg === undefined ? undefined : packed.bag.limitKg * 1000,
  litres: packed.litres,
  litresAtMost: packed.bag.litres,
});

/** Shares of one bag together. */
const joined = (a: Loaded, b: Loaded): Loaded => ({
  travellers: [...a.travellers, ...b.travellers],
  bag: a.bag,
  pieces: [...a.pieces, ...b.pieces],
  grams: sumOf([a.grams, b.grams]),
  gramsAtMost: a.gramsAtMost === undefined || b.gramsAtMost === undefined ? undefined : a.gramsAtMost + b.gramsAtMost,
  litres: sumOf([a.litres, b.litres]),
  litresAtMost: a.litresAtMost + b.litresAtMost,
});

/** Every bag once: those that travellers share are the sum of their shares. */
const loadsOf = (packers: readonly Packer[]): readonly Loaded[] => {
  const loads: Loaded[] = [];
  const shared = new Map<string, number>();
  for (const { name, packing } of packers) {
    for (const packed of packing.bags) {
      const load = loadOf(name, packed);
      const { name: bag, sharedBy } = packed.bag;
      const at = sharedBy === undefined ? undefined : shared.get(bag);
      if (at !== undefined) loads[at] = joined(loads[at] as Loaded, load);
      else if (loads.push(load) && sharedBy !== undefined) shared.set(bag, loads.length - 1);
    }
  }
  return loads;
};

const bagOf = ({ travellers, bag, grams, gramsAtMost, litres, litresAtMost }: Loaded): TravellersBag => ({
  travellers,
  bag,
  grams,
  ...(gramsAtMost === undefined ? {} : { gramsAtMost, gramsLeft: gramsAtMost - grams.value }),
  litres,
  litresAtMost,
});

/** A bag with a limit while pieces are handed over. */
interface Weighed extends Loaded {
  gramsLeft: number;
  litresLeft: number;
}

/** The lightest piece that brings the bag within its limit, or the heaviest that can be handed over. */
const pieceToMove = (from: Weighed, to: Weighed, gone: ReadonlySet<PackedBag['pieces'][number]>) => {
  const able = from.pieces
    .filter((packed) => !gone.has(packed) && packed.grams.value <= to.gramsLeft && packed.litres.value <= to.litresLeft)
    .toSorted((a, b) => a.grams.value - b.grams.value);
  return able.find(({ grams }) => grams.value >= -from.gramsLeft) ?? able.at(-1);
};

/** Hands pieces from bags that are too heavy to others' bags, or shared ones, with room; all or nothing. */
const movesOf = (loads: readonly Loaded[]): readonly Move[] => {
  const limited = loads.flatMap((load): Weighed[] =>
    load.gramsAtMost === undefined
      ? []
      : [
          {
            ...load,
            gramsLeft: load.gramsAtMost - load.grams.value,
            litresLeft: load.litresAtMost - load.litres.value,
          },
        ],
  );
  const moves: Move[] = [];
  for (const from of limited.filter(({ gramsLeft }) => gramsLeft < 0)) {
    const gone = new Set<PackedBag['pieces'][number]>();
    while (from.gramsLeft < 0) {
      const to = limited
        .filter(({ travellers }) => travellers.join() !== from.travellers.join())
        .reduce<Weighed | undefined>(
          (most, each) => (most === undefined || each.gramsLeft > most.gramsLeft ? each : most),
          undefined,
        );
      const moved = to === undefined ? undefined : pieceToMove(from, to, gone);
      if (to === undefined || moved === undefined) return [];
      gone.add(moved);
      from.gramsLeft += moved.grams.value;
      to.gramsLeft -= moved.grams.value;
      to.litresLeft -= moved.litres.value;
      moves.push({
        piece: moved.piece,
        from: { travellers: from.travellers, bag: from.bag },
        to: { travellers: to.travellers, bag: to.bag },
        grams: moved.grams.value,
      });
    }
  }
  return moves;
};

/** What a bag weighs against its limit, in a sentence. */
export const tellBag = ({ travellers, bag, grams, gramsAtMost }: TravellersBag): Phrase =>
  phrase('compare', 'bag weighs', {
    travellers,
    bag,
    grams: grams.value,
    spread: (grams.high - grams.low) / 2,
    most: gramsAtMost ?? 0,
  });

/** Which piece goes where, in a sentence. */
export const tellMove = ({ from, to, grams }: Move, piece: string): Phrase =>
  phrase('compare', 'move', {
    piece,
    grams,
    from: from.travellers,
    fromBag: from.bag,
    to: to.travellers,
    toBag: to.bag,
  });

/** The bags of all, those that are shared once; together they may hold what one of them cannot. */
export const sharedBags = (packers: readonly Packer[]): SharedBags => {
  const loads = loadsOf(packers);
  const bags = loads.map(bagOf);
  const limited = bags.filter(({ gramsAtMost }) => gramsAtMost !== undefined);
  return {
    bags,
    grams: sumOf(limited.map(({ grams }) => grams)),
    ...(limited.length === 0
      ? {}
      : { gramsAtMost: limited.reduce((sum, { gramsAtMost = 0 }) => sum + gramsAtMost, 0) }),
    litres: sumOf(bags.map(({ litres }) => litres)),
    litresAtMost: bags.reduce((sum, { litresAtMost }) => sum + litresAtMost, 0),
    fits: bags.every(
      ({ gramsLeft = 0, litres, litresAtMost }) => gramsLeft >= -1e-6 && litres.value <= litresAtMost + 1e-6,
    ),
    moves: movesOf(loads),
  };
};
