import { alongEdge, type Edge } from '../kit/edges.ts';
import { group, lerp, line, type Node, type Painted, pen, reversed, shape, stitch, tone } from '../kit/index.ts';
import { seamPen } from './seam-pen.ts';
import type { Skirt } from './skirt.ts';

const NOTHING: Painted = group([]);

/** Stitching round the hem, `up` centimetres from its edge. */
export const skirtHemStitch = (
  { garment, at, hemAt }: Skirt,
  up: number,
  thread = garment.cloth.ink,
  opacity = 0.55,
): Painted =>
  garment.small
    ? NOTHING
    : stitch(
        [0, 0.25, 0.5, 0.75, 1].map((share): Node => [at(share)(hemAt(share) - up), hemAt(share) - up]),
        thread,
        opacity,
      );

/** A shaped seam or dart from the waist down. */
export const waistDarts = ({ garment, at, top }: Skirt, shares: readonly number[], reach: number): Painted =>
  group(
    shares.map((share) =>
      seamPen(
        garment,
        [
          [at(share)(top), top - 0.2],
          [at(lerp(share, 0.5, -0.03))(top + reach), top + reach],
        ],
        0.36,
        0.8,
        0.25,
      ),
    ),
  );

/** A seam from waist to hem, with its light side. */
export const longSeam = ({ garment, down, top, measures: { length } }: Skirt, share: number, width = 0.3): Painted => {
  const run = down(share, top, length + 1, 4);
  return group([
    seamPen(garment, run, width, 0.7, 0.5),
    garment.small
      ? NOTHING
      : pen(
          run.map(([x, y]): Node => [x - 0.35, y]),
          0.24,
          garment.cloth.bright,
          0.5,
          0.5,
        ),
  ]);
};

/** A box pleat let in below a seam: two edges that open towards the hem over a shaded bottom. */
export const boxPleat = (
  { garment, at, hemAt, measures: { length } }: Skirt,
  share: number,
  from: number,
  spread: number,
): Painted => {
  const x = at(share);
  const low = hemAt(share) + 1;
  const left: Node[] = [
    [x(from), from],
    [x(length) - spread * 0.6, lerp(from, low, 0.6)],
    [x(length) - spread, low],
  ];
  const right: Node[] = [
    [x(from), from],
    [x(length) + spread * 0.6, lerp(from, low, 0.6)],
    [x(length) + spread, low],
  ];
  return group([
    shape([...left, ...reversed(right)], garment.cloth.deep, 0.6),
    garment.plane(
      [
        [x(from), from + 2],
        [x(length), lerp(from, low, 0.6)],
        [x(length), low],
      ],
      spread * 0.7,
      garment.cloth.ink,
      0.4,
      0.7,
    ),
    seamPen(garment, left, 0.36, 0.85, 0.7),
    seamPen(garment, right, 0.36, 0.85, 0.7),
    seamPen(
      garment,
      [
        [x(length), lerp(from, low, 0.3)],
        [x(length) + 0.1, low],
      ],
      0.2,
      0.5,
      0.6,
    ),
  ]);
};

/** An overlapping front edge with its own fold of light, from the waist to the hem. */
export const overlapEdge = (skirt: Skirt, edge: Edge, from: number, to: number): Painted => {
  const { garment } = skirt;
  const run = alongEdge(edge, from, to, 0, 5);
  return group([
    garment.plane(
      run.map(([x, y]): Node => [x + 0.9, y]),
      1.3,
      garment.cloth.ink,
      0.5,
      0.6,
    ),
    seamPen(garment, run, 0.45, 0.9, 0.6),
    garment.plane(
      run.map(([x, y]): Node => [x - 0.8, y]),
      0.5,
      garment.cloth.bright,
      0.5,
      0.6,
    ),
    ...(garment.small
      ? []
      : [
          stitch(
            run.map(([x, y]): Node => [x - 1.1, y]),
            garment.cloth.ink,
            0.45,
          ),
        ]),
  ]);
};

/** A closing zip hidden in a seam: only its line and the pull show. */
export const hiddenZip = ({ garment }: Pick<Skirt, 'garment'>, x: number, from: number, to: number): Painted =>
  group([
    seamPen(
      garment,
      [
        [x, from],
        [x + 0.1, to],
      ],
      0.34,
      0.85,
      0.5,
    ),
    ...(garment.small
      ? []
      : [
          line(
            [
              [x - 0.5, from + 0.5],
              [x - 0.45, to],
            ],
            0.1,
            garment.cloth.ink,
            0.4,
          ),
          shape(
            [
              [x - 0.3, from + 0.4],
              [x + 0.3, from + 0.4],
              [x + 0.35, from + 2.4],
              [x - 0.35, from + 2.4],
            ],
            tone('#9a9a98', -0.05),
          ),
        ]),
  ]);
