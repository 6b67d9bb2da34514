import type { ListLine, Piece } from '../model/index.ts';

/** A place on the list: its line, or undefined for one that any piece may take. */
export interface Position {
  readonly line: number | undefined;
}

export const positionsOf = (lines: readonly ListLine[], piecesAtMost: number): readonly Position[] => {
  const listed = lines.flatMap(({ count }, line) => Array.from({ length: count }, (): Position => ({ line })));
  const free = Math.max(0, piecesAtMost - listed.length);
  return [...listed, ...Array.from({ length: free }, (): Position => ({ line: undefined }))];
};

export const fits = (piece: Piece, position: Position, lines: readonly ListLine[]): boolean =>
  position.line === undefined || (lines[position.line]?.kinds.includes(piece.kind) ?? false);

/**
 * Seats pieces in positions, each in one that it fits, as many as can be (augmenting paths; what is seated first stays
 * seated). Gives for each position the index of its piece, or −1.
 */
export const seatPieces = (
  pieces: readonly Piece[],
  positions: readonly Position[],
  lines: readonly ListLine[],
): readonly number[] => {
  const taken = positions.map(() => -1);
  const seat = (index: number, tried: Set<number>): boolean => {
    const piece = pieces[index];
    if (piece === undefined) return false;
    for (let at = 0; at < positions.length; at += 1) {
      const position = positions[at];
      if (position === undefined || tried.has(at) || !fits(piece, position, lines)) continue;
      tried.add(at);
      const sitting = taken[at] ?? -1;
      if (sitting < 0 || seat(sitting, tried)) {
        taken[at] = index;
        return true;
      }
    }
    return false;
  };
  for (let index = 0; index < pieces.length; index += 1) seat(index, new Set());
  return taken;
};
