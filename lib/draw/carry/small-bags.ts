import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { ellipsePath, Garment, line, type Node, stitch, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import { dropOf } from './length.ts';
import { frame, metalOf, plate, strap, stud, wire, zip } from './parts.ts';

export const flapBag = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment, piece);
  const drop = dropOf(piece);
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
  garment.panel(points('-11 1!, 0 0.2, 11 1!, 11.7 8, 10.9 15.2, 8.4 16.3, -8.4 16.3, -10.9 15.2, -11.7 8'), {
    round: { from: [-11.6, 4], to: [11.6, 8], strength: 0.6 },
    inner: [
      garment.plane(points('-8 14.4, 0 15, 8 14.2'), 0.9, cloth.bright, 0.4),
      garment.plane(points('-10 11.6, 0 12.8, 10 11.6'), 1.3, cloth.ink, 0.6),
    ],
  });
  garment.panel(points('-11.3 0.6!, 0 -0.4, 11.3 0.6!, 11.8 5, 10 9.4, 5 11, 0 11.5, -5 11, -10 9.4, -11.8 5'), {
    covers: false,
    cast: 0.6,
    edge: 0.8,
    round: { from: [-11.6, 2], to: [11.6, 6], strength: 0.55 },
    inner: [
      garment.plane(points('-9 3.2, -3 2.5, 4 3.3'), 1.3, cloth.bright, 0.42 * cloth.sheen),
      stitch(
        points('-10.6 1.5, -10.9 5, -9.2 8.8, -4.8 10.2, 0 10.7, 4.8 10.2, 9.2 8.8, 10.9 5, 10.6 1.5'),
        cloth.ink,
        0.7,
      ),
    ],
  });
  garment.add(
    plate([0, 10.3], 2.7, 3.4, metal),
    line(points('0 9.5, 0 11.2'), 0.7, tone(metal, -0.3)),
    line(points('-0.05 9.6, -0.05 11'), 0.4, tone(metal, 0.14)),
  );
  return garment.anchor('handle', [0, -drop]).anchor('base', [0, 16.3]).finish();
};

/** A small camera-shaped bag; its long strap is laid in a loop. */
export const crossBody = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment, piece);
  strap(
    garment,
    points(
      '10.2 2, 13.6 -6, 9.4 -15.4, -0.4 -17.6, -7 -12.6, -2.6 -7.6, 5.4 -9.4, 7.4 -15.6, 0.4 -22.4, -9.6 -20.6, -14 -11, -10.2 2',
    ),
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
    points(
      '-10.4 3, -8.6 0.6, 0 0.1, 8.6 0.6, 10.4 3, 10.8 9, 10.2 14, 8.4 15.8, 0 16.2, -8.4 15.8, -10.2 14, -10.8 9',
    ),
    {
      round: { from: [-11, 4], to: [11, 8], strength: 0.6 },
      inner: [
        garment.plane(points('-7.6 2, 0 1.2, 7 2'), 0.9, cloth.bright, 0.45 * cloth.sheen),
        garment.fold(points('-9.6 13, -7 11, -3 10.6'), -1.2, 0.4),
      ],
    },
  );
  zip(garment, points('-8.8 2.7, 0 2, 8.8 2.7'), metal, [6.4, 2.4]);
  garment.panel(points('-8.6 5.6, 0 5.2, 8.6 5.6, 8.9 10, 8.3 13.6, 6.8 14.6, -6.8 14.6, -8.3 13.6, -8.9 10'), {
    covers: false,
    cast: 0.35,
    edge: 0.5,
    inner: [
      garment.plane(points('-6.6 7.2, -2 6.7, 3 7'), 0.9, cloth.bright, 0.45 * cloth.sheen),
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
  });
  return garment.anchor('handle', [0, -22]).anchor('base', [0, 16.2]).finish();
};

/** An envelope. */
export const clutch = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment, piece);
  garment.panel(points('-13.4 0!, 0 -0.3, 13.4 0!, 13.6 8, 13.2 15.4!, 0 15.8, -13.2 15.4!, -13.6 8'), {
    round: { from: [-13.4, 3], to: [13.4, 7], strength: 0.5 },
    inner: [
      garment.plane(points('-10 13.6, -2 14, 6 13.6'), 1, cloth.bright, 0.5),
      garment.fold(points('12.6 14.6, 9 12.6, 5 12.6'), 1.2, 0.4),
    ],
  });
  garment.panel(points('-13.5 -0.1!, 0 -0.5, 13.5 -0.1!, 7.5 6, 1.6 10.6, 0 11.2, -1.6 10.6, -7.5 6'), {
    covers: false,
    cast: 0.55,
    edge: 0.7,
    inner: [
      garment.plane(points('-9 1.6, -2 2.4, 4 2'), 1.5, cloth.bright, 0.42 * cloth.sheen),
      garment.plane(points('2 8, 6 4.6, 10 1.4'), 1, cloth.ink, 0.4),
      ...(garment.small
        ? []
        : [stitch(points('-12 0.5, -7.1 5.3, -1.4 9.7, 0 10.3, 1.4 9.7, 7.1 5.3, 12 0.5'), cloth.ink, 0.6)]),
    ],
  });
  garment.add(stud([0, 9.4], 0.85, metal));
  return garment.anchor('base', [0, 15.6]).finish();
};
