import type { Point } from '../drawing.ts';
import { ellipsePath, polygonPath, softPath } from '../kit/paths.ts';
import { random, seedOf } from '../kit/random.ts';
import { tone } from '../kit/tone.ts';
import { fill, petals, scatter, stroke, wrapped } from './motifs.ts';
import { specks, square, type Weave } from './threads.ts';
export const grain: Weave = (t) =>
  square(8, [
    fill(specks('grain dark', 70, 8, 0.07, 0.18), t.deep, 0.24),
    fill(specks('grain light', 60, 8, 0.06, 0.16), t.bright, 0.2),
  ]);

export const nap: Weave = (t) =>
  square(6, [
    fill(specks('nap dark', 80, 6, 0.07, 0.2), t.deep, 0.22),
    fill(specks('nap light', 80, 6, 0.07, 0.2), t.bright, 0.24),
  ]);

export const curls: Weave = (t) => {
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

export const lace: Weave = (t) => {
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

export const sequin: Weave = (t) => {
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
      if (roll > 0.69) lights += ellipsePath([x - 0.08, y - 0.08], 0.3);
      else if (roll < 0.26) darks += ellipsePath([x, y], 0.36);
    }
  return {
    width: 7.2,
    height: 6.24,
    marks: [
      stroke(discs, t.ink, 0.09, 0.2),
      fill(darks, t.deep, 0.36),
      fill(lights, tone(t.ground, 0.22, 0.8), 0.6),
      fill(lights, '#ffffff', 0.1),
    ],
  };
};

export const quilted: Weave = (t) => {
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

export const tortoise: Weave = (t) => {
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
