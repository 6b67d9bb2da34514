import { type Node, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import type { ShoeArtist } from './artist.ts';
import { paintBody } from './body.ts';
import { paintBroguing, paintLaces, paintTongue } from './fastenings.ts';
import { paintSole } from './soles.ts';
import type { Topline } from './solids.ts';

import { counterSeam, stackedSole, town } from './town.ts';

const QUARTERS: Topline = [
  [0, 6.1],
  [0.1, 5.7],
  [0.24, 4.9],
  [0.36, 6],
  [0.45, 7.2],
  [0.47, 7.6],
];
const laceColour = (artist: ShoeArtist): string => tone(artist.cloth.ground, -0.09);

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
