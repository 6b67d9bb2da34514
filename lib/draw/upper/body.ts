import type { Point } from '../drawing.ts';
import { type Garment, lerp, mirrored, type Node, reversed } from '../kit/index.ts';
import type { UpperShape } from './shape.ts';

/** How deep the armhole cuts into the body, centimetres; more for sleeveless tops. */
export type Scoop = number;

/** Height of the natural waist below the neck point. */
export const WAIST = 42;

/** Half the width of the body at a height, between armhole and hem. */
export const halfWidthAt = (shape: UpperShape, y: number): number => {
  const waistAt = Math.min(WAIST, lerp(shape.armhole, shape.length, 0.6));
  if (y <= waistAt) return lerp(shape.chest, shape.waist, (y - shape.armhole) / (waistAt - shape.armhole)) / 2;
  return lerp(shape.waist, shape.hem, (y - waistAt) / (shape.length - waistAt || 1)) / 2;
};

/** The right side from the neck point over shoulder, armhole and side seam to the hem. */
export const sideLine = (shape: UpperShape, scoop: Scoop = 1.6): Node[] => {
  const { chest, shoulder, slope, armhole, length, hem } = shape;
  const waistAt = Math.min(WAIST, lerp(armhole, length, 0.6));
  const drop = armhole - slope;
  const inmost = Math.min(shoulder, chest) / 2 - scoop;
  return [
    [shape.neck / 2, 0, 'corner'],
    [lerp(shape.neck / 2, shoulder / 2, 0.55), slope * 0.48],
    [shoulder / 2, slope, 'corner'],
    [lerp(shoulder / 2, inmost, 0.85), slope + drop * 0.42],
    [lerp(inmost, chest / 2, 0.22), slope + drop * 0.76],
    [chest / 2, armhole, 'corner'],
    [lerp(chest, shape.waist, 0.7) / 2, lerp(armhole, waistAt, 0.6)],
    [shape.waist / 2 + shape.blouse * 0.4, lerp(waistAt, length, 0.15)],
    [lerp(shape.waist, hem, 0.6) / 2 + shape.blouse, lerp(waistAt, length, 0.68)],
    [hem / 2, length - shape.hemDip, 'corner'],
  ];
};

/** The hem from right to left, between its corners; it waves a little. */
export const hemLine = (garment: Garment, shape: UpperShape, wave = 0.3): Node[] => [
  [shape.hem * 0.32, shape.length - shape.hemDip * 0.25 + garment.jitter(wave)],
  [shape.hem * 0.1, shape.length + wave * 0.6 + garment.jitter(wave)],
  [-shape.hem * 0.15, shape.length - wave * 0.3 + garment.jitter(wave)],
  [-shape.hem * 0.34, shape.length - shape.hemDip * 0.25 + garment.jitter(wave)],
];

/** The whole front: `neck` runs from the left neck point to the right, both left out. */
export const frontOutline = (garment: Garment, shape: UpperShape, neck: readonly Node[], scoop?: Scoop): Node[] => {
  const uneven = (nodes: Node[]): Node[] =>
    nodes.map(([x, y, c], i) => [x + (i > 5 ? garment.jitter(0.5) : 0), y + (i > 8 ? garment.jitter(0.4) : 0), c]);
  const right = uneven(sideLine(shape, scoop));
  const left = uneven(mirrored(sideLine(shape, scoop)));
  return [
    [-shape.neck / 2, 0, 'corner'],
    ...neck,
    ...right,
    ...hemLine(garment, shape),
    ...reversed(left).slice(0, -1),
  ];
};

/** The seam where a sleeve is set in, from shoulder to underarm; `side` 1 is the right of the picture. */
export const armholeSeam = (shape: UpperShape, side: 1 | -1, scoop?: Scoop): Node[] =>
  sideLine(shape, scoop)
    .slice(2, 6)
    .map(([x, y]) => [side * x, y]);

export const sideAnchors = (garment: Garment, shape: UpperShape): void => {
  const at = (name: string, point: Point) => garment.anchor(name, point);
  at('neck', [0, 0]);
  at('left shoulder', [-shape.shoulder / 2, shape.slope]);
  at('right shoulder', [shape.shoulder / 2, shape.slope]);
  at('waist', [0, Math.min(WAIST, shape.length - 4)]);
  at('hem', [0, shape.length]);
  at('left hem', [-shape.hem / 2, shape.length]);
  at('right hem', [shape.hem / 2, shape.length]);
};
