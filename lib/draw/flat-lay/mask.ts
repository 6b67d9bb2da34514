import type { Point } from '../drawing.ts';
import { extentOf } from '../kit/extent.ts';

/** Which cells of a square grid a piece covers, as runs of cells in rows, from its own upper left corner. */
export interface Mask {
  readonly columns: number;
  readonly rows: number;
  /** Row, first column and one past the last column, three numbers a run. */
  readonly runs: Int16Array;
  readonly area: number;
}

type Rings = readonly (readonly Point[])[];

/** Where an edge crosses the middle of a row of cells, in cells, and whether it runs down (+1) or up (-1). */
interface Crossing {
  readonly at: number;
  readonly way: number;
}

/** Crossings of all edges with the middle of each row of cells, from left to right. */
const crossingsOf = (
  rings: Rings,
  cell: number,
  [left, top]: Point,
  rows: number,
): readonly (readonly Crossing[])[] => {
  const found: Crossing[][] = Array.from({ length: rows }, () => []);
  for (const ring of rings) {
    let a = ring[ring.length - 1];
    for (const b of ring) {
      if (a === undefined) break;
      const [high, low] = a[1] < b[1] ? [a[1], b[1]] : [b[1], a[1]];
      const last = Math.min(rows - 1, Math.floor((low - top) / cell));
      for (let row = Math.max(0, Math.floor((high - top) / cell) - 1); row <= last; row++) {
        const y = top + (row + 0.5) * cell;
        if (a[1] <= y === b[1] <= y) continue;
        const x = a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]);
        found[row]?.push({ at: (x - left) / cell, way: b[1] > a[1] ? 1 : -1 });
      }
      a = b;
    }
  }
  for (const row of found) row.sort((one, other) => one.at - other.at);
  return found;
};

/**
 * Cells whose centre lies inside the rings (non-zero winding), of a grid with its origin at `origin`.
 * A piece smaller than a cell still covers one.
 */
export const maskOf = (rings: Rings, cell: number, origin: Point): Mask => {
  const extent = extentOf(rings);
  const columns = Math.max(1, Math.ceil((extent.x + extent.width - origin[0]) / cell));
  const rows = Math.max(1, Math.ceil((extent.y + extent.height - origin[1]) / cell));
  const runs: number[] = [];
  let area = 0;
  crossingsOf(rings, cell, origin, rows).forEach((crossings, row) => {
    let winding = 0;
    let from = 0;
    for (const { at, way } of crossings) {
      const column = Math.round(at);
      if (winding === 0) from = column;
      winding += way;
      if (winding === 0 && column > from) {
        runs.push(row, from, column);
        area += column - from;
      }
    }
  });
  if (area > 0) return { columns, rows, runs: Int16Array.from(runs), area };
  const row = Math.min(rows - 1, Math.floor(rows / 2));
  const column = Math.min(columns - 1, Math.floor(columns / 2));
  return { columns, rows, runs: Int16Array.of(row, column, column + 1), area: 1 };
};
