import type { Cloth } from '../fabric/index.ts';
import { type Garment, type Node, stitch } from '../kit/index.ts';
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
