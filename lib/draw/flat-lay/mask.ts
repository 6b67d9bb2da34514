import type { Point } from '../drawing.ts';

/** Which cells of a square grid a piece covers, as runs of cells in rows, from its own upper left corner. */
export interface Mask {
  readonly columns: number;
  readonly rows: number;
  /** Row, first column and one past the last column, three numbers a run. */
  readonly runs: Int16Array;
  readonly area: number;
}

type Rings = readonly (readonly Point[])[];

export const extentOf = (rings: Rings): { x: number; y: number; width: number; height: number } => {
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const ring of rings) {
    for (const [x, y] of ring) {
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < top) top = y;
      if (y > bottom) bottom = y;
    }
  }
  return left > right
    ? { x: 0, y: 0, width: 0, height: 0 }
    : { x: left, y: top, width: right - left, height: bottom - top };
};

/** Crossings of all edges with the line at height `y`: where, and whether the edge runs down (+1) or up (-1). */
const crossingsAt = (rings: Rings, y: number): { at: number; way: number }[] => {
  const found: { at: number; way: number }[] = [];
  for (const ring of rings) {
    for (let index = 0; index < ring.length; index++) {
      const a = ring[index];
      const b = ring[(index + 1) % ring.length];
      if (a === undefined || b === undefined || a[1] <= y === b[1] <= y) continue;
      found.push({ at: a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]), way: b[1] > a[1] ? 1 : -1 });
    }
  }
  return found.sort((one, other) => one.at - other.at);
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
  for (let row = 0; row < rows; row++) {
    let winding = 0;
    let from = 0;
    for (const { at, way } of crossingsAt(rings, origin[1] + (row + 0.5) * cell)) {
      const column = Math.round((at - origin[0]) / cell);
      if (winding === 0) from = column;
      winding += way;
      if (winding === 0 && column > from) {
        runs.push(row, from, column);
        area += column - from;
      }
    }
  }
  if (area > 0) return { columns, rows, runs: Int16Array.from(runs), area };
  const row = Math.min(rows - 1, Math.floor(rows / 2));
  const column = Math.min(columns - 1, Math.floor(columns / 2));
  return { columns, rows, runs: Int16Array.of(row, column, column + 1), area: 1 };
};
