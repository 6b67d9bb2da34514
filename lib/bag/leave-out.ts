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

/**
 * What to leave out, one piece after the other, until the bags hold the rest: first whatever costs no occasion its last
 * look, and of these the piece that loses the smallest share of the looks for what it frees. `overWithout` packs again
 * after each step. Ends when it fits, or when no piece helps any more.
 */
export const leaveOutUntilFits = async (
  pieces: readonly Piece[],
  engine: WardrobeEngine,
  unserved: Unserved,
  overWithout: (without: readonly string[]) => Promise<Overrun>,
): Promise<{ readonly steps: readonly LeaveOut[]; readonly fits: boolean }> => {
  const steps: LeaveOut[] = [];
  const out: string[] = [];
  let over = await overWithout(out);
  let left = pieces;
  let looks = Number(engine.count().layered);
  let missing: readonly string[] = [];
  while (isOver(over)) {
    const options = left
      .map((piece) => ({ piece, frees: relief(piece, over) }))
      .filter(({ frees }) => frees > 0)
      .map(({ piece, frees }) => {
        const without = [...out, piece.id];
        const looksLeft = Number(engine.count({ without }).layered);
        const gone = unserved(without);
        return { piece, looksLeft, gone, price: (looks - looksLeft) / Math.max(1, looks) / frees };
      })
      .toSorted((a, b) => a.gone.length - b.gone.length || a.price - b.price || (a.piece.id < b.piece.id ? -1 : 1));
    const best = options[0];
    if (best === undefined) break;
    out.push(best.piece.id);
    left = left.filter(({ id }) => id !== best.piece.id);
    looks = best.looksLeft;
    missing = best.gone;
    steps.push({
      piece: best.piece.id,
      grams: best.piece.grams.value,
      litres: best.piece.litres.value,
      looksLeft: looks,
      unserved: missing,
    });
    over = await overWithout(out);
  }
  return { steps, fits: !isOver(over) };
};
