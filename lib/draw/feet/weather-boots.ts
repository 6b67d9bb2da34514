import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { curvePath, group, line, type Node, pen, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import type { ShoeArtist } from './artist.ts';
import { legSections, onLeg, paintBoot } from './boot-body.ts';
import { paintBuckle, paintStrap } from './fastenings.ts';
import { LUG } from './laced-boots.ts';
import { flatLast } from './lasts.ts';
import { shaftOf } from './length.ts';
import { BOOTS, pair } from './pair.ts';
import { paintSole } from './soles.ts';
import type { Leg } from './solids.ts';
export const rainBoots = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...flatLast(2.4, 1.7, { toe: 'round', breadth: 1.04 }) },
    stance: { ...BOOTS, far: [7.2, -4.6], spread: 17 },
    paint: (artist) => {
      const { cloth, garment } = artist;
      paintSole(artist, { kind: 'cup', colour: cloth.accents[0] ?? tone(cloth.ground, -0.13), welt: 0.28 });
      const sections = legSections(artist, shaftOf(piece), { front: 13.6, half: 5.6, calf: 0.6, ankle: 0.5 });
      const of = paintBoot(artist, {
        sections,
        creases: 1,
        lining: '#8d8375',
        inner: (leg) => [
          pen(onLeg(leg, points('0.9 0.15, 0.65 0.15, 0.42 0.14')), 0.62, '#ffffff', 0.5, 0.5),
          pen(artist.mapped(points('0.72 0.36, 0.82 0.37, 0.92 0.42')), 0.5, '#ffffff', 0.5, 0.5),
        ],
      });
      const band = (up: number): Node[] =>
        onLeg(
          of,
          [
            [up, 0],
            [up, 0.12],
            [up, 0.25],
            [up, 0.38],
            [up, 0.5],
          ],
          0.05,
        );
      garment.add(line(band(0.9), 0.2, cloth.ink, 0.8), line(band(0.915), 0.16, cloth.bright, 0.7));
      artist.seam(points('0.88 0.02, 0.86 0.25, 0.85 0.5'), 0.16).seam(points('0.13 0.02, 0.16 0.3, 0.1 0.5'), 0.16);
      const strap = [0.3, 0.36, 0.4, 0.44].map((around) => of.on(0.8, around, 0.1));
      paintStrap(artist, strap, 1.1);
      paintBuckle(artist, of.on(0.8, 0.3, 0.15), [1.5, 1.5], 4, '#b9b4a8');
    },
  }));

export const snowBoots = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...flatLast(3.2, 2.6, { toe: 'broad', breadth: 1.1 }) },
    stance: { ...BOOTS, far: [6.4, -5] },
    paint: (artist) => {
      const { cloth, garment } = artist;
      const shell = plainCloth(tone(cloth.ground, -0.045), 'rubber', detail);
      paintSole(artist, { kind: 'lug', colour: LUG, welt: 0.35 });
      const sections = legSections(artist, shaftOf(piece), { front: 13.8, half: 5.9, ankle: 0, calf: 0.3 });
      const of = paintBoot(artist, { sections, creases: 0, collar: 0.4, lining: '#e7dcc8' });
      for (const up of [0.34, 0.52, 0.7]) {
        const seam = (bow: number): Node[] =>
          onLeg(of, [
            [up - 0.02, -0.04],
            [up - bow, 0.1],
            [up - bow * 1.3, 0.25],
            [up - bow, 0.4],
            [up, 0.5],
          ]);
        garment.add(
          garment.plane(
            onLeg(of, [
              [up - 0.06, 0.02],
              [up - 0.07, 0.2],
              [up - 0.05, 0.46],
            ]),
            0.8,
            cloth.ink,
            0.4,
          ),
          pen(seam(0.02), 0.26, cloth.ink, 0.85, 0.5),
          garment.plane(
            onLeg(of, [
              [up + 0.05, 0.06],
              [up + 0.05, 0.2],
              [up + 0.06, 0.36],
            ]),
            0.7,
            cloth.bright,
            0.7,
          ),
        );
      }
      // The waterproof foot.
      artist.patch(
        points(
          '0 0.005!, 0 0.3, 0.1 0.3, 0.3 0.2, 0.48 0.2, 0.6 0.34, 0.66 0.5, 0.7 0.72, 0.85 0.76, 0.95 0.78, 1 0.6, 1 0.1, 0.95 0.005!, 0.5 0.003',
        ),
        {
          cloth: shell,
          weave: false,
          puff: 0.14,
          cast: 0.25,
          inner: [
            artist.plane(points('0.62 0.3, 0.76 0.34, 0.92 0.42'), 0.9, shell.bright, 0.8),
            artist.plane(points('0.05 0.05, 0.5 0.05, 0.95 0.1'), 1, shell.ink, 0.7),
          ],
        },
      );
      artist.line(points('0.02 0.14, 0.3 0.13, 0.6 0.13, 0.93 0.16'), 0.16, shell.ink, 0.8, 0.14);
      fur(artist, of);
      const cord = onLeg(of, points('0.84 0, 0.82 0.12, 0.82 0.24, 0.84 0.36'), 0.2);
      garment.add(line(cord, 0.5, cloth.ink, 0.9), line(cord, 0.3, cloth.accents[0] ?? '#d8c8a8'));
      const [x, y] = of.on(0.82, 0.14, 0.3);
      garment.panel(
        [
          [x - 0.5, y - 0.7],
          [x + 0.5, y - 0.7],
          [x + 0.5, y + 0.7],
          [x - 0.5, y + 0.7],
        ],
        { covers: false, edge: 0.15, wobble: 0.02, rim: false, cloth: shell, weave: false },
      );
    },
  }));

/** A cuff of pile round the mouth: a scalloped band and short strokes. */
const fur = (artist: ShoeArtist, of: Leg): void => {
  const { garment } = artist;
  const pile = plainCloth('#eadfca', 'fleece', garment.detail);
  const count = artist.small ? 12 : 22;
  const edge = (from: number, to: number, up: number, out: number, wave: number): Node[] =>
    Array.from({ length: count + 1 }, (_, i) => {
      const [x, y] = of.on(up, from + ((to - from) * i) / count, out + garment.jitter(0.08));
      return [x, y + (i % 2 === 0 ? wave : -wave)];
    });
  const below = edge(-0.02, 0.52, 0.87, 0.5, 0.22);
  const back = edge(0.52, 0.98, 1.02, 0.5, 0.16);
  garment.panel([...below, ...back], { edge: 0.35, wobble: 0, cloth: pile, rim: false, cast: 0.22 });
  const mouth = curvePath(edge(0, 1, 1.01, -0.9, 0.12).slice(0, -1));
  garment.add(
    { path: mouth, fill: tone(pile.ground, -0.22) },
    group([line(mouth, 1.2, pile.ink, 0.35)], { clip: mouth }),
  );
  if (artist.small) return;
  const strokes = Array.from({ length: 34 }, () => {
    const [x, y] = of.on(0.9 + garment.random() * 0.09, -0.01 + garment.random() * 0.5, 0.4);
    const swing = garment.jitter(0.3);
    return curvePath(
      [
        [x, y],
        [x + swing, y + 0.45],
        [x + swing * 0.4, y + 0.8],
      ],
      false,
    );
  });
  garment.add(line(strokes.join(''), 0.12, pile.ink, 0.45));
};
