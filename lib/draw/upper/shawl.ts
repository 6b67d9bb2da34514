import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { clampLength, FROM_SHOULDER, Garment, line, type Node, type Painted, pen, shape } from '../kit/index.ts';

/** A large cloth folded once and laid in a soft V, one end over the other, both fringed. */
export const drawShawl = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const byWord = piece.length === 'none' ? 0 : FROM_SHOULDER[piece.length] - FROM_SHOULDER.hip;
  const drop = clampLength(piece.lengthCm, 66 + byWord, 30, 155).cm;
  const wide = piece.cut === 'slim' || piece.cut === 'fitted' ? 0.8 : 1;
  const w = (share: number): number => share * 43 * wide;
  const far: Node[] = [
    [6, -3.6, 'corner'],
    [11, -2.6],
    [w(0.42), 1.4],
    [w(0.76), 11],
    [w(0.96), drop * 0.45],
    [w(1.02), drop * 0.72],
    [w(1), drop - 2, 'corner'],
    [w(0.55), drop - 0.6],
    [w(0.06), drop - 3, 'corner'],
    [-5, drop * 0.55],
    [-3.6, 27, 'corner'],
    [3.4, 12],
    [6.6, 3],
  ];
  const near: Node[] = [
    [-6.6, -3.4, 'corner'],
    [-6.4, 3],
    [-2.6, 13],
    [6, 27],
    [w(0.34), drop * 0.62],
    [w(0.46), drop + 3, 'corner'],
    [-w(0.2), drop + 3.6],
    [-w(0.96), drop - 1, 'corner'],
    [-w(1), drop * 0.68],
    [-w(0.92), drop * 0.4],
    [-w(0.7), 9],
    [-w(0.4), 2.6],
    [-12, -1.2],
  ];
  fringe(garment, [w(0.06), drop - 3], [w(1), drop - 2]);
  garment.inside(
    [
      [-9, -1.4, 'corner'],
      [-5, -4.4],
      [0, -5.4],
      [5, -4.4],
      [9, -1.4, 'corner'],
      [5, 14],
      [-2, 30, 'corner'],
      [-6, 12],
    ],
    { fill: cloth.shade },
  );
  garment.add(
    garment.fold(
      [
        [-4, -3],
        [0, 2],
        [1, 14],
      ],
      1.6,
      0.7,
    ),
    garment.fold(
      [
        [4, -3],
        [3, 6],
        [0, 18],
      ],
      -1.4,
      0.6,
    ),
  );
  garment.panel(far, {
    turn: -14,
    round: { from: [0, 0], to: [w(1), 0], strength: 0.9 },
    inner: drapes(garment, drop, w, 1),
  });
  fringe(garment, [-w(0.96), drop - 1], [w(0.46), drop + 3]);
  garment.panel(near, {
    turn: 16,
    cast: 1.1,
    round: { from: [-w(1), 0], to: [w(0.5), 0], strength: 0.9 },
    inner: drapes(garment, drop, w, -1),
  });
  // the turned edges at the neck
  for (const edge of [
    [
      [6.2, -3.4],
      [6.4, 3],
      [3, 12.6],
      [-0.6, 21],
    ],
    [
      [-6.8, -3.2],
      [-6.6, 3],
      [-2.8, 13],
      [5.6, 27],
      [w(0.3), drop * 0.54],
    ],
  ] as const)
    garment.add(
      pen(edge, 0.9, cloth.light, 0.85, 0.5),
      pen(
        edge.map(([x, y]): Node => [x - 1.4, y + 0.8]),
        0.2,
        cloth.ink,
        0.5,
        0.5,
      ),
    );
  garment.anchor('neck', [0, 0]).anchor('hem', [0, drop]);
  return garment.finish();
};

/** Folds that fan from the neck; on the near side they follow the cloth across the chest. */
const drapes = (garment: Garment, drop: number, w: (share: number) => number, side: 1 | -1): Painted[] =>
  [-0.34, -0.02, 0.28, 0.56, 0.84].map((share, i) =>
    garment.fold(
      [
        [side * (share * 12 - 2), 1 + Math.abs(share) * 5],
        [side * w(share * 0.62) + garment.jitter(1), drop * 0.42],
        [side * w(share) + garment.jitter(1), drop * (0.84 + (i % 2) * 0.14)],
      ],
      (i % 2 ? 2.2 : 3) * side,
      0.9,
      0.4,
    ),
  );

const fringe = (garment: Garment, from: readonly [number, number], to: readonly [number, number]): void => {
  const { cloth } = garment;
  const count = garment.small ? 14 : 56;
  let path = '';
  for (let i = 0; i <= count; i++) {
    const x = from[0] + ((to[0] - from[0]) * i) / count;
    const y = from[1] + ((to[1] - from[1]) * i) / count;
    path += `M${Math.round(x * 100) / 100} ${Math.round((y - 0.5) * 100) / 100}L${Math.round((x + garment.jitter(0.7)) * 100) / 100} ${Math.round((y + 5.6 + garment.jitter(0.6)) * 100) / 100}`;
  }
  garment.add(
    shape(
      [
        [from[0], from[1] - 0.3, 'corner'],
        [to[0], to[1] - 0.3, 'corner'],
        [to[0], to[1] + 4.2, 'corner'],
        [from[0], from[1] + 4.2, 'corner'],
      ],
      cloth.shade,
      0.7,
    ),
    line(path, garment.small ? 0.7 : 0.42, cloth.ink, 0.8),
    line(path, garment.small ? 0.5 : 0.26, cloth.ground),
  );
  garment.cover([
    [from[0], from[1]],
    [to[0], to[1]],
    [to[0], to[1] + 4.6],
    [from[0], from[1] + 5.6],
  ]);
};
