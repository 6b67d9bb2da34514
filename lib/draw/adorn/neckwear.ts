import type { Detail, Drawing, DrawnPiece, Point } from '../drawing.ts';
import {
  curvePath,
  ellipsePath,
  Garment,
  group,
  line,
  type Node,
  offsetLine,
  pen,
  resample,
  sampleCurve,
  shape,
  tone,
} from '../kit/index.ts';
import { points } from '../kit/points.ts';
import { bead, chain, coverRing, hollow, metalShape, stone } from './metal.ts';

const clasp = (garment: Garment, at: Point, metal: string): void => {
  garment.add(
    { path: ellipsePath(at, 0.5, 0.4), stroke: tone(metal, -0.3), width: 0.3 },
    { path: ellipsePath(at, 0.5, 0.4), stroke: metal, width: 0.16 },
  );
};

/** A fine chain laid as on a neck, its pendant at the lowest point. */
export const pendant = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = piece.fabric === 'pearl' ? '#c2a25e' : cloth.ground;
  const gem = piece.fabric === 'pearl' ? cloth.ground : cloth.accents[0];
  chain(
    garment,
    points(
      '-0.4 -11.8, -5.4 -11, -8 -6.6, -6.4 -0.4, -2.4 5.4, 0 8.2!, 2.2 5.2, 6.4 -0.8, 7.6 -7, 4.8 -11.2, 0.5 -11.9',
    ),
    0.3,
    metal,
  );
  clasp(garment, [0, -12], metal);
  garment.add(
    { path: ellipsePath([0, 8.7], 0.4, 0.6), stroke: tone(metal, -0.3), width: 0.34 },
    { path: ellipsePath([0, 8.7], 0.4, 0.6), stroke: metal, width: 0.2 },
  );
  const at: Point = [0, 10.8];
  garment.cover(points('0 9.1, 1.3 9.7, 1.75 10.8, 1.3 12, 0 12.5, -1.3 12, -1.75 10.8, -1.3 9.7'));
  garment.add(metalShape(ellipsePath(at, 1.65), metal, 0.16));
  if (gem) garment.add(piece.fabric === 'pearl' ? bead(at, 1.2, gem, garment.small) : stone(at, 1.2, gem));
  else
    garment.add(
      line(ellipsePath(at, 1.3), 0.12, tone(metal, -0.22)),
      pen(points('-1.1 10.6, -0.6 9.8, 0.4 9.6'), 0.4, tone(metal, 0.2), 0.9, 0.5),
      pen(points('-0.6 11.6, 0.3 11.9, 1 11.3'), 0.34, tone(metal, -0.16), 0.8, 0.5),
    );
  return garment.anchor('neck', [0, -12]).finish();
};

/** A collar of broad links, larger at the front. */
export const necklace = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const metal = garment.cloth.ground;
  const path = points('-1 -9.4, -6.4 -8.2, -9.2 -3, -8.6 3, -5 7.4, 0 8.9, 5 7.4, 8.6 3, 9.2 -3, 6.4 -8.2, 1 -9.4');
  const count = garment.small ? 19 : 27;
  const run = resample(sampleCurve(path), count);
  const band = resample(sampleCurve(path), 24);
  garment.cover(
    [
      ...offsetLine(band, (t) => 0.5 + 0.8 * Math.sin(Math.PI * t)),
      ...offsetLine(band, (t) => -0.5 - 0.8 * Math.sin(Math.PI * t)).reverse(),
    ].map((p): Node => [p[0], p[1], 'corner']),
  );
  clasp(garment, [0, -9.5], metal);
  const link = (i: number): readonly [Point, number, number] => {
    const [a, b] = [run[i] ?? [0, 0], run[i + 1] ?? [0, 0]];
    const share = (i + 0.5) / count;
    return [
      [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2],
      (Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI,
      0.5 + 0.75 * Math.sin(Math.PI * share) ** 1.4,
    ];
  };
  // Every second link lies over its neighbours.
  for (const odd of [1, 0]) {
    const rings = Array.from({ length: count }, (_, i) => i)
      .filter((i) => i % 2 === odd)
      .map((i) => {
        const [at, degrees, size] = link(i);
        return ellipsePath(at, 1.12 * (0.72 + size * 0.3), size * 0.86, degrees);
      })
      .join('');
    const wide = garment.small ? 0.62 : 0.5;
    garment.add(
      { path: rings, stroke: tone(metal, -0.32), width: wide + 0.2 },
      { path: rings, stroke: metal, width: wide },
      group([{ path: rings, stroke: tone(metal, 0.2), width: 0.14, opacity: 0.9 }], { move: [-0.08, -0.11] }),
    );
  }
  const gem = garment.cloth.accents[0];
  if (gem) garment.add(metalShape(ellipsePath([0, 9.6], 1.7, 1.5), metal, 0.16), stone([0, 9.6], 1.25, gem));
  return garment.anchor('neck', [0, -9.5]).finish();
};

