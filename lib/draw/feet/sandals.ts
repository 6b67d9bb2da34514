import type { Detail, Drawing, DrawnPiece, Point } from '../drawing.ts';
import { curvePath, ellipsePath, line, type Node, oklch, pen, shape, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import { paintBody } from './body.ts';
import { paintBuckle, paintStrap } from './fastenings.ts';
import { archBand, paintCounter, paintFootbed } from './footbed.ts';
import { ankleRing, slingRun } from './heels.ts';
import { flatLast, heelOf } from './lasts.ts';
import { FROM_ABOVE, FROM_THE_SIDE, pair } from './pair.ts';
import { paintSole } from './soles.ts';

const JUTE = '#c6a571';

/** Cork foot bed, two broad buckled straps, one round the heel. */
export const sandals = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: { ...flatLast(2.2, 1.7, { toe: 'round', breadth: 1, length: 27, spring: 0.3 }) },
    stance: { ...FROM_ABOVE, down: 40, tall: 0.85, far: [2.8, -7.4] },
    paint: (artist) => {
      paintSole(artist, { kind: 'cork', colour: '#8a6a48', welt: 0.12 });
      paintFootbed(artist, '#c29a6c');
      const sling = (from: number, to: number): Point[] =>
        slingRun(artist, { front: 0.45, low: 0.5, high: 4.7 }, from, to);
      paintStrap(artist, sling(80, 180), 1.1, { under: true });
      for (const [near, far, lift] of [
        [0.7, 0.75, 3.2],
        [0.47, 0.5, 4.6],
      ] as const) {
        const at = archBand(artist, { near, far, lift, width: 2.8 });
        paintBuckle(artist, at, [1.5, 2.2], 74);
      }
      paintStrap(artist, sling(0, 104), 1.1, { stitched: true });
    },
  }));

export const wedgeSandals = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => {
    const h = Math.max(2.5, heelOf(piece.heelCm));
    const fore = Math.min(2.2, 1 + h * 0.16);
    return {
      shape: {
        ...flatLast(h, fore, { toe: 'round', breadth: 0.95, length: 25.4, spring: 0.4 }),
        sole: [
          [0, h],
          [0.16, h * 0.98],
          [0.34, fore + (h - fore) * 0.66],
          [0.55, fore + (h - fore) * 0.16],
          [0.68, fore],
          [1, fore * 0.8],
        ],
      },
      stance: { ...FROM_THE_SIDE, down: 28 },
      paint: (artist) => {
        const strap = artist.cloth.ground;
        paintSole(artist, { kind: 'rope', colour: JUTE, welt: 0.1 });
        paintFootbed(artist, '#d9bd8f');
        const strapRing = ankleRing(artist, 6);
        paintStrap(artist, strapRing.far, 0.9, { under: true, colour: strap });
        archBand(artist, { near: 0.62, far: 0.84, lift: 3.4, width: 2.1, colour: strap });
        archBand(artist, { near: 0.84, far: 0.64, lift: 3.4, width: 2.1, colour: strap });
        paintCounter(artist, 6.4, strap);
        paintStrap(artist, strapRing.near, 0.9, { colour: strap, stitched: true });
        const mid = strapRing.near[4];
        if (mid) paintBuckle(artist, mid, [0.9, 1.4], 2);
      },
    };
  });

