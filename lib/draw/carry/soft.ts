import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { corner, Garment, line, type Node, pen, shape, stitch, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import { dropOf } from './length.ts';
import { frame, metalOf, strap, trim, zip } from './parts.ts';

/** A flat bag of canvas with long narrow handles; a second colour makes a block at its foot. */
export const shopper = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const drop = dropOf(piece);
  const handle = (lean: number, foot: number, extra: number): Node[] => [
    [-8, foot],
    [-8.6 + lean, -drop * 0.5],
    [-6 + lean, -drop * 0.9 - extra],
    [-1 + lean * 1.6, -drop - extra],
    [4.4 + lean, -drop * 0.88 - extra],
    [7.6 + lean, -drop * 0.46],
    [8, foot],
  ];
  strap(garment, handle(2, 1, 0), 2.2, { behind: true });
  garment.inside(points('-18 0.4!, -6 -0.7, 8 -0.6, 18 0.2!, 6 1.8, -6 1.8'), {
    fill: cloth.lining,
  });
  const block = cloth.accents[0];
  garment.panel(
    points(
      '-18.2 0.6!, -6 1.3, 7 1.1, 18.2 0.2!, 18.6 14, 18 28, 18.8 38.8!, 6 39.6, -6 39.2, -18.6 39.2!, -18 26, -18.7 12',
    ),
    {
      round: { from: [-18.6, 0], to: [18.8, 3], strength: 1.3 },
      inner: [
        ...(block && piece.pattern.type === 'plain'
          ? [
              shape(points('-20 29!, -6 28.6, 8 29.2, 20 28.4!, 20 41!, -20 41!'), block),
              garment.plane(points('-19 29.4, 0 29.2, 19 28.8'), 0.4, cloth.ink, 0.6),
            ]
          : []),
        garment.fold(points('-16.4 37, -11 31, -8.6 23'), 2.2, 0.85),
        garment.fold(points('17 36.6, 12 31, 10 25'), -2.2, 0.8),
        garment.fold(points('-7.8 4, -6.6 12, -7.4 20'), 1.9, 0.7),
        garment.fold(points('7.8 4, 7 13, 8.4 21'), -1.8, 0.65),
        garment.fold(points('-17.6 16, -9 18.4, 0 17'), 1.5, 0.4),
        stitch(points('-18 3.4, -6 4, 7 3.9, 18 3.1'), cloth.ink, 0.7),
      ],
    },
  );
  strap(garment, handle(-1.6, 3.6, 2), 2.2, { stitched: true });
  for (const x of [-8, 8]) {
    garment.panel([corner(x - 1.1, 1), corner(x + 1.1, 1), corner(x + 1.1, 5.6), corner(x - 1.1, 5.6)], {
      covers: false,
      edge: 0.25,
      cast: 0.25,
      wobble: 0.05,
    });
    garment.add(
      stitch(
        [
          corner(x - 0.7, 2),
          corner(x + 0.7, 2),
          corner(x + 0.7, 5.1),
          corner(x - 0.7, 5.1),
          corner(x - 0.7, 2),
          corner(x + 0.7, 5.1),
        ],
        cloth.ink,
        0.7,
      ),
    );
  }
  return garment.anchor('handle', [0, -drop]).anchor('base', [0, 39]).finish();
};

