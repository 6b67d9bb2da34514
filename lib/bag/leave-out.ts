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

/**
 * What to leave out, one piece after the other, until the bags hold the rest or no piece helps any more; then whatever
 * need not have gone stays, small things first. `overWithout` packs again after each step.
 */
export const leaveOutUntilFits = async (
  pieces: readonly Piece[],
  engine: WardrobeEngine,
  unserved: Unserved,
  overWithout: (without: readonly string[]) => Promise<Overrun>,
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
  let needed: readonly LeaveOut[] = steps;
  for (const { piece } of steps.toSorted((a, b) => a.grams - b.grams)) {
    const fewer = needed.filter((step) => step.piece !== piece);
    if (!isOver(await overWithout(fewer.map((step) => step.piece)))) needed = fewer;
  }
  return { steps: recounted(needed, engine, unserved), fits: true };
};

/** The same steps with what remains after each. */
const recounted = (steps: readonly LeaveOut[], engine: WardrobeEngine, unserved: Unserved): readonly LeaveOut[] =>
  steps.map((step, index) => {
    const without = steps.slice(0, index + 1).map(({ piece }) => piece);
    return { ...step, looksLeft: Number(engine.count({ without }).layered), unserved: unserved(without) };
  });

/** Lighter pieces are not worth leaving for the weight. Own choice. */
const WORTH_LEAVING_GRAMS = 100;

/** The first pieces to leave at home when the bags could simply be lighter, at most so many; trifles stay. */
export const leaveOutForLightness = (
  pieces: readonly Piece[],
  engine: WardrobeEngine,
  unserved: Unserved,
  most: number,
): readonly LeaveOut[] => {
  const steps: LeaveOut[] = [];
  const worth = pieces.filter(({ grams }) => grams.value >= WORTH_LEAVING_GRAMS);
  let state = nothingLeftOut(worth, engine);
  while (steps.length < most) {
    const grams = state.left.reduce((sum, piece) => sum + piece.grams.value, 0);
    const step = nextStep(state, engine, unserved, { grams, litres: 0 });
    if (step === undefined) break;
    steps.push(step);
    state = after(state, step);
  }
  return steps;
};
