import type { Mark, Tile } from '../drawing.ts';
import { polygonPath, rectanglePath } from '../kit/paths.ts';
import { random, seedOf } from '../kit/random.ts';
import type { Cloth } from './cloth.ts';
import { scatter } from './motifs.ts';

export type Tones = Omit<Cloth, 'accents' | 'tiles' | 'swatch' | 'sheer'>;

export type Weave = (tones: Tones) => Omit<Tile, 'name'>;

export const square = (size: number, marks: readonly Mark[]): Omit<Tile, 'name'> => ({
  width: size,
  height: size,
  marks,
});

export const bars = (count: number, pitch: number, width: number, height: number, from = 0): string =>
  Array.from({ length: count }, (_, i) => rectanglePath(from + i * pitch + 0.02, -1, width, height + 2)).join('');

/** Diagonal lines that meet across the tile's edges. */
export const diagonals = (size: number, pitch: number, shift = 0): string => {
  let path = '';
  for (let k = -size; k < size; k += pitch)
    path += polygonPath(
      [
        [-0.5, k - 0.5 + shift],
        [size + 0.5, k + size + 0.5 + shift],
      ],
      false,
    );
  return path;
};

export const specks = (seed: string, count: number, size: number, low: number, high: number): string =>
  scatter(seed, size, count, 0)
    .map((spot) => {
      const r = low + spot.roll * (high - low);
      const inside = (v: number) => r + (v / size) * (size - 2 * r);
      return polygonPath([
        [inside(spot.x) - r, inside(spot.y)],
        [inside(spot.x), inside(spot.y) - r * 0.8],
        [inside(spot.x) + r, inside(spot.y) + r * 0.2],
        [inside(spot.x) - r * 0.1, inside(spot.y) + r],
      ]);
    })
    .join('');

/** Irregular thick places in the yarn, along or across. */
export const slubs = (seed: string, count: number, size: number, across: boolean): string => {
  const next = random(seedOf(seed));
  let path = '';
  for (let i = 0; i < count; i++) {
    const long = 1 + next() * 3;
    const at = next() * size;
    const from = next() * (size - long);
    const thick = 0.06 + next() * 0.1;
    path += across ? rectanglePath(from, at, long, thick) : rectanglePath(at, from, thick, long);
  }
  return path;
};
