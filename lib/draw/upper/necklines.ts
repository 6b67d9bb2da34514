import { type Garment, type Node, pen } from '../kit/index.ts';
import { bandNodes, beside, ribBand } from './finish.ts';
import type { UpperShape } from './shape.ts';

export type Neckline = 'crew' | 'v' | 'boat' | 'scoop' | 'square' | 'straight';

/** The front neckline from left to right, without the two neck points. */
export const frontNeck = (shape: UpperShape, neckline: Neckline): Node[] => {
  const half = shape.neck / 2;
  const deep = shape.neckDepth;
  switch (neckline) {
    case 'v':
      return [
        [-half * 0.62, deep * 0.44],
        [0, deep, 'corner'],
        [half * 0.62, deep * 0.44],
      ];
    case 'boat':
      return [
        [-half * 0.62, deep * 0.72],
        [0, deep],
        [half * 0.62, deep * 0.72],
      ];
    case 'square':
      return [
        [-half * 0.98, deep * 0.94, 'corner'],
        [0, deep],
        [half * 0.98, deep * 0.94, 'corner'],
      ];
    case 'straight':
      return [
        [-half * 0.5, deep * 0.9],
        [0, deep],
        [half * 0.5, deep * 0.9],
      ];
    default:
      return [
        [-half * 0.93, deep * 0.34],
        [-half * 0.58, deep * 0.84],
        [0, deep],
        [half * 0.58, deep * 0.84],
        [half * 0.93, deep * 0.34],
      ];
  }
};

/** The front neckline with its two neck points. */
export const neckEdge = (shape: UpperShape, neckline: Neckline): Node[] => [
  [-shape.neck / 2, 0],
  ...frontNeck(shape, neckline),
  [shape.neck / 2, 0],
];

/** The back of the neck, from left to right; `rise` is how far it stands above the neck points (negative dips). */
export const backNeck = (shape: UpperShape, rise: number): Node[] => {
  const half = shape.neck / 2;
  return [
    [-half, 0],
    [-half * 0.62, -rise * 0.72],
    [0, -rise],
    [half * 0.62, -rise * 0.72],
    [half, 0],
  ];
};

/** The inside of the back, seen through the neck opening. */
export const neckInside = (
  garment: Garment,
  shape: UpperShape,
  neckline: Neckline,
  rise: number,
  label = true,
): void => {
  const front = neckEdge(shape, neckline).slice(1, -1);
  garment.inside(
    [
      [-shape.neck / 2 - 0.3, 0.15, 'corner'],
      ...backNeck(shape, rise).slice(1, -1),
      [shape.neck / 2 + 0.3, 0.15, 'corner'],
      ...front.map(([x, y, c]): Node => [x, y + 0.8, c]).reverse(),
    ],
    { fill: garment.cloth.lining, ...(label && shape.neckDepth > 5 && { label: [0, -rise + 1.2] as const }) },
  );
};

/** Band of the back neck, seen on its inner side. */
export const backBand = (garment: Garment, shape: UpperShape, rise: number, width: number): void => {
  const { cloth } = garment;
  garment.panel(bandNodes(backNeck(shape, rise), 0, width), {
    fill: cloth.shade,
    weave: false,
    edge: 0.25,
    wobble: 0,
  });
};

/** Finish of a neckline: a rib, a self band or a fine edge. */
export const finishNeck = (
  garment: Garment,
  shape: UpperShape,
  neckline: Neckline,
  finish: 'rib' | 'band' | 'edge',
  width = 2,
): void => {
  const { cloth } = garment;
  const edge = neckEdge(shape, neckline);
  if (finish === 'rib') {
    ribBand(garment, edge, width * 0.5, -width * 0.5);
    if (neckline === 'v')
      garment.add(
        pen(
          [
            [0, shape.neckDepth - width * 0.5],
            [0, shape.neckDepth + width * 0.6],
          ],
          0.25,
          cloth.ink,
          0.7,
        ),
      );
  } else if (finish === 'band') {
    garment.panel(bandNodes(edge, width * 0.5, -width * 0.5), {
      covers: false,
      loose: true,
      edge: 0.25,
      wobble: 0,
      print: false,
    });
  } else {
    garment.add(pen(beside(edge, 0.05), 0.34, cloth.ink, 0.75, 0.5));
    if (!garment.small) garment.add(pen(beside(edge, -1.1), 0.14, cloth.ink, 0.5, 0.5));
  }
};
