import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import {
  clamp,
  curvePath,
  Garment,
  line,
  type Node,
  offsetLine,
  type Painted,
  pen,
  resample,
  sampleCurve,
  tone,
} from '../kit/index.ts';
import { points } from '../kit/points.ts';

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

const folds = (
  garment: Garment,
  list: readonly (readonly [nodes: string, width: number, strength: number])[],
): Painted[] => list.map(([nodes, width, strength]) => garment.fold(points(nodes), width, strength));

/** Laid as it hangs: round the neck, one end over the other, fringed. */
export const scarf = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  // Ends hang as low as a scarf of the length given would, folded once round the neck.
  const end = clamp((piece.lengthCm ?? 170) * 0.23, 18, 48);
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
        garment.fold(
          [
            [-7.6, 0.6],
            [-3, 3.6],
            [2.6, 5.6],
          ],
          1.5,
          0.9,
        ),
        garment.fold(
          [
            [-8.8, 2],
            [-4.6, 6],
            [-1, 8.2],
          ],
          1.5,
          0.8,
        ),
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

const borderOf = (garment: Garment): string => garment.cloth.accents[0] ?? tone(garment.cloth.ground, -0.22);

/** A square of silk, folded once to a triangle, a corner turned back; its border shows along every edge. */
export const silkScarf = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const border = borderOf(garment);
  const edging = (nodes: string): Painted[] => [
    line(curvePath(points(nodes), true), 4, border),
    line(curvePath(points(nodes), true), 0.5, cloth.light, 0.8),
  ];
  const inset = (nodes: string): Painted => line(points(nodes), 0.22, border, 0.9);
  garment.panel(points('-15.6 -13.4!, 0 -14.6, 15.4 -13.6!, 16 0, 15.2 15.2!, 1 16.2, -14.6 15!, -16.2 0'), {
    edge: 0.8,
    wobble: 0.2,
    turn: 6,
    inner: [...edging('-15.6 -13.4!, 0 -14.6, 15.4 -13.6!, 16 0, 15.2 15.2!, 1 16.2, -14.6 15!, -16.2 0')],
  });
  garment.panel(
    points('-14.4 -10.4!, -2 -11.8, 16.6 -10.6!, 17.4 2, 16.8 12!, 15.8 17.8!, 4 18.6, -8 17.8!, -13.4 12.4!, -15 0'),
    {
      edge: 0.9,
      wobble: 0.15,
      turn: -3,
      cast: 0.5,
      inner: [
        ...edging(
          '-14.4 -10.4!, -2 -11.8, 16.6 -10.6!, 17.4 2, 16.8 12!, 15.8 17.8!, 4 18.6, -8 17.8!, -13.4 12.4!, -15 0',
        ),
        inset('-11.2 -7.6!, -2 -8.6, 13.4 -7.6!, 14 2, 13.2 14.8!, 4 15.4, -6.4 14.8'),
        ...folds(garment, [
          ['-13 -8, -5 -3, 0 5', 2.4, 0.9],
          ['-10 12, -2 7, 6 5', 2.2, 0.8],
          ['15 -8, 9 -3, 6 3', -2, 0.7],
          ['14 14, 9 11, 7 7', 1.8, 0.7],
        ]),
        garment.plane(points('-6 -6, 2 0, 8 9'), 2.6, cloth.bright, 0.4 * cloth.sheen),
      ],
    },
  );
  // the corner turned back
  garment.panel(points('-14.6 9.6!, -10 12.6, -4.6 18.6!, -10.4 16.2, -13.6 13.2'), {
    edge: 0.5,
    cast: 0.4,
    fill: cloth.shade,
    weave: true,
    inner: [
      line(points('-14.4 9.8, -9.8 12.8, -4.8 18.4'), 1.8, border),
      garment.fold(points('-13 12, -10.4 13.4, -7.4 16.4'), 0.9, 0.7),
    ],
  });
  return garment.finish();
};

