import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { clamp, Garment, line, mirrored, type Node, pen, reversed, stitch } from '../kit/index.ts';
import { armholeSeam, sideAnchors, sideLine } from './body.ts';
import { beside } from './finish.ts';
import { bodyShade } from './folds.ts';
import { finishNeck, frontNeck, neckInside } from './necklines.ts';
import { type UpperShape, upperShape } from './shape.ts';
import { drawSleeve } from './sleeve.ts';

/** A close top that ends in leg openings and a snapped gusset. */
export const drawBodysuit = (piece: DrawnPiece, detail: Detail, usual: UpperShape): Drawing => {
  const garment = new Garment(piece, detail);
  const shape = upperShape(piece, usual);
  const { cloth } = garment;
  const crotch = clamp(shape.length + 10, 50, 90);
  const hip = crotch - 19;
  neckInside(garment, shape, 'scoop', 0.6);
  drawSleeve(garment, shape, -1, { cuff: 'hem' });
  drawSleeve(garment, shape, 1, { cuff: 'hem' });
  const leg: Node[] = [
    [shape.hem / 2, hip, 'corner'],
    [shape.hem * 0.34, hip + 6.4],
    [shape.hem * 0.16, crotch - 4],
    [3.4, crotch, 'corner'],
  ];
  // behind the leg openings the back of the seat shows
  garment.inside([
    [-shape.hem / 2 + 0.4, hip, 'corner'],
    [shape.hem / 2 - 0.4, hip, 'corner'],
    [shape.hem * 0.4, hip + 9.4],
    [3.8, crotch - 0.6, 'corner'],
    [-3.8, crotch - 0.6, 'corner'],
    [-shape.hem * 0.4, hip + 9.4],
  ]);
  const right = [...sideLine({ ...shape, length: hip, hemDip: 0 }), ...leg.slice(1)];
  const outline = [
    ...[[-shape.neck / 2, 0, 'corner'] as Node, ...frontNeck(shape, 'scoop')],
    ...right,
    [0, crotch + 0.4] as Node,
    ...reversed(mirrored(right)).slice(0, -1),
  ];
  garment.panel(outline, {
    cast: 0.3,
    round: { from: [-shape.chest / 2, 0], to: [shape.chest / 2, 0], strength: 0.8 },
    inner: [
      ...bodyShade(garment, { ...shape, length: hip }, 0.9, hip),
      ...([1, -1] as const).flatMap((side) => {
        const edge = leg.map(([x, y]): Node => [side * x, y]);
        return garment.small
          ? []
          : [stitch(beside(edge, side * 0.9), cloth.ink, 0.6), line(beside(edge, side * 1.2), 0.1, cloth.ink, 0.4)];
      }),
      pen(
        [
          [-4, crotch - 3.4],
          [0, crotch - 3],
          [4, crotch - 3.4],
        ],
        0.26,
        cloth.ink,
        0.7,
        0.5,
      ),
    ],
  });
  for (const x of [-1.8, 0, 1.8]) garment.button(x, crotch - 1.5, 0.36, cloth.bright);
  garment.add(...([1, -1] as const).map((side) => pen(armholeSeam(shape, side), 0.28, cloth.ink, 0.55, 0.5)));
  finishNeck(garment, shape, 'scoop', 'band', 1.3);
  sideAnchors(garment, shape);
  garment.anchor('hem', [0, crotch]);
  return garment.finish();
};