export const dayPack = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment, piece);
  const web = trim(garment, tone(cloth.ground, -0.12));
  for (const side of [-1, 1])
    strap(
      garment,
      [
        [side * 7, 2],
        [side * 14.4, 4],
        [side * 17.8, 16],
        [side * 16.6, 29],
        [side * 12, 38],
      ],
      3.4,
      { cloth: web, behind: true, stitched: true },
    );
  strap(garment, points('-4 1, -3.4 -2.4, 0 -3.6, 3.4 -2.4, 4 1'), 1.6, { cloth: web });
  for (const side of [-1, 1])
    garment.panel(
      [corner(side * 12.6, 24), [side * 15.6, 25], [side * 16, 33], [side * 14.6, 40.6], corner(side * 12, 41)],
      { edge: 0.5, fill: cloth.shade },
    );
  garment.panel(
    points(
      '-13.6 12, -12.6 4.6, -8.4 0.8, 0 0, 8.4 0.8, 12.6 4.6, 13.6 12, 14 26, 13.8 39, 11.8 42, 0 42.8, -11.8 42, -13.8 39, -14 26',
    ),
    {
      round: { from: [-14, 8], to: [14, 14], strength: 0.7 },
      inner: [
        garment.plane(points('-8 4, -9 12, -8.6 20'), 2.4, cloth.bright, 0.5 * cloth.sheen),
        garment.fold(points('-11.6 9, -7 12, -2 12.4'), 1.7, 0.6),
        garment.fold(points('11.6 10, 8 13, 5.4 17'), -1.7, 0.6),
      ],
    },
  );
  zip(garment, points('-12.7 15, -11.7 6.8, -7.4 3.4, 0 2.7, 7.4 3.4, 11.7 6.8, 12.7 15'), metal, [5.6, 3]);
  garment.panel(
    points('-11 23.6, 0 21.8, 11 23.6, 11.8 30, 11.4 38.6, 9.6 40.4, 0 41, -9.6 40.4, -11.4 38.6, -11.8 30'),
    {
      covers: false,
      cast: 0.6,
      edge: 0.8,
      inner: [
        garment.plane(points('-7 28, -7.4 33, -6.6 38'), 2, cloth.bright, 0.5 * cloth.sheen),
        garment.fold(points('10.6 28, 7 31, 5.6 36'), -1.6, 0.6),
        garment.fold(points('-10 38, -6 36.6, -1 37.4'), -1.3, 0.45),
      ],
    },
  );
  zip(garment, points('-10.6 25.4, 0 23.7, 10.6 25.4'), metal, [-7.4, 24.9]);
  garment.panel(points('-2.2 16!, 2.2 16!, 2.2 18.4!, -2.2 18.4!'), {
    cloth: web,
    covers: false,
    edge: 0.2,
    wobble: 0.04,
    rim: false,
    cast: 0.2,
  });
  if (!garment.small)
    garment.add(stitch(points('-1.8 16.4!, 1.8 16.4!, 1.8 18!, -1.8 18!, -1.8 16.4!'), web.bright, 0.7));
  return garment.anchor('handle', [0, -3.6]).anchor('base', [0, 42.5]).finish();
};

export const beltBag = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const metal = metalOf(garment, piece);
  strap(garment, points('10 3.4, 16 0.6, 19.4 -6.4, 14 -12.6, 2 -14.4, -11 -13.4, -18.6 -8, -17.4 0, -10 3.4'), 2.6, {
    stitched: true,
  });
  const clip: Node[] = points('-3.4 -16.6!, 3 -16.4!, 3 -12.6!, -3.4 -12.8!');
  garment.panel(clip, {
    cloth: { ...cloth, ground: '#33302e', ink: '#151413', bright: '#77716b', tiles: [] },
    weave: false,
    edge: 0.25,
    wobble: 0.05,
    inner: [
      line(points('-0.4 -16.4, -0.4 -12.8'), 0.3, '#151413'),
      line(points('-3 -16.1, -0.8 -16'), 0.24, '#77716b'),
    ],
  });
  garment.panel(points('-12.4 2.4, -7 0.5, 0 0, 7 0.5, 12.4 2.4, 12.8 7, 9.6 12, 0 13.8, -9.6 12, -12.8 7'), {
    round: { from: [-13, 2], to: [13, 6], strength: 0.6 },
    inner: [
      garment.plane(points('-8 2.2, 0 1.4, 8 2.2'), 0.8, cloth.bright, 0.6 * cloth.sheen),
      garment.plane(points('-8 7.6, -3 8.6, 3 8.4'), 1.3, cloth.bright, 0.4 * cloth.sheen),
      garment.plane(points('-8 12, 0 13, 8 12'), 1.2, cloth.ink, 0.5),
      garment.fold(points('11.4 5.4, 8.4 7.6, 6.8 11'), -1.2, 0.5),
      garment.fold(points('-11.4 6, -8.6 9, -6.4 11.4'), 1.2, 0.5),
      pen(points('-12.6 3.6, 0 2.6, 12.6 3.6'), 0.2, cloth.ink, 0.5, 0.5),
    ],
  });
  zip(garment, points('-11.4 4.4, 0 3.5, 11.4 4.4'), metal, [8.8, 4]);
  for (const x of [-12, 12]) garment.add(frame([x, 3], 1.6, 3, metal, 0.3));
  return garment.anchor('base', [0, 13.8]).finish();
};
