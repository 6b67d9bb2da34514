import type { Piece } from '../model/index.ts';
import type { WardrobeEngine } from '../outfit/index.ts';
import type { Unserved } from './occasions.ts';

/** What one piece costs the bag and gives the wardrobe. */
export interface PieceWorth {
  readonly piece: string;
  readonly grams: number;
  readonly litres: number;
  /** Layered looks lost if it stays at home. */
  readonly looksLost: number;
  /** Occasions that then have no look. */
  readonly unserved: readonly string[];
}

/** One step of making the bag lighter. */
export interface LeaveOut {
  readonly piece: string;
  readonly grams: number;
  readonly litres: number;
  /** Layered looks that remain after this step. */
  readonly looksLeft: number;
  /** Occasions without a look after this step, through this and the steps before. */
  readonly unserved: readonly string[];
}

export const worthOf = (
  pieces: readonly Piece[],
  engine: WardrobeEngine,
  unserved: Unserved,
): readonly PieceWorth[] => {
  const lost = new Map(engine.contributions().map(({ piece, layered }) => [piece, Number(layered)]));
  return pieces.map(({ id, grams, litres }) => ({
    piece: id,
    grams: grams.value,
    litres: litres.value,
    looksLost: lost.get(id) ?? 0,
    unserved: unserved([id]),
  }));
};

/** A share of what is over that a piece takes away: grams and litres count only as far as they are too many. */
const relief = (piece: Piece, over: { readonly grams: number; readonly litres: number }): number =>
  (over.grams > 0 ? Math.min(1, piece.grams.value / over.grams) : 0) +
  (over.litres > 0 ? Math.min(1, piece.litres.value / over.litres) : 0);

export interface Overrun {
  readonly grams: number;
  readonly litres: number;
}

export const isOver = ({ grams, litres }: Overrun): boolean => grams > 0 || litres > 0;

/** Rounds of exchanging; each loses less than the one before. */
const MOST_EXCHANGES = 12;

/** Each alone, and every two. */
const oneOrTwo = (ids: readonly string[]): readonly (readonly string[])[] => [
  ...ids.map((id) => [id]),
  ...ids.flatMap((one, index) => ids.slice(index + 1).map((other) => [one, other])),
];

/** What stays and what is gone after some steps. */
interface Left {
  readonly out: readonly string[];
  readonly left: readonly Piece[];
  readonly looks: number;
}

/**
 * The next piece to leave at home: whatever costs the fewest occasions their last look, and of these the piece that loses
 * the smallest share of the looks for what it frees, then the one that frees most. Undefined when no piece frees anything.
 */
const nextStep = (
  { out, left, looks }: Left,
  engine: WardrobeEngine,
  unserved: Unserved,
  over: Overrun,
): LeaveOut | undefined =>
  left
    .map((piece) => ({ piece, frees: relief(piece, over) }))
    .filter(({ frees }) => frees > 0)
    .map(({ piece: { id, grams, litres }, frees }) => {
      const without = [...out, id];
      const looksLeft = Number(engine.count({ without }).layered);
      return {
        step: { piece: id, grams: grams.value, litres: litres.value, looksLeft, unserved: unserved(without) },
        price: (looks - looksLeft) / Math.max(1, looks) / frees,
        frees,
      };
    })
    .toSorted(
      (a, b) =>
        a.step.unserved.length - b.step.unserved.length ||
        a.price - b.price ||
        b.frees - a.frees ||
        a.step.grams - b.step.grams ||
        (a.step.piece < b.step.piece ? -1 : 1),
    )[0]?.step;

const after = ({ out, left }: Left, { piece, looksLeft }: LeaveOut): Left => ({
  out: [...out, piece],
  left: left.filter(({ id }) => id !== piece),
  looks: looksLeft,
});

const nothingLeftOut = (pieces: readonly Piece[], engine: WardrobeEngine): Left => ({
  out: [],
  left: pieces,
  looks: Number(engine.count().layered),
});

type OverWithout = (without: readonly string[]) => Promise<Overrun>;

/** What is lost when pieces stay at home: occasions first, then looks. */
interface Loss {
  readonly unserved: number;
  readonly looksLeft: number;
}

/** The loss, or undefined when it is no less than another. */
type LossOf = (without: readonly string[], lessThan?: Loss) => Loss | undefined;

const isLess = (one: Loss, other: Loss): boolean =>
  one.unserved < other.unserved || (one.unserved === other.unserved && one.looksLeft > other.looksLeft);

/** Whatever need not go stays, small things first. */
const thinned = async (
  out: readonly string[],
  pieces: readonly Piece[],
  overWithout: OverWithout,
): Promise<readonly string[]> => {
  const gramsOf = new Map(pieces.map(({ id, grams }) => [id, grams.value]));
  let needed = out;
  for (const id of out.toSorted((a, b) => (gramsOf.get(a) ?? 0) - (gramsOf.get(b) ?? 0))) {
    const fewer = needed.filter((other) => other !== id);
    if (!isOver(await overWithout(fewer))) needed = fewer;
  }
  return needed;
};