/** Knotted to a ring with two pointed tails. */
export const neckerchief = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const border = borderOf(garment);
  const run = resample(
    sampleCurve(points('-1.6 8.4, -8 6.6, -11.8 0.6, -9 -5.8, -1 -8.2, 8 -6.8, 12 -0.6, 8.8 6, 1.8 8.4')),
    40,
  );
  const half = (t: number): number => 1.6 + 1.1 * Math.sin(Math.PI * t) + 0.25 * Math.sin(9 * t);
  const every = (line_: readonly (readonly [number, number])[]): Node[] =>
    line_.filter((_, i) => i % 4 === 0).map((p): Node => [p[0], p[1]]);
  const outer = offsetLine(run, (t) => half(t));
  const inner = offsetLine(run, (t) => -half(t) * 0.9);
  const lines = (share: number): Node[] =>
    every(offsetLine(run, (t) => half(t) * (share + 0.16 * Math.sin(7 * t + share * 9)))).slice(1, -1);
  garment.panel([...every(outer), ...every(inner).reverse()], {
    turn: 24,
    edge: 0.7,
    wobble: 0.08,
    inner: [
      line(every(outer), 1.3, border),
      line(every(inner), 0.9, border),
      ...[-0.5, 0.05, 0.5].map((share) => garment.fold(lines(share), 0.9, 1.1, 0.5)),
      garment.plane(lines(-0.2), 0.8, cloth.bright, 0.4 * cloth.sheen),
    ],
  });
  const tail = (
    outline: string,
    hem: string,
    turn: number,
    creases: readonly (readonly [string, number, number])[],
  ): void => {
    garment.panel(points(outline), {
      turn,
      edge: 0.7,
      cast: 0.6,
      wobble: 0.1,
      inner: [line(points(hem), 1.8, border), line(points(hem), 0.2, cloth.bright, 0.8), ...folds(garment, creases)],
    });
  };
  tail(
    '0.6 8.2!, 5.4 11, 9.8 16.6, 12.4 23.4!, 6.8 22.8, 0.8 20.4!, 1.2 14',
    '10.4 17, 12 23!, 6.8 22.4, 0.6 19.8!',
    -28,
    [
      ['1.2 9.4, 4.6 15, 7.4 22.4', 1.6, 1.1],
      ['1 9.6, 2 14.6, 2.2 20.2', 1.2, 0.9],
      ['2.6 9.6, 7.6 13.6, 10.2 18.4', 1.1, 0.8],
    ],
  );
  tail(
    '-0.8 8.2!, -3.6 11.8, -8.6 16, -13.6 18.2!, -10.6 21.8, -6.6 24.6!, -2 18.4, 0.6 12.6',
    '-13.2 18!, -10.2 21.4, -6.5 24!, -2 17.8',
    34,
    [
      ['-0.8 9.6, -4.6 15, -9.8 20.2', 1.5, 1.1],
      ['-0.2 10, -2.2 15.6, -5.8 21.8', -1.3, 0.9],
    ],
  );
  garment.panel(points('-2.6 7.3, -0.4 6.2, 2.4 6.9, 3.2 9, 2 10.9, -0.8 11.2, -3.1 9.8'), {
    turn: 70,
    edge: 0.8,
    cast: 0.6,
    wobble: 0.06,
    inner: [
      line(points('-2.9 10.6, 0 11.1, 3.1 9.8'), 0.9, border),
      ...folds(garment, [
        ['-2.5 8, 0 8.6, 2.7 7.8', 0.8, 1],
        ['-2.3 9.8, 0.4 10, 2.7 9.2', 0.7, 0.9],
      ]),
    ],
  });
  return garment.anchor('neck', [0, 0]).finish();
};

/** A square folded to three points, as it stands in a breast pocket. */
export const pocketSquare = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const border = borderOf(garment);
  const peak = (outline: string, hem: string, crease: string, turn: number): void => {
    garment.panel(points(outline), {
      turn,
      edge: 0.4,
      cast: 0.3,
      wobble: 0.05,
      inner: [
        line(points(hem), 0.9, border),
        line(points(hem), 0.14, cloth.bright, 0.8),
        garment.fold(points(crease), 0.9, 0.9),
      ],
    });
  };
  peak('-0.6 -1!, 1.6 -6.8!, 4.4 -1.4!, 3 3', '-0.5 -1.2!, 1.6 -6.6!, 4.3 -1.6', '1.7 -6, 1.8 -2, 1.4 2', 18);
  peak('-5.4 0.6!, -2.6 -6.2!, 0.9 -0.6!, -1 4', '-5.3 0.4!, -2.6 -6, 0.8 -0.8', '-2.5 -5.4, -2 -1, -1.6 3', -16);
  peak('1.2 1!, 4.8 -4.8!, 6.2 1.4!, 4 4.4', '1.3 0.8!, 4.8 -4.5!, 6.1 1.2', '4.7 -4, 4.4 -0.6, 3.8 3', 34);
  garment.panel(points('-5.8 0.2!, -2 2.2, 2.4 2.4, 6.2 0.8!, 5.6 4, 4.8 8.4!, 0 9, -4.6 8.4!, -5.6 4'), {
    edge: 0.5,
    cast: 0.35,
    wobble: 0.06,
    inner: [
      garment.fold(points('-4.6 1.4, -2 4.4, -1.6 8'), 1.1, 0.8),
      garment.fold(points('4.8 1.8, 2.4 4.6, 2.2 8'), -1, 0.7),
      garment.plane(points('-3 3.6, 0 5, 2 7'), 1, cloth.bright, 0.4 * cloth.sheen),
    ],
  });
  return garment.finish();
};

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
