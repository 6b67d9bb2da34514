import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { Garment, lerp, line, mirrored, type Node, type Painted, reversed } from '../kit/index.ts';
import { halfWidthAt, hemLine, sideAnchors } from './body.ts';
import { hemStitches } from './buttoned.ts';
import { fallenCord } from './fallen-cord.ts';
import { beside } from './finish.ts';
import { bodyShade } from './folds.ts';
import { type UpperShape, upperShape } from './shape.ts';

const lowerSide = (shape: UpperShape): Node[] => {
  const waistAt = Math.min(42, lerp(shape.armhole, shape.length, 0.6));
  return [
    [shape.chest / 2, shape.armhole, 'corner'],
    [lerp(shape.chest, shape.waist, 0.7) / 2, lerp(shape.armhole, waistAt, 0.6)],
    [shape.waist / 2, lerp(waistAt, shape.length, 0.12)],
    [halfWidthAt(shape, lerp(waistAt, shape.length, 0.7)), lerp(waistAt, shape.length, 0.7)],
    [shape.hem / 2, shape.length - shape.hemDip, 'corner'],
  ];
};

const strap = (garment: Garment, nodes: readonly Node[], width: number, colour: string): void => {
  const { cloth } = garment;
  garment.add(
    line(
      nodes.map(([x, y, c]): Node => [x + 0.1, y + 0.14, c]),
      width + 0.24,
      cloth.ink,
    ),
    line(nodes, width, colour),
    line(beside(nodes, width * 0.2), width * 0.28, cloth.bright, 0.6),
  );
  garment.cover([...beside(nodes, width / 2, 6), ...reversed(beside(nodes, -width / 2, 6))]);
};

const marks = (garment: Garment, shape: UpperShape, topEdge: readonly Node[], cowl: boolean): Painted[] => {
  const { cloth } = garment;
  const deep = topEdge.reduce((most, [, y]) => Math.max(most, y), 0);
  return [
    ...bodyShade(garment, shape, 1),
    ...(cowl
      ? [0, 1, 2].map((i) =>
          garment.fold(
            [
              [-shape.chest * (0.25 - i * 0.03), deep - 4 + i * 2.6],
              [garment.jitter(1), deep + 1.6 + i * 3.2],
              [shape.chest * (0.26 - i * 0.03), deep - 4.4 + i * 2.4],
            ],
            1.2,
            0.8,
            0.5,
          ),
        )
      : []),
    line(beside(topEdge, -0.7), 0.12, cloth.ink, 0.5),
    ...hemStitches(garment, shape, 1.1),
  ];
};

/** A camisole: thin straps, a soft V at the front, the back seen lower behind it. */
export const drawCamisole = (piece: DrawnPiece, detail: Detail, usual: UpperShape): Drawing => {
  const garment = new Garment(piece, detail);
  const shape = upperShape(piece, usual);
  const { cloth } = garment;
  const peak = shape.neck / 2 + 1;
  const top = 15.5;
  const under = shape.chest / 2;
  for (const side of [-1, 1] as const) strap(garment, fallenCord(side, peak, top, true), 0.55, cloth.shade);
  garment.inside([
    [-under + 0.3, shape.armhole, 'corner'],
    [-peak, 18.6],
    [0, 19.4],
    [peak, 18.6],
    [under - 0.3, shape.armhole, 'corner'],
    [0, shape.armhole + 5],
  ]);
  const topEdge: Node[] = [
    [-under, shape.armhole],
    [-lerp(under, peak, 0.6), top + 4.4],
    [-peak, top, 'corner'],
    [-peak * 0.55, top + 4.6],
    [0, shape.neckDepth, 'corner'],
    [peak * 0.55, top + 4.6],
    [peak, top, 'corner'],
    [lerp(under, peak, 0.6), top + 4.4],
    [under, shape.armhole],
  ];
  const right = lowerSide(shape);
  garment.panel([...topEdge.slice(1, -1), ...right, ...hemLine(garment, shape), ...reversed(mirrored(right))], {
    round: { from: [-under, 0], to: [under, 0], strength: 0.8 },
    inner: marks(garment, shape, topEdge, cloth.surface === 'satin' || cloth.surface === 'chiffon'),
  });
  for (const side of [-1, 1] as const) strap(garment, fallenCord(side, peak, top, false), 0.55, cloth.ground);
  sideAnchors(garment, shape);
  return garment.finish();
};

/** A halter: the front narrows to a band that goes round the neck, shoulders and back bare. */
export const drawHalter = (piece: DrawnPiece, detail: Detail, usual: UpperShape): Drawing => {
  const garment = new Garment(piece, detail);
  const shape = upperShape(piece, usual);
  const under = shape.chest / 2;
  const n = shape.neck / 2;
  // the inside of the stand collar behind the neck
  garment.inside([
    [-n, -1.3, 'corner'],
    [-n * 0.5, -2.5],
    [0, -2.9],
    [n * 0.5, -2.5],
    [n, -1.3, 'corner'],
    [0, 3],
  ]);
  garment.inside([
    [-under + 0.4, shape.armhole + 0.3, 'corner'],
    [0, shape.armhole + 2.4],
    [under - 0.4, shape.armhole + 0.3, 'corner'],
    [0, shape.armhole + 8],
  ]);
  const topEdge: Node[] = [
    [-under, shape.armhole],
    [-lerp(under, n, 0.5), shape.armhole - 3.2],
    [-lerp(under, n, 0.86), shape.armhole * 0.56],
    [-n - 0.9, 4.4, 'corner'],
    [-n * 0.5, 6],
    [0, 6.6],
    [n * 0.5, 6],
    [n + 0.9, 4.4, 'corner'],
    [lerp(under, n, 0.86), shape.armhole * 0.56],
    [lerp(under, n, 0.5), shape.armhole - 3.2],
    [under, shape.armhole],
  ];
  const right = lowerSide(shape);
  garment.panel([...topEdge.slice(1, -1), ...right, ...hemLine(garment, shape), ...reversed(mirrored(right))], {
    round: { from: [-under, 0], to: [under, 0], strength: 0.8 },
    inner: [
      ...[-0.85, -0.5, -0.16, 0.2, 0.52, 0.86].map((share, i) =>
        garment.fold(
          [
            [n * share, 6],
            [n * share * 1.3, 12 + garment.jitter()],
            [n * share * 1.7, 20 + (i % 2) * 5],
          ],
          share < 0 ? 1 : -1,
          0.8,
        ),
      ),
      ...marks(garment, shape, topEdge, false),
    ],
  });
  // the keyhole and the collar in front
  garment.inside([
    [0, 7, 'corner'],
    [1.5, 10.4],
    [0, 13.4],
    [-1.5, 10.4],
  ]);
  garment.panel(
    [
      [-n, -1.3, 'corner'],
      [-n * 0.5, 0.8],
      [0, 1.5],
      [n * 0.5, 0.8],
      [n, -1.3, 'corner'],
      [n + 0.9, 4.5, 'corner'],
      [n * 0.5, 6.3],
      [0, 6.9],
      [-n * 0.5, 6.3],
      [-n - 0.9, 4.5, 'corner'],
    ],
    { edge: 0.6, cast: 0.5, wobble: 0.04, round: { from: [-n - 1, 0], to: [n + 1, 0], strength: 0.8 } },
  );
  sideAnchors(garment, shape);
  return garment.finish();
};
