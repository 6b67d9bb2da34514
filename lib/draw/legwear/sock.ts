import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import {
  clampLength,
  curvePath,
  type DrawnLength,
  Garment,
  lerp,
  linesBetween,
  move,
  type Node,
  type Painted,
  pen,
  shape,
  tone,
  turned,
} from '../kit/index.ts';
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

const SHORTEST = 6;
const LONGEST = 58;

/** Height of a sock from the top of its cuff to the heel. */
export const sockHeight = (piece: Pick<DrawnPiece, 'lengthCm'>, usual: number): DrawnLength =>
  clampLength(piece.lengthCm, usual, SHORTEST, LONGEST);

type Place = (nodes: readonly Node[]) => Node[];

/** A pair: the far sock turned and set behind the near one. */
export const drawSocks = (piece: DrawnPiece, detail: Detail, design: SockDesign): Drawing => {
  const garment = new Garment(piece, detail);
  const height = sockHeight(piece, design.shaft(piece)).cm;
  const lean = 5 + garment.jitter(1.5);
  const far: Place = (nodes) =>
    nodes.map(([x, y, c]): Node => {
      const [a, b] = move(turned([x, y], lean, [0, height]), [6.5, -9]);
      return [a, b, c];
    });
  oneSock(garment, design, height, far, detail);
  oneSock(garment, design, height, (nodes) => [...nodes], detail);
  return garment
    .anchor('neck', [0, 0])
    .anchor('heel', [4, height])
    .anchor('hem', [0, height + 6])
    .finish();
};

const oneSock = (garment: Garment, design: SockDesign, height: number, place: Place, detail: Detail): void => {
  const { cloth } = garment;
  const { top, calf, thick: t } = design;
  const ankle = 7.4 + t;
  const half = (y: number): number => {
    const share = y / height;
    if (height < 20) return lerp(top, ankle, share) / 2;
    return (share < 0.35 ? lerp(top, calf, share / 0.35) : lerp(calf, ankle, Math.min(1, (share - 0.35) / 0.5))) / 2;
  };
  const s = height;
  const back: Node[] = [
    [half(0), 0, 'corner'],
    [half(s * 0.3), s * 0.3],
    ...(s > 20 ? ([[half(s * 0.62) - 0.2, s * 0.62]] as const) : []),
    [ankle / 2 - 0.3, s - 5.4],
  ];
  const front: Node[] = [
    [-half(0), 0, 'corner'],
    [-half(s * 0.3), s * 0.3],
    ...(s > 20 ? ([[-half(s * 0.62), s * 0.62]] as const) : []),
    [-ankle / 2 - 0.5, s - 6.6],
  ];
  const foot = footOf(place, s);
  const outline = [
    ...place([[-half(0), 0, 'corner'], ...back, [ankle / 2 + 0.9 + t * 0.4, s - 1.2]]),
    ...foot([
      [ankle / 2 + 0.9 + t * 0.4, s + 1.6],
      [ankle / 2 - 1.4, s + 4.4 + t],
      [-5, s + 4.6 + t],
      [-13.4, s + 5 + t],
      [-18.4, s + 3.6 + t * 0.6],
      [-19.2, s + 0.2],
      [-16.4, s - 2.6 - t],
      [-10.5, s - 3.7 - t],
    ]),
    ...place([[-ankle / 2 - 1.2, s - 4.6], ...front.slice(1).reverse()]),
  ];
  const accent =
    design.patches || design.stripes > 0 ? (cloth.accents[0] ?? (design.patches ? cloth.deep : undefined)) : undefined;
  const trim = accent === undefined ? cloth : plainCloth(accent, cloth.surface, detail);
  const down = design.ribbed ? s - 2 : design.cuff + 0.6;
  const column = (edge: readonly Node[], to: number): Node[] =>
    place([0, 0.33, 0.66, 1].map((k): Node => [(edge === back ? 1 : -1) * half(lerp(0, to, k)), lerp(-0.4, to, k)]));
  const count = garment.small ? 4 : Math.round(top / (design.thick > 0.8 ? 1.1 : 0.72));
  const inner: Painted[] = [
    ...(accent !== undefined && design.patches ? patches(foot, accent, s, ankle, t) : []),
    ...bands(design, place, half, trim.ground),
    linesBetween(column(front, down), column(back, down), count, 0.24, cloth.ink, design.ribbed ? 0.26 : 0.34),
    ...(garment.small
      ? []
      : [linesBetween(column(front, down), column(back, down), count, 0.2, cloth.bright, 0.5, 0.02, 1.02)]),
    ...(design.arch ? [archBand(garment, foot, s, t)] : []),
    ...(design.patches ? [] : gores(garment, foot, s, ankle, t)),
    ...sockFolds(garment, place, foot, s, ankle),
  ];
  if (!design.ribbed)
    inner.push(
      pen(
        place([
          [-half(design.cuff) - 1, design.cuff],
          [0, design.cuff + 0.5],
          [half(design.cuff) + 1, design.cuff],
        ]),
        0.26,
        cloth.ink,
        0.6,
        0.5,
      ),
    );
  garment.panel(outline, {
    cast: 0.5,
    wobble: 0.07,
    round: {
      from: point(place, [-ankle / 2 - 1, s * 0.4]),
      to: point(place, [ankle / 2 + 1.6, s * 0.4]),
      strength: 0.6,
    },
    inner,
  });
  mouth(garment, place, half(0));
  if (design.turned) turnedCuff(garment, place, half, design.cuff);
};

/** The foot hangs a little below the square: a sock lies as it was knitted. */
const footOf =
  (place: Place, height: number): Place =>
  (nodes) =>
    place(
      nodes.map(([x, y, c]): Node => {
        const [a, b] = turned([x, y], -13, [1, height]);
        return [a, b, c];
      }),
    );

const point = (place: Place, [x, y]: readonly [number, number]): readonly [number, number] => {
  const [a, b] = place([[x, y]])[0] ?? [0, 0];
  return [a, b];
};

const patches = (place: Place, colour: string, s: number, ankle: number, t: number): Painted[] => [
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

const bands = (design: SockDesign, place: Place, half: (y: number) => number, colour: string): Painted[] =>
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

const archBand = (garment: Garment, place: Place, s: number, t: number): Painted => {
  const edge = (x: number): Node[] =>
    place([
      [x, s - 6],
      [x - 0.4, s + 1],
      [x + 0.2, s + 8 + t],
    ]);
  return linesBetween(edge(-5.4), edge(-11.6), garment.small ? 3 : 8, 0.24, garment.cloth.ink, 0.28);
};

/** Where heel and toe were turned: two fine seams. */
const gores = (garment: Garment, foot: Place, s: number, ankle: number, t: number): Painted[] =>
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

const sockFolds = (garment: Garment, place: Place, foot: Place, s: number, ankle: number): Painted[] => [
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
const mouth = (garment: Garment, place: Place, half: number): void => {
  const rim = place([
    [-half, 0.05, 'corner'],
    [0, -0.75],
    [half, 0.05, 'corner'],
    [0, 0.5],
  ]);
  garment.add({ path: curvePath(rim), fill: garment.cloth.deep, stroke: garment.cloth.ink, width: 0.14 });
};

const turnedCuff = (garment: Garment, place: Place, half: (y: number) => number, height: number): void => {
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
