import type { DrawnPiece } from '../drawing.ts';
import { curvePath, type Garment, linesBetween, type Node, type Painted, pen, shape, tone } from '../kit/index.ts';
import { line } from '../kit/pens.ts';

/** What makes one kind of sock different from another. */
export interface SockDesign {
  /** Top of the cuff to the heel when the piece gives no length, by its word: ankle, calf, knee. */
  readonly shaft: (piece: Pick<DrawnPiece, 'length'>) => number;
  /** Width of the shaft at the top and at the calf, laid flat. */
  readonly top: number;
  readonly calf: number;
  /** Height of the ribbed cuff. */
  readonly cuff: number;
  /** Whether the ribs run on down the shaft. */
  readonly ribbed: boolean;
  /** Thickness: how far heel and instep swell. */
  readonly thick: number;
  /** Heel and toe in the second colour, or a deeper tone. */
  readonly patches: boolean;
  /** Bands of the second colour at the cuff. */
  readonly stripes: number;
  /** A ribbed band round the arch. */
  readonly arch: boolean;
  /** A turned-over cuff. */
  readonly turned: boolean;
}

/** Lays one sock of the pair: turns and moves its nodes. */
export type Place = (nodes: readonly Node[]) => Node[];

/** Heel and toe in another colour. */
export const patches = (place: Place, colour: string, s: number, ankle: number, t: number): Painted[] => [
  shape(
    place([
      [ankle / 2 + 4, s - 4.4, 'corner'],
      [ankle / 2 - 3.6, s - 1.6],
      [ankle / 2 - 6, s + 2.6],
      [ankle / 2 - 5, s + 8 + t, 'corner'],
      [ankle / 2 + 4, s + 8 + t, 'corner'],
    ]),
    colour,
  ),
  shape(
    place([
      [-14.6, s - 6, 'corner'],
      [-13.4, s],
      [-14, s + 8 + t, 'corner'],
      [-22, s + 8 + t, 'corner'],
      [-22, s - 6, 'corner'],
    ]),
    colour,
  ),
  line(
    place([
      [ankle / 2 + 2, s - 4],
      [ankle / 2 - 3.6, s - 1.6],
      [ankle / 2 - 6, s + 2.6],
      [ankle / 2 - 5, s + 8],
    ]),
    0.22,
    tone(colour, -0.16),
    0.7,
  ),
  line(
    place([
      [-14.6, s - 6],
      [-13.4, s],
      [-14, s + 8],
    ]),
    0.22,
    tone(colour, -0.16),
    0.7,
  ),
];

/** Stripes round the cuff. */
export const bands = (design: SockDesign, place: Place, half: (y: number) => number, colour: string): Painted[] =>
  Array.from({ length: design.stripes }, (_, i) => {
    const y = 1.6 + i * 2.1;
    return line(
      place([
        [-half(y) - 1, y],
        [0, y + 0.4],
        [half(y) + 1, y],
      ]),
      1.05,
      colour,
      0.95,
    );
  });

/** Elastic ribs round the arch. */
export const archBand = (garment: Garment, place: Place, s: number, t: number): Painted => {
  const edge = (x: number): Node[] =>
    place([
      [x, s - 6],
      [x - 0.4, s + 1],
      [x + 0.2, s + 8 + t],
    ]);
  return linesBetween(edge(-5.4), edge(-11.6), garment.small ? 3 : 8, 0.24, garment.cloth.ink, 0.28);
};

/** Where heel and toe were turned: two fine seams. */
export const gores = (garment: Garment, foot: Place, s: number, ankle: number, t: number): Painted[] =>
  garment.small
    ? []
    : [
        pen(
          foot([
            [ankle / 2 + 0.8, s - 2.4],
            [ankle / 2 - 3.6, s + 0.6],
            [ankle / 2 - 5.6, s + 4.6 + t],
          ]),
          0.24,
          garment.cloth.ink,
          0.55,
          0.5,
        ),
        pen(
          foot([
            [-15.4, s - 3 - t],
            [-14.4, s + 1],
            [-15, s + 5.2 + t],
          ]),
          0.24,
          garment.cloth.ink,
          0.5,
          0.5,
        ),
      ];

/** Light along the foot, folds at the ankle. */
export const sockFolds = (garment: Garment, place: Place, foot: Place, s: number, ankle: number): Painted[] => [
  garment.plane(
    foot([
      [-6, s - 1.4],
      [-11, s],
      [-16.4, s + 1],
    ]),
    1.3,
    garment.cloth.bright,
    0.4,
  ),
  garment.plane(
    foot([
      [ankle / 2 - 2, s + 5.2],
      [-6, s + 6],
      [-15, s + 6.2],
    ]),
    1.3,
    garment.cloth.ink,
    0.35,
  ),
  garment.fold(
    place([
      [-ankle / 2 - 1.4, s - 5],
      [-1, s - 3.2],
      [2, s - 1.6 + garment.jitter(0.5)],
    ]),
    1.3,
    0.9,
  ),
  garment.fold(
    place([
      [-ankle / 2 - 0.6, s - 8.4],
      [0, s - 7.4 + garment.jitter(0.5)],
      [2.6, s - 8.2],
    ]),
    1,
    0.6,
  ),
  ...(s > 24
    ? [
        garment.fold(
          place([
            [ankle / 2, s * 0.56],
            [0.6, s * 0.59],
            [-2.4, s * 0.575],
          ]),
          -1.1,
          0.5,
        ),
      ]
    : []),
];

/** The opening at the top, seen as a thin dark edge with the back of the cuff behind it. */
export const mouth = (garment: Garment, place: Place, half: number): void => {
  const rim = place([
    [-half, 0.05, 'corner'],
    [0, -0.75],
    [half, 0.05, 'corner'],
    [0, 0.5],
  ]);
  garment.add({ path: curvePath(rim), fill: garment.cloth.deep, stroke: garment.cloth.ink, width: 0.14 });
};

/** A cuff turned over, ribbed. */
export const turnedCuff = (garment: Garment, place: Place, half: (y: number) => number, height: number): void => {
  const { cloth } = garment;
  const w = (y: number) => half(y) + 0.4;
  const nodes = place([
    [-w(0), -0.3, 'corner'],
    [0, 0.2],
    [w(0), -0.3, 'corner'],
    [w(height), height, 'corner'],
    [0, height + 0.6],
    [-w(height), height, 'corner'],
  ]);
  const column = (side: number): Node[] =>
    place([
      [side * w(0), -0.4],
      [side * w(height), height + 0.8],
    ]);
  const count = garment.small ? 4 : 12;
  garment.panel(nodes, {
    edge: 0.5,
    cast: 0.6,
    wobble: 0.05,
    inner: [
      linesBetween(column(-1), column(1), count, 0.26, cloth.ink, 0.32),
      ...(garment.small ? [] : [linesBetween(column(-1), column(1), count, 0.22, cloth.bright, 0.5, 0.02, 1.02)]),
    ],
  });
};
