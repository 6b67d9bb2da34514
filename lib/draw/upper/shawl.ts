import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { clampLength, FROM_SHOULDER, Garment, line, type Node, type Painted } from '../kit/index.ts';

/** A large cloth folded once and laid in a soft V, one end over the other, both fringed. */
export const drawShawl = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const byWord = piece.length === 'none' ? 0 : FROM_SHOULDER[piece.length] - FROM_SHOULDER.hip;
  const drop = clampLength(piece.lengthCm, 66 + byWord, 40, 110).cm;
  const wide = piece.cut === 'slim' || piece.cut === 'fitted' ? 20 : 26;
  const far: Node[] = [
    [-8, -2],
    [0, -4.6],
    [9, -1.6],
    [17, 14],
    [25, drop * 0.55],
    [29, drop - 1, 'corner'],
    [29 - wide * 0.5, drop + 1],
    [29 - wide, drop + 0.4, 'corner'],
    [1, drop * 0.5],
    [-2, 20],
    [-5, 6],
  ];
  const near: Node[] = [
    [9, -2.4],
    [11, 5],
    [5, 22],
    [-4, drop * 0.56],
    [-7, drop + 5, 'corner'],
    [-7 - wide * 0.5, drop + 6],
    [-7 - wide, drop + 4, 'corner'],
    [-31, drop * 0.55],
    [-22, 16],
    [-12, 1],
    [-5, -5.2],
    [3, -5.6],
  ];
  fringe(garment, [29 - wide, drop + 0.3], [29, drop - 1]);
  garment.inside(
    [
      [-9, -1],
      [0, -4.8],
      [9, -1],
      [6, 8],
      [0, 15],
      [-7, 7],
    ],
    { fill: cloth.shade },
  );
  garment.panel(far, {
    turn: -12,
    round: { from: [0, 0], to: [28, 0], strength: 0.9 },
    inner: drapes(garment, drop, 1),
  });
  fringe(garment, [-7 - wide, drop + 4], [-7, drop + 5]);
  garment.panel(near, {
    turn: 14,
    cast: 1.1,
    round: { from: [-32, 0], to: [4, 0], strength: 0.9 },
    inner: drapes(garment, drop, -1),
  });
  // the roll at the neck
  garment.panel(
    [
      [-12, 1],
      [-8, -4.6],
      [0, -7],
      [8, -4.4],
      [11.4, 2],
      [7.4, 2.6],
      [4, -1.4],
      [-2, -2.4],
      [-7.4, 0],
      [-9.4, 4],
    ],
    {
      turn: 70,
      cast: 0.8,
      inner: [
        garment.fold(
          [
            [-10, 1],
            [-2, -4.4],
            [9, -0.6],
          ],
          1.2,
          0.9,
          0.5,
        ),
      ],
    },
  );
  garment.anchor('neck', [0, 0]).anchor('hem', [0, drop]);
  return garment.finish();
};

const drapes = (garment: Garment, drop: number, side: 1 | -1): Painted[] =>
  [0.1, 0.3, 0.52, 0.76].map((share, i) => {
    const top: Node = [side * (-2 + share * 15), 2 + share * 8];
    const end = side === 1 ? 3 + share * 26 : -7 - share * 26;
    return garment.fold(
      [
        top,
        [side * (4 + share * 16) + garment.jitter(1), drop * 0.4],
        [end + garment.jitter(1), drop * (0.8 + (i % 2) * 0.2)],
      ],
      (i % 2 ? 2 : 2.6) * side,
      0.85,
      0.4,
    );
  });

const fringe = (garment: Garment, from: readonly [number, number], to: readonly [number, number]): void => {
  const { cloth } = garment;
  const count = garment.small ? 9 : 34;
  let path = '';
  for (let i = 0; i <= count; i++) {
    const x = from[0] + ((to[0] - from[0]) * i) / count;
    const y = from[1] + ((to[1] - from[1]) * i) / count;
    path += `M${Math.round(x * 100) / 100} ${Math.round((y - 0.5) * 100) / 100}L${Math.round((x + garment.jitter(0.7)) * 100) / 100} ${Math.round((y + 5.6 + garment.jitter(0.6)) * 100) / 100}`;
  }
  garment.add(
    line(path, garment.small ? 0.7 : 0.42, cloth.ink, 0.8),
    line(path, garment.small ? 0.5 : 0.26, cloth.ground),
  );
  garment.cover([
    [from[0], from[1]],
    [to[0], to[1]],
    [to[0], to[1] + 5.6],
    [from[0], from[1] + 5.6],
  ]);
};
