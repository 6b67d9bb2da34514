import { type Garment, type Node, pen } from '../kit/index.ts';
import { both } from './collars.ts';
import { bandNodes } from './finish.ts';
import type { UpperShape } from './shape.ts';
/** A narrow standing band that ends in long ties knotted to a bow. */
export const bowCollar = (garment: Garment, shape: UpperShape): void => {
  const { cloth } = garment;
  const half = shape.neck / 2;
  const y = shape.neckDepth;
  const band: Node[] = [
    [-half, -0.4],
    [-half * 0.8, y * 0.4],
    [0, y],
    [half * 0.8, y * 0.4],
    [half, -0.4],
  ];
  garment.panel(bandNodes(band, 2, -1.4), { edge: 0.5, cast: 0.5, turn: 60, covers: false });
  both((side) => {
    const s = (x: number, dy: number, c?: 'corner'): Node => [side * x, y + dy, c];
    const long = side === 1 ? 29 : 24;
    garment.panel(
      [
        s(0.1, 0.4, 'corner'),
        s(2.6, 8),
        s(2.4 + side * 0.5, long * 0.6),
        s(5.4, long, 'corner'),
        s(1.2, long + 2.4, 'corner'),
        s(-0.2, long * 0.55),
        s(-1, 7),
      ],
      {
        cast: 0.8,
        edge: 0.6,
        turn: side * 8,
        inner: [garment.fold([s(0.8, 1), s(1.3, 10), s(2.4, long - 3)], -1 * side, 0.9)],
      },
    );
  });
  both((side) => {
    const s = (x: number, dy: number, c?: 'corner'): Node => [side * x, y + dy, c];
    const wide = side === 1 ? 14 : 13;
    const drop = side === 1 ? 1.2 : 0.4;
    garment.panel(
      [
        s(0.2, -0.9, 'corner'),
        s(4, -3),
        s(wide * 0.78, -4.6 + drop),
        s(wide, -0.6 + drop),
        s(wide * 0.86, 4.6 + drop),
        s(5, 3),
        s(0.2, 1.1, 'corner'),
      ],
      {
        cast: 0.9,
        edge: 0.7,
        turn: side * 70,
        inner: [
          garment.fold([s(0.6, -0.2), s(5, -0.9), s(wide * 0.7, -1.8 + drop)], -1.2 * side, 1),
          garment.fold([s(0.6, 0.6), s(4.6, 1.2), s(wide * 0.62, 2.6 + drop)], 1 * side, 0.8),
          garment.plane(
            [s(wide * 0.72, -3.4 + drop), s(wide * 0.82, 0.4 + drop), s(wide * 0.74, 3.6 + drop)],
            1.1,
            cloth.ink,
            0.3,
          ),
        ],
      },
    );
  });
  garment.panel(
    [
      [-1.7, y - 1.6],
      [1.7, y - 1.7],
      [1.9, y + 1.7],
      [-1.8, y + 1.9],
    ],
    {
      cast: 0.6,
      edge: 0.6,
      wobble: 0.05,
      inner: [
        garment.fold(
          [
            [-0.4, y - 1.4],
            [-0.2, y],
            [-0.5, y + 1.6],
          ],
          0.8,
          0.8,
        ),
      ],
    },
  );
  garment.add(
    pen(
      [
        [-half, -0.2],
        [-half * 0.8, y * 0.5],
        [-1.6, y],
      ],
      0.2,
      cloth.ink,
      0.4,
    ),
  );
};
