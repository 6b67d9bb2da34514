import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import {
  curvePath,
  Garment,
  line,
  type Node,
  offsetLine,
  type Painted,
  resample,
  sampleCurve,
  tone,
} from '../kit/index.ts';
import { points } from '../kit/points.ts';

import { folds } from './scarves.ts';

const borderOf = (garment: Garment): string => garment.cloth.accents[0] ?? tone(garment.cloth.ground, -0.22);

/** A square of silk, folded once to a triangle, a corner turned back; its border shows along every edge. */
export const silkScarf = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const border = borderOf(garment);
  const edging = (nodes: string): Painted[] => [
    line(curvePath(points(nodes), true), 4, border),
    line(curvePath(points(nodes), true), 0.5, cloth.light, 0.8),
  ];
  const inset = (nodes: string): Painted => line(points(nodes), 0.22, border, 0.9);
  garment.panel(points('-15.6 -13.4!, 0 -14.6, 15.4 -13.6!, 16 0, 15.2 15.2!, 1 16.2, -14.6 15!, -16.2 0'), {
    edge: 0.8,
    wobble: 0.2,
    turn: 6,
    inner: [...edging('-15.6 -13.4!, 0 -14.6, 15.4 -13.6!, 16 0, 15.2 15.2!, 1 16.2, -14.6 15!, -16.2 0')],
  });
  garment.panel(
    points('-14.4 -10.4!, -2 -11.8, 16.6 -10.6!, 17.4 2, 16.8 12!, 15.8 17.8!, 4 18.6, -8 17.8!, -13.4 12.4!, -15 0'),
    {
      edge: 0.9,
      wobble: 0.15,
      turn: -3,
      cast: 0.5,
      inner: [
        ...edging(
          '-14.4 -10.4!, -2 -11.8, 16.6 -10.6!, 17.4 2, 16.8 12!, 15.8 17.8!, 4 18.6, -8 17.8!, -13.4 12.4!, -15 0',
        ),
        inset('-11.2 -7.6!, -2 -8.6, 13.4 -7.6!, 14 2, 13.2 14.8!, 4 15.4, -6.4 14.8'),
        ...folds(garment, [
          ['-13 -8, -5 -3, 0 5', 2.4, 0.9],
          ['-10 12, -2 7, 6 5', 2.2, 0.8],
          ['15 -8, 9 -3, 6 3', -2, 0.7],
          ['14 14, 9 11, 7 7', 1.8, 0.7],
        ]),
        garment.plane(points('-6 -6, 2 0, 8 9'), 2.6, cloth.bright, 0.4 * cloth.sheen),
      ],
    },
  );
  // the corner turned back: its underside, the border along the cloth's own two edges
  garment.panel(points('-14.3 11.4!, -10.4 11.6, -6.4 11.2!, -6.9 14.6, -7 18.2!, -10.9 15.1'), {
    edge: 0.5,
    cast: 0.4,
    wobble: 0.06,
    fill: cloth.shade,
    inner: [
      line(points('-14.3 11.4!, -10.4 11.6, -6.4 11.2!, -6.9 14.6, -7 18.2!'), 2.4, border),
      garment.plane(points('-13.6 12, -10.6 14.8, -7.6 17.6'), 0.8, cloth.bright, 0.6),
      garment.plane(points('-9.6 12.4, -8.4 13.4, -7.6 15.6'), 0.7, cloth.ink, 0.4),
    ],
  });
  return garment.finish();
};