export const espadrilles = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: flatLast(2, 1.8, {
      toe: 'round',
      length: 26.6,
      spring: 0.5,
      crest: [
        [0, 6],
        [0.2, 7.2],
        [0.4, 6.6],
        [0.55, 5.2],
        [0.66, 4.4],
        [0.78, 3.7],
        [0.9, 3.2],
        [1, 2.6],
      ],
    }),
    stance: { ...FROM_THE_SIDE, down: 34, tall: 0.92, far: [3, -6.2] },
    paint: (artist) => {
      const { cloth } = artist;
      paintSole(artist, { kind: 'rope', colour: JUTE, welt: 0.22 });
      paintBody(artist, {
        topline: [
          [0, 5.2],
          [0.1, 4.7],
          [0.24, 3.8],
          [0.4, 3.7],
          [0.52, 4.3],
          [0.58, 5],
        ],
        creases: 1,
        lining: '#cdbb98',
        insole: '#dcc59a',
        collar: 0.28,
      });
      const thread = oklch(cloth.ground).l > 0.7 ? tone(cloth.ground, -0.3) : '#efe3c8';
      artist
        .seam(points('0.6 0.38, 0.66 0.22, 0.66 0.02'), 0.18)
        .stitches(points('0.585 0.36, 0.645 0.21, 0.645 0.02'), thread, 0.8);
      if (artist.small) return;
      const ticks = Array.from({ length: 26 }, (_, i) => 0.06 + i * 0.035)
        .map((t) =>
          curvePath(
            artist.mapped(
              [
                [t, 0.05],
                [t + 0.008, 0.0],
              ],
              false,
              0.06,
              1,
            ),
            false,
          ),
        )
        .join('');
      artist.garment.add(line(ticks, 0.16, thread, 0.9));
      artist.line(points('0.92 0.24, 0.945 0.36, 0.955 0.5'), 0.16, thread, 0.8);
    },
  }));

/** Seen from above: a slab of rubber and a thong. */
export const flipFlops = (piece: DrawnPiece, detail: Detail): Drawing =>
  pair(piece, detail, () => ({
    shape: {
      ...flatLast(1.7, 1.5, { toe: 'round', length: 27, spring: 0.2 }),
      under: [
        [0, 0],
        [1, 0.2],
      ],
    },
    stance: { turn: 16, spread: 22, down: 56, tall: 0.75, far: [2.4, -9.6] },
    paint: (artist) => {
      const { last, cloth, garment } = artist;
      const bed = cloth.ground;
      const strap = cloth.accents[0] ?? tone(bed, oklch(bed).l > 0.5 ? -0.16 : 0.14);
      paintSole(artist, { kind: 'plain', colour: tone(bed, -0.08), welt: 0.06 });
      paintFootbed(artist, bed);
      if (!artist.small) {
        const dots: string[] = [];
        for (let i = 0; i < 13; i++)
          for (let k = -2; k <= 2; k++) dots.push(ellipsePath(last.bed(0.12 + i * 0.06, k * 0.3), 0.1, 0.07));
        garment.add(shape(dots.join(''), tone(bed, -0.14), 0.7));
      }
      const inner = last.shape.inner === 'far' ? 0.22 : -0.22;
      const toe = last.bed(0.84, inner, 0.2);
      const knot = last.bed(0.81, inner, 1.5);
      const arm = (side: -1 | 1): Point[] => [
        knot,
        last.bed(0.7, inner + side * 0.4, 3.1),
        last.bed(0.56, inner * 0.5 + side * 0.86, 2.4),
        last.bed(0.46, side * 0.94, 0.1),
      ];
      const dark = tone(strap, -0.2);
      const ribbon = (points: readonly Point[]): void => {
        const nodes = points.map((p): Node => [p[0], p[1]]);
        const path = curvePath(nodes, false);
        garment.add(
          line(path, 1.5, dark),
          line(path, 1.24, strap),
          pen(
            nodes.map(([x, y]): Node => [x - 0.05, y - 0.22]),
            0.4,
            tone(strap, 0.14),
            0.9,
            0.5,
          ),
        );
      };
      const shadow = (side: -1 | 1): Node[] => [
        [...last.bed(0.84, inner)],
        [...last.bed(0.68, inner + side * 0.5)],
        [...last.bed(0.48, side * 0.9)],
      ];
      garment.add(
        garment.plane(shadow(1), 0.9, tone(bed, -0.3), 0.6),
        garment.plane(shadow(-1), 0.9, tone(bed, -0.3), 0.6),
      );
      garment.add(
        line(
          [
            [toe[0], toe[1]],
            [knot[0], knot[1]],
          ],
          0.9,
          dark,
        ),
        line(
          [
            [toe[0], toe[1]],
            [knot[0], knot[1]],
          ],
          0.62,
          strap,
        ),
      );
      ribbon(arm(1));
      ribbon(arm(-1));
      garment.add(shape(ellipsePath(knot, 0.8, 0.66), strap), line(ellipsePath(knot, 0.8, 0.66), 0.13, dark));
    },
  }));
