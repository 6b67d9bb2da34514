import type { Surface } from '../../vocabulary/index.ts';
import type { Detail, Mark, Point, Tile } from '../drawing.ts';
import { curvePath, ellipsePath, polygonPath, rectanglePath, softPath } from '../kit/paths.ts';
import { random, seedOf } from '../kit/random.ts';
import { tone } from '../kit/tone.ts';
import type { Cloth } from './cloth.ts';
import { fill, petals, scatter, stroke, wrapped } from './motifs.ts';

export type Tones = Omit<Cloth, 'accents' | 'tiles' | 'swatch' | 'sheer'>;
type Weave = (tones: Tones) => Omit<Tile, 'name'>;

const square = (size: number, marks: readonly Mark[]): Omit<Tile, 'name'> => ({ width: size, height: size, marks });

const bars = (count: number, pitch: number, width: number, height: number, from = 0): string =>
  Array.from({ length: count }, (_, i) => rectanglePath(from + i * pitch + 0.02, -1, width, height + 2)).join('');

/** Diagonal lines that meet across the tile's edges. */
const diagonals = (size: number, pitch: number, shift = 0): string => {
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

const specks = (seed: string, count: number, size: number, low: number, high: number): string =>
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
const slubs = (seed: string, count: number, size: number, across: boolean): string => {
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

const grain: Weave = (t) =>
  square(8, [
    fill(specks('grain dark', 70, 8, 0.07, 0.18), t.deep, 0.24),
    fill(specks('grain light', 60, 8, 0.06, 0.16), t.bright, 0.2),
  ]);

const nap: Weave = (t) =>
  square(6, [
    fill(specks('nap dark', 80, 6, 0.07, 0.2), t.deep, 0.22),
    fill(specks('nap light', 80, 6, 0.07, 0.2), t.bright, 0.24),
  ]);

const curls: Weave = (t) => {
  const loop = (seed: string): string =>
    scatter(seed, 5, 26, 0.55)
      .map(({ x, y, roll }) => {
        const r = 0.18 + roll * 0.12;
        const at = (v: number) => Math.min(5 - r, Math.max(r, v));
        const [cx, cy] = [at(x), at(y)];
        return softPath([
          [cx - r, cy + r * 0.4],
          [cx - r * 0.6, cy - r],
          [cx + r * 0.7, cy - r * 0.8],
          [cx + r, cy + r * 0.5],
        ]);
      })
      .join('');
  return square(5, [stroke(loop('curl dark'), t.deep, 0.16, 0.4), stroke(loop('curl light'), t.bright, 0.16, 0.5)]);
};

const twill: Weave = (t) =>
  square(6, [stroke(diagonals(6, 0.6), t.bright, 0.16, 0.2), stroke(diagonals(6, 0.6, 0.3), t.deep, 0.14, 0.2)]);

const denim: Weave = (t) =>
  square(6, [
    stroke(diagonals(6, 0.5), tone(t.ground, 0.16, 0.6), 0.14, 0.42),
    fill(slubs('denim light', 12, 6, false), tone(t.ground, 0.2, 0.5), 0.3),
    fill(slubs('denim dark', 10, 6, false), t.ink, 0.22),
  ]);

const corduroy: Weave = (t) => ({
  width: 8.5,
  height: 12,
  marks: [
    fill(bars(10, 0.85, 0.3, 12), t.ink, 0.4),
    fill(bars(10, 0.85, 0.16, 12, 0.3), t.shade, 0.3),
    fill(bars(10, 0.85, 0.2, 12, 0.52), t.bright, 0.46),
  ],
});

/** Columns of small V stitches. */
const stitches = (wide: number, tall: number, columns: number, rows: number): string => {
  let path = '';
  for (let c = 0; c < columns; c++)
    for (let r = 0; r < rows; r++) {
      const [x, y] = [c * wide, r * tall];
      path += polygonPath(
        [
          [x + wide * 0.06, y + tall * 0.1],
          [x + wide * 0.5, y + tall * 0.86],
          [x + wide * 0.94, y + tall * 0.1],
        ],
        false,
      );
    }
  return path;
};

const fineKnit: Weave = (t) => ({
  width: 3.6,
  height: 3,
  marks: [stroke(stitches(0.6, 0.5, 6, 6), t.ink, 0.13, 0.2), fill(bars(6, 0.6, 0.1, 3), t.bright, 0.3)],
});

const ribKnit: Weave = (t) => ({
  width: 5.5,
  height: 6,
  marks: [fill(bars(5, 1.1, 0.3, 6), t.ink, 0.2), fill(bars(5, 1.1, 0.34, 6, 0.46), t.bright, 0.45)],
});

/** A rope of crossing strands between bands of moss stitch. */
const cableKnit: Weave = (t) => {
  const width = 9.6;
  const height = 7.2;
  const strand = (x: number, y: number, side: number): readonly (readonly [number, number])[] => [
    [x - side * 1.5, y],
    [x - side * 1.35, y + height * 0.14],
    [x + side * 1.2, y + height * 0.36],
    [x + side * 1.5, y + height * 0.5],
  ];
  const rope = [-1, 0, 1, 2].flatMap((i) => [strand(2.9, (i * height) / 2, i % 2 ? 1 : 1)]);
  const back = [-1, 0, 1, 2].flatMap((i) => [strand(2.9, (i * height) / 2, -1)]);
  const path = (runs: readonly (readonly (readonly [number, number])[])[]) =>
    runs.map((run) => curvePath(run, false)).join('');
  const moss = Array.from({ length: 6 * 9 }, (_, i) => {
    const c = i % 6;
    const r = Math.floor(i / 6);
    return ellipsePath([5.9 + c * 0.6 + (r % 2) * 0.3, r * 0.8 + 0.4], 0.17, 0.2);
  }).join('');
  return {
    width,
    height,
    marks: [
      fill(rectanglePath(0.6, -1, 4.6, height + 2), t.ink, 0.1),
      stroke(path(back), t.ink, 1.7, 0.3),
      stroke(path(back), t.light, 1.25),
      stroke(path(back), t.ground, 0.5, 0.7),
      stroke(path(rope), t.ink, 1.9, 0.34),
      stroke(path(rope), t.light, 1.3),
      stroke(path(rope), t.bright, 0.4, 0.7),
      fill(bars(2, 4.9, 0.24, height, 0.4), t.ink, 0.4),
      fill(bars(2, 4.9, 0.24, height, 0.66), t.bright, 0.5),
      fill(moss, t.ink, 0.2),
    ],
  };
};

const openKnit: Weave = (t) => {
  let holes = '';
  let bars2 = '';
  for (let r = 0; r < 4; r++)
    for (let c = 0; c < 4; c++) {
      const x = c * 1.5 + (r % 2) * 0.75 + 0.375;
      holes += ellipsePath([x, r * 1.3 + 0.65], 0.36, 0.42);
      bars2 += softPath([
        [x - 0.66, r * 1.3 + 0.9],
        [x, r * 1.3 - 0.1],
        [x + 0.66, r * 1.3 + 0.9],
      ]);
    }
  return {
    width: 6,
    height: 5.2,
    marks: [fill(holes, t.ink, 0.55), stroke(bars2, t.bright, 0.18, 0.6), stroke(bars2, t.ink, 0.08, 0.4)],
  };
};

const linen: Weave = (t) =>
  square(9, [
    fill(slubs('linen across', 44, 9, true), t.deep, 0.2),
    fill(slubs('linen along', 40, 9, false), t.deep, 0.16),
    fill(slubs('linen light', 34, 9, true), t.bright, 0.4),
  ]);

const lace: Weave = (t) => {
  const size = 8;
  let net = '';
  for (let r = 0; r < 10; r++)
    for (let c = 0; c < 10; c++) net += ellipsePath([c * 0.8 + (r % 2) * 0.4 + 0.2, r * 0.8 + 0.4], 0.2, 0.24);
  const blooms = scatter('lace', size, 5, 3);
  const bloom = blooms.map((s) => wrapped(s, 1.7, size, (at) => petals(at, 1.5, 6, s.turn))).join('');
  const hearts = blooms.map((s) => wrapped(s, 0.5, size, (at) => ellipsePath(at, 0.34))).join('');
  const vines = blooms
    .map((s) =>
      wrapped(s, 2.6, size, ([x, y]) =>
        softPath([
          [x + 1.4, y + 0.4],
          [x + 2.1, y - 0.7],
          [x + 2.6, y + 0.6],
          [x + 2.2, y + 1.4],
        ]),
      ),
    )
    .join('');
  return square(size, [
    fill(net, t.ink, 0.34),
    stroke(vines, t.bright, 0.34),
    fill(bloom, t.bright),
    stroke(bloom, t.ink, 0.09, 0.5),
    fill(hearts, t.ink, 0.4),
  ]);
};

const sequin: Weave = (t) => {
  let discs = '';
  let lights = '';
  let darks = '';
  const next = random(seedOf('sequin'));
  for (let r = 0; r < 8; r++)
    for (let c = 0; c < 8; c++) {
      const x = c * 0.9 + (r % 2) * 0.45 + 0.22;
      const y = r * 0.78 + 0.4;
      discs += ellipsePath([x, y], 0.42);
      const roll = next();
      if (roll > 0.62) lights += ellipsePath([x - 0.08, y - 0.08], 0.3);
      else if (roll < 0.3) darks += ellipsePath([x, y], 0.36);
    }
  return {
    width: 7.2,
    height: 6.24,
    marks: [
      stroke(discs, t.ink, 0.12, 0.5),
      fill(darks, t.deep, 0.5),
      fill(lights, tone(t.ground, 0.22, 0.7), 0.7),
      fill(lights, '#ffffff', 0.14),
    ],
  };
};

const velvet: Weave = (t) =>
  square(7, [
    fill(slubs('velvet dark', 40, 7, false), t.deep, 0.28),
    fill(slubs('velvet light', 34, 7, false), t.bright, 0.26),
  ]);

const tweed: Weave = (t) => {
  const rust = tone(t.ground, 0.1, 1.6);
  return square(7, [
    stroke(diagonals(7, 0.7), t.bright, 0.2, 0.24),
    stroke(diagonals(7, 0.7, 0.35), t.ink, 0.16, 0.16),
    fill(specks('tweed dark', 50, 7, 0.08, 0.18), t.ink, 0.4),
    fill(specks('tweed light', 46, 7, 0.08, 0.18), t.bright, 0.6),
    fill(specks('tweed fleck', 14, 7, 0.1, 0.2), rust, 0.6),
  ]);
};

const quilted: Weave = (t) => {
  const s = 6;
  const cross =
    polygonPath(
      [
        [-0.5, -0.5],
        [s + 0.5, s + 0.5],
      ],
      false,
    ) +
    polygonPath(
      [
        [-0.5, s + 0.5],
        [s + 0.5, -0.5],
      ],
      false,
    );
  const puff = (at: Point): string =>
    polygonPath([
      [at[0], at[1] - 2.2],
      [at[0] + 2, at[1] - 0.2],
      [at[0], at[1] + 1],
      [at[0] - 2, at[1] - 0.2],
    ]);
  const low = (at: Point): string =>
    polygonPath([
      [at[0] - 2.6, at[1]],
      [at[0], at[1] + 2.6],
      [at[0] + 2.6, at[1]],
      [at[0], at[1] + 1.5],
    ]);
  const spots: readonly Point[] = [
    [3, 0],
    [3, s],
    [0, 3],
    [s, 3],
  ];
  return square(s, [
    fill(spots.map(low).join(''), t.ink, 0.16),
    fill(spots.map(puff).join(''), t.bright, 0.26),
    { ...stroke(cross, t.ink, 0.34, 0.34) },
    { path: cross, stroke: t.ink, width: 0.13, dash: [0.4, 0.3], opacity: 0.9 },
  ]);
};

const canvas: Weave = (t) => {
  let path = '';
  for (let r = 0; r < 10; r++)
    for (let c = 0; c < 10; c++) if ((r + c) % 2) path += rectanglePath(c * 0.5 + 0.06, r * 0.5 + 0.08, 0.38, 0.34);
  return square(5, [fill(path, t.bright, 0.3), fill(slubs('canvas', 12, 5, true), t.deep, 0.2)]);
};

const straw: Weave = (t) => {
  let light = '';
  let dark = '';
  for (let r = 0; r < 6; r++)
    for (let c = 0; c < 6; c++) {
      const [x, y] = [c, r];
      const level = (r + c) % 2 === 0;
      light += level
        ? rectanglePath(x + 0.06, y + 0.16, 0.88, 0.3) + rectanglePath(x + 0.06, y + 0.56, 0.88, 0.3)
        : rectanglePath(x + 0.16, y + 0.06, 0.3, 0.88) + rectanglePath(x + 0.56, y + 0.06, 0.3, 0.88);
      dark += level ? rectanglePath(x + 0.02, y + 0.88, 0.96, 0.14) : rectanglePath(x + 0.88, y + 0.02, 0.14, 0.96);
    }
  return square(6, [fill(dark, t.ink, 0.5), fill(light, t.bright, 0.5)]);
};

const tortoise: Weave = (t) => {
  const size = 5;
  const blots = (seed: string, count: number) =>
    scatter(seed, size, count, 0.4)
      .map((s) => wrapped(s, 0.8, size, (at) => ellipsePath(at, 0.26 + s.roll * 0.5, 0.16 + s.roll * 0.26, s.turn)))
      .join('');
  return square(size, [
    fill(blots('tortoise dark', 14), t.ink, 0.6),
    fill(blots('tortoise light', 10), tone(t.ground, 0.18, 1.3), 0.55),
  ]);
};

/** The weave, nap or knit of each surface; surfaces not listed are smooth. */
export const WEAVES: Partial<Record<Surface, Weave>> = {
  denim,
  twill,
  corduroy,
  'fine knit': fineKnit,
  'rib knit': ribKnit,
  'cable knit': cableKnit,
  'open knit': openKnit,
  linen,
  lace,
  leather: grain,
  suede: nap,
  fleece: curls,
  sequin,
  velvet,
  tweed,
  flannel: nap,
  felt: nap,
  quilted,
  canvas,
  straw,
  towelling: curls,
  tortoiseshell: tortoise,
};

/** What is coarse enough to be seen in a small drawing. */
const COARSE: ReadonlySet<Surface> = new Set([
  'cable knit',
  'quilted',
  'lace',
  'sequin',
  'straw',
  'open knit',
  'tortoiseshell',
  'corduroy',
  'rib knit',
]);

/** The weave of a cloth as a tile, or nothing for a smooth one. Small drawings keep only what is coarse, larger. */
export const weave = (tones: Tones, detail: Detail): Tile | undefined => {
  const draws = detail === 'full' || COARSE.has(tones.surface) ? WEAVES[tones.surface] : undefined;
  if (draws === undefined) return undefined;
  const scale = detail === 'small' ? 1.7 : 1;
  return { name: 'weave', ...draws(tones), ...(scale !== 1 && { transform: [scale, 0, 0, scale, 0, 0] as const }) };
};
