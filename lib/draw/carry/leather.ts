import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { corner, curvePath, ellipsePath, Garment, line, mirrored, type Node, pen, stitch, tone } from '../kit/index.ts';
import { buckle, dropOf, frame, metalOf, plate, strap, stud, wire, zip } from './parts.ts';

/** A handle standing up from two feet, in the shape a stiff strap takes. */
export const hoop = (half: number, foot: number, drop: number, lean = 0): Node[] => [
  [-half, foot],
  [-half * 1.02 + lean * 0.2, foot - drop * 0.42],
  [-half * 0.72 + lean * 0.7, foot - drop * 0.86],
  [lean, foot - drop * 1.04],
  [half * 0.72 + lean * 0.7, foot - drop * 0.84],
  [half * 1.02 + lean * 0.2, foot - drop * 0.4],
  [half, foot],
];

export const tote = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment);
  const [top, base, height] = [20, 16.6, 29];
  const drop = dropOf(piece, 20);
  strap(garment, hoop(8.6, 1.6, drop, 1.6), 1.9, { behind: true });
  garment.inside([corner(-top, 0.4), [-8, -1.3], [7, -1.2], corner(top, 0), [9, 3.4], [-9, 3.6]], {
    fill: cloth.lining,
  });
  garment.panel(
    [
      corner(-top, 0.3),
      [-7.5, 1.7],
      [7.5, 1.5],
      corner(top, 0),
      [top - 1.7, 12],
      [base + 0.3, height - 3.4],
      [base - 1.6, height],
      [0, height + 0.7],
      [-base + 1.6, height],
      [-base - 0.3, height - 3.4],
      [-top + 1.9, 12],
    ],
    {
      round: { from: [-top, 8], to: [top, 14], strength: 0.6 },
      inner: [
        garment.plane(
          [
            [-11, 5],
            [-9.5, 14],
            [-10.5, 24],
          ],
          3,
          cloth.bright,
          0.5 * cloth.sheen,
        ),
        garment.plane(
          [
            [11, 7],
            [9.6, 17],
            [11, 27],
          ],
          3,
          cloth.ink,
          0.34,
        ),
        garment.fold(
          [
            [-18.6, 8],
            [-15, 11],
            [-13, 17],
          ],
          2,
          0.6,
        ),
        garment.fold(
          [
            [18.6, 11],
            [15, 14],
            [13.4, 21],
          ],
          -2,
          0.55,
        ),
        garment.fold(
          [
            [-15, 25],
            [-5, 26.4],
            [5, 24.4],
          ],
          -1.7,
          0.45,
        ),
        stitch(
          [
            [-top + 0.4, 1.5],
            [-7.5, 2.7],
            [7.5, 2.5],
            [top - 0.4, 1.2],
          ],
          cloth.ink,
          0.8,
        ),
        ...(garment.small
          ? []
          : [
              stitch(
                [
                  [-top + 2.6, 13],
                  [-base + 0.7, 25],
                  [-base + 2.4, 28],
                  [0, 29],
                  [base - 2.4, 28],
                  [base - 0.7, 25],
                  [top - 2.6, 13],
                ],
                cloth.ink,
                0.6,
              ),
            ]),
      ],
    },
  );
  garment.panel([corner(-1.9, 1), corner(1.9, 1), [1.8, 6], [0, 7.2], [-1.8, 6]], {
    covers: false,
    edge: 0.35,
    cast: 0.5,
  });
  garment.add(stud([0, 5], 0.62, metal));
  strap(garment, hoop(8.8, 4, drop + 2.4, -0.8), 1.9, { stitched: true });
  for (const x of [-8.8, 8.8]) {
    garment.panel([corner(x - 1.5, 2.2), corner(x + 1.5, 2.2), [x + 1.5, 7.2], [x, 8.8], [x - 1.5, 7.2]], {
      covers: false,
      edge: 0.35,
      cast: 0.4,
    });
    garment.add(
      stitch(
        [corner(x - 1, 2.6), corner(x - 1, 6.9), [x, 7.9], corner(x + 1, 6.9), corner(x + 1, 2.6)],
        cloth.ink,
        0.8,
      ),
    );
  }
  return garment
    .anchor('handle', [0, 1.6 - drop])
    .anchor('base', [0, height])
    .finish();
};

