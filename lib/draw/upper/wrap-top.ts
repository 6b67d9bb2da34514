import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { Garment, mirrored, type Node, pen, reversed } from '../kit/index.ts';
import { armholeSeam, sideAnchors, sideLine } from './body.ts';
import { hemStitches } from './buttoned.ts';
import { bodyShade } from './folds.ts';
import { type UpperShape, upperShape } from './shape.ts';
import { drawSleeve } from './sleeve.ts';

/** A top that crosses over in front and ties at the side. */
export const drawWrapTop = (piece: DrawnPiece, detail: Detail, usual: UpperShape): Drawing => {
  const garment = new Garment(piece, detail);
  const shape = upperShape(piece, usual);
  const { cloth } = garment;
  const half = shape.neck / 2;
  const tieY = Math.min(44, shape.length - 9);
  garment.inside(
    [
      [-half - 0.3, 0.2, 'corner'],
      [-half * 0.5, -1.4],
      [half * 0.5, -1.4],
      [half + 0.3, 0.2, 'corner'],
      [1, shape.neckDepth + 3, 'corner'],
    ],
    { label: [0, 0.6] },
  );
  drawSleeve(garment, shape, -1, { cuff: 'hem' });
  drawSleeve(garment, shape, 1, { cuff: 'hem' });
  const right = sideLine(shape);
  const left = mirrored(right);
  const front = (side: 1 | -1): Node[] => {
    const edge: Node[] = [
      [side * half, 0, 'corner'],
      [side * half * 0.66, shape.neckDepth * 0.42],
      [-side * 2, shape.neckDepth + 1.6],
      [-side * shape.waist * 0.34, tieY - 6],
      [-side * (shape.waist / 2 - (side === 1 ? 0.3 : 2)), tieY, 'corner'],
    ];
    const outer = reversed(side === 1 ? right : left).slice(0, -1);
    return [
      ...edge,
      [-side * (shape.hem / 2 - (side === 1 ? 0.4 : 2)), shape.length - 1, 'corner'],
      [-side * shape.hem * 0.2, shape.length + garment.jitter(0.3)],
      [side * shape.hem * 0.2, shape.length + 0.3],
      ...outer,
    ];
  };
  for (const side of [-1, 1] as const) {
    const pleats = [0, 1, 2, 3].map((i) =>
      garment.fold(
        [
          [-side * (shape.waist / 2 - 1), tieY - 1 + i * 0.9],
          [-side * shape.waist * (0.16 - i * 0.03), tieY - 7 - i * 1.2 + garment.jitter(0.8)],
          [side * shape.chest * (0.16 + i * 0.06), shape.armhole + 5 + i * 4],
        ],
        1.5 * side,
        0.75,
      ),
    );
    garment.panel(front(side), {
      cast: side === 1 ? 0.8 : 0.3,
      contour: true,
      round: { from: [-shape.chest / 2, 0], to: [shape.chest / 2, 0], strength: 0.7 },
      turn: side * 6,
      inner: [...pleats, ...bodyShade(garment, shape, 0.55), ...hemStitches(garment, shape, 1.4)],
    });
    garment.add(
      pen(
        [
          [side * (half - 0.8), 1],
          [side * (half * 0.66 - 1), shape.neckDepth * 0.42 + 0.4],
          [-side * 3, shape.neckDepth + 2.2],
          [-side * (shape.waist * 0.34 + 0.4), tieY - 5.2],
        ].map(([x = 0, y = 0]): Node => [x + side * 1.4, y + 0.5]),
        0.16,
        cloth.ink,
        0.55,
        0.5,
      ),
    );
  }
  garment.add(...([1, -1] as const).map((side) => pen(armholeSeam(shape, side), 0.28, cloth.ink, 0.55, 0.5)));
  tie(garment, -(shape.waist / 2 - 1.2), tieY);
  sideAnchors(garment, shape);
  return garment.finish();
};

/** Two ends and a small knot at the side. */
const tie = (garment: Garment, x: number, y: number): void => {
  for (const [dx, long] of [
    [-4.6, 21],
    [1.6, 25],
  ] as const)
    garment.panel(
      [
        [x - 0.5, y, 'corner'],
        [x + dx * 0.4 - 0.9, y + long * 0.5],
        [x + dx - 1, y + long, 'corner'],
        [x + dx + 1.4, y + long + 0.7, 'corner'],
        [x + dx * 0.5 + 1.2, y + long * 0.5],
        [x + 0.9, y, 'corner'],
      ],
      { edge: 0.5, cast: 0.5, turn: -dx * 4, wobble: 0.08 },
    );
  for (const [side, drop] of [
    [-1, 4.2],
    [1, 3.2],
  ] as const)
    garment.panel(
      [
        [x, y - 0.6, 'corner'],
        [x + side * 3.4, y - 1.2],
        [x + side * 7.4, y + drop * 0.4],
        [x + side * 8.2, y + drop],
        [x + side * 5.4, y + drop + 0.9],
        [x + side * 2, y + 1.6],
        [x, y + 0.7, 'corner'],
      ],
      {
        edge: 0.5,
        cast: 0.4,
        wobble: 0.08,
        inner: [
          garment.fold(
            [
              [x + side * 0.4, y],
              [x + side * 3, y + 0.6],
              [x + side * 6, y + drop * 0.8],
            ],
            0.8 * side,
            0.8,
          ),
        ],
      },
    );
  garment.panel(
    [
      [x - 1.2, y - 1.2],
      [x + 1.2, y - 1.1],
      [x + 1.2, y + 1.3],
      [x - 1.1, y + 1.4],
    ],
    { edge: 0.6, wobble: 0.05, cast: 0.3 },
  );
};
