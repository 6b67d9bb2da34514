import type { Surface } from '../../vocabulary/index.ts';
import type { Detail, Mark, Tile } from '../drawing.ts';
import { ellipsePath, polygonPath, rectanglePath } from '../kit/paths.ts';
import { random, seedOf } from '../kit/random.ts';
import type { Cloth } from './cloth.ts';

type Tones = Omit<Cloth, 'accents' | 'tiles' | 'swatch' | 'sheer'>;
type Weave = (tones: Tones) => Omit<Tile, 'name'>;

const bars = (count: number, pitch: number, width: number, height: number, from = 0): string =>
  Array.from({ length: count }, (_, i) => rectanglePath(from + i * pitch, 0, width, height)).join('');

/** Diagonal lines that meet across the tile's edges. */
const diagonals = (size: number, pitch: number): string => {
  let path = '';
  for (let k = -size; k < size; k += pitch)
    path += polygonPath(
      [
        [-0.5, k - 0.5],
        [size + 0.5, k + size + 0.5],
      ],
      false,
    );
  return path;
};

const specks = (seed: string, count: number, size: number, low: number, high: number): string => {
  const next = random(seedOf(seed));
  let path = '';
  for (let i = 0; i < count; i++) {
    const r = low + next() * (high - low);
    path += ellipsePath([r + next() * (size - 2 * r), r + next() * (size - 2 * r)], r, r * (0.6 + next() * 0.4));
  }
  return path;
};

const fill = (path: string, colour: string, opacity: number): Mark => ({ path, fill: colour, opacity });
const draw = (path: string, colour: string, width: number, opacity: number): Mark => ({
  path,
  stroke: colour,
  width,
  opacity,
});

const grain: Weave = (t) => ({
  width: 8,
  height: 8,
  marks: [
    fill(specks('grain dark', 60, 8, 0.05, 0.16), t.deep, 0.22),
    fill(specks('grain light', 60, 8, 0.05, 0.16), t.bright, 0.2),
  ],
});

const nap: Weave = (t) => ({
  width: 6,
  height: 6,
  marks: [
    fill(specks('nap dark', 90, 6, 0.06, 0.2), t.deep, 0.2),
    fill(specks('nap light', 90, 6, 0.06, 0.2), t.bright, 0.22),
  ],
});

const twill: Weave = (t) => ({
  width: 6,
  height: 6,
  marks: [draw(diagonals(6, 1.2), t.bright, 0.2, 0.22)],
});

const corduroy: Weave = (t) => ({
  width: 8.5,
  height: 12,
  marks: [
    fill(bars(10, 0.85, 0.3, 12), t.ink, 0.4),
    fill(bars(10, 0.85, 0.16, 12, 0.3), t.shade, 0.3),
    fill(bars(10, 0.85, 0.18, 12, 0.52), t.bright, 0.4),
  ],
});

const jersey: Weave = (t) => ({ width: 5, height: 5, marks: [fill(bars(10, 0.5, 0.14, 5), t.shade, 0.16)] });

/** The weave, nap or knit of each surface; surfaces not listed are smooth. */
export const WEAVES: Partial<Record<Surface, Weave>> = {
  jersey,
  twill,
  corduroy,
  leather: grain,
  suede: nap,
  felt: nap,
  fleece: nap,
};

/** The weave of a cloth as a tile, or nothing for a smooth one. Thin lines are left out of small drawings. */
export const weave = (tones: Tones, detail: Detail): Tile | undefined => {
  const draws = detail === 'full' ? WEAVES[tones.surface] : undefined;
  return draws && { name: 'weave', ...draws(tones) };
};
