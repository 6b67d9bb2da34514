import type { Point } from '../drawing.ts';
import { extentOf } from './extent.ts';
import type { Node } from './geometry.ts';

/** Cell of the raster the union is traced on, centimetres: under half a pixel on a card. */
const CELL = 0.09;
/** How far the traced line may stray when it is thinned, centimetres. */
const STRAY = 0.065;
/** Degrees the line must turn at a point for it to stay a corner. */
const CORNER = 52;

/** The raster, and room for the crossings of one row: thousands of facets are filled. */
interface Raster {
  readonly mask: Uint8Array;
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  readonly at: Float64Array;
  readonly turn: Int8Array;
}

/** Notes where the polygon's edges cross a row, from left to right; gives how many. */
const crossingsOf = ({ left, top, at, turn }: Raster, polygon: readonly Point[], row: number): number => {
  let count = 0;
  let [x1, y1] = polygon[polygon.length - 1] as Point;
  x1 = (x1 - left) / CELL;
  y1 = (y1 - top) / CELL;
  for (const point of polygon) {
    const x2 = (point[0] - left) / CELL;
    const y2 = (point[1] - top) / CELL;
    if (y1 <= row !== y2 <= row) {
      const x = x1 + ((row - y1) / (y2 - y1)) * (x2 - x1);
      let place = count++;
      for (; place > 0 && (at[place - 1] ?? 0) > x; place--) {
        at[place] = at[place - 1] ?? 0;
        turn[place] = turn[place - 1] ?? 0;
      }
      at[place] = x;
      turn[place] = y2 > y1 ? 1 : -1;
    }
    x1 = x2;
    y1 = y2;
  }
  return count;
};

/** Fills a polygon by the nonzero rule. */
const fillPolygon = (raster: Raster, polygon: readonly Point[]): void => {
  const { mask, width, height, top, at, turn } = raster;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const point of polygon) {
    low = Math.min(low, point[1]);
    high = Math.max(high, point[1]);
  }
  const last = Math.min(height - 1, Math.floor((high - top) / CELL));
  for (let row = Math.max(0, Math.ceil((low - top) / CELL)); row <= last; row++) {
    const count = crossingsOf(raster, polygon, row);
    let winding = 0;
    for (let i = 0; i + 1 < count; i++) {
      winding += turn[i] ?? 0;
      if (winding === 0) continue;
      const end = row * width + Math.floor(at[i + 1] ?? 0) + 1;
      for (let cell = row * width + Math.max(0, Math.ceil(at[i] ?? 0)); cell < end; cell++) mask[cell] = 1;
    }
  }
};

/** Walks the border of the filled cells, keeping them on the right; `mask` has an empty margin. */
const trace = (mask: Uint8Array, width: number, start: number): Point[] => {
  const steps = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ] as const;
  const filled = (x: number, y: number): boolean => mask[y * width + x] === 1;
  let x = start % width;
  let y = Math.floor(start / width);
  let heading = 0;
  const ring: Point[] = [];
  const [x0, y0] = [x, y];
  do {
    ring.push([x, y]);
    const [dx, dy] = steps[heading] as readonly [number, number];
    x += dx;
    y += dy;
    const [left, right] = (
      [
        [filled(x, y - 1), filled(x, y)],
        [filled(x, y), filled(x - 1, y)],
        [filled(x - 1, y), filled(x - 1, y - 1)],
        [filled(x - 1, y - 1), filled(x, y - 1)],
      ] as const
    )[heading] as readonly [boolean, boolean];
    if (left) heading = (heading + 3) % 4;
    else if (!right) heading = (heading + 1) % 4;
  } while (x !== x0 || y !== y0 || heading !== 0);
  return ring;
};

/** Weights of a moving average over the traced steps: takes the stairs out and keeps corners within a millimetre or two. */
const SOFT = Array.from({ length: 13 }, (_, k) => Math.exp(-((k - 6) ** 2) / 14));
const SOFT_SUM = SOFT.reduce((sum, weight) => sum + weight, 0);

const soften = (ring: readonly Point[]): Point[] => {
  const count = ring.length;
  const half = SOFT.length >> 1;
  const result: Point[] = [];
  for (let i = 0; i < count; i++) {
    let x = 0;
    let y = 0;
    for (let k = 0; k < SOFT.length; k++) {
      const weight = SOFT[k] ?? 0;
      const point = ring[(i + k - half + half * count) % count] as Point;
      x += point[0] * weight;
      y += point[1] * weight;
    }
    result.push([x / SOFT_SUM, y / SOFT_SUM]);
  }
  return result;
};

/** Ramer, Douglas and Peucker: drops points that lie within `stray` of the line through their neighbours. */
export const thin = (line: readonly Point[], stray: number): Point[] => {
  if (line.length < 3) return [...line];
  const [ax, ay] = line[0] as Point;
  const [bx, by] = line[line.length - 1] as Point;
  const length = Math.hypot(bx - ax, by - ay);
  let worst = 0;
  let at = 0;
  line.forEach(([x, y], i) => {
    const away =
      length < 1e-9 ? Math.hypot(x - ax, y - ay) : Math.abs((bx - ax) * (ay - y) - (ax - x) * (by - ay)) / length;
    if (away > worst) [worst, at] = [away, i];
  });
  if (worst <= stray) return [line[0] as Point, line[line.length - 1] as Point];
  return [...thin(line.slice(0, at + 1), stray).slice(0, -1), ...thin(line.slice(at), stray)];
};

const withCorners = (ring: readonly Point[]): Node[] =>
  ring.map((p, i) => {
    const [before, after] = [ring[(i + ring.length - 1) % ring.length] as Point, ring[(i + 1) % ring.length] as Point];
    const turn = Math.atan2(after[1] - p[1], after[0] - p[0]) - Math.atan2(p[1] - before[1], p[0] - before[0]);
    const degrees = Math.abs((((((turn * 180) / Math.PI + 540) % 360) + 360) % 360) - 180);
    return degrees > CORNER ? [p[0], p[1], 'corner'] : [p[0], p[1]];
  });

/**
 * Outer contour of overlapping polygons that touch one another, as nodes of one closed curve. Traced on a fine raster,
 * which neither slivers nor shared edges can upset; of separate islands the one that holds the topmost cell is returned.
 */
export const silhouette = (polygons: readonly (readonly Point[])[]): Node[] => {
  const extent = extentOf(polygons);
  const [left, top] = [extent.x - 4 * CELL, extent.y - 4 * CELL];
  const width = Math.ceil(extent.width / CELL) + 8;
  const height = Math.ceil(extent.height / CELL) + 8;
  const mask = new Uint8Array(width * height);
  const most = Math.max(0, ...polygons.map((polygon) => polygon.length));
  const raster = { mask, width, height, left, top, at: new Float64Array(most), turn: new Int8Array(most) };
  for (const polygon of polygons) if (polygon.length > 0) fillPolygon(raster, polygon);
  const start = mask.indexOf(1);
  if (start < 0) return [];
  const ring = soften(trace(mask, width, start));
  const half = ring.length >> 1;
  const thinned = [
    ...thin(ring.slice(0, half + 1), STRAY / CELL).slice(0, -1),
    ...thin(ring.slice(half), STRAY / CELL),
  ];
  return withCorners(thinned.map(([x, y]) => [left + (x - 0.5) * CELL, top + (y - 0.5) * CELL]));
};
