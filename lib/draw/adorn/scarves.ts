import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { curvePath, Garment, line, type Node, offsetLine, type Painted, resample, sampleCurve } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import { adornmentLength } from './length.ts';

/** Threads hanging from an edge. */
const fringe = (garment: Garment, edge: readonly Node[], length: number, lean: number): void => {
  const count = garment.small ? 9 : 22;
  const run = resample(sampleCurve(edge), count);
  const strands = run.map(([x, y]) => {
    const swing = garment.jitter(0.35);
    return curvePath(
      [
        [x, y - 0.2],
        [x + lean * 0.5 + swing, y + length * 0.55],
        [x + lean + swing * 0.5, y + length + garment.jitter(0.3)],
      ],
      false,
    );
  });
  const path = strands.join('');
  const wide = garment.small ? 0.7 : 0.42;
  const first = run[0] ?? [0, 0];
  const last = run[count] ?? first;
  garment.cover([
    [first[0], first[1], 'corner'],
    [last[0], last[1], 'corner'],
    [last[0] + lean, last[1] + length, 'corner'],
    [first[0] + lean, first[1] + length, 'corner'],
  ]);
  garment.add(
    line(path, wide + 0.14, garment.cloth.ink, 0.8),
    line(path, wide, garment.cloth.ground),
    ...(garment.small ? [] : [line(path, 0.1, garment.cloth.bright, 0.5)]),
  );
};

export const folds = (
  garment: Garment,
  list: readonly (readonly [nodes: string, width: number, strength: number])[],
): Painted[] => list.map(([nodes, width, strength]) => garment.fold(points(nodes), width, strength));

/** Laid as it hangs: round the neck, one end over the other, fringed. */
export const scarf = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  // Ends hang as low as a scarf of the length given would, folded once round the neck.
  const end = (adornmentLength(piece)?.cm ?? 170) * 0.23;
  garment.panel(
    points('-9 0, -7.4 -5.4, -2 -8, 4 -7.6, 8.4 -4.4, 9.2 1, 5 3.4, 5.4 -0.6, 3 -3.6, -1.4 -4, -4.6 -1.8, -4.8 3'),
    {
      fill: cloth.shade,
      edge: 0.8,
      turn: 70,
      inner: folds(garment, [
        ['-8 0, -5.4 -5, 0 -6.6', 1.2, 0.9],
        ['8.4 0, 6.8 -4, 2.6 -6.2', 1.1, 0.8],
      ]),
    },
  );
  garment.panel(
    [
      [5.6, 0.4],
      [9.6, 0.2],
      [12, end * 0.3],
      [12.6, end * 0.64],
      [13.4, end - 1, 'corner'],
      [3.6, end, 'corner'],
      [3.6, end * 0.6],
      [2.6, end * 0.3],
      [2.2, 4],
    ],
    {
      edge: 0.9,
      turn: -8,
      inner: [
        garment.fold(
          [
            [8, 1.4],
            [8.6, end * 0.4],
            [9.4, end - 1],
          ],
          1.8,
          0.9,
        ),
        garment.fold(
          [
            [5, 4],
            [5.6, end * 0.45],
            [5.4, end * 0.85],
          ],
          1.5,
          0.8,
        ),
        garment.fold(
          [
            [10.6, end - 1.4],
            [10.8, end * 0.7],
            [10.2, end * 0.4],
          ],
          -1.2,
          0.6,
        ),
      ],
    },
  );
  fringe(
    garment,
    [
      [3.7, end - 0.2],
      [8.5, end - 0.5],
      [13.3, end - 1.1],
    ],
    4.6,
    0.6,
  );
  garment.panel(
    [
      [-8.8, -1],
      [-4.6, 1],
      [1, 3.4],
      [5, 4.8],
      [3, 7.2],
      [-0.8, 9.6],
      [-2.4, end * 0.46],
      [-2.6, end * 0.8],
      [-2.2, end + 4.6, 'corner'],
      [-12.4, end + 3.4, 'corner'],
      [-12, end * 0.72],
      [-11.4, end * 0.36],
      [-10.4, 4],
    ],
    {
      edge: 0.9,
      turn: 6,
      cast: 0.6,
      inner: [
        garment.fold(points('-7.6 0.6, -3 3.6, 2.6 5.6'), 1.5, 0.9),
        garment.fold(points('-8.8 2, -4.6 6, -1 8.2'), 1.5, 0.8),
        garment.fold(
          [
            [-6.6, 6],
            [-6.6, end * 0.5],
            [-6, end + 2],
          ],
          2,
          1,
        ),
        garment.fold(
          [
            [-9, 5],
            [-9.4, end * 0.5],
            [-9.4, end * 0.9],
          ],
          1.5,
          0.8,
        ),
        garment.fold(
          [
            [-3.6, end + 3],
            [-3.9, end * 0.75],
            [-3.4, end * 0.5],
          ],
          -1.3,
          0.7,
        ),
      ],
    },
  );
  fringe(
    garment,
    [
      [-12.3, end + 3.3],
      [-7.2, end + 4],
      [-2.3, end + 4.5],
    ],
    4.6,
    -0.4,
  );
  return garment.anchor('neck', [0, -4]).finish();
};

