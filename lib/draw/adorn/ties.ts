import { frame } from '../carry/parts.ts';
import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { corner, Garment, line, type Node, offsetLine, resample, sampleCurve, stitch, tone } from '../kit/index.ts';
import { points } from '../kit/points.ts';
import { adornmentLength } from './length.ts';

/** Folded once at the neck: the broad blade in front, the narrow one beside it. */
export const tie = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  // A tie of 148 cm, folded at the neck, lies about a third of its length.
  const long = (adornmentLength(piece)?.cm ?? 148) * 0.36;
  garment.panel(
    [
      corner(0.8, 0.6),
      corner(3.6, -0.4),
      [4.6, long * 0.4],
      corner(6.2, long * 0.78),
      corner(4.2, long * 0.78 + 2.8),
      corner(1.8, long * 0.78 + 0.4),
      [1.6, long * 0.4],
    ],
    {
      edge: 0.6,
      turn: 38,
      wobble: 0.06,
      fill: cloth.shade,
      inner: [
        garment.fold(
          [
            [2, 2],
            [3, long * 0.4],
            [3.6, long * 0.7],
          ],
          0.9,
          0.5,
        ),
      ],
    },
  );
  garment.panel(
    [
      corner(-2.6, 0.4),
      [0.6, -1],
      corner(3.2, -0.2),
      [2.6, long * 0.3],
      [3.4, long * 0.66],
      corner(4.6, long - 4.4),
      corner(0.2, long),
      corner(-4.4, long - 4),
      [-3.2, long * 0.66],
      [-2.3, long * 0.3],
    ],
    {
      edge: 0.8,
      turn: -38,
      wobble: 0.06,
      cast: 0.6,
      round: { from: [-4, 0], to: [4.4, 2], strength: 0.5 },
      inner: [
        garment.fold(
          [
            [-1.4, 1.4],
            [-0.8, long * 0.24],
            [-1.2, long * 0.5],
          ],
          1,
          0.7,
        ),
        garment.fold(
          [
            [2, 3],
            [1.6, long * 0.3],
            [2, long * 0.55],
          ],
          -0.8,
          0.5,
        ),
        garment.plane(
          [
            [-1, 4],
            [-0.8, long * 0.5],
            [-1.4, long - 7],
          ],
          0.9,
          cloth.bright,
          0.4 * cloth.sheen,
        ),
        garment.plane(points('-2.4 0.6, 0.4 0.2, 3 0.6'), 0.8, cloth.ink, 0.6),
      ],
    },
  );
  return garment.anchor('neck', [0, 0]).finish();
};

/** Tied, with the ends of its neck band. */
export const bowTie = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const band = points('-1 -0.6, -5 -3.4, -6.6 -6.6, -3.6 -8.8, 1 -9.2, 5 -8, 6.4 -5.6, 4.6 -2.8, 1 -0.6');
  garment.add(
    line(band, 1.24, cloth.ink),
    line(band, 1, cloth.shade),
    line(
      band.map(([x, y]): Node => [x, y - 0.2]),
      0.2,
      cloth.bright,
      0.5,
    ),
  );
  const run = resample(sampleCurve(band), 20);
  garment.cover([...offsetLine(run, 0.6), ...offsetLine(run, -0.6).reverse()].map((p): Node => [p[0], p[1], 'corner']));
  const flip = (nodes: string, side: -1 | 1): Node[] => points(nodes).map(([x, y, c]): Node => [x * side, y, c]);
  for (const side of [-1, 1] as const) {
    garment.panel(flip('0.4 -0.9!, 3 -1.4, 5.9 -2.5!, 6.2 0.2, 5.8 2.9!, 3 1.8, 0.4 1.3!', side), {
      edge: 0.3,
      turn: side * 12,
      wobble: 0.04,
      fill: cloth.shade,
    });
    garment.panel(flip('0.4 -1.1!, 2.4 -2.2, 5 -3.2, 6.3 -2.8, 6.5 0, 6.2 2.6, 4.8 3, 2.4 2.1, 0.4 1.2!', side), {
      edge: 0.5,
      turn: side * 8,
      cast: 0.25,
      wobble: 0.05,
      inner: [
        garment.fold(flip('0.9 -0.4, 2.8 -0.9, 5 -1.6', side), 0.6, 1),
        garment.fold(flip('0.9 0.5, 2.6 0.8, 4.4 1.2', side), 0.5, 0.9),
        garment.plane(flip('3 -2, 4.6 -2.4, 5.8 -1.8', side), 0.6, cloth.bright, 0.5 * cloth.sheen),
      ],
    });
  }
  garment.panel(points('-1.1 -1.4, 0 -1.7, 1.1 -1.4, 1.3 0.1, 1.1 1.6, 0 1.9, -1.1 1.6, -1.3 0.1'), {
    edge: 0.35,
    cast: 0.25,
    wobble: 0.03,
    turn: 80,
    inner: [
      garment.fold(points('-0.6 -1.4, -0.3 0, -0.6 1.6'), 0.35, 0.9),
      garment.fold(points('0.6 -1.4, 0.4 0, 0.6 1.6'), 0.35, 0.9),
    ],
  });
  return garment.anchor('neck', [0, -4]).finish();
};

