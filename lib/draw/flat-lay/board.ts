import type { Mask } from './mask.ts';

const NOBODY = -1;

/** What lies where: the topmost piece of every cell, and how much of every piece is seen. */
export interface Board {
  readonly columns: number;
  readonly rows: number;
  /** Side of a cell, centimetres. */
  readonly cell: number;
  readonly top: Int16Array;
  /** Cells of each piece, and those of them that are seen. */
  readonly area: number[];
  readonly seen: number[];
  /** Steps of a cell to the nearest covered cell; 0 on a piece. */
  readonly clearance: Uint8Array;
}

export const createBoard = (widthCm: number, heightCm: number, cell: number, pieces: number): Board => {
  const columns = Math.max(1, Math.ceil(widthCm / cell));
  const rows = Math.max(1, Math.ceil(heightCm / cell));
  return {
    columns,
    rows,
    cell,
    top: new Int16Array(columns * rows).fill(NOBODY),
    area: Array.from({ length: pieces }, () => 0),
    seen: Array.from({ length: pieces }, () => 0),
    clearance: new Uint8Array(columns * rows).fill(255),
  };
};

/** Measures the distance of every cell to the nearest covered cell, by two sweeps (city blocks). */
export const measureClearance = ({ columns, rows, top, clearance }: Board): void => {
  const relax = (at: number, from: number): void => {
    clearance[at] = Math.min(clearance[at] ?? 255, (clearance[from] ?? 255) + 1, 255);
  };
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const at = row * columns + column;
      clearance[at] = top[at] === NOBODY ? 255 : 0;
      if (column > 0) relax(at, at - 1);
      if (row > 0) relax(at, at - columns);
    }
  }
  for (let row = rows - 1; row >= 0; row--) {
    for (let column = columns - 1; column >= 0; column--) {
      const at = row * columns + column;
      if (column < columns - 1) relax(at, at + 1);
      if (row < rows - 1) relax(at, at + columns);
    }
  }
};

/** Puts a piece down: over all that lies there, or under it. Cells outside the board are cut. */
export const put = (board: Board, piece: number, mask: Mask, column: number, row: number, over: boolean): void => {
  let seen = 0;
  for (let run = 0; run < mask.runs.length; run += 3) {
    const y = row + (mask.runs[run] ?? 0);
    if (y < 0 || y >= board.rows) continue;
    const from = Math.max(0, column + (mask.runs[run + 1] ?? 0));
    const to = Math.min(board.columns, column + (mask.runs[run + 2] ?? 0));
    for (let at = y * board.columns + from; at < y * board.columns + to; at++) {
      const owner = board.top[at] ?? NOBODY;
      if (owner !== NOBODY && !over) continue;
      if (owner !== NOBODY) board.seen[owner] = (board.seen[owner] ?? 0) - 1;
      board.top[at] = piece;
      seen++;
    }
  }
  board.area[piece] = mask.area;
  board.seen[piece] = seen;
};

/** What would happen if a piece were put down at a place. */
export interface Trial {
  /** Cells of the piece that meet a covered cell. */
  readonly met: number;
  /** Sum over its cells of how far each stands nearer than `wanted` to another piece, in cells. */
  readonly crowded: number;
  /** Smallest share seen of any other piece afterwards, when the piece lies over them. */
  readonly leastSeen: number;
  /** Steps of a cell from the piece to the nearest other one, at most one more than `wanted`. */
  readonly nearest: number;
  /** Met cells by piece. */
  readonly over: readonly number[];
}

/** Tries a place; undefined as soon as more than `most` cells of the piece meet others. */
export const tryAt = (
  board: Board,
  mask: Mask,
  column: number,
  row: number,
  wanted: number,
  most: number,
): Trial | undefined => {
  const over: number[] = [];
  let met = 0;
  let crowded = 0;
  let nearest = wanted + 1;
  for (let run = 0; run < mask.runs.length; run += 3) {
    const y = row + (mask.runs[run] ?? 0);
    if (y < 0 || y >= board.rows) continue;
    const from = y * board.columns + Math.max(0, column + (mask.runs[run + 1] ?? 0));
    const to = y * board.columns + Math.min(board.columns, column + (mask.runs[run + 2] ?? 0));
    for (let at = from; at < to; at++) {
      const clear = board.clearance[at] ?? 255;
      if (clear > wanted) continue;
      if (clear < nearest) nearest = clear;
      const owner = board.top[at] ?? NOBODY;
      if (owner === NOBODY) {
        crowded += wanted + 1 - clear;
      } else {
        met++;
        over[owner] = (over[owner] ?? 0) + 1;
      }
    }
    if (met > most) return undefined;
  }
  let leastSeen = 1;
  over.forEach((cells, piece) => {
    leastSeen = Math.min(leastSeen, ((board.seen[piece] ?? 0) - cells) / (board.area[piece] ?? 1));
  });
  return { met, crowded, leastSeen, nearest, over };
};
