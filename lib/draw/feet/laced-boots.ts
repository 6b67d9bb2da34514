import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { line, type Node, oklch, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import type { ShoeArtist } from './artist.ts';
import { legSections, onLeg, paintBoot } from './boot-body.ts';
import { pullTab } from './boots.ts';
import { paintLaces } from './fastenings.ts';
import { flatLast, townLast } from './lasts.ts';
import { shaftOf } from './length.ts';
import { BOOTS, pair } from './pair.ts';
import { paintSole } from './soles.ts';
import type { Leg } from './solids.ts';
import { stackedSole } from './town.ts';

/** Facings up the front with a tongue between them; returns where the laces run on the leg. */
const facings = (artist: ShoeArtist, of: Leg, colour: string | undefined, tall: number): void => {
  const { garment, cloth } = artist;
  const fill = colour === undefined ? {} : { cloth: plainCloth(colour, 'leather', garment.detail), weave: false };
  garment.panel(
    [
      ...artist.mapped(points('0.6 0.6!, 0.62 0.5, 0.6 0.38!'), false, 0.05),
      ...onLeg(of, points('0.35 0.04, 0.7 0.035, 1 0.03!, 1.05 0, 1.03 -0.05, 1 -0.08!, 0.6 -0.07, 0.35 -0.05'), 0.05),
    ],
    { edge: 0.4, wobble: 0.02, rim: false, fill: tone(colour ?? cloth.ground, -0.07) },
  );
  const top = tall;
  garment.panel(
    [
      ...artist.mapped(points('0.66 0.34!, 0.6 0.39, 0.54 0.42'), false, 0.1),
      ...onLeg(
        of,
        [
          [0.38, 0.035],
          [0.7, 0.03],
          [top, 0.028, 'corner'],
          [top, 0.1, 'corner'],
          [0.6, 0.105],
          [0.34, 0.11],
        ],
        0.08,
      ),
      ...artist.mapped(points('0.5 0.24, 0.58 0.2, 0.66 0.24'), false, 0.1).slice(1),
    ],
    { covers: false, edge: 0.3, wobble: 0.02, rim: false, cast: 0.2, ...fill },
  );
};

const bootLaces = (artist: ShoeArtist, of: Leg, colour: string, count: number, hooks: boolean): void => {
  const { garment } = artist;
  const width = artist.small ? 0.55 : 0.42;
  const dark = tone(colour, -0.26);
  paintLaces(artist, {
    rows: [0.635, 0.602, 0.57, 0.538, 0.508],
    near: [0.36, 0.37, 0.385, 0.4, 0.41],
    colour,
    width,
    bow: false,
    eyelets: 'metal',
    crossed: hooks,
  });
  const rows = Array.from({ length: count }, (_, i) => 0.37 + (0.57 * i) / (count - 1));
  rows.forEach((up, i) => {
    const next = rows[i + 1] ?? up + 0.03;
    const near = of.on(up, 0.05, 0.12);
    const far = of.on(next, -0.05, 0.3);
    const back = of.on(up, -0.05, 0.3);
    const bar = (a: readonly [number, number], b: readonly [number, number]): void => {
      garment.add(
        line(
          [
            [a[0], a[1]],
            [b[0], b[1]],
          ],
          width + 0.2,
          dark,
          0.9,
        ),
        line(
          [
            [a[0], a[1]],
            [b[0], b[1]],
          ],
          width,
          colour,
        ),
      );
    };
    if (hooks && i + 1 < rows.length) bar(back, of.on(next, 0.05, 0.12));
    bar(near, hooks ? far : back);
    garment.add(
      line(
        [
          [near[0], near[1]],
          [near[0] + 0.5, near[1] - 0.1],
        ],
        hooks ? 0.5 : 0.42,
        '#8d7a55',
      ),
      line(
        [
          [near[0], near[1] - 0.1],
          [near[0] + 0.3, near[1] - 0.15],
        ],
        0.16,
        '#e8d9ad',
      ),
    );
  });
  const [x, y] = of.on(0.95, 0.02, 0.5);
  const cord = (nodes: readonly Node[]): void => {
    garment.add(line(nodes, width + 0.2, dark, 0.9), line(nodes, width, colour));
  };
  cord([
    [x, y],
    [x - 2.2, y + 0.4],
    [x - 2.9, y + 1.9],
    [x - 1.6, y + 2],
    [x, y + 0.2],
  ]);
  cord([
    [x, y],
    [x + 2, y + 0.7],
    [x + 2.4, y + 2.2],
    [x + 1.2, y + 2],
    [x, y + 0.2],
  ]);
  cord([
    [x, y],
    [x - 0.8, y + 1.6],
    [x - 0.9, y + 3.2],
  ]);
  cord([
    [x, y],
    [x + 0.7, y + 1.5],
    [x + 1.2, y + 2.9],
  ]);
};

export const laceUpBoots = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...townLast(piece.heelCm, 'round', 0.9), breadth: 1.03 },
    stance: BOOTS,
    paint: (artist) => {
      const shaft = shaftOf(piece);
      paintSole(artist, { ...stackedSole(artist, 0.45), kind: 'welted' });
      const of = paintBoot(artist, { sections: legSections(artist, shaft), creases: 1, lining: '#6b5640' });
      artist
        .seam(points('0.79 0.02, 0.805 0.2, 0.81 0.4, 0.81 0.6'), 0.22)
        .stitches(points('0.78 0.02, 0.795 0.2, 0.798 0.4'));
      artist.seam(points('0.19 0.02, 0.21 0.2, 0.15 0.42'));
      facings(artist, of, undefined, 0.985);
      bootLaces(
        artist,
        of,
        artist.cloth.accents[0] ?? tone(artist.cloth.ground, oklch(artist.cloth.ground).l < 0.4 ? 0.16 : -0.12),
        6,
        false,
      );
      pullTab(artist, of, 0.48);
    },
  }));

