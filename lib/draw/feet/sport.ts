import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { ellipsePath, type Node, oklch, shape, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import type { ShoeArtist } from './artist.ts';
import { paintBody } from './body.ts';
import { paintLaces, paintTongue } from './fastenings.ts';
import { flatLast } from './lasts.ts';
import { FROM_THE_SIDE, pair } from './pair.ts';
import { paintSole } from './soles.ts';
import type { Topline } from './solids.ts';

const PADDED: Topline = [
  [0, 6.6],
  [0.08, 6.2],
  [0.22, 5.1],
  [0.34, 6],
  [0.42, 7.4],
  [0.45, 7.9],
];
const WHITE_RUBBER = '#ebe4d5';

const rubberOf = (artist: ShoeArtist): string => (oklch(artist.cloth.ground).l > 0.86 ? '#ddd4c2' : WHITE_RUBBER);

/** The stay that carries the eyelets: its lower edge on the near side. */
const stay = (artist: ShoeArtist, fill: string | undefined, drop: number): void => {
  artist.patch(
    [
      [0.42, 0.41, 'corner'],
      [0.52, 0.4],
      [0.63, 0.41, 'corner'],
      [0.655, 0.36],
      [0.64, 0.3],
      [0.52, 0.29 - drop],
      [0.4, 0.3 - drop * 1.4, 'corner'],
    ],
    { puff: 0.08, edge: 0.2, cast: 0.14, ...(fill !== undefined && { fill }) },
  );
  artist.patch(points('0.45 0.6!, 0.63 0.59!, 0.65 0.64, 0.62 0.68, 0.45 0.7!'), {
    puff: 0.08,
    edge: 0.2,
    ...(fill !== undefined && { fill }),
  });
  artist.stitches(
    [
      [0.43, 0.335 - drop],
      [0.52, 0.315 - drop],
      [0.63, 0.325],
    ],
    artist.cloth.ink,
    0.5,
  );
};

const holes = (artist: ShoeArtist, at: readonly Node[]): void => {
  if (artist.small) return;
  artist.garment.add(
    shape(at.map(([t, a]) => ellipsePath([...artist.last.on(t, a, 0.05)], 0.13)).join(''), artist.cloth.ink, 0.7),
  );
};

export const trainers = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: flatLast(3, 2.1),
    stance: FROM_THE_SIDE,
    paint: (artist) => {
      const { cloth } = artist;
      const accent = cloth.accents[0];
      paintSole(artist, { kind: 'cup', colour: rubberOf(artist), welt: 0.3 });
      paintBody(artist, {
        topline: PADDED,
        collar: 0.75,
        creases: 1,
        lining: tone(cloth.ground, oklch(cloth.ground).l > 0.7 ? -0.16 : 0.08, 0.6),
        insole: '#cfc3ad',
      });
      paintTongue(artist, 0.64, 0.42, 0.13);
      const overlay = plainCloth(tone(cloth.ground, -0.035), 'leather', detail);
      artist.patch(
        points('0.66 0.005!, 0.72 0.16, 0.8 0.26, 0.88 0.36, 0.93 0.5, 0.975 0.6, 1 0.55, 1 0.1, 0.94 0.005!'),
        {
          cloth: overlay,
          weave: false,
          edge: 0.2,
          cast: 0.12,
        },
      );
      artist.stitches(points('0.68 0.03, 0.735 0.17, 0.81 0.28, 0.88 0.38'), cloth.ink, 0.5);
      const heel = plainCloth(accent ?? tone(cloth.ground, -0.14), 'leather', detail);
      artist.patch(points('0.005 0.02!, 0.003 0.36!, 0.06 0.355, 0.11 0.27, 0.14 0.15, 0.2 0.005!'), {
        cloth: heel,
        weave: false,
        edge: 0.25,
      });
      stay(artist, undefined, 0.03);
      artist
        .seam(points('0.4 0.22, 0.36 0.12, 0.34 0.02'), 0.16)
        .stitches(points('0.39 0.24, 0.345 0.13, 0.325 0.02'), cloth.ink, 0.45);
      if (accent)
        artist.patch(points('0.3 0.02!, 0.4 0.02!, 0.52 0.24!, 0.46 0.25!'), {
          cloth: heel,
          weave: false,
          edge: 0.15,
          puff: 0.06,
        });
      holes(artist, points('0.7 0.4, 0.74 0.41, 0.78 0.42, 0.72 0.35, 0.76 0.36, 0.7 0.47, 0.74 0.48, 0.78 0.48'));
      paintLaces(artist, {
        rows: [0.615, 0.575, 0.535, 0.495, 0.455],
        near: [0.385, 0.375, 0.37, 0.365, 0.36],
        colour: laces(artist),
        width: 0.5,
      });
    },
  }));

const laces = (artist: ShoeArtist): string => (oklch(artist.cloth.ground).l > 0.8 ? '#f4efe4' : '#ece5d6');

