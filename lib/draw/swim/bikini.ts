import type { DrawKind } from '../drawing.ts';
import { strap } from '../dress/straps.ts';
import { Garment, line, type Node, pen } from '../kit/index.ts';
import { briefs } from './briefs.ts';

/** A cord with its shade and light, as of a bikini's ties. */
export const cord = (garment: Garment, nodes: readonly Node[], width = 0.55): void => strap(garment, nodes, width);

/** A bikini: triangle top with its ties, briefs tied at the sides. */
export const bikini: DrawKind = (piece, detail) => {
  const garment = new Garment(piece, detail);
  const j = (amount = 0.6) => garment.jitter(amount);
  cord(garment, [
    [-7.6, 9.6],
    [-7.4, 4],
    [-4.4 + j(), 0.6],
    [1.2, 1.2],
    [4.6 + j(), 5.4],
    [2.6, 8.6],
  ]);
  cord(garment, [
    [7.6, 9.6],
    [8.2, 3.6],
    [5.6 + j(), 0.2],
    [0, 1.6],
    [-3.4, 5],
    [-2.2 + j(), 9.4],
  ]);
  for (const side of [-1, 1])
    cord(garment, [
      [side * 14.4, 24.4],
      [side * 17.6, 23.2 + j()],
      [side * 20.4, 24.4],
      [side * 18.6, 27.4],
      [side * 22 + j(), 29.6],
    ]);
  garment.add(
    line(
      [
        [-14.4, 24.4],
        [0, 25.4],
        [14.4, 24.4],
      ],
      0.9,
      garment.cloth.ink,
    ),
    line(
      [
        [-14.4, 24.3],
        [0, 25.3],
        [14.4, 24.3],
      ],
      0.6,
      garment.cloth.ground,
    ),
  );
  for (const side of [-1, 1] as const) cup(garment, side);
  briefs(garment, 40, { tied: true });
  return garment
    .anchor('neck', [0, 0])
    .anchor('waist', [0, 40])
    .anchor('fork', [0, 62])
    .anchor('hem', [0, 62])
    .finish();
};

const cup = (garment: Garment, side: 1 | -1): void => {
  const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
  garment.panel(
    [s(7.6, 9, 'corner'), s(11.2, 16), s(14.6, 24.6, 'corner'), s(8, 25.6), s(1.4, 25, 'corner'), s(4, 16.4)],
    {
      wobble: 0.08,
      cast: 0.3,
      turn: side * -8,
      round: { from: [side === 1 ? 1 : -15, 0], to: [side === 1 ? 15 : -1, 0], strength: 1 },
      inner: [
        pen([s(8, 17), s(8.2, 21), s(7.6, 25)], 0.28, garment.cloth.ink, 0.55, 0.6),
        ...[-3.6, -1.2, 1.4, 3.8].map((dx) =>
          garment.fold([s(8 + dx * 1.2, 25), s(8 + dx, 22), s(7.8 + dx * 0.7, 19.6)], 0.8 * side, 0.8),
        ),
        ...(garment.small
          ? []
          : [
              line([s(7, 10.5), s(4.6, 16.8), s(2, 24)], 0.16, garment.cloth.ink, 0.4),
              line([s(8.2, 10.5), s(10.7, 16.4), s(13.8, 24)], 0.16, garment.cloth.ink, 0.4),
            ]),
      ],
    },
  );
};