/** A soft crescent that hangs from one broad strap. */
export const shoulderBag = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment);
  const drop = dropOf(piece, 22);
  strap(
    garment,
    [
      [-15.4, 1.5],
      [-14.6, -drop * 0.45],
      [-8, -drop * 0.92],
      [0.6, -drop * 1.02],
      [9, -drop * 0.88],
      [14.8, -drop * 0.4],
      [15.4, 1.5],
    ],
    2.5,
    { stitched: true },
  );
  garment.panel(
    [
      [-16.2, 0.6],
      [-11, 3.2],
      [0, 4.6],
      [11, 3],
      [16.2, 0.4],
      [18.2, 6],
      [17.2, 14.6],
      [11.4, 21],
      [0, 22.8],
      [-11.8, 21],
      [-17.4, 14.4],
      [-18.2, 6],
    ],
    {
      round: { from: [-18, 4], to: [18, 16], strength: 0.6 },
      inner: [
        garment.plane(
          [
            [-12, 7],
            [-8, 13],
            [-2, 17],
          ],
          3,
          cloth.bright,
          0.45 * cloth.sheen,
        ),
        garment.plane(
          [
            [-12, 19],
            [0, 21],
            [12, 19],
          ],
          2.2,
          cloth.ink,
          0.4,
        ),
        garment.fold(
          [
            [-15, 2.6],
            [-11, 7.4],
            [-9.6, 13],
          ],
          2.1,
          0.9,
        ),
        garment.fold(
          [
            [-10, 4.4],
            [-6, 8],
            [-4.4, 12],
          ],
          1.6,
          0.6,
        ),
        garment.fold(
          [
            [15, 2.4],
            [11.4, 7.6],
            [10.4, 14],
          ],
          -2.2,
          0.9,
        ),
        garment.fold(
          [
            [9, 4.4],
            [6.2, 8],
            [5.6, 11.4],
          ],
          -1.4,
          0.55,
        ),
        garment.fold(
          [
            [-14, 15.6],
            [-6, 17.6],
            [1, 16.4],
          ],
          1.4,
          0.4,
        ),
      ],
    },
  );
  zip(
    garment,
    [
      [-15, 1.8],
      [-10.4, 4],
      [0, 5.4],
      [10.4, 3.8],
      [15, 1.6],
    ],
    metal,
    [-12.6, 3.2],
  );
  for (const x of [-15.7, 15.7]) {
    garment.panel(
      [
        [x - 1.7, 0],
        [x + 1.7, 0],
        [x + 1.5, 4.4],
        [x, 5.6],
        [x - 1.5, 4.4],
      ],
      { covers: false, edge: 0.35, cast: 0.35 },
    );
    garment.add(wire(ellipsePath([x, 0.4], 1.5, 1.15), metal, 0.42));
  }
  return garment.anchor('handle', [0, -drop]).anchor('base', [0, 22.8]).finish();
};

export const flapBag = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment);
  const drop = dropOf(piece, 22);
  strap(
    garment,
    [
      [-10.3, 2.4],
      [-14.6, -drop * 0.3],
      [-12.6, -drop * 0.76],
      [-4, -drop],
      [6, -drop * 0.86],
      [9.6, -drop * 0.42],
      [10.3, 2.4],
    ],
    0.95,
  );
  for (const x of [-10.4, 10.4]) garment.add(wire(ellipsePath([x, 1.6], 0.6, 0.85), metal, 0.3));
  garment.panel(
    [
      corner(-11, 1),
      [0, 0.2],
      corner(11, 1),
      [11.7, 8],
      [10.9, 15.2],
      [8.4, 16.3],
      [-8.4, 16.3],
      [-10.9, 15.2],
      [-11.7, 8],
    ],
    {
      round: { from: [-11.6, 4], to: [11.6, 8], strength: 0.6 },
      inner: [
        garment.plane(
          [
            [-8, 14.4],
            [0, 15],
            [8, 14.2],
          ],
          0.9,
          cloth.bright,
          0.4,
        ),
        garment.plane(
          [
            [-10, 11.6],
            [0, 12.8],
            [10, 11.6],
          ],
          1.3,
          cloth.ink,
          0.6,
        ),
      ],
    },
  );
  garment.panel(
    [
      corner(-11.3, 0.6),
      [0, -0.4],
      corner(11.3, 0.6),
      [11.8, 5],
      [10, 9.4],
      [5, 11],
      [0, 11.5],
      [-5, 11],
      [-10, 9.4],
      [-11.8, 5],
    ],
    {
      covers: false,
      cast: 0.6,
      edge: 0.8,
      round: { from: [-11.6, 2], to: [11.6, 6], strength: 0.55 },
      inner: [
        garment.plane(
          [
            [-9, 3.2],
            [-3, 2.5],
            [4, 3.3],
          ],
          1.3,
          cloth.bright,
          0.42 * cloth.sheen,
        ),
        stitch(
          [
            [-10.6, 1.5],
            [-10.9, 5],
            [-9.2, 8.8],
            [-4.8, 10.2],
            [0, 10.7],
            [4.8, 10.2],
            [9.2, 8.8],
            [10.9, 5],
            [10.6, 1.5],
          ],
          cloth.ink,
          0.7,
        ),
      ],
    },
  );
  garment.add(
    plate([0, 10.3], 2.7, 3.4, metal),
    line(
      [
        [0, 9.5],
        [0, 11.2],
      ],
      0.7,
      tone(metal, -0.3),
    ),
    line(
      [
        [-0.05, 9.6],
        [-0.05, 11],
      ],
      0.4,
      tone(metal, 0.14),
    ),
  );
  return garment.anchor('handle', [0, -drop]).anchor('base', [0, 16.3]).finish();
};