export const canvasShoes = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: flatLast(2, 1.7, {
      toe: 'round',
      spring: 0.6,
      crest: [
        [0, 7],
        [0.2, 8.4],
        [0.36, 8],
        [0.46, 7],
        [0.56, 6],
        [0.66, 5.1],
        [0.78, 4.3],
        [0.9, 3.9],
        [1, 3.4],
      ],
    }),
    stance: FROM_THE_SIDE,
    paint: (artist) => {
      const { cloth } = artist;
      const rubber = plainCloth(rubberOf(artist), 'rubber', detail);
      paintSole(artist, { kind: 'cup', colour: rubber.ground, welt: 0.22, stripe: cloth.accents[0] ?? '#a63d33' });
      paintBody(artist, {
        topline: [
          [0, 6.3],
          [0.1, 5.9],
          [0.24, 5],
          [0.36, 6],
          [0.44, 7.2],
          [0.46, 7.6],
        ],
        creases: 2,
        lining: '#d8cdb8',
        insole: '#c9bca3',
        collar: 0.24,
      });
      paintTongue(artist, 0.66, 0.42, 0.12);
      artist.patch(
        points('0.82 0.003!, 0.835 0.2, 0.845 0.36, 0.845 0.5, 0.85 0.7, 0.94 0.74, 1 0.6, 1 0.1, 0.95 0.003!'),
        {
          cloth: rubber,
          weave: false,
          puff: 0.1,
          edge: 0.3,
          inner: [
            artist.plane(points('0.87 0.34, 0.92 0.38, 0.96 0.45'), 0.5, '#ffffff', 0.9),
            artist.plane(points('0.85 0.05, 0.96 0.09'), 0.7, rubber.ink, 0.5),
          ],
        },
      );
      stay(artist, undefined, 0.02);
      const pale = oklch(cloth.ground).l > 0.75 ? cloth.ink : '#f0e8d8';
      artist
        .seam(points('0.66 0.36, 0.66 0.2, 0.6 0.02'), 0.16)
        .stitches(points('0.648 0.34, 0.645 0.2, 0.585 0.02'), pale, 0.7)
        .stitches(points('0.42 0.29, 0.54 0.27, 0.635 0.29'), pale, 0.7)
        .stitches(points('0.06 0.02, 0.07 0.2, 0.05 0.36'), pale, 0.7);
      paintLaces(artist, {
        rows: [0.63, 0.59, 0.55, 0.51, 0.47],
        near: [0.375, 0.37, 0.365, 0.365, 0.36],
        colour: laces(artist),
        width: 0.52,
        eyelets: 'metal',
      });
    },
  }));

export const walkingShoes = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: flatLast(2.7, 2, { toe: 'broad', breadth: 1.03, length: 28.5 }),
    stance: FROM_THE_SIDE,
    paint: (artist) => {
      const { cloth } = artist;
      const accent = cloth.accents[0] ?? '#b5622f';
      paintSole(artist, { kind: 'lug', colour: '#35302c', welt: 0.35 });
      paintBody(artist, {
        topline: PADDED,
        collar: 0.95,
        creases: 0,
        lining: tone(cloth.ground, -0.12, 0.7),
        insole: tone(cloth.ground, -0.04, 0.6),
      });
      paintTongue(artist, 0.66, 0.41, 0.14, tone(cloth.ground, -0.1, 0.7));
      artist
        .seam(points('0.46 0.24, 0.36 0.2, 0.26 0.06'))
        .stitches(points('0.46 0.21, 0.37 0.175, 0.28 0.05'), cloth.bright, 0.7)
        .seam(points('0.64 0.26, 0.58 0.14, 0.52 0.02'));
      const bumper = plainCloth(tone(cloth.ground, -0.05, 0.9), 'rubber', detail);
      artist.patch(points('0.74 0.004!, 0.82 0.14, 0.9 0.26, 0.94 0.5, 0.95 0.7, 1 0.6, 1 0.1, 0.95 0.004!'), {
        cloth: bumper,
        weave: false,
        puff: 0.1,
        cast: 0.12,
        inner: [artist.plane(points('0.84 0.14, 0.92 0.26, 0.96 0.4'), 0.3, bumper.bright, 0.9)],
      });
      artist.patch(points('0.004 0.005!, 0.003 0.24, 0.05 0.27, 0.13 0.2, 0.2 0.005!'), {
        cloth: bumper,
        weave: false,
      });
      stay(artist, tone(cloth.ground, -0.03), 0.06);
      artist.stitches(points('0.6 0.05, 0.66 0.2, 0.7 0.27'), cloth.bright, 0.7);
      const tab: Node[] = points('0.015 0.3, 0.012 0.36, 0.02 0.42');
      artist.line(tab, 0.7, cloth.ink, 0.9).line(tab, 0.5, accent);
      paintLaces(artist, {
        rows: [0.625, 0.575, 0.525, 0.475, 0.435],
        near: [0.385, 0.375, 0.37, 0.365, 0.36],
        colour: accent,
        width: 0.42,
        eyelets: 'metal',
        crossed: true,
      });
    },
  }));
