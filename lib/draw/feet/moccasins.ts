import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { curvePath, group, line, type Node } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import type { ShoeArtist } from './artist.ts';
import { paintBody } from './body.ts';
import { paintLaces, paintTongue } from './fastenings.ts';
import { townLast } from './lasts.ts';
import { FROM_THE_SIDE, pair } from './pair.ts';
import { paintSole } from './soles.ts';
import type { Topline } from './solids.ts';

import { counterSeam, stackedSole, town } from './town.ts';

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
