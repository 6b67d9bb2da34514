import type { Cloth } from '../fabric/index.ts';
import { shape as flat, type Garment, type Node, stitch } from '../kit/index.ts';
import type { UpperShape } from './shape.ts';

export const both = (draw: (side: 1 | -1) => void): void => {
  draw(-1);
  draw(1);
};

export interface ShirtCollar {
  /** How far the points reach below the neck points. */
  readonly points?: number;
  /** How far the points turn outwards: 0 for a straight collar, 2 for a spread one. */
  readonly spread?: number;
  /** Height of the stand at the back. */
  readonly stand?: number;
  readonly cloth?: Cloth;
  readonly stitched?: boolean;
  readonly buttonDown?: boolean;
}

/** A turned-down collar on a stand: shirts, overshirts, trench coats. */
export const shirtCollar = (garment: Garment, shape: UpperShape, options: ShirtCollar = {}): void => {
  const cloth = options.cloth ?? garment.cloth;
  const half = shape.neck / 2;
  const deep = shape.neckDepth;
  const points = options.points ?? 9.5;
  const spread = options.spread ?? 0.8;
  const stand = options.stand ?? 3.6;
  garment.panel(
    [
      [-half - 0.2, -stand * 0.5, 'corner'],
      [-half * 0.5, -stand],
      [half * 0.5, -stand],
      [half + 0.2, -stand * 0.5, 'corner'],
      [half - 1.4, 0.2, 'corner'],
      [0, -stand * 0.32],
      [-half + 1.4, 0.2, 'corner'],
    ],
    { cloth, edge: 0.5, turn: 90, fill: cloth.shade, wobble: 0.06 },
  );
  both((side) => {
    const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
    const leaf: Node[] = [
      s(0.5, deep - 0.8, 'corner'),
      s(half * 0.6, 2.6),
      s(half - 1.5, -stand * 0.2),
      s(half - 0.1, -stand * 0.78, 'corner'),
      s(half + 2.3, 0.4),
      s(half + 2.2 + spread * 0.5, points * 0.5),
      s(half + 0.6 + spread, points, 'corner'),
      s(half * 0.52, Math.max(points - 1.2, deep + 0.6)),
    ];
    garment.panel(leaf, {
      cloth,
      turn: side * 38,
      edge: 0.6,
      wobble: 0.08,
      cast: 0.85,
      round: { from: [side * half - 4, 0], to: [side * half + 4, 4], strength: 0.4 },
      inner:
        options.stitched === false || garment.small
          ? []
          : [
              stitch(
                [
                  s(1.4, deep - 0.2),
                  s(half * 0.55, Math.max(points - 1.9, deep)),
                  s(half + 0.2 + spread, points - 0.9, 'corner'),
                  s(half + 1.5 + spread * 0.5, points * 0.5),
                  s(half + 1.6, 0.8),
                  s(half, -stand * 0.6),
                ],
                cloth.ink,
                0.7,
              ),
            ],
    });
    if (options.buttonDown) garment.button(side * (half + 0.2 + spread), points - 1.2, 0.4, cloth.bright);
  });
};

/** A collar buttoned up: the leaves meet over the stand, whose button shows between their points. */
export const closedCollar = (
  garment: Garment,
  shape: UpperShape,
  options: { readonly points: number; readonly spread: number; readonly stand: number; readonly button: string },
): void => {
  const { cloth } = garment;
  const half = shape.neck / 2;
  const deep = shape.neckDepth;
  const { points, spread, stand } = options;
  // the far side of the stand, seen into
  garment.panel(
    [
      [-half - 0.3, -stand * 0.55, 'corner'],
      [-half * 0.5, -stand - 0.3],
      [half * 0.5, -stand - 0.3],
      [half + 0.3, -stand * 0.55, 'corner'],
      [half * 0.5, 0.6],
      [0, 1.6],
      [-half * 0.5, 0.6],
    ],
    { cloth, edge: 0.5, turn: 90, fill: cloth.lining, wobble: 0.05 },
  );
  garment.add(
    flat(
      [
        [-1.9, -stand + 0.9, 'corner'],
        [1.9, -stand + 0.9, 'corner'],
        [1.9, -stand + 2.3, 'corner'],
        [-1.9, -stand + 2.3, 'corner'],
      ],
      '#efe7d6',
      garment.small ? 0 : 0.92,
    ),
  );
  // the near side of the stand, seen between the leaves
  garment.panel(
    [
      [-half * 0.72, 0.4, 'corner'],
      [0, deep - 2.2],
      [half * 0.72, 0.4, 'corner'],
      [half * 0.5, deep + 1],
      [0, deep + 0.8],
      [-half * 0.5, deep + 1],
    ],
    { cloth, edge: 0.4, turn: 90, wobble: 0.05, covers: false, loose: true },
  );
  both((side) => {
    const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
    garment.panel(
      [
        s(0.15, deep - 2.3, 'corner'),
        s(half * 0.52, 0.1),
        s(half - 0.5, -stand * 0.72, 'corner'),
        s(half + 1.7, -0.2),
        s(half + 1.9, points * 0.42),
        s(half * 0.56 + spread, points, 'corner'),
        s(half * 0.3, points * 0.66),
      ],
      {
        cloth,
        turn: side * 30,
        edge: 0.6,
        wobble: 0.06,
        cast: 0.8,
        round: { from: [side * half - 4, 0], to: [side * half + 4, 4], strength: 0.4 },
        inner: garment.small
          ? []
          : [
              stitch(
                [
                  s(0.7, deep - 1.5),
                  s(half * 0.38, points * 0.64),
                  s(half * 0.56 + spread - 0.1, points - 0.9, 'corner'),
                  s(half + 1.2, points * 0.42),
                  s(half + 1, 0),
                ],
                cloth.ink,
                0.6,
              ),
            ],
      },
    );
  });
  garment.button(0.1, deep - 0.3, 0.5, options.button);
};

/** A shaped collar that falls flat to the shoulders: pea coats, denim and leather jackets, fleece. */
export const flatCollar = (
  garment: Garment,
  shape: UpperShape,
  options: {
    readonly points?: number;
    readonly wide?: number;
    readonly cloth?: Cloth;
    readonly stitched?: boolean;
  } = {},
): void =>
  shirtCollar(garment, shape, {
    points: options.points ?? 10,
    spread: options.wide ?? 2.6,
    stand: 3.2,
    ...(options.cloth && { cloth: options.cloth }),
    ...(options.stitched !== undefined && { stitched: options.stitched }),
  });
