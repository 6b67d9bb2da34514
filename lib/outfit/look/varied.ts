import type { Look } from '../../model/look.ts';
import { DRESS_CODES } from '../../vocabulary/dress-codes.ts';
import { CORE_SLOTS, LAYER_SLOTS, type Slot } from '../../vocabulary/places.ts';
import type { CoreForm } from '../grammar/forms.ts';
import { lookOf } from '../grammar/look-id.ts';
import type { Seat } from '../grammar/seats.ts';
import type { Ground } from '../ground.ts';
import { reasonsAsked } from '../judge/asked.ts';
import { pointsOf } from '../judge/points.ts';
import type { Restriction } from '../restriction.ts';
import { inWords, type RankedLook, type RankedSeats, rankSeats } from './rank.ts';

export interface VariedOptions {
  /** Occasions the few should serve between them. */
  readonly occasions?: readonly Restriction[];
  /** Looks that are shown in any case; they count among the k and come first. */
  readonly keep?: readonly Look[];
  /** Looks of which this is false are shown only where others run out, or for a piece no other look has. */
  readonly suits?: (look: Look) => boolean;
}

/** A look that could be shown, with what it would bring. */
interface Choice extends RankedSeats {
  readonly id: string;
  readonly pieces: ReadonlySet<string>;
  /** Occasions and dress codes it serves, numbered. */
  readonly serves: ReadonlySet<number>;
  readonly suits: boolean;
}

/** Looks taken into the pool: of all, for each piece, for each piece without layers, for each occasion, for each dress code. */
const POOL = { all: 40, piece: 3, light: 2, occasion: 8, dress: 8 };
/** Two looks nearer than this are nearly alike: one accessory or one layer apart. Tried in turn while looks remain. */
const APART = [0.4, 0.25, 0.1, 0];
/** What counts how much when the next look is chosen; a look's points are brought to 0 to 100. Own choice. */
const WORTH = { piece: 90, serves: 70, apart: 200, again: 12, suits: 400 };

const SAME_SWIMWEAR = 0.1;

const weightOf = (slot: Slot): number => (CORE_SLOTS.has(slot) ? 4 : LAYER_SLOTS.has(slot) || slot === 'shoes' ? 2 : 1);

/** Weighted Jaccard distance of two looks, 0 the same to 1 nothing in common. */
const distance = (a: Choice, b: Choice): number => {
  let both = 0;
  let either = 0;
  for (const { piece, slot } of a.seats) {
    either += weightOf(slot);
    if (b.pieces.has(piece.id)) both += weightOf(slot);
  }
  for (const { piece, slot } of b.seats) if (!a.pieces.has(piece.id)) either += weightOf(slot);
  const apart = either === 0 ? 0 : 1 - both / either;
  // by the water the bag and the hat do not make another look
  const sameSwim = a.seats.some(({ piece, slot }) => slot === 'swim' && b.pieces.has(piece.id));
  return sameSwim ? Math.min(apart, SAME_SWIMWEAR) : apart;
};

const formOf = (seats: readonly Seat[]): CoreForm =>
  seats.some(({ slot }) => slot === 'swim')
    ? 'swim'
    : seats.some(({ slot }) => slot === 'one-piece')
      ? 'one-piece'
      : 'separates';

const dressOf = (seats: readonly Seat[]): number => Math.max(...seats.map(({ piece }) => piece.dress.low));

const createChoices = (ground: Ground, occasions: readonly Restriction[], suits: (look: Look) => boolean) => {
  const nameOf = (id: string): string => id;
  return (ranked: RankedSeats): Choice => {
    const { seats, form } = ranked;
    const serves = new Set<number>([dressOf(seats)]);
    occasions.forEach((occasion, index) => {
      const against = reasonsAsked({ worn: seats, form, whole: true }, ground.rulebook, occasion, nameOf);
      if (!against.some(({ severity }) => severity === 'rules out')) serves.add(DRESS_CODES.length + index);
    });
    const look = lookOf(seats);
    return { ...ranked, id: look.id, suits: suits(look), pieces: new Set(seats.map(({ piece }) => piece.id)), serves };
  };
};

const keptSeats = (ground: Ground, { worn }: Look): RankedSeats => {
  const seats = worn.flatMap(
    ({ piece, slot }) => ground.seats.find((seat) => seat.piece.id === piece && seat.slot === slot) ?? [],
  );
  const form = formOf(seats);
  return { form, seats, score: pointsOf(ground, form, seats) };
};

/** Pieces that are layers before anything else. */
const layersOf = (ground: Ground): readonly string[] =>
  ground.seats.filter(({ slot, choice }) => choice === 0 && LAYER_SLOTS.has(slot)).map(({ piece }) => piece.id);

