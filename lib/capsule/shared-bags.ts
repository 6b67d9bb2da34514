import { sumOf } from '../bag/index.ts';
import type { Measure, PackedBag, Packing } from '../model/index.ts';

/** One bag of one traveller as packed. */
export interface TravellersBag {
  readonly traveller: string;
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
  readonly from: string;
  readonly to: string;
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

const bagOf = (traveller: string, packed: PackedBag): TravellersBag => {
  const { bag, litres } = packed;
  const grams = heaviestOf(packed);
  const gramsAtMost = bag.limitKg === undefined ? undefined : bag.limitKg * 1000;
  return {
    traveller,
    bag: bag.name,
    grams,
    ...(gramsAtMost === undefined ? {} : { gramsAtMost, gramsLeft: gramsAtMost - grams.value }),
    litres,
    litresAtMost: bag.litres,
  };
};

interface Loaded {
  readonly traveller: string;
  readonly packed: PackedBag;
  left: number;
  litresLeft: number;
}

/** The lightest piece that brings the bag within its limit, or the heaviest that can be handed over. */
const pieceToMove = (from: Loaded, to: Loaded, gone: ReadonlySet<string>) => {
  const able = from.packed.pieces
    .filter(({ piece, grams, litres }) => !gone.has(piece) && grams.value <= to.left && litres.value <= to.litresLeft)
    .toSorted((a, b) => a.grams.value - b.grams.value);
  return able.find(({ grams }) => grams.value >= -from.left) ?? able.at(-1);
};

/** Hands pieces from bags that are too heavy to others' bags with room; all or nothing. */
const movesOf = (packers: readonly Packer[]): readonly Move[] => {
  const loads: Loaded[] = packers.flatMap(({ name, packing }) =>
    packing.bags.flatMap((packed) =>
      packed.bag.limitKg === undefined
        ? []
        : [
            {
              traveller: name,
              packed,
              left: packed.bag.limitKg * 1000 - heaviestOf(packed).value,
              litresLeft: packed.bag.litres - packed.litres.value,
            },
          ],
    ),
  );
  const moves: Move[] = [];
  for (const from of loads.filter(({ left }) => left < 0)) {
    const gone = new Set<string>();
    while (from.left < 0) {
      const to = loads
        .filter(({ traveller }) => traveller !== from.traveller)
        .reduce<Loaded | undefined>(
          (most, each) => (most === undefined || each.left > most.left ? each : most),
          undefined,
        );
      const moved = to === undefined ? undefined : pieceToMove(from, to, gone);
      if (to === undefined || moved === undefined) return [];
      gone.add(moved.piece);
      from.left += moved.grams.value;
      to.left -= moved.grams.value;
      to.litresLeft -= moved.litres.value;
      moves.push({ piece: moved.piece, from: from.traveller, to: to.traveller, grams: moved.grams.value });
    }
  }
  return moves;
};

/** Every traveller brings the bags of the brief; together they may hold what one of them cannot. */
export const sharedBags = (packers: readonly Packer[]): SharedBags => {
  const bags = packers.flatMap(({ name, packing }) => packing.bags.map((packed) => bagOf(name, packed)));
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
    moves: movesOf(packers),
  };
};
