import type { DrawKind, DrawnPiece } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import {
  clampLength,
  corner,
  type DrawnLength,
  FROM_SHOULDER,
  Garment,
  lerp,
  line,
  mirrored,
  type Node,
  type Painted,
  pen,
  reversed,
  shape,
  stitch,
  tone,
} from '../kit/index.ts';

/** Length of a kaftan from the shoulder. */
export const kaftanLength = (piece: Pick<DrawnPiece, 'length' | 'lengthCm'>): DrawnLength =>
  clampLength(piece.lengthCm, FROM_SHOULDER[piece.length], 70, 150);

/** A kaftan: one broad piece of cloth with a slit neck, sleeves cut on, sides left open below. */
export const kaftan: DrawKind = (piece, detail) => {
  const garment = new Garment(piece, detail);
  const length = kaftanLength(piece).cm;
  const hem = 66 + (length - 100) * 0.12;
  const half = hem / 2;
  const slit = Math.min(26, length * 0.22);
  const trim = plainCloth(
    garment.cloth.accents[0] ?? tone(garment.cloth.ground, garment.cloth.depth < 0.6 ? -0.3 : 0.2),
    'smooth',
    detail,
  );
  garment.inside([corner(-9.4, 0.3), [0, -1.4], corner(9.4, 0.3), corner(1, slit), corner(-1, slit)], {
    label: [0, -0.3],
  });
  const cut = length - Math.min(28, length * 0.25);
  const right: Node[] = [
    corner(8.4, 0),
    [24, 3.4],
    corner(44.5, 9.6 + garment.jitter(0.8)),
    corner(41.6, 35.6),
    [35.6, 36.8],
    [half - 2.6, lerp(38, cut, 0.3)],
    [half - 1, cut],
    corner(half, length - 1.4),
  ];
  const neck: Node[] = [[-5.6, 2.6], corner(-0.7, slit), corner(0.7, slit), [5.6, 2.6]];
  const flutes = [-0.62, -0.24, 0.2, 0.58];
  const hemNodes: Node[] = [
    [half * 0.5, length - 0.4],
    [half * 0.2, length + 0.8],
    [-half * 0.16, length - 0.2],
    [-half * 0.5, length + 0.6],
  ];
  garment.panel([corner(-8.4, 0), ...neck, ...right, ...hemNodes, ...reversed(mirrored(right)).slice(0, -1)], {
    round: { from: [-half, 0], to: [half, 0], strength: 0.6 },
    inner: [
      ...fallFolds(garment, half, length, flutes),
      ...[-1, 1].flatMap((s) => sideOpening(garment, s, half, cut, length)),
      ...borders(garment, trim.ground, half, length),
    ],
  });
  neckTrim(garment, trim.ground, slit);
  return garment
    .anchor('neck', [0, 0])
    .anchor('left shoulder', [-19, 2.4])
    .anchor('right shoulder', [19, 2.4])
    .anchor('waist', [0, 42])
    .anchor('hem', [0, length])
    .finish();
};

/** Long folds that fall from the shoulders, and the drag between neck and sleeve. */
const fallFolds = (garment: Garment, half: number, length: number, shares: readonly number[]): Painted[] => {
  const { bright, ink, depth, sheen } = garment.cloth;
  return [
    garment.plane(
      [
        [-half * 0.42, 14],
        [-half * 0.46, length * 0.5],
        [-half * 0.5, length],
      ],
      4,
      bright,
      0.3 * sheen,
    ),
    garment.plane(
      [
        [half * 0.62, 30],
        [half * 0.66, length * 0.6],
        [half * 0.7, length],
      ],
      4,
      ink,
      0.3 * depth,
    ),
    ...shares.map((share, i) => {
      const top = i % 2 ? 24 + garment.random() * 12 : 44 + garment.random() * 14;
      return garment.fold(
        [
          [half * share, length + 0.5],
          [half * (share * 0.92), lerp(length, top, 0.5)],
          [half * share * 0.74, top],
        ],
        (share > 0 ? -1 : 1) * 2.4,
        0.85,
      );
    }),
    ...[-1, 1].flatMap((s) => [
      garment.fold(
        [
          [s * 35.4, 36],
          [s * 27, 30 + garment.jitter(2)],
          [s * 17, 18],
        ],
        -2.2 * s,
        0.8,
      ),
      garment.fold(
        [
          [s * 34.6, 38],
          [s * 28, 44],
          [s * 25, 58 + garment.jitter(4)],
        ],
        2 * s,
        0.7,
      ),
      garment.fold(
        [
          [s * 41, 34],
          [s * 39, 24],
          [s * 34, 14],
        ],
        1.6 * s,
        0.6,
      ),
    ]),
  ];
};