/** Exchanges one piece, or two, of those left out for one or two others, as long as that loses less and still fits. */
const exchanged = async (
  out: readonly string[],
  pieces: readonly Piece[],
  lossOf: LossOf,
  overWithout: OverWithout,
): Promise<readonly string[]> => {
  let best = out;
  for (let round = 0; round < MOST_EXCHANGES; round += 1) {
    const loss = lossOf(best);
    const kept = pieces.map(({ id }) => id).filter((id) => !best.includes(id));
    const tries = oneOrTwo(best)
      .flatMap((back) =>
        oneOrTwo(kept).map((gone) => [...best.filter((id) => !back.includes(id)), ...gone] as readonly string[]),
      )
      .flatMap((without) => {
        const tried = lossOf(without, loss);
        return tried === undefined ? [] : [{ without, loss: tried }];
      })
      .toSorted((a, b) => a.loss.unserved - b.loss.unserved || b.loss.looksLeft - a.loss.looksLeft);
    let found: (typeof tries)[number] | undefined;
    for (const tried of tries) {
      if (isOver(await overWithout(tried.without))) continue;
      found = tried;
      break;
    }
    if (found === undefined) return best;
    best = found.without;
  }
  return best;
};

/**
 * What to leave out, one piece after the other, until the bags hold the rest or no piece helps any more; then pieces are
 * exchanged while that loses less, and whatever need not have gone stays. `overWithout` packs again each time.
 */
export const leaveOutUntilFits = async (
  pieces: readonly Piece[],
  engine: WardrobeEngine,
  unserved: Unserved,
  overWithout: OverWithout,
): Promise<{ readonly steps: readonly LeaveOut[]; readonly fits: boolean }> => {
  const steps: LeaveOut[] = [];
  let state = nothingLeftOut(pieces, engine);
  let over = await overWithout(state.out);
  while (isOver(over)) {
    const step = nextStep(state, engine, unserved, over);
    if (step === undefined) break;
    steps.push(step);
    state = after(state, step);
    over = await overWithout(state.out);
  }
  if (isOver(over)) return { steps, fits: false };
  const lossOf: LossOf = (without, lessThan) => {
    const looksLeft = Number(engine.count({ without }).layered);
    if (lessThan?.unserved === 0 && looksLeft <= lessThan.looksLeft) return undefined;
    const loss = { unserved: unserved(without).length, looksLeft };
    return lessThan === undefined || isLess(loss, lessThan) ? loss : undefined;
  };
  const needed = await thinned(state.out, pieces, overWithout);
  const better = await thinned(await exchanged(needed, pieces, lossOf, overWithout), pieces, overWithout);
  return { steps: inOrder(better, pieces, engine, unserved), fits: true };
};

/** The pieces as steps: what loses least goes first, with what remains after each. */
const inOrder = (
  out: readonly string[],
  pieces: readonly Piece[],
  engine: WardrobeEngine,
  unserved: Unserved,
): readonly LeaveOut[] => {
  const going = pieces.filter(({ id }) => out.includes(id));
  const over = {
    grams: going.reduce((sum, { grams }) => sum + grams.value, 0),
    litres: going.reduce((sum, { litres }) => sum + litres.value, 0),
  };
  const steps: LeaveOut[] = [];
  let state = nothingLeftOut(going, engine);
  while (state.left.length > 0) {
    const step = nextStep(state, engine, unserved, over);
    if (step === undefined) break;
    steps.push(step);
    state = after(state, step);
  }
  return steps;
};

/** Lighter pieces are not worth leaving for the weight. Own choice. */
const WORTH_LEAVING_GRAMS = 100;

/**
 * The first pieces to leave at home when the bags could simply be lighter, at most so many: what no occasion of the plan
 * wears goes first. Trifles stay.
 */
export const leaveOutForLightness = (
  pieces: readonly Piece[],
  engine: WardrobeEngine,
  unserved: Unserved,
  worn: ReadonlySet<string>,
  most: number,
): readonly LeaveOut[] => {
  const steps: LeaveOut[] = [];
  const worth = pieces.filter(({ grams }) => grams.value >= WORTH_LEAVING_GRAMS);
  let state = nothingLeftOut(worth, engine);
  while (steps.length < most) {
    const grams = state.left.reduce((sum, piece) => sum + piece.grams.value, 0);
    const unworn = state.left.filter(({ id }) => !worn.has(id));
    const open = { ...state, left: unworn.length > 0 ? unworn : state.left };
    const step = nextStep(open, engine, unserved, { grams, litres: 0 });
    if (step === undefined) break;
    steps.push(step);
    state = after(state, step);
  }
  return steps;
};