/** A small camera-shaped bag; its long strap is laid in a loop. */
export const crossBody = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment);
  strap(
    garment,
    [
      [10.2, 2],
      [13.6, -6],
      [9.4, -15.4],
      [-0.4, -17.6],
      [-7, -12.6],
      [-2.6, -7.6],
      [5.4, -9.4],
      [7.4, -15.6],
      [0.4, -22.4],
      [-9.6, -20.6],
      [-14, -11],
      [-10.2, 2],
    ],
    1.25,
    { stitched: false },
  );
  for (const x of [-10.3, 10.3]) {
    garment.panel(
      [
        [x - 0.9, 0.4],
        [x + 0.9, 0.4],
        [x + 0.8, 4],
        [x - 0.8, 4],
      ],
      { edge: 0.25, wobble: 0.04 },
    );
    garment.add(frame([x, 0.6], 1.9, 1.2, metal));
  }
  garment.panel(
    [
      [-10.4, 3],
      [-8.6, 0.6],
      [0, 0.1],
      [8.6, 0.6],
      [10.4, 3],
      [10.8, 9],
      [10.2, 14],
      [8.4, 15.8],
      [0, 16.2],
      [-8.4, 15.8],
      [-10.2, 14],
      [-10.8, 9],
    ],
    {
      round: { from: [-11, 4], to: [11, 8], strength: 0.6 },
      inner: [
        garment.plane(
          [
            [-7.6, 2],
            [0, 1.2],
            [7, 2],
          ],
          0.9,
          cloth.bright,
          0.45 * cloth.sheen,
        ),
        garment.fold(
          [
            [-9.6, 13],
            [-7, 11],
            [-3, 10.6],
          ],
          -1.2,
          0.4,
        ),
      ],
    },
  );
  zip(
    garment,
    [
      [-8.8, 2.7],
      [0, 2],
      [8.8, 2.7],
    ],
    metal,
    [6.4, 2.4],
  );
  garment.panel(
    [
      [-8.6, 5.6],
      [0, 5.2],
      [8.6, 5.6],
      [8.9, 10],
      [8.3, 13.6],
      [6.8, 14.6],
      [-6.8, 14.6],
      [-8.3, 13.6],
      [-8.9, 10],
    ],
    {
      covers: false,
      cast: 0.35,
      edge: 0.5,
      inner: [
        garment.plane(
          [
            [-6.6, 7.2],
            [-2, 6.7],
            [3, 7],
          ],
          0.9,
          cloth.bright,
          0.45 * cloth.sheen,
        ),
        ...(garment.small
          ? []
          : [
              stitch(
                [
                  [-8, 6.2],
                  [0, 5.8],
                  [8, 6.2],
                  [8.3, 10],
                  [7.7, 13.2],
                  [6.4, 14],
                  [-6.4, 14],
                  [-7.7, 13.2],
                  [-8.3, 10],
                ].map(([x, y]): Node => [x ?? 0, y ?? 0]),
                cloth.ink,
                0.7,
              ),
            ]),
      ],
    },
  );
  return garment.anchor('handle', [0, -22]).anchor('base', [0, 16.2]).finish();
};