const poolOf = (ground: Ground, occasions: readonly Restriction[]): readonly RankedSeats[] => [
  ...rankSeats(ground, POOL.all, {}),
  ...ground.pieces.flatMap(({ id }) => rankSeats(ground, POOL.piece, { pieces: [id] })),
  ...ground.pieces.flatMap(({ id }) => {
    const without = layersOf(ground).filter((layer) => layer !== id);
    return rankSeats(ground, POOL.light, { pieces: [id], without });
  }),
  ...occasions.flatMap((occasion) => rankSeats(ground, POOL.occasion, occasion)),
  ...DRESS_CODES.flatMap((dress) => rankSeats(ground, POOL.dress, { dress })),
];

/** How many of the larger pieces two looks share. */
const sharedOf = (a: Choice, b: Choice): number =>
  a.seats.filter(({ piece, slot }) => weightOf(slot) > 1 && b.pieces.has(piece.id)).length;

/** Chooses the next look: good, unlike the others, with pieces and occasions not shown yet. */
const nextOf = (pool: readonly Choice[], chosen: readonly Choice[], left: number): Choice | undefined => {
  const shown = new Set(chosen.flatMap(({ pieces }) => [...pieces]));
  const served = new Set(chosen.flatMap(({ serves }) => [...serves]));
  const open = new Set(pool.flatMap(({ pieces }) => [...pieces]).filter((id) => !shown.has(id)));
  // as many new pieces a look as it takes to show all in the looks that are left; more would overload it
  const share = Math.ceil(open.size / left);
  const scores = pool.map(({ score }) => score);
  const lowest = Math.min(...scores);
  const range = Math.max(1, Math.max(...scores) - lowest);
  const worth = (choice: Choice, nearest: number): number =>
    (100 * (choice.score - lowest)) / range +
    WORTH.piece * Math.min(share, [...choice.pieces].filter((id) => open.has(id)).length) +
    WORTH.serves * [...choice.serves].filter((what) => !served.has(what)).length +
    WORTH.apart * nearest +
    (choice.suits ? WORTH.suits : 0) -
    WORTH.again * chosen.reduce((times, other) => times + sharedOf(choice, other), 0);
  for (const apart of APART) {
    let best: Choice | undefined;
    let most = Number.NEGATIVE_INFINITY;
    for (const choice of pool) {
      const nearest = Math.min(1, ...chosen.map((other) => distance(choice, other)));
      if (nearest < apart || chosen.some(({ id }) => id === choice.id)) continue;
      const value = worth(choice, nearest);
      if (value > most) {
        most = value;
        best = choice;
      }
    }
    if (best !== undefined) return best;
  }
  return undefined;
};

/** Points that make a piece not shown yet outweigh everything else. */
const COVER_BONUS = 100_000;

/** Swaps looks for ones that show what is missing, as long as that shows more pieces than it hides. */
const coverAll = (
  ground: Ground,
  chosen: readonly Choice[],
  kept: number,
  toChoice: (ranked: RankedSeats) => Choice,
): readonly Choice[] => {
  const looks = [...chosen];
  const shownWithout = (left: number): ReadonlySet<string> =>
    new Set(looks.filter((_, index) => index !== left).flatMap(({ pieces }) => [...pieces]));
  for (let turn = 0; turn < ground.pieces.length; turn += 1) {
    const before = shownWithout(-1).size;
    let gain = 0;
    let swap: { readonly index: number; readonly by: Choice } | undefined;
    for (let index = kept; index < looks.length; index += 1) {
      const rest = shownWithout(index);
      const bonus = Int32Array.from(ground.seats, ({ piece }) => (rest.has(piece.id) ? 0 : COVER_BONUS));
      const [ranked] = rankSeats(ground, 1, {}, bonus);
      if (ranked === undefined) continue;
      const by = toChoice({ ...ranked, score: pointsOf(ground, ranked.form, ranked.seats) });
      const after = new Set([...rest, ...by.pieces]).size;
      if (after - before > gain && !looks.some(({ id }) => id === by.id)) {
        gain = after - before;
        swap = { index, by };
      }
    }
    if (swap === undefined) break;
    looks[swap.index] = swap.by;
  }
  return looks;
};

/** See `WardrobeEngine.varied`. */
export const variedLooks = (ground: Ground, k: number, options: VariedOptions): readonly RankedLook[] => {
  const { occasions = [], keep = [], suits = () => true } = options;
  const toChoice = createChoices(ground, occasions, suits);
  const chosen: Choice[] = keep.map((look) => toChoice(keptSeats(ground, look)));
  if (k > chosen.length) {
    const pool = [
      ...new Map(
        poolOf(ground, occasions)
          .map(toChoice)
          .map((choice) => [choice.id, choice]),
      ).values(),
    ];
    while (chosen.length < k) {
      const next = nextOf(pool, chosen, k - chosen.length);
      if (next === undefined) break;
      chosen.push(next);
    }
  }
  const coverable = ground.pieces.length > new Set(chosen.flatMap(({ pieces }) => [...pieces])).size;
  const looks = coverable ? coverAll(ground, chosen, keep.length, toChoice) : chosen;
  return looks.map((choice) => inWords(ground, choice));
};