export const LUG = '#2e2a27';

export const hikingBoots = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...flatLast(3, 2.4, { toe: 'broad', breadth: 1.04, length: 28.5 }) },
    stance: BOOTS,
    paint: (artist) => {
      const { cloth } = artist;
      const accent = cloth.accents[0] ?? '#a9502f';
      paintSole(artist, { kind: 'lug', colour: LUG, welt: 0.35 });
      const of = paintBoot(artist, {
        sections: legSections(artist, shaftOf(piece), { front: 13.2, half: 5, ankle: 0.4 }),
        creases: 0,
        collar: 1.15,
        lining: '#4b443c',
      });
      const rand = plainCloth(tone(cloth.ground, -0.05, 0.95), 'suede', detail);
      artist.patch(points('0.68 0.005!, 0.76 0.14, 0.87 0.26, 0.95 0.56, 1 0.56, 1 0.1, 0.93 0.005!'), {
        cloth: rand,
        weave: false,
        cast: 0.1,
      });
      artist.patch(points('0.01 0.005!, 0.005 0.2, 0.06 0.26, 0.16 0.2, 0.24 0.005!'), { cloth: rand, weave: false });
      artist
        .seam(points('0.3 0.02, 0.36 0.16, 0.46 0.2, 0.64 0.2'))
        .stitches(points('0.31 0.05, 0.37 0.18, 0.46 0.23, 0.63 0.22'));
      artist.stitches(points('0.7 0.04, 0.77 0.16, 0.86 0.27'));
      facings(artist, of, tone(cloth.ground, -0.045), 0.9);
      bootLaces(artist, of, accent, 4, true);
      if (!artist.small)
        artist.garment.add(line(onLeg(of, points('0.86 0.12, 0.84 0.3, 0.86 0.48')), 0.14, cloth.ink, 0.6));
      pullTab(artist, of, 0.48);
    },
  }));