export const satchel = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment);
  strap(
    garment,
    [
      [-6, 0.6],
      [-6, -3.4],
      [-3.6, -6],
      [0, -6.6],
      [3.6, -6],
      [6, -3.4],
      [6, 0.6],
    ],
    1.9,
    { rolled: true },
  );
  for (const side of [-1, 1])
    garment.panel(
      [corner(side * 15.4, 3), [side * 18, 4.6], [side * 18.4, 14], corner(side * 17.4, 25), corner(side * 15.4, 26.4)],
      { edge: 0.5, fill: cloth.shade },
    );
  garment.panel(
    [
      corner(-17, 1.4),
      [0, 0.4],
      corner(17, 1.4),
      [17.2, 14],
      [16.2, 25.6],
      [14, 27],
      [-14, 27],
      [-16.2, 25.6],
      [-17.2, 14],
    ],
    {
      round: { from: [-17, 4], to: [17, 10], strength: 0.5 },
      inner: [
        stitch(
          [
            [-15.8, 19],
            [-15, 24.8],
            [-13.4, 25.8],
            [13.4, 25.8],
            [15, 24.8],
            [15.8, 19],
          ],
          cloth.ink,
          0.7,
        ),
        garment.plane(
          [
            [-13, 24],
            [0, 24.8],
            [12, 24],
          ],
          1,
          cloth.bright,
          0.4,
        ),
      ],
    },
  );
  garment.panel(
    [
      corner(-17.4, 0.8),
      [0, -0.6],
      corner(17.4, 0.8),
      [17.6, 9],
      [16, 16],
      [11, 17.6],
      [0, 18.2],
      [-11, 17.6],
      [-16, 16],
      [-17.6, 9],
    ],
    {
      covers: false,
      cast: 0.6,
      round: { from: [-17.4, 3], to: [17.4, 8], strength: 0.5 },
      inner: [
        garment.plane(
          [
            [-13, 4],
            [-4, 3],
            [6, 3.8],
          ],
          1.7,
          cloth.bright,
          0.42 * cloth.sheen,
        ),
        stitch(
          [
            [-16.6, 2],
            [-16.8, 9],
            [-15.2, 15.4],
            [-10.6, 16.8],
            [0, 17.3],
            [10.6, 16.8],
            [15.2, 15.4],
            [16.8, 9],
            [16.6, 2],
          ],
          cloth.ink,
          0.7,
        ),
        garment.fold(
          [
            [15.6, 2.6],
            [12, 5.4],
            [10.6, 10],
          ],
          -1.6,
          0.45,
        ),
      ],
    },
  );
  for (const x of [-9.6, 9.6]) {
    garment.panel([corner(x - 1.3, 2.6), corner(x + 1.3, 2.6), [x + 1.3, 21.4], [x, 23], [x - 1.3, 21.4]], {
      covers: false,
      edge: 0.3,
      cast: 0.35,
      wobble: 0.05,
    });
    garment.add(buckle([x, 17.8], 3.4, 2.6, metal));
    if (!garment.small)
      garment.add(
        stitch(
          [
            [x - 0.9, 3],
            [x - 0.9, 15.8],
          ],
          cloth.ink,
          0.7,
        ),
        stitch(
          [
            [x + 0.9, 3],
            [x + 0.9, 15.8],
          ],
          cloth.ink,
          0.7,
        ),
      );
  }
  for (const x of [-6, 6]) garment.add(frame([x, 0.8], 2.6, 1.3, metal));
  return garment.anchor('handle', [0, -6.6]).anchor('base', [0, 27]).finish();
};

/** An envelope. */
export const clutch = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment);
  garment.panel(
    [
      corner(-13.4, 0),
      [0, -0.3],
      corner(13.4, 0),
      [13.6, 8],
      corner(13.2, 15.4),
      [0, 15.8],
      corner(-13.2, 15.4),
      [-13.6, 8],
    ],
    {
      round: { from: [-13.4, 3], to: [13.4, 7], strength: 0.5 },
      inner: [
        garment.plane(
          [
            [-10, 13.6],
            [-2, 14],
            [6, 13.6],
          ],
          1,
          cloth.bright,
          0.5,
        ),
        garment.fold(
          [
            [12.6, 14.6],
            [9, 12.6],
            [5, 12.6],
          ],
          1.2,
          0.4,
        ),
      ],
    },
  );
  garment.panel(
    [corner(-13.5, -0.1), [0, -0.5], corner(13.5, -0.1), [7.5, 6], [1.6, 10.6], [0, 11.2], [-1.6, 10.6], [-7.5, 6]],
    {
      covers: false,
      cast: 0.55,
      edge: 0.7,
      inner: [
        garment.plane(
          [
            [-9, 1.6],
            [-2, 2.4],
            [4, 2],
          ],
          1.5,
          cloth.bright,
          0.42 * cloth.sheen,
        ),
        garment.plane(
          [
            [2, 8],
            [6, 4.6],
            [10, 1.4],
          ],
          1,
          cloth.ink,
          0.4,
        ),
        ...(garment.small
          ? []
          : [
              stitch(
                [
                  [-12, 0.5],
                  [-7.1, 5.3],
                  [-1.4, 9.7],
                  [0, 10.3],
                  [1.4, 9.7],
                  [7.1, 5.3],
                  [12, 0.5],
                ],
                cloth.ink,
                0.6,
              ),
            ]),
      ],
    },
  );
  garment.add(stud([0, 9.4], 0.85, metal));
  return garment.anchor('base', [0, 15.6]).finish();
};