/** Two thick turns and one end, with a knitted-in edge. */
export const chunkyScarf = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const cable = (nodes: string, wide: number): Painted[] => {
    if (garment.small || cloth.surface !== 'cable knit') return [];
    const run = resample(sampleCurve(points(nodes)), 34);
    const strand = (phase: number): string =>
      curvePath(
        offsetLine(run, (t) => wide * Math.sin(t * 26 + phase)).map((p): Node => [p[0], p[1]]),
        false,
      );
    return [
      line(strand(0) + strand(Math.PI), 0.95, cloth.ink, 0.28),
      line(strand(0) + strand(Math.PI), 0.55, cloth.bright, 0.42),
    ];
  };
  garment.panel(
    points('-15 1, -12 -6.6, -4 -10.4, 6 -10, 13.4 -5.4, 15.4 1.4, 10.4 5, 8 0, 3.4 -2.8, -3.4 -2.8, -8.4 0, -10.4 5'),
    {
      fill: cloth.shade,
      edge: 1,
      turn: 80,
      inner: [
        ...cable('-12.4 1, -9 -4.6, -2 -7, 5 -6.6, 11 -3, 12.6 2', 1),
        garment.fold(points('-13.4 0, -8 -6.6, 1 -8'), 1.8, 0.8),
      ],
    },
  );
  garment.panel(points('2.6 9.4!, 10.8 7.6!, 12.8 16, 13.6 24.6!, 4.6 26!, 4.2 17'), {
    edge: 1,
    turn: -8,
    cast: 0.5,
    inner: [
      ...cable('6.8 8.6, 8.2 16, 9 25.4', 1.2),
      garment.fold(points('4.4 10, 5.4 17, 5.8 24'), 1.4, 0.6),
      garment.plane(points('9.4 10, 11.2 17, 12 23.6'), 1.2, cloth.ink, 0.5),
    ],
  });
  fringe(garment, points('4.7 25.8, 9 25.2, 13.5 24.5'), 4.2, 0.4);
  garment.panel(
    points(
      '-16.2 3.4, -14.4 -1.6, -10 -1.6, -5 1.6, 1 2.8, 7 1.6, 11.4 -1.8, 15.6 -1.4, 16.8 3.6, 13 9.4, 6 12.8, -2 13.2, -10.4 10.6',
    ),
    {
      edge: 1.1,
      turn: 84,
      cast: 0.8,
      inner: [
        ...cable('-14 2, -9 5.6, -1 7.8, 7 7, 14 1.8', 1.3),
        garment.fold(points('-14.6 0.4, -8 3.4, 0 4.6'), 1.8, 0.7),
        garment.fold(points('14.6 0.2, 9 3.8, 3 5'), -1.8, 0.6),
        garment.plane(points('-9 9, 0 11.4, 9 9.6'), 1.7, cloth.ink, 0.5),
        garment.plane(points('-11 2.6, -4 5.4, 3 5.8'), 1.5, cloth.bright, 0.5),
      ],
    },
  );
  return garment.anchor('neck', [0, -3]).finish();
};
