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
  /** Sums along each row, from its start up to each cell and past the last: covered cells, and how far free ones stand too near. */
  readonly covered: Int32Array;
  readonly crowd: Int32Array;
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
    covered: new Int32Array((columns + 1) * rows),
    crowd: new Int32Array((columns + 1) * rows),
  };
};

/** Sums up every row; a free cell stands too near by the cells that lack to one more than `air`. */
const sumRows = ({ columns, rows, clearance, covered, crowd }: Board, air: number): void => {
  for (let row = 0, at = 0; row < rows; row++) {
    let [lain, near] = [0, 0];
    for (let column = 0, sum = row * (columns + 1); column < columns; column++, at++) {
      const clear = clearance[at] ?? 255;
      if (clear === 0) lain++;
      else if (clear <= air) near += air + 1 - clear;
      sum++;
      covered[sum] = lain;
      crowd[sum] = near;
    }
  }
};

/** Measures the distance of every cell to the nearest covered cell, by two sweeps (city blocks), and sums up the rows. */
export const measureClearance = (board: Board, air: number): void => {
  const { columns, rows, top, clearance } = board;
  for (let row = 0, at = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++, at++) {
      let clear = 0;
      if (top[at] === NOBODY) {
        const left = column > 0 ? (clearance[at - 1] ?? 255) : 255;
        const above = row > 0 ? (clearance[at - columns] ?? 255) : 255;
        clear = Math.min(left, above, 254) + 1;
      }
      clearance[at] = clear;
    }
  }
  for (let row = rows - 1, at = rows * columns - 1; row >= 0; row--) {
    for (let column = columns - 1; column >= 0; column--, at--) {
      const right = column < columns - 1 ? (clearance[at + 1] ?? 255) : 255;
      const below = row < rows - 1 ? (clearance[at + columns] ?? 255) : 255;
      clearance[at] = Math.min(clearance[at] ?? 255, Math.min(right, below, 254) + 1);
    }
  }
  sumRows(board, air);
};

/** Sum of what the cells of a piece hold at a place, from sums along rows; undefined as soon as it exceeds `most`. */
export const sumUnder = (
  { columns, rows }: Board,
  sums: Int32Array,
  { runs }: Mask,
  column: number,
  row: number,
  most = Number.POSITIVE_INFINITY,
): number | undefined => {
  let sum = 0;
  for (let run = 0; run < runs.length; run += 3) {
    const y = row + (runs[run] ?? 0);
    if (y < 0 || y >= rows) continue;
    const start = y * (columns + 1);
    const from = Math.min(columns, Math.max(0, column + (runs[run + 1] ?? 0)));
    const to = Math.max(from, Math.min(columns, column + (runs[run + 2] ?? 0)));
    sum += (sums[start + to] ?? 0) - (sums[start + from] ?? 0);
    if (sum > most) return undefined;
  }
  return sum;
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
  /** Smallest share seen of any other piece afterwards, when the piece lies over them. */
  readonly leastSeen: number;
  /** Steps of a cell from the piece to the nearest other one, at most one more than the air it wants. */
  readonly nearest: number;
  /** Met cells by piece. */
  readonly over: readonly number[];
}

/** Tries a place cell by cell; what stands farther off than `air` does not count. */
export const tryAt = (board: Board, mask: Mask, column: number, row: number, air: number): Trial => {
  const over: number[] = [];
  let nearest = air + 1;
  for (let run = 0; run < mask.runs.length; run += 3) {
    const y = row + (mask.runs[run] ?? 0);
    if (y < 0 || y >= board.rows) continue;
    const from = y * board.columns + Math.max(0, column + (mask.runs[run + 1] ?? 0));
    const to = y * board.columns + Math.min(board.columns, column + (mask.runs[run + 2] ?? 0));
    for (let at = from; at < to; at++) {
      nearest = Math.min(nearest, board.clearance[at] ?? 255);
      const owner = board.top[at] ?? NOBODY;
      if (owner !== NOBODY) over[owner] = (over[owner] ?? 0) + 1;
    }
  }
  let leastSeen = 1;
  over.forEach((cells, piece) => {
    leastSeen = Math.min(leastSeen, ((board.seen[piece] ?? 0) - cells) / (board.area[piece] ?? 1));
  });
  return { leastSeen, nearest, over };
};