/** Beads on a thread, a little larger at the front; a second colour alternates. */
export const beads = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth, small } = garment;
  const path = points(
    '-0.6 -10.6, -5.6 -9.4, -8.8 -4.4, -8.6 2.6, -5.2 8.4, 0 10.4, 5 8.6, 8.8 3, 8.8 -4, 5.4 -9.4, 0.6 -10.6',
  );
  const count = small ? 28 : 42;
  const run = resample(sampleCurve(path), count);
  garment.add(line(path, 0.14, tone(cloth.ground, -0.4)));
  const radius = (share: number): number => (small ? 1.15 : 0.78) * (0.62 + 0.4 * Math.sin(Math.PI * share));
  const spots = run.map((p, i) => ({
    at: p,
    r: radius(i / count),
    colour: cloth.accents[i % 3 === 2 ? 0 : -1] ?? cloth.ground,
  }));
  const discs = (colour: string, k: number, dx: number, dy: number): string =>
    spots
      .filter((s) => colour === '' || s.colour === colour)
      .map(({ at, r }) => ellipsePath([at[0] + dx * r, at[1] + dy * r], r * k))
      .join('');
  for (const colour of new Set(spots.map((s) => s.colour)))
    garment.add(
      { path: discs(colour, 1, 0, 0), fill: colour, stroke: tone(colour, -0.34), width: 0.12 },
      shape(discs(colour, 0.74, 0.18, 0.22), tone(colour, -0.12), 0.55),
      shape(discs(colour, 0.6, -0.1, -0.1), tone(colour, 0.03), 0.9),
    );
  garment.add(shape(discs('', 0.22, -0.34, -0.36), '#ffffff', 0.8));
  const band = resample(sampleCurve(path), 24);
  garment.cover(
    [...offsetLine(band, 0.75), ...offsetLine(band, -0.75).reverse()].map((p): Node => [p[0], p[1], 'corner']),
  );
  clasp(garment, [0, -10.7], '#c2a25e');
  return garment.anchor('neck', [0, -10.7]).finish();
};

/** A chain for the wrist, laid open in a curve, with its bar and ring. */
export const bracelet = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const metal = piece.fabric === 'pearl' ? '#c2a25e' : garment.cloth.ground;
  const nodes = points('-6.6 -1.8, -6.2 1.6, -3 3.6, 1.6 3.2, 5.6 1.2, 6.6 -1.6, 4.6 -3.4, 1.6 -3.6');
  if (piece.fabric === 'pearl') {
    const run = resample(sampleCurve(nodes), 24);
    garment.add(line(nodes, 0.14, '#7d6a45'), ...run.map((p) => bead(p, 0.42, garment.cloth.ground, garment.small)));
    garment.cover(
      [...offsetLine(run, 0.5), ...offsetLine(run, -0.5).reverse()].map((p): Node => [p[0], p[1], 'corner']),
    );
  } else chain(garment, nodes, garment.small ? 0.72 : 0.56, metal);
  const gem = garment.cloth.accents[0];
  garment.add(
    { path: ellipsePath([-6.9, -2.6], 0.9, 0.8), stroke: tone(metal, -0.3), width: 0.46 },
    { path: ellipsePath([-6.9, -2.6], 0.9, 0.8), stroke: metal, width: 0.28 },
  );
  garment.add(
    line(points('0.2 -2.4, 1.4 -4.9'), 0.6, tone(metal, -0.3)),
    line(points('0.2 -2.4, 1.4 -4.9'), 0.4, metal),
  );
  if (gem)
    garment.add(bead([0.4, 4.6], 0.62, gem, garment.small), line(points('0.5 3.2, 0.4 4.2'), 0.18, tone(metal, -0.2)));
  return garment.finish();
};

/** A solid ring for the wrist, seen at an angle so that its inside shows. */
export const bangle = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const metal = garment.cloth.ground;
  coverRing(garment, [0, 0.3], [3.75, 2.6], [3.2, 1.1]);
  const outer = points('-3.7 0, -3.7 1.5, -2.6 3.14, 0 3.8, 2.6 3.14, 3.7 1.5, 3.7 0, 2.6 1.63, 0 2.3, -2.6 1.63');
  const inside = points('-3.45 0.1!, -2.5 -1.5, 0 -2.12, 2.5 -1.5, 3.45 0.1!, 2.5 0.1, 0 -0.5, -2.5 0.1');
  garment.add(
    { path: curvePath(inside), fill: tone(metal, -0.1), stroke: tone(metal, -0.34), width: 0.14, round: true },
    pen(points('-2.9 -0.5, -1.8 -1.2, 0 -1.5, 1.8 -1.2, 2.9 -0.5'), 0.5, tone(metal, 0.06), 0.85, 0.35),
    {
      path: hollow([0, 0], [3.7, 2.3], [3.46, 2.1]),
      evenOdd: true,
      fill: tone(metal, 0.1),
      stroke: tone(metal, -0.32),
      width: 0.1,
    },
  );
  garment.panel(
    outer.map(([x, y], i): Node => [x, y, i === 0 || i === 6 ? 'corner' : undefined]),
    {
      wobble: 0,
      edge: 0.12,
      weave: false,
      rim: false,
      inner: [
        pen(points('-3.3 1, -2.3 2.2, -0.6 2.8'), 0.6, tone(metal, 0.22), 0.9, 0.45),
        pen(points('0.8 3.4, 2.4 2.8, 3.5 1.5'), 0.7, tone(metal, -0.18), 0.8, 0.5),
        pen(points('2.2 2.2, 2.8 1.8, 3.3 1.1'), 0.26, tone(metal, 0.22), 0.8, 0.5),
        pen(points('-3.5 1.6, -2.4 3, 0 3.6'), 0.3, tone(metal, -0.16), 0.8, 0.5),
      ],
    },
  );
  return garment.finish();
};