/** Knotted to a ring with two pointed tails. */
export const neckerchief = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const border = borderOf(garment);
  const run = resample(
    sampleCurve(points('-1.6 8.4, -8 6.6, -11.8 0.6, -9 -5.8, -1 -8.2, 8 -6.8, 12 -0.6, 8.8 6, 1.8 8.4')),
    40,
  );
  const half = (t: number): number => 1.6 + 1.1 * Math.sin(Math.PI * t) + 0.25 * Math.sin(9 * t);
  const every = (line_: readonly (readonly [number, number])[]): Node[] =>
    line_.filter((_, i) => i % 4 === 0).map((p): Node => [p[0], p[1]]);
  const outer = offsetLine(run, (t) => half(t));
  const inner = offsetLine(run, (t) => -half(t) * 0.9);
  const lines = (share: number): Node[] =>
    every(offsetLine(run, (t) => half(t) * (share + 0.16 * Math.sin(7 * t + share * 9)))).slice(1, -1);
  garment.panel([...every(outer), ...every(inner).reverse()], {
    turn: 24,
    edge: 0.7,
    wobble: 0.08,
    inner: [
      line(every(outer), 1.3, border),
      line(every(inner), 0.9, border),
      ...[-0.5, 0.05, 0.5].map((share) => garment.fold(lines(share), 0.9, 1.1, 0.5)),
      garment.plane(lines(-0.2), 0.8, cloth.bright, 0.4 * cloth.sheen),
    ],
  });
  const tail = (
    outline: string,
    hem: string,
    turn: number,
    creases: readonly (readonly [string, number, number])[],
  ): void => {
    garment.panel(points(outline), {
      turn,
      edge: 0.7,
      cast: 0.6,
      wobble: 0.1,
      inner: [line(points(hem), 1.8, border), line(points(hem), 0.2, cloth.bright, 0.8), ...folds(garment, creases)],
    });
  };
  tail(
    '0.6 8.2!, 5.4 11, 9.8 16.6, 12.4 23.4!, 6.8 22.8, 0.8 20.4!, 1.2 14',
    '10.4 17, 12 23!, 6.8 22.4, 0.6 19.8!',
    -28,
    [
      ['1.2 9.4, 4.6 15, 7.4 22.4', 1.6, 1.1],
      ['1 9.6, 2 14.6, 2.2 20.2', 1.2, 0.9],
      ['2.6 9.6, 7.6 13.6, 10.2 18.4', 1.1, 0.8],
    ],
  );
  tail(
    '-0.8 8.2!, -3.6 11.8, -8.6 16, -13.6 18.2!, -10.6 21.8, -6.6 24.6!, -2 18.4, 0.6 12.6',
    '-13.2 18!, -10.2 21.4, -6.5 24!, -2 17.8',
    34,
    [
      ['-0.8 9.6, -4.6 15, -9.8 20.2', 1.5, 1.1],
      ['-0.2 10, -2.2 15.6, -5.8 21.8', -1.3, 0.9],
    ],
  );
  garment.panel(points('-2.6 7.3, -0.4 6.2, 2.4 6.9, 3.2 9, 2 10.9, -0.8 11.2, -3.1 9.8'), {
    turn: 70,
    edge: 0.8,
    cast: 0.6,
    wobble: 0.06,
    inner: [
      line(points('-2.9 10.6, 0 11.1, 3.1 9.8'), 0.9, border),
      ...folds(garment, [
        ['-2.5 8, 0 8.6, 2.7 7.8', 0.8, 1],
        ['-2.3 9.8, 0.4 10, 2.7 9.2', 0.7, 0.9],
      ]),
    ],
  });
  return garment.anchor('neck', [0, 0]).finish();
};

/** A square folded to three points, as it stands in a breast pocket. */
export const pocketSquare = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  const { cloth } = garment;
  const border = borderOf(garment);
  const peak = (outline: string, hem: string, crease: string, turn: number): void => {
    garment.panel(points(outline), {
      turn,
      edge: 0.4,
      cast: 0.3,
      wobble: 0.05,
      inner: [
        line(points(hem), 0.9, border),
        line(points(hem), 0.14, cloth.bright, 0.8),
        garment.fold(points(crease), 0.9, 0.9),
      ],
    });
  };
  peak('-0.6 -1!, 1.6 -6.8!, 4.4 -1.4!, 3 3', '-0.5 -1.2!, 1.6 -6.6!, 4.3 -1.6', '1.7 -6, 1.8 -2, 1.4 2', 18);
  peak('-5.4 0.6!, -2.6 -6.2!, 0.9 -0.6!, -1 4', '-5.3 0.4!, -2.6 -6, 0.8 -0.8', '-2.5 -5.4, -2 -1, -1.6 3', -16);
  peak('1.2 1!, 4.8 -4.8!, 6.2 1.4!, 4 4.4', '1.3 0.8!, 4.8 -4.5!, 6.1 1.2', '4.7 -4, 4.4 -0.6, 3.8 3', 34);
  garment.panel(points('-5.8 0.2!, -2 2.2, 2.4 2.4, 6.2 0.8!, 5.6 4, 4.8 8.4!, 0 9, -4.6 8.4!, -5.6 4'), {
    edge: 0.5,
    cast: 0.35,
    wobble: 0.06,
    inner: [
      garment.fold(points('-4.6 1.4, -2 4.4, -1.6 8'), 1.1, 0.8),
      garment.fold(points('4.8 1.8, 2.4 4.6, 2.2 8'), -1, 0.7),
      garment.plane(points('-3 3.6, 0 5, 2 7'), 1, cloth.bright, 0.4 * cloth.sheen),
    ],
  });
  return garment.finish();
};
