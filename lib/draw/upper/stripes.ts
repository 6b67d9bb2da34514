import type { Point } from '../drawing.ts';
import type { Cloth } from '../fabric/index.ts';
import {
  distance,
  type Garment,
  line,
  move,
  type Painted,
  resample,
  sampleCurve,
  softPath,
  towards,
} from '../kit/index.ts';
import { halfWidthAt } from './body.ts';
import type { Fold } from './folds.ts';
import type { UpperShape } from './shape.ts';
import type { SleeveFrame } from './sleeve-frame.ts';

/** How a stripe is carried off its level at a point: cloth that dips into a fold takes the stripe with it. */
const breakAt =
  (folds: readonly { readonly run: readonly Point[]; readonly reach: number; readonly depth: number }[]) =>
  (x: number, y: number): number => {
    let shift = 0;
    for (const { run, reach, depth } of folds)
      for (let i = 1; i < run.length; i++) {
        const a = run[i - 1] ?? [0, 0];
        const b = run[i] ?? a;
        const [low, high] = a[1] < b[1] ? [a, b] : [b, a];
        if (y < low[1] || y > high[1]) continue;
        const at = low[0] + ((high[0] - low[0]) * (y - low[1])) / (high[1] - low[1] || 1);
        const away = (x - at) / reach;
        if (Math.abs(away) < 1) shift += depth * Math.sin(Math.PI * away) * (1 - Math.abs(away));
      }
    return shift;
  };

/** Crosswise stripes of a body, sagging a little and broken at its folds. */
export const bodyStripes = (
  garment: Garment,
  shape: UpperShape,
  folds: readonly Fold[],
  from: number,
  until: number,
): Painted[] => {
  const stripes = garment.cloth.stripes;
  if (stripes === undefined) return [];
  const shift = breakAt(
    folds.map(({ nodes, width, strength }) => ({
      run: resample(sampleCurve(nodes), 8),
      reach: Math.abs(width) * garment.cloth.drape.width * 1.7,
      depth: 0.55 * strength * Math.sign(width),
    })),
  );
  const steps = garment.small ? 6 : 22;
  return stripes.bands.map(({ at, width, colour }) => {
    let path = '';
    for (let y = from + at + width / 2; y < until + width; y += stripes.repeat) {
      const half = Math.max(halfWidthAt(shape, Math.max(y, shape.armhole)), shape.shoulder / 2) + 1.5;
      const sag = garment.jitter(0.16);
      const points: Point[] = Array.from({ length: steps + 1 }, (_, i) => {
        const x = -half + (2 * half * i) / steps;
        const u = x / half;
        return [x, y + (0.55 + sag) * (1 - u * u) - 0.25 + (garment.small ? 0 : shift(x, y))];
      });
      path += softPath(points);
    }
    return { ...line(path, width, colour, 0.94), round: false };
  });
};

/** Stripes round a sleeve, bowed as on a tube, running with its bend. */
export const sleeveStripes = (garment: Garment, cloth: Cloth, f: SleeveFrame): Painted[] => {
  const stripes = cloth.stripes;
  if (stripes === undefined) return [];
  const upper = distance(f.shoulder, f.elbowOut);
  const length = upper + distance(f.elbowOut, f.wristOut);
  return stripes.bands.map(({ at, width, colour }) => {
    let path = '';
    for (let along = at + width / 2 + 1.5; along < length + 1; along += stripes.repeat) {
      const [base, down, across, rest] =
        along < upper ? [f.shoulder, f.upper, f.acrossUpper, along] : [f.elbowOut, f.fore, f.acrossFore, along - upper];
      const start = move(move(base, down, rest), across, -2.4);
      const wide = along < upper ? distance(f.shoulder, f.underarm) : distance(f.elbowOut, f.elbowIn);
      const end = move(start, across, wide + 3.4);
      const bow = (t: number, by: number): Point => move(towards(start, end, t), down, by + garment.jitter(0.1));
      path += softPath([start, bow(0.2, 0.6), bow(0.45, 0.9), bow(0.75, 0.7), end]);
    }
    return { ...line(path, width, colour, 0.94), round: false };
  });
};
