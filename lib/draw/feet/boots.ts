import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { curvePath, line, pen } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import type { ShoeArtist } from './artist.ts';
import { legSections, onLeg, paintBoot } from './boot-body.ts';
import { METAL, paintElastic } from './fastenings.ts';
import type { Along } from './last.ts';
import { heelOf, townLast } from './lasts.ts';
import { shaftOf } from './length.ts';
import { BOOTS, pair } from './pair.ts';
import { paintSole } from './soles.ts';
import type { Leg } from './solids.ts';
import { leatherSole, stackedSole } from './town.ts';

/** How a boot's heel narrows from the seat (1) to the ground (0). */
const SLENDER: Along = [
  [0, 0.5],
  [0.5, 0.62],
  [1, 1],
];
const STURDY: Along = [
  [0, 0.78],
  [0.5, 0.84],
  [1, 1],
];

const seamUp = (artist: ShoeArtist, of: Leg, around: number, from = 0.05, to = 0.98): void => {
  const nodes = onLeg(of, [
    [to, around],
    [(from + to) / 2, around],
    [from, around],
  ]);
  artist.garment.add(pen(nodes, 0.2, artist.cloth.ink, 0.75, 0.5));
};

export const pullTab = (artist: ShoeArtist, of: Leg, around: number): void => {
  artist.garment.panel(
    onLeg(
      of,
      [
        [0.8, around - 0.035, 'corner'],
        [1.06, around - 0.03],
        [1.1, around],
        [1.06, around + 0.03],
        [0.8, around + 0.035, 'corner'],
      ],
      0.1,
    ),
    { edge: 0.2, wobble: 0.02, rim: false },
  );
};

export const chelsea = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: townLast(piece.heelCm, 'round'),
    stance: BOOTS,
    paint: (artist) => {
      const shaft = shaftOf(piece);
      paintSole(artist, stackedSole(artist));
      const of = paintBoot(artist, { sections: legSections(artist, shaft), creases: 2 });
      const gore = onLeg(of, points('0.985 0.13!, 0.6 0.17, 0.3 0.235, 0.6 0.3, 0.985 0.345!, 0.985 0.24'));
      const ribs = Array.from({ length: artist.small ? 5 : 9 }, (_, i) => {
        const around = 0.14 + (i / (artist.small ? 4 : 8)) * 0.2;
        return curvePath(
          onLeg(of, [
            [1, around],
            [0.3, 0.235 + (around - 0.235) * 0.3],
          ]),
          false,
        );
      }).join('');
      paintElastic(artist, gore, ribs);
      if (!artist.small)
        artist.garment.add(
          line(
            onLeg(of, points('0.98 0.11, 0.58 0.145, 0.24 0.235, 0.58 0.325, 0.98 0.365')),
            0.12,
            artist.cloth.bright,
            0.5,
            [0.4, 0.3],
          ),
        );
      artist.seam(points('0.33 0.2, 0.32 0.1, 0.33 0.02'));
      pullTab(artist, of, 0.46);
    },
  }));

export const ankleBoots = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...townLast(piece.heelCm, 'almond', 0.45), length: 27.4 },
    stance: BOOTS,
    paint: (artist) => {
      const shaft = shaftOf(piece);
      const colour = leatherSole(artist.cloth.ground);
      const high = heelOf(piece.heelCm) > 5;
      paintSole(artist, {
        kind: 'plain',
        colour,
        welt: 0.16,
        heel: {
          breast: 0.22,
          taper: high ? SLENDER : STURDY,
          over: 0.1,
          colour,
          lifts: 4,
        },
      });
      const of = paintBoot(artist, { sections: legSections(artist, shaft, { front: 12.2, half: 4.1 }), creases: 3 });
      if (artist.behind) {
        const zip = onLeg(of, points('0.97 0.2, 0.5 0.22, 0.1 0.22'));
        artist.garment.add(line(zip, 0.62, artist.cloth.ink, 0.9), line(zip, 0.34, METAL, 1, [0.22, 0.16]));
        return;
      }
      artist.seam(points('0.5 0.44, 0.46 0.28, 0.4 0.14, 0.37 0.02'));
      artist.stitches(points('0.515 0.42, 0.475 0.27, 0.415 0.13, 0.385 0.02'));
      seamUp(artist, of, 0.44);
    },
  }));

export const kneeBoots = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...townLast(piece.heelCm, 'almond', 0.45), length: 27 },
    stance: { ...BOOTS, far: [7.4, -4.6], spread: 16 },
    paint: (artist) => {
      const shaft = shaftOf(piece);
      const colour = leatherSole(artist.cloth.ground);
      paintSole(artist, {
        kind: 'plain',
        colour,
        welt: 0.16,
        heel: {
          breast: 0.22,
          taper: [
            [0, 0.8],
            [1, 1],
          ],
          over: 0.1,
          colour,
          lifts: 4,
        },
      });
      const of = paintBoot(artist, {
        sections: legSections(artist, shaft, { front: 13, half: 5.6, calf: 1.4 }),
        creases: 3,
      });
      seamUp(artist, of, 0.28, 0.06);
      if (!artist.small)
        artist.garment.add(
          line(
            onLeg(of, points('0.965 0, 0.965 0.12, 0.965 0.25, 0.965 0.4, 0.965 0.49')),
            0.12,
            artist.cloth.bright,
            0.6,
            [0.42, 0.34],
          ),
          artist.garment.fold(onLeg(of, points('0.5 0.4, 0.46 0.3, 0.48 0.18')), 0.9, 0.6),
        );
    },
  }));
