import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { Garment, type Node, pen } from '../kit/index.ts';
import { points } from '../kit/points.ts';

import { folds } from './scarves.ts';
/** A long silk tied in a bow, its ends hanging. */
export const sash = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  garment.panel(
    points(
      '-3 -1.6!, -14 -4, -17.4 -9, -12 -13.2, 0 -14.4, 12 -13.2, 17.4 -9, 14 -4, 3 -1.6!, 3 3!, 15 1, 21 -6.8, 17.6 -14.8, 6 -18.8, -6 -18.8, -17.6 -14.8, -21 -6.8, -15 1, -3 3!',
    ),
    {
      turn: 70,
      edge: 0.9,
      inner: folds(garment, [
        ['-18.4 -8, -15 -13.4, -5 -16.4', 1.3, 0.9],
        ['18.4 -8, 15 -13.4, 5 -16.4', -1.3, 0.9],
        ['-3 0, -10 -1.4, -16.6 -4.6', 1.2, 0.9],
        ['3 0, 10 -1.4, 16.6 -4.6', -1.2, 0.9],
      ]),
    },
  );
  const tail = (outline: string, turn: number, creases: readonly (readonly [string, number, number])[]): void => {
    garment.panel(points(outline), { turn, edge: 0.8, cast: 0.6, inner: folds(garment, creases) });
  };
  tail('0 1!, 4.6 3, 8 10, 10.6 20, 12.8 31.4!, 8.6 30, 4.4 31!, 4 20, 2 10', -12, [
    ['1 2.4, 5 12, 7.4 30', 1.4, 1],
    ['3.4 3.4, 7.6 13, 10.4 28', 1.2, 0.8],
  ]);
  tail('0 1!, -4.2 3.2, -7.4 9, -9.6 17, -11.4 26.4!, -7.6 25.4, -3.4 27!, -2.4 17, -0.6 9', 12, [
    ['-1 2.4, -4.4 11, -6.2 25', 1.4, 1],
    ['-3 3.6, -7 12, -9.2 23', -1.1, 0.8],
  ]);
  const loop = (side: -1 | 1): void => {
    const flip = (nodes: string): Node[] => points(nodes).map(([x, y, c]): Node => [x * side, y, c]);
    garment.panel(flip('1 0!, 4 -4.6, 9 -6.4, 12.8 -4.4, 13.4 0, 10.8 4, 6 4.4, 1 2!'), {
      turn: side * 40,
      edge: 0.8,
      cast: 0.5,
      inner: [
        garment.fold(flip('1.6 0.6, 6 -1.8, 11 -3'), 1.2, 1),
        garment.fold(flip('1.6 1.4, 6 1.8, 10.4 2'), 1, 0.8),
        garment.plane(flip('4 -3, 8 -4.4, 11 -2.8'), 0.9, cloth.bright, 0.5 * cloth.sheen),
      ],
    });
  };
  loop(1);
  loop(-1);
  garment.panel(points('-2.3 -2.2, 0 -2.9, 2.3 -2.2, 2.7 0.8, 2.2 3.6, 0 4.2, -2.2 3.6, -2.7 0.8'), {
    edge: 0.7,
    cast: 0.5,
    wobble: 0.06,
    inner: folds(garment, [
      ['-1.4 -2, -0.8 0.8, -1.2 3.6', 0.7, 1],
      ['1 -2, 0.7 0.8, 1 3.6', 0.7, 1],
    ]),
  });
  if (!garment.small) garment.add(pen(points('-0.4 -1.8, -0.1 0.4, -0.3 2.6'), 0.3, cloth.bright, 0.6, 0.5));
  return garment.anchor('waist', [0, -8]).finish();
};
