import { type Random, random } from '../kit/index.ts';
import { pixelWords } from './layers.ts';

/** Side of the tile of fine tooth; it repeats without a seam and without a pattern the eye could find. */
const TILE = 384;
/** Grain is grey around this value, which leaves a colour as it is. */
const NEUTRAL = 128;

/** Grain comes in steps of this many greys: not seen, and a palette picture is a third smaller. */
const STEP = 11;
/** Steps there are on either side of the middle. */
const STEPS = Math.ceil(NEUTRAL / STEP);
/** All of them: few enough that what they do to every value stays in a processor's nearest memory. */
const LEVELS = 2 * STEPS + 1;
/** The grey of each step. */
const greyOf = (level: number): number => Math.min(255, Math.max(0, NEUTRAL + (level - STEPS) * STEP));

/** Weights of the layers: single fibres, tooth, clouds of pigment, unevenness of the sheet. */
const FIBRE = 0.13;
const TOOTH = 0.25;
const CLOUD = { cell: 42, weight: 0.2 };
const SHEET = { cell: 130, weight: 0.17 };

const bell = (hand: Random): number => ((hand() + hand() + hand() - 1.5) / 1.5) * 127;

const bells = (length: number, hand: Random, weight = 1): Float32Array => {
  const field = new Float32Array(length);
  for (let index = 0; index < length; index++) field[index] = bell(hand) * weight;
  return field;
};

/** Softens a square field that repeats: along rows, then along columns. */
const soften = (field: Float32Array, side: number, middle: number): Float32Array => {
  const edge = (1 - middle) / 2;
  const rows = new Float32Array(field.length);
  const result = new Float32Array(field.length);
  for (let y = 0; y < side; y++) {
    const row = y * side;
    for (let x = 0; x < side; x++) {
      const left = field[row + (x === 0 ? side - 1 : x - 1)] ?? 0;
      const right = field[row + (x === side - 1 ? 0 : x + 1)] ?? 0;
      rows[row + x] = (field[row + x] ?? 0) * middle + (left + right) * edge;
    }
  }
  for (let y = 0; y < side; y++) {
    const [above, row, below] = [(y === 0 ? side - 1 : y - 1) * side, y * side, (y === side - 1 ? 0 : y + 1) * side];
    for (let x = 0; x < side; x++) {
      result[row + x] = (rows[row + x] ?? 0) * middle + ((rows[above + x] ?? 0) + (rows[below + x] ?? 0)) * edge;
    }
  }
  return result;
};

const fineTile = (hand: Random): Float32Array => {
  const tile = soften(bells(TILE * TILE, hand), TILE, 0.82);
  const side = TILE / 3;
  const coarse = bells(side * side, hand);
  const tooth = new Float32Array(TILE * TILE);
  for (let y = 0; y < TILE; y++) {
    const row = Math.floor(y / 3) * side;
    for (let x = 0; x < TILE; x++) tooth[y * TILE + x] = coarse[row + Math.floor(x / 3)] ?? 0;
  }
  const soft = soften(soften(tooth, TILE, 0.5), TILE, 0.5);
  for (let index = 0; index < tile.length; index++) {
    tile[index] = (tile[index] ?? 0) * FIBRE + (soft[index] ?? 0) * TOOTH;
  }
  return tile;
};

const smooth = (t: number): number => t * t * (3 - 2 * t);

/** Adds smooth noise with features of `cell` pixels. */
const addClouds = (
  sum: Float32Array,
  width: number,
  height: number,
  cell: number,
  weight: number,
  hand: Random,
): void => {
  const columns = Math.ceil(width / cell) + 2;
  const rows = Math.ceil(height / cell) + 2;
  const knots = bells(columns * rows, hand, weight);
  const shares = Float32Array.from({ length: width }, (_, x) => smooth((x % cell) / cell));
  const line = new Float32Array(columns);
  for (let y = 0; y < height; y++) {
    const row = Math.floor(y / cell);
    const share = smooth((y % cell) / cell);
    for (let column = 0; column < columns; column++) {
      const above = knots[row * columns + column] ?? 0;
      line[column] = above + ((knots[(row + 1) * columns + column] ?? 0) - above) * share;
    }
    for (let x = 0; x < width; x++) {
      const column = Math.floor(x / cell);
      const left = line[column] ?? 0;
      const index = y * width + x;
      sum[index] = (sum[index] ?? 0) + left + ((line[column + 1] ?? 0) - left) * (shares[x] ?? 0);
    }
  }
};

/** Paper tooth and uneven pigment, a step of grain a pixel (`LEVELS` of them), always the same for the same size. */
export const paperGrain = (width: number, height: number): Uint8Array => {
  const hand = random(77);
  const tile = fineTile(hand);
  const sum = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const row = (y % TILE) * TILE;
    for (let x = 0; x < width; x++) sum[y * width + x] = tile[row + (x % TILE)] ?? 0;
  }
  addClouds(sum, width, height, CLOUD.cell, CLOUD.weight, hand);
  addClouds(sum, width, height, SHEET.cell, SHEET.weight, hand);
  const grain = new Uint8Array(sum.length);
  for (let index = 0; index < sum.length; index++) {
    grain[index] = Math.min(LEVELS - 1, Math.max(0, STEPS + Math.round((sum[index] ?? 0) / STEP)));
  }
  return grain;
};

/** `soft-light` of W3C Compositing and Blending Level 1, for backdrop and source from 0 to 1. */
export const softLight = (backdrop: number, source: number): number => {
  if (source <= 0.5) return backdrop - (1 - 2 * source) * backdrop * (1 - backdrop);
  const light = backdrop <= 0.25 ? ((16 * backdrop - 12) * backdrop + 4) * backdrop : Math.sqrt(backdrop);
  return backdrop + (2 * source - 1) * (light - backdrop);
};

/** Results of `softLight` for every step of grain (rows) and every value (columns). */
export const softLightTable = (): Uint8Array =>
  Uint8Array.from({ length: LEVELS * 256 }, (_, index) => {
    const grey = greyOf(index >> 8);
    if (grey === NEUTRAL) return index & 255;
    return Math.round(softLight((index & 255) / 255, grey / 255) * 255);
  });

/** The byte of a pixel that says how opaque it is. */
const OPACITY = 0xff000000 | 0;

/** A pixel (red in the lowest byte) under the step of grain whose row of the table begins at `row`; its transparency stays. */
const grained = (pixel: number, row: number, table: Uint8Array): number =>
  (table[row | (pixel & 255)] ?? 0) |
  ((table[row | ((pixel >>> 8) & 255)] ?? 0) << 8) |
  ((table[row | ((pixel >>> 16) & 255)] ?? 0) << 16) |
  (pixel & OPACITY);

/** Lays the upper left part of a sheet of grain, `across` pixels wide, over RGBA pixels (not premultiplied), in place. */
export const layGrain = (
  { data, width, height }: { readonly data: Uint8Array; readonly width: number; readonly height: number },
  grain: Uint8Array,
  across: number,
  table: Uint8Array,
): void => {
  const pixels = pixelWords(data);
  // half of a picture is its ground, which lies in the corner too
  const ground = pixels[0] ?? 0;
  const grounds = Int32Array.from({ length: LEVELS }, (_, level) => grained(ground, level << 8, table));
  for (let y = 0, at = 0; y < height; y++) {
    for (let x = 0, index = y * across; x < width; x++, index++, at++) {
      const level = grain[index] ?? 0;
      const pixel = pixels[at] ?? 0;
      pixels[at] = pixel === ground ? (grounds[level] ?? 0) : grained(pixel, level << 8, table);
    }
  }
};
