import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { Garment, lerp, type Node, pen, stitch, tone } from '../kit/index.ts';
import { flatCollar } from './collars.ts';
import { upperLength } from './shape.ts';

/** A half circle hung from the shoulders, with slits for the arms. */
export const drawCape = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const length = upperLength(piece, 86).cm;
  const spread = lerp(43, 56, Math.min(1, Math.max(0, (length - 46) / 60)));
  const half = 8.4;
  const neckDepth = 7.5;
  const shape = {
    chest: 56,
    waist: 70,
    hem: spread * 2,
    length,
    shoulder: 42,
    slope: 6,
    armhole: 26,
    neck: half * 2,
    neckDepth,
    hemDip: 15,
    blouse: 0,
    sleeve: undefined,
  };
  garment.inside(
    [
      [-half - 0.5, 0.2, 'corner'],
      [0, -3],
      [half + 0.5, 0.2, 'corner'],
      [0, neckDepth + 1, 'corner'],
    ],
    { label: [0, -1] },
  );
  const side = (sign: 1 | -1): Node[] => [
    [sign * half, 0, 'corner'],
    [sign * 17, 4.2],
    [sign * 24, 11],
    [sign * lerp(24, spread, 0.46), lerp(11, length, 0.36)],
    [sign * lerp(24, spread, 0.84), lerp(11, length, 0.68)],
    [sign * spread, length - 15 + garment.jitter(0.6), 'corner'],
  ];
  const outline: Node[] = [
    [-half, 0, 'corner'],
    [-1, neckDepth, 'corner'],
    [1, neckDepth, 'corner'],
    ...side(1),
    [spread * 0.62, length - 4.4],
    [spread * 0.24, length],
    [-spread * 0.2, length + 0.4],
    [-spread * 0.6, length - 4],
    ...side(-1).reverse().slice(0, -1),
  ];
  const flutes = [-0.86, -0.62, -0.36, 0.3, 0.56, 0.84].map((share, i) =>
    garment.fold(
      [
        [share * spread * 0.98, length - 15 * Math.abs(share) ** 2 - 0.5],
        [share * spread * 0.74 + garment.jitter(1), length * 0.62],
        [share * 27, length * (i % 2 ? 0.24 : 0.34)],
      ],
      share < 0 ? 2.8 : -2.8,
      i % 2 ? 0.7 : 0.9,
      0.36,
    ),
  );
  garment.panel(outline, {
    round: { from: [-spread * 0.8, 0], to: [spread * 0.8, 0], strength: 0.9 },
    inner: [
      garment.plane(
        [
          [-12, 10],
          [-18, length * 0.5],
          [-22, length],
        ],
        5,
        cloth.bright,
        0.34 * cloth.sheen,
      ),
      garment.plane(
        [
          [15, 12],
          [22, length * 0.5],
          [28, length],
        ],
        5,
        cloth.ink,
        0.24 * cloth.depth,
      ),
      ...flutes,
      ...(garment.small
        ? []
        : [
            stitch(
              [
                [-spread, length - 17],
                [-spread * 0.6, length - 6.2],
                [0, length - 1.8],
                [spread * 0.6, length - 6.4],
                [spread, length - 17],
              ],
              cloth.ink,
              0.6,
            ),
          ]),
      ...[-1, 1].map((sign) =>
        pen(
          [
            [sign * half * 1.02, 1],
            [sign * 19, 9],
            [sign * 25, 22],
          ],
          0.24,
          cloth.ink,
          0.5,
        ),
      ),
    ],
  });
  // the arm slits, bound, slightly open
  for (const sign of [-1, 1] as const) {
    const top = 31;
    const end = Math.min(top + 25, length - 16);
    garment.inside(
      [
        [sign * 21, top, 'corner'],
        [sign * 22.4, lerp(top, end, 0.5)],
        [sign * 24.6, end, 'corner'],
        [sign * 20.9, lerp(top, end, 0.5)],
      ],
      { fill: cloth.lining },
    );
    garment.add(
      pen(
        [
          [sign * 20.2, top - 1],
          [sign * 20, lerp(top, end, 0.5)],
          [sign * 23.8, end + 1],
        ],
        0.24,
        cloth.ink,
        0.6,
        0.5,
      ),
    );
  }
  garment.add(
    pen(
      [
        [0.2, neckDepth],
        [0.8, length * 0.5],
        [0.4, length],
      ],
      0.5,
      cloth.ink,
      0.8,
      0.5,
    ),
    garment.fold(
      [
        [0.6, neckDepth + 4],
        [0.9, length * 0.5],
        [0.4, length - 1],
      ],
      -1.6,
      0.7,
      0.5,
    ),
  );
  const colour = tone(cloth.ground, cloth.depth === 0.75 ? 0.14 : -0.24, 0.7);
  for (let i = 0; i < 3; i++) garment.button(2.4, neckDepth + 7 + i * 12, 1.3, colour);
  flatCollar(garment, shape, { points: 10.4, wide: 3 });
  garment
    .anchor('neck', [0, 0])
    .anchor('left shoulder', [-21, 8])
    .anchor('right shoulder', [21, 8])
    .anchor('waist', [0, 42])
    .anchor('hem', [0, length]);
  return garment.finish();
};