export const briefcase = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment);
  strap(
    garment,
    [
      [-5.8, 0.4],
      [-5.6, -3],
      [-3, -4.6],
      [0, -4.9],
      [3, -4.6],
      [5.6, -3],
      [5.8, 0.4],
    ],
    2,
    { rolled: true },
  );
  garment.panel(
    [
      corner(-20, 0.8),
      [0, 0],
      corner(20, 0.8),
      [20.2, 14],
      [19.8, 27.6],
      [18.4, 29],
      [-18.4, 29],
      [-19.8, 27.6],
      [-20.2, 14],
    ],
    {
      round: { from: [-20, 4], to: [20, 10], strength: 0.5 },
      inner: [
        garment.plane(
          [
            [-14, 22],
            [-6, 24],
            [4, 23.4],
          ],
          2,
          cloth.bright,
          0.4 * cloth.sheen,
        ),
        garment.fold(
          [
            [18.4, 27],
            [13, 25],
            [7, 25.4],
          ],
          1.7,
          0.4,
        ),
        stitch(
          [
            [-19.2, 16],
            [-18.8, 26.8],
            [-17.8, 28],
            [17.8, 28],
            [18.8, 26.8],
            [19.2, 16],
          ],
          cloth.ink,
          0.7,
        ),
        line(
          [
            [-20.2, 15.6],
            [20.2, 15.6],
          ],
          0.2,
          cloth.ink,
          0.8,
        ),
      ],
    },
  );
  garment.panel(
    [
      corner(-20.2, 0.6),
      [0, -0.4],
      corner(20.2, 0.6),
      corner(20.4, 12.4),
      [19, 13.6],
      [6, 13.8],
      [4.4, 15.4],
      [3.4, 17.2],
      [-3.4, 17.2],
      [-4.4, 15.4],
      [-6, 13.8],
      [-19, 13.6],
      corner(-20.4, 12.4),
    ],
    {
      covers: false,
      cast: 0.55,
      round: { from: [-20, 3], to: [20, 8], strength: 0.5 },
      inner: [
        garment.plane(
          [
            [-15, 4],
            [-4, 3],
            [8, 4],
          ],
          1.9,
          cloth.bright,
          0.42 * cloth.sheen,
        ),
        stitch(
          [
            [-19.6, 2],
            [-19.6, 12],
            [-18.6, 12.8],
            [-6.4, 12.9],
            [-3.6, 14.6],
            [-2.8, 16.4],
            [2.8, 16.4],
            [3.6, 14.6],
            [6.4, 12.9],
            [18.6, 12.8],
            [19.6, 12],
            [19.6, 2],
          ],
          cloth.ink,
          0.7,
        ),
      ],
    },
  );
  garment.add(
    plate([0, 15], 3.6, 3, metal),
    line(
      [
        [0, 14.4],
        [0, 15.8],
      ],
      0.4,
      tone(metal, -0.34),
    ),
  );
  for (const x of [-5.8, 5.8]) garment.add(plate([x, 0.9], 2.8, 1.5, metal));
  if (!garment.small)
    for (const side of [-1, 1]) {
      const nodes: Node[] = [
        [19.8, 23.6],
        [17, 24.4],
        [16.4, 28.6],
      ];
      garment.add(
        pen(side < 0 ? mirrored(nodes) : nodes, 0.22, cloth.ink, 0.7, 0.5),
        stitch(curvePath(side < 0 ? mirrored(nodes) : nodes, false), cloth.bright, 0.4),
      );
    }
  return garment.anchor('handle', [0, -4.9]).anchor('base', [0, 29]).finish();
};
