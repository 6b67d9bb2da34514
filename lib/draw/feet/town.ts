import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { curvePath, group, line, type Node, oklch, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import type { ShoeArtist } from './artist.ts';
import { paintBody } from './body.ts';
import { paintBroguing, paintLaces, paintTongue } from './fastenings.ts';
import { townLast } from './lasts.ts';
import { FROM_THE_SIDE, pair } from './pair.ts';
import { paintSole, type SoleStyle } from './soles.ts';
import { mouthAround, type Topline } from './solids.ts';

/** Edge of a leather sole: dark under dark shoes, waxed brown under the rest. */
export const leatherSole = (ground: string): string => (oklch(ground).l < 0.4 ? '#2b2320' : '#4a3527');

export const stackedSole = (artist: ShoeArtist, welt = 0.32): SoleStyle => {
  const colour = leatherSole(artist.cloth.ground);
  return {
    kind: 'welted',
    colour,
    welt,
    heel: {
      breast: 0.25,
      taper: [
        [0, 0.95],
        [1, 1],
      ],
      over: 0.11,
      colour,
      lifts: 3,
    },
  };
};

const QUARTERS: Topline = [
  [0, 6.1],
  [0.1, 5.7],
  [0.24, 4.9],
  [0.36, 6],
  [0.45, 7.2],
  [0.47, 7.6],
];
const laceColour = (artist: ShoeArtist): string => tone(artist.cloth.ground, -0.09);

/** The curved seam of the heel counter, from the sole up to the mouth; returns where it runs. */
const counterSeam = (artist: ShoeArtist, topline: Topline): Node[] => {
  const top = mouthAround(artist.last, topline, 0.12) * 0.97;
  const nodes: Node[] = [
    [0.2, 0.02],
    [0.21, top * 0.55],
    [0.12, top],
  ];
  artist.seam(nodes);
  return nodes;
};

const town =
  (paint: (artist: ShoeArtist) => void, toe: 'almond' | 'round' = 'almond') =>
  (piece: DrawnPiece, detail: Detail): Drawing =>
    pair(piece, detail, () => ({ shape: townLast(piece.heelCm, toe), stance: FROM_THE_SIDE, paint }));

/** Closed lacing, plain cap: the quarters are sewn under the vamp. */
export const oxford = town((artist) => {
  paintSole(artist, stackedSole(artist));
  paintBody(artist, { topline: QUARTERS });
  paintTongue(artist, 0.53, 0.4, 0.07);
  artist
    .seam(points('0.42 0.41, 0.48 0.43, 0.565 0.46'))
    .seam(points('0.565 0.5, 0.575 0.38, 0.53 0.22, 0.5 0.02'))
    .stitches(points('0.585 0.46, 0.588 0.36, 0.545 0.2, 0.515 0.02'))
    .seam(points('0.8 0.02, 0.815 0.2, 0.82 0.4, 0.82 0.6'), 0.22)
    .stitches(points('0.79 0.02, 0.804 0.2, 0.808 0.4, 0.808 0.6'));
  paintLaces(artist, {
    rows: [0.545, 0.52, 0.495, 0.47, 0.445],
    near: [0.45, 0.44, 0.43, 0.42, 0.41],
    colour: laceColour(artist),
    width: 0.34,
  });
});

/** Open lacing: two flaps lie on a plain vamp and stand apart at the toe end. */
export const derby = town((artist) => {
  paintSole(artist, stackedSole(artist, 0.42));
  paintBody(artist, { topline: QUARTERS });
  paintTongue(artist, 0.6, 0.37, 0.15);
  const flap: readonly Node[] = points(
    '0.44 0.37, 0.5 0.365, 0.56 0.37, 0.58 0.31, 0.57 0.22, 0.52 0.15, 0.46 0.1, 0.43 0.02',
  );
  artist.garment.add(artist.plane(points('0.5 0.1, 0.57 0.18, 0.595 0.3'), 0.7, artist.cloth.ink, 0.8));
  artist.patch(points('0.44 0.37!, 0.5 0.365, 0.562 0.37!, 0.58 0.31, 0.57 0.22, 0.52 0.15, 0.46 0.1!, 0.44 0.25'), {
    puff: 0.1,
    edge: 0,
    inner: [artist.plane(points('0.47 0.3, 0.52 0.3, 0.56 0.31'), 0.6, artist.cloth.bright, 0.6 * artist.cloth.sheen)],
  });
  artist.seam(flap, 0.26, artist.cloth.ink, 0.95);
  artist.seam(points('0.45 0.62, 0.56 0.62, 0.575 0.68'));
  artist.stitches(points('0.46 0.345, 0.55 0.343, 0.562 0.3, 0.55 0.22, 0.5 0.155, 0.45 0.115'));
  counterSeam(artist, QUARTERS);
  paintLaces(artist, {
    rows: [0.545, 0.505, 0.465, 0.425],
    near: [0.345, 0.34, 0.34, 0.35],
    colour: laceColour(artist),
    width: 0.42,
  });
}, 'round');

/** Full brogue: a winged cap, punched seams, a medallion on the toe. */
export const brogues = town((artist) => {
  paintSole(artist, stackedSole(artist, 0.42));
  paintBody(artist, { topline: QUARTERS, creases: 1 });
  paintTongue(artist, 0.57, 0.38, 0.11);
  const wing: readonly Node[] = points('0.56 0.02, 0.62 0.14, 0.7 0.3, 0.755 0.4, 0.73 0.5, 0.755 0.6, 0.72 0.66');
  artist.patch(
    [[0.56, 0.005, 'corner'], ...wing.slice(1), [0.9, 0.7], [1, 0.6], [1, 0.1], [0.93, 0.005, 'corner'], [0.75, 0.003]],
    {
      cast: 0.15,
      inner: [
        artist.plane(points('0.78 0.32, 0.86 0.36, 0.94 0.42'), 0.75, artist.cloth.bright, 0.7 * artist.cloth.sheen),
        artist.plane(points('0.6 0.04, 0.8 0.05, 0.96 0.1'), 0.8, artist.cloth.ink, 0.6),
      ],
    },
  );
  paintBroguing(
    artist,
    (artist.behind ? wing.slice(0, 6) : wing).map(([t, a]): Node => [t + 0.017, a + 0.004]),
  );
  artist.seam(points('0.57 0.5, 0.575 0.38, 0.53 0.22, 0.47 0.02'));
  paintBroguing(artist, points('0.562 0.4, 0.515 0.22, 0.455 0.02'));
  paintBroguing(
    artist,
    counterSeam(artist, QUARTERS).map(([t, a]): Node => [t - 0.015, a * 0.96]),
  );
  if (!artist.small && !artist.behind) {
    const dot = (t: number, a: number): Node[] => [
      [t, a],
      [t + 0.006, a + 0.012],
      [t + 0.012, a],
    ];
    for (const [t, a] of [
      [0.85, 0.44],
      [0.83, 0.4],
      [0.87, 0.4],
      [0.83, 0.48],
      [0.87, 0.48],
      [0.81, 0.44],
      [0.89, 0.44],
    ] as const)
      artist.line(dot(t, a), 0.26, artist.cloth.ink, 0.85);
  }
  paintLaces(artist, {
    rows: [0.55, 0.52, 0.49, 0.46, 0.43],
    near: [0.42, 0.41, 0.4, 0.4, 0.4],
    colour: laceColour(artist),
    width: 0.36,
  });
}, 'round');

const SLIP_ON: Topline = [
  [0, 5.9],
  [0.1, 5.3],
  [0.24, 4.3],
  [0.4, 4.4],
  [0.5, 5.9],
  [0.54, 7.1],
];

const apron = (edge: number): readonly Node[] => [
  [0.52, 0.2],
  [0.64, 0.2 + edge],
  [0.78, 0.24 + edge],
  [0.88, 0.34],
  [0.905, 0.48],
  [0.88, 0.62],
  [0.78, 0.7],
];

/** The raised, gathered seam round the top of a moccasin's toe. */
const paintApron = (artist: ShoeArtist, pleats: boolean): void => {
  const { cloth, garment } = artist;
  const edge = apron(0);
  garment.add(
    line(artist.mapped(edge, false, 0.05), 0.62, cloth.ink, 0.75),
    line(artist.mapped(edge, false, 0.16), 0.38, cloth.light),
  );
  if (artist.small) return;
  artist.stitches(points('0.53 0.17, 0.64 0.165, 0.78 0.2, 0.9 0.32'), cloth.ink, 0.6);
  if (!pleats) return;
  const ticks = [0.62, 0.66, 0.7, 0.74, 0.78, 0.82, 0.855, 0.885].map((t) => {
    const around = 0.2 + Math.max(0, t - 0.7) * 0.55;
    return curvePath(
      artist.mapped(
        [
          [t, around - 0.055],
          [t + 0.004, around + 0.03],
        ],
        false,
        0.1,
      ),
      false,
    );
  });
  garment.add(line(ticks.join(''), 0.13, cloth.ink, 0.7));
};

export const loafers = town((artist) => {
  const { cloth } = artist;
  paintSole(artist, stackedSole(artist, 0.3));
  paintBody(artist, { topline: SLIP_ON, creases: 1, lining: '#8a6746', insole: '#b58e62' });
  paintApron(artist, false);
  counterSeam(artist, SLIP_ON);
  // The bar across the instep, with the slot a coin fits in.
  artist.patch(
    points(
      '0.53 0.02!, 0.51 0.12, 0.535 0.3, 0.54 0.5, 0.535 0.7, 0.52 0.8!, 0.62 0.8!, 0.63 0.68, 0.635 0.5, 0.63 0.3, 0.64 0.12, 0.65 0.02!',
    ),
    {
      puff: 0.22,
      cast: 0.3,
      inner: [
        artist.plane(points('0.57 0.2, 0.58 0.35, 0.585 0.48'), 0.8, cloth.bright, 0.6 * cloth.sheen),
        artist.plane(points('0.55 0.04, 0.63 0.05'), 0.9, cloth.ink, 0.6),
      ],
    },
  );
  artist
    .stitches(points('0.535 0.14, 0.552 0.3, 0.556 0.5'), cloth.bright, 0.7)
    .stitches(points('0.628 0.12, 0.616 0.3, 0.62 0.5'), cloth.bright, 0.7);
  artist.patch(points('0.582 0.26!, 0.572 0.35, 0.58 0.45!, 0.594 0.36'), {
    puff: 0.26,
    weave: false,
    edge: 0,
    fill: cloth.ink,
  });
  artist.line(points('0.586 0.27, 0.598 0.36, 0.584 0.45'), 0.14, cloth.bright, 0.9, 0.26);
}, 'round');

const MOCCASIN_SOLE = '#ece3d1';

/** Moccasin with a hand-sewn apron, a lace round the collar, a pale slit sole. */
export const boatShoes = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: {
      ...townLast(0.9, 'round', 1.1),
      under: [
        [0, 0.2],
        [0.08, 0],
        [0.8, 0],
        [1, 0.6],
      ],
      sole: [
        [0, 1.6],
        [0.3, 1.3],
        [1, 1.1],
      ],
    },
    stance: FROM_THE_SIDE,
    paint: (artist) => {
      const { cloth } = artist;
      paintSole(artist, { kind: 'cup', colour: MOCCASIN_SOLE, welt: 0.2 });
      paintBody(artist, { topline: SLIP_ON, creases: 1, insole: '#b58e62', lining: '#8a6746' });
      paintTongue(artist, 0.66, 0.47, 0.13);
      paintApron(artist, true);
      artist.patch(points('0.47 0.34!, 0.56 0.36, 0.655 0.38!, 0.66 0.26, 0.56 0.14, 0.47 0.1!'), {
        puff: 0.12,
        cast: 0.25,
      });
      artist.patch(points('0.5 0.6!, 0.655 0.6!, 0.64 0.72, 0.5 0.74!'), { puff: 0.12 });
      const lace = cloth.accents[0] ?? '#e9dcc0';
      const collar: Node[] = points('0.02 0.33, 0.12 0.3, 0.25 0.26, 0.38 0.22, 0.5 0.25');
      artist.line(collar, 0.46, cloth.ink, 0.8);
      const path = curvePath(artist.mapped(collar, false, 0.05), false);
      artist.garment.add(group([{ path, stroke: lace, width: 0.3, dash: artist.small ? [1.8, 0.8] : [1.5, 0.6] }]));
      paintLaces(artist, { rows: [0.635, 0.575], near: [0.34, 0.33], colour: lace, eyelets: 'metal', width: 0.44 });
    },
  }));