/** Two straps over the shoulders that meet at the back; leather ends for the buttons. */
export const braces = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const leather = plainCloth(cloth.accents[0] ?? '#5a3a26', 'leather', detail);
  const metal = cloth.accents[1] ?? '#b9975a';
  const flip = (nodes: string, side: -1 | 1): Node[] => points(nodes).map(([x, y, c]): Node => [x * side, y, c]);
  const tab = (x: number, y: number, lean: number): void => {
    for (const side of [-1, 1]) {
      garment.panel(
        [
          corner(x - 0.7, y),
          corner(x + 0.7, y),
          [x + side * 1.5 + 0.7 + lean, y + 4.6],
          [x + side * 1.5 + lean, y + 6],
          [x + side * 1.5 - 0.7 + lean, y + 4.8],
        ],
        { cloth: leather, edge: 0.2, wobble: 0.03, rim: false },
      );
      garment.add(
        line(
          [
            [x + side * 1.35 + lean, y + 4.2],
            [x + side * 1.45 + lean, y + 5.2],
          ],
          0.26,
          leather.ink,
        ),
      );
    }
  };
  // back: the straps cross to one patch
  tab(0, 31.4, 0);
  for (const side of [-1, 1] as const)
    garment.panel(flip('5.6 -1!, 8.8 -1!, 5 14, 1.9 26!, -1.3 25!, 2.2 13', side), {
      edge: 0.4,
      turn: side * 16,
      fill: cloth.shade,
      wobble: 0.05,
      inner: [
        line(flip('6.5 0, 2.9 13.4, -0.4 25', side), 0.14, cloth.ink, 0.5),
        line(flip('7.9 0, 4.3 13.6, 1 25.6', side), 0.14, cloth.ink, 0.5),
      ],
    });
  garment.panel(points('0 22.4!, 2.6 26, 1.5 29, 1.2 32!, -1.2 32!, -1.5 29, -2.6 26'), {
    cloth: leather,
    edge: 0.35,
    wobble: 0.03,
    cast: 0.3,
    inner: [
      stitch(points('0 23.4!, 1.9 26, 1 29, 0.8 31.4!, -0.8 31.4!, -1 29, -1.9 26, 0 23.4'), leather.bright, 0.7),
    ],
  });
  // front straps, folded over the shoulder
  for (const side of [-1, 1] as const) {
    tab(side * 12.3, 38.4, side * 0.2);
    garment.panel(flip('5.4 -0.6!, 7 -1.9, 8.9 -1!, 12.2 16, 13.9 39!, 10.7 39.2!, 9.2 16', side), {
      edge: 0.5,
      cast: 0.4,
      turn: side * -5,
      wobble: 0.05,
      inner: [
        garment.plane(flip('7.4 1, 10.2 15, 11.8 36', side), 0.7, cloth.bright, 0.4),
        line(flip('6.3 0, 9.9 16, 11.5 38.8', side), 0.14, cloth.ink, 0.5),
        line(flip('8.2 0, 11.5 16, 13.1 38.6', side), 0.14, cloth.ink, 0.5),
        garment.plane(flip('5.6 0, 7.2 0.4, 9 0', side), 0.7, cloth.ink, 0.6),
      ],
    });
    garment.panel(flip('10.6 37.8!, 14 37.6!, 13.7 40, 12.3 41.2, 10.9 40.2', side), {
      cloth: leather,
      edge: 0.25,
      wobble: 0.03,
      cast: 0.2,
    });
    garment.add(
      frame([side * 11.5, 26], 4, 2.2, metal, 0.42),
      line(
        [
          [side * 11.5 - 1.9, 26],
          [side * 11.5 + 1.9, 26],
        ],
        0.4,
        tone(metal, -0.1),
      ),
    );
  }
  return garment.anchor('waist', [0, 38]).finish();
};
