import { corner, type Node } from '../kit/index.ts';
import type { Skirt } from './skirt.ts';

/** A tie knotted at the waist: two loops, a knot and two hanging ends, all of the skirt's own cloth. */
export const waistTie = ({ garment }: Pick<Skirt, 'garment'>, x: number, y: number, drop: number, size = 1): void => {
  const tail = (dx: number, dy: number, bend: number, w: number): Node[] => [
    corner(x - w * 0.4, y + 0.4),
    [x + dx * 0.35 + bend - w * 0.6, y + dy * 0.5],
    corner(x + dx - w, y + dy),
    corner(x + dx + w, y + dy + 1.2),
    [x + dx * 0.35 + bend + w * 0.9, y + dy * 0.5],
    corner(x + w * 0.6, y + 0.4),
  ];
  // a loop lies as a flat fold: narrow at the knot, drooping at its end
  const loop = (side: 1 | -1, reach: number, lift: number): Node[] => [
    corner(x + side * 0.4, y - 0.6),
    [x + side * reach * 0.5, y - lift],
    [x + side * reach * 0.9, y - lift * 0.5],
    corner(x + side * reach, y + 1.2 * size),
    [x + side * reach * 0.72, y + 2.6 * size],
    [x + side * reach * 0.36, y + 1.7 * size],
    corner(x + side * 0.4, y + 0.9),
  ];
  const panel = (nodes: Node[], turn: number) =>
    garment.panel(nodes, { edge: 0.45, cast: 0.6, wobble: 0.08, turn, rim: false });
  panel(tail(-2.6, drop, -0.8, 1.15 * size), 6);
  panel(tail(2.8, drop * 0.86, 0.9, 1.15 * size), -8);
  panel(loop(-1, 7.4 * size, 1.5), 60);
  panel(loop(1, 6.6 * size, 1.9), -60);
  for (const side of [-1, 1] as const)
    garment.add(
      garment.fold(
        [
          [x + side * 0.6, y + 0.2],
          [x + side * 2.6 * size, y - 0.2],
          [x + side * 4.6 * size, y - 0.1],
        ],
        0.6 * side,
        0.9,
      ),
    );
  garment.panel(
    [
      corner(x - 1.2, y - 1),
      [x, y - 1.25],
      corner(x + 1.1, y - 1.1),
      [x + 1.35, y + 0.2],
      corner(x + 0.95, y + 1.4),
      corner(x - 0.9, y + 1.5),
      [x - 1.3, y + 0.2],
    ],
    {
      covers: false,
      edge: 0.5,
      cast: 0.5,
      wobble: 0.05,
      inner: [
        garment.fold(
          [
            [x - 0.5, y - 1],
            [x - 0.2, y + 0.2],
            [x - 0.5, y + 1.4],
          ],
          0.6,
          1,
          0.5,
        ),
      ],
    },
  );
};
