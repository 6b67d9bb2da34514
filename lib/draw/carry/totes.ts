import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { corner, ellipsePath, Garment, type Node, stitch } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import { dropOf } from './length.ts';
import { metalOf, strap, stud, wire, zip } from './parts.ts';

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
  const metal = metalOf(garment, piece);
  const [top, base, height] = [20, 16.6, 29];
  const drop = dropOf(piece);
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
        garment.plane(points('-11 5, -9.5 14, -10.5 24'), 3, cloth.bright, 0.5 * cloth.sheen),
        garment.plane(points('11 7, 9.6 17, 11 27'), 3, cloth.ink, 0.34),
        garment.fold(points('-18.6 8, -15 11, -13 17'), 2, 0.6),
        garment.fold(points('18.6 11, 15 14, 13.4 21'), -2, 0.55),
        garment.fold(points('-15 25, -5 26.4, 5 24.4'), -1.7, 0.45),
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
  garment.panel(points('-1.9 1!, 1.9 1!, 1.8 6, 0 7.2, -1.8 6'), {
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
  const metal = metalOf(garment, piece);
  const drop = dropOf(piece);
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
    points(
      '-16.2 0.6, -11 3.2, 0 4.6, 11 3, 16.2 0.4, 18.2 6, 17.2 14.6, 11.4 21, 0 22.8, -11.8 21, -17.4 14.4, -18.2 6',
    ),
    {
      round: { from: [-18, 4], to: [18, 16], strength: 0.6 },
      inner: [
        garment.plane(points('-12 7, -8 13, -2 17'), 3, cloth.bright, 0.45 * cloth.sheen),
        garment.plane(points('-12 19, 0 21, 12 19'), 2.2, cloth.ink, 0.4),
        garment.fold(points('-15 2.6, -11 7.4, -9.6 13'), 2.1, 0.9),
        garment.fold(points('-10 4.4, -6 8, -4.4 12'), 1.6, 0.6),
        garment.fold(points('15 2.4, 11.4 7.6, 10.4 14'), -2.2, 0.9),
        garment.fold(points('9 4.4, 6.2 8, 5.6 11.4'), -1.4, 0.55),
        garment.fold(points('-14 15.6, -6 17.6, 1 16.4'), 1.4, 0.4),
      ],
    },
  );
  zip(garment, points('-15 1.8, -10.4 4, 0 5.4, 10.4 3.8, 15 1.6'), metal, [-12.6, 3.2]);
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
