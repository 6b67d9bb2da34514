import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { Garment, lerp, type Node, pen, stitch } from '../kit/index.ts';
import { sideAnchors } from './body.ts';
import { bandNodes } from './finish.ts';
import { bodyShade } from './folds.ts';
import { type UpperShape, upperShape } from './shape.ts';

/** A loose jacket with straight wide sleeves cut in one line with the shoulders, and a band all round the front. */
export const drawKimono = (piece: DrawnPiece, detail: Detail, usual: UpperShape): Drawing => {
  const garment = new Garment(piece, detail);
  const shape = upperShape(piece, usual);
  const { cloth } = garment;
  const half = shape.neck / 2;
  const { length, hem } = shape;
  const reach = shape.shoulder / 2 + 29;
  const drop = shape.slope + 17;
  const mouth = 27;
  garment.inside([
    [-half, 0, 'corner'],
    [0, -1.6],
    [half, 0, 'corner'],
    [7, length * 0.5],
    [9, length - 2, 'corner'],
    [-9, length - 2, 'corner'],
    [-7, length * 0.5],
  ]);
  garment.add(
    garment.fold(
      [
        [0.6, 6],
        [1.6, length * 0.4],
        [0.6, length * 0.8],
      ],
      2.2,
      0.7,
      0.5,
    ),
    garment.plane(
      [
        [-3.4, 10],
        [-4, length * 0.6],
        [-4, length],
      ],
      2.4,
      cloth.ink,
      0.3,
    ),
  );
  for (const side of [-1, 1] as const) {
    const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
    const under = shape.chest / 2;
    const sleeve: Node[] = [
      s(half + 3, 3.4, 'corner'),
      s(half + 5, drop * 0.16, 'corner'),
      s(lerp(half, reach, 0.6), drop * 0.55),
      s(reach, drop, 'corner'),
      s(reach - 3.6, drop + mouth * 0.55),
      s(reach - 6.6, drop + mouth, 'corner'),
      s(under + 8, shape.armhole + 9),
      s(under, shape.armhole + 5, 'corner'),
      s(half + 4, 16),
    ];
    garment.panel(sleeve, {
      turn: side * 28,
      round: { from: [side * 16, -4], to: [side * 22, drop + mouth], strength: 0.7 },
      inner: [
        garment.fold([s(under, shape.armhole + 5), s(under + 4, 20), s(shape.shoulder / 2 - 2, 8)], 2.2 * side, 0.85),
        garment.fold([s(under + 2, shape.armhole + 6), s(under + 11, 24), s(reach - 12, 15)], 2 * side, 0.75),
        garment.fold(
          [s(reach - 5, drop + mouth - 3), s(reach - 11, drop + 13), s(reach - 18, drop + 1)],
          1.8 * side,
          0.7,
        ),
        garment.fold([s(reach - 2, drop + 9), s(reach - 10, drop + 4), s(reach - 20, drop - 5)], 1.5 * side, 0.6),
        pen(
          [s(reach - 2.4, drop + 0.8), s(reach - 6, drop + mouth * 0.5), s(reach - 9, drop + mouth - 1)],
          0.2,
          cloth.ink,
          0.5,
          0.5,
        ),
        pen(
          [s(shape.shoulder / 2, shape.slope - 1), s(shape.shoulder / 2 - 1, 16), s(under, shape.armhole + 5)],
          0.3,
          cloth.ink,
          0.5,
          0.5,
        ),
      ],
    });
  }
  for (const side of [-1, 1] as const) {
    const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
    const edge: Node[] = [
      s(half, 0),
      s(half * 0.72, length * 0.3),
      s(4.4 + garment.jitter(0.8), length * 0.62),
      s(5.4 + garment.jitter(1), length),
    ];
    const front: Node[] = [
      s(half, 0, 'corner'),
      ...edge.slice(1, -1),
      [edge[3]?.[0] ?? 0, length, 'corner'],
      s(hem * 0.3, length + 0.5 + garment.jitter(0.4)),
      s(hem / 2, length - 1, 'corner'),
      s(lerp(shape.chest, hem, 0.5) / 2, lerp(shape.armhole, length, 0.5)),
      s(shape.chest / 2, shape.armhole + 5, 'corner'),
      s(shape.shoulder / 2 - 2.4, 17),
      s(shape.shoulder / 2 - 1, lerp(0, drop, (shape.shoulder / 2 - 1 - half) / (reach - half)) - 0.2, 'corner'),
      s(half + 4, lerp(0, drop, 4 / (reach - half)) - 0.3),
    ];
    garment.panel(front, {
      shift: [side * 1.3, 0],
      cast: 0.4,
      round:
        side === 1
          ? { from: [-10, 0], to: [shape.chest / 2 + 2, 0], strength: 0.75 }
          : { from: [-shape.chest / 2 - 2, 0], to: [10, 0], strength: 0.75 },
      inner: [
        ...bodyShade(garment, shape, 0.75),
        ...(garment.small ? [] : [stitch([s(0, length - 1.8), s(hem / 2, length - 2.8)], cloth.ink, 0.6)]),
      ],
    });
    garment.panel(bandNodes(edge, side === 1 ? -0.6 : -4, side === 1 ? 4 : 0.6, 8), {
      edge: 0.5,
      cast: 0.6,
      turn: side * 4,
      shift: [0.8, 1.7],
      wobble: 0.05,
      ...(cloth.tiles.length === 0 && { fill: cloth.accents[0] ?? cloth.shade }),
    });
  }
  garment.panel(
    bandNodes(
      [
        [-half - 0.2, 0.6],
        [-half * 0.5, -1.4],
        [half * 0.5, -1.4],
        [half + 0.2, 0.6],
      ],
      1.6,
      -1.6,
      8,
    ),
    { edge: 0.4, wobble: 0.05, ...(cloth.tiles.length === 0 && { fill: cloth.accents[0] ?? cloth.shade }) },
  );
  sideAnchors(garment, shape);
  return garment.finish();
};