const sideOpening = (garment: Garment, s: number, half: number, cut: number, length: number): Painted[] => {
  const run: Node[] = [
    [s * (half - 1.6), cut],
    [s * (half - 1.4), lerp(cut, length, 0.6)],
    [s * (half - 1.8), length],
  ];
  return [
    pen(run, 0.5, garment.cloth.ink, 0.75, 0.6),
    ...(garment.small
      ? []
      : [
          stitch(
            run.map(([x, y]): Node => [x - s * 0.9, y]),
            garment.cloth.ink,
            0.4,
          ),
        ]),
  ];
};

/** Bands of embroidery at the hem and the ends of the sleeves. */
const borders = (garment: Garment, colour: string, half: number, length: number): Painted[] => {
  const hem = (up: number): Node[] => [
    [-half - 1, length - up - 1],
    [-half * 0.4, length - up + 0.4],
    [half * 0.3, length - up + 0.4],
    [half + 1, length - up - 1],
  ];
  const marks: Painted[] = [
    line(hem(4.6), 1.3, colour, 0.92),
    line(hem(6.4), 0.3, colour, 0.9),
    line(hem(2.8), 0.3, colour, 0.9),
  ];
  for (const s of [-1, 1]) {
    const end = (back: number): Node[] => [
      [s * (44.5 - back * 0.98), 8 - back * 0.12],
      [s * (41.6 - back), 37],
    ];
    marks.push(line(end(2.6), 1.1, colour, 0.92), line(end(4), 0.3, colour, 0.9));
  }
  if (!garment.small) marks.push(line(hem(4.6), 0.34, garment.cloth.ground, 0.95, [0.5, 0.9]));
  return marks;
};

/** Embroidery round the slit of the neck, with a cord and two tassels. */
const neckTrim = (garment: Garment, colour: string, slit: number): void => {
  const edge = (out: number): Node[] => [
    [-8.4 - out * 0.4, 0.1],
    [-5.6 - out * 0.7, 2.6 + out * 0.7],
    [-0.7 - out * 0.7, slit + out * 0.4],
    [0.7 + out * 0.7, slit + out * 0.4],
    [5.6 + out * 0.7, 2.6 + out * 0.7],
    [8.4 + out * 0.4, 0.1],
  ];
  garment.add(line(edge(1), 1.5, tone(colour, -0.12)), line(edge(1), 1.2, colour));
  if (!garment.small)
    garment.add(
      line(edge(1), 0.34, garment.cloth.ground, 0.95, [0.45, 0.8]),
      line(edge(2.6), 0.22, colour, 0.9, [0.3, 0.4]),
    );
  for (const [x, low] of [
    [-2.6, slit + 9],
    [1.9, slit + 11.5],
  ] as const) {
    const run: Node[] = [
      [x > 0 ? 3.6 : -3.6, slit * 0.4],
      [x * 1.4, slit * 0.8],
      [x, low],
    ];
    garment.add(
      line(
        run.map(([a, y]): Node => [a + 0.2, y + 0.3]),
        0.4,
        garment.cloth.ink,
        0.4,
      ),
      line(run, 0.36, colour),
    );
    garment.add(
      shape(
        [
          [x - 0.5, low - 0.3],
          [x + 0.5, low - 0.3],
          [x + 1, low + 3.4],
          [x - 0.9, low + 3.5],
        ],
        colour,
      ),
      line(
        [
          [x - 0.5, low + 0.6],
          [x + 0.5, low + 0.6],
        ],
        0.3,
        tone(colour, -0.2),
      ),
    );
  }
};
