import type { Look, Piece } from '../model/index.ts';
import { slotsOfPiece, type WardrobeEngine } from '../outfit/index.ts';

export interface Neighbour {
  readonly number: number;
  readonly out: string;
  readonly in: string;
}

const ids = (look: Look): readonly string[] => look.worn.map(({ piece }) => piece);

/** For each look, the others that differ from it by exactly one piece: which goes out, which comes in. */
export const neighboursOf = (looks: readonly Look[]): readonly (readonly Neighbour[])[] =>
  looks.map((look) => {
    const mine = new Set(ids(look));
    return looks.flatMap((other, index): Neighbour[] => {
      const theirs = new Set(ids(other));
      const goes = [...mine].filter((id) => !theirs.has(id));
      const comes = [...theirs].filter((id) => !mine.has(id));
      const [out, into] = [goes[0], comes[0]];
      return goes.length === 1 && comes.length === 1 && out !== undefined && into !== undefined
        ? [{ number: index + 1, out, in: into }]
        : [];
    });
  });

/** One piece of a look exchanged for another that could be worn in its place. */
export interface Swap {
  readonly out: string;
  readonly in: string;
  /** Ids of the look it makes. */
  readonly pieces: readonly string[];
}

/**
 * Exchanges of one piece after which the look still goes and does for what it is worn for: for each worn piece the best,
 * then for each the next best, as few objections as possible first.
 */
export const swapsOf = (
  look: Look,
  pieces: readonly Piece[],
  { explain }: Pick<WardrobeEngine, 'explain'>,
  most: number,
  does: (pieces: readonly string[]) => boolean = () => true,
): readonly Swap[] => {
  const worn = ids(look);
  const bySeat = look.worn.map(({ piece: out, slot }) =>
    pieces
      .filter((piece) => !worn.includes(piece.id) && slotsOfPiece(piece).includes(slot))
      .map((piece) => ({ out, in: piece.id, pieces: worn.map((id) => (id === out ? piece.id : id)) }))
      .map((swap) => ({ swap, verdict: explain(swap.pieces) }))
      .filter(({ swap, verdict }) => verdict.goes && verdict.complete && does(swap.pieces))
      .toSorted((a, b) => a.verdict.reasons.length - b.verdict.reasons.length)
      .map(({ swap }) => swap),
  );
  const deepest = Math.max(0, ...bySeat.map(({ length }) => length));
  return Array.from({ length: deepest }, (_, depth) => bySeat.flatMap((swaps) => swaps[depth] ?? []))
    .flat()
    .slice(0, most);
};
