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
import { backOfHem, hangSkirt, type Skirt } from '../lower/skirt.ts';
import { skirtFlutes, skirtShade } from '../lower/skirt-folds.ts';
import { hemWidth, skirtLength } from '../lower/skirts.ts';

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
    garment.cloth.accents[0] ?? tone(garment.cloth.ground, garment.cloth.depth === 0.5 ? -0.3 : 0.2),
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

const KNOT = -0.3;

/** A sarong: a square of thin cloth wrapped round the hip and knotted, its corner hanging, its edge fringed. */
export const sarong: DrawKind = (piece, detail) => {
  const garment = new Garment(piece, detail);
  const length = skirtLength(piece).cm;
  const hip = 47;
  const skirt = hangSkirt(garment, {
    waist: 40,
    hip,
    hem: hemWidth(piece.cut, hip, length - 20),
    top: 1.6,
    hipAt: Math.min(18, length * 0.5),
    bottom: length,
    band: 0,
  });
  const x = 40 * KNOT;
  garment.inside([corner(-19.6, 2), [0, 0.2], corner(19.6, 2), corner(0, 6)], { fill: garment.cloth.deep });
  backOfHem(skirt);
  const outline = skirt.outline.map(
    ([a, y, c], i): Node => (i === 0 ? [a, y - 0.4, c] : i === 1 ? [a, y + 0.2, c] : [a, y, c]),
  );
  const edge: Node[] = [
    [x + 1, 4],
    [x + 5, lerp(4, length, 0.35)],
    [x + 13, lerp(4, length, 0.75)],
    [x + 17, length + 2],
  ];
  garment.panel(outline, {
    round: { from: [-hip / 2, 0], to: [hip / 2, 0], strength: 0.7 },
    inner: [
      ...skirtShade(skirt),
      shape(
        [...edge, corner(x + 2, length + 2), corner(x - 4, length * 0.5), corner(x - 1, 4)],
        garment.cloth.ink,
        0.14,
      ),
      ...swags(skirt, x),
      garment.plane(
        edge.map(([a, y]): Node => [a - 1, y]),
        1.5,
        garment.cloth.ink,
        0.55,
        0.6,
      ),
      pen(edge, 0.44, garment.cloth.ink, 0.9, 0.6),
      garment.plane(
        edge.map(([a, y]): Node => [a + 0.9, y]),
        0.5,
        garment.cloth.bright,
        0.6,
        0.6,
      ),
      ...skirtFlutes(skirt, 0.8),
    ],
  });
  fringe(skirt);
  rolledTop(garment);
  knot(garment, x, length);
  return garment
    .anchor('waist', [0, 2])
    .anchor('left waist', [-20, 2])
    .anchor('right waist', [20, 2])
    .anchor('hem', [0, length])
    .finish();
};

/** Swags that hang from the knot across the hip. */
const swags = ({ garment, at, measures: { length } }: Skirt, x: number): Painted[] =>
  [0.5, 0.72, 0.9, 0.98].map((share, i) => {
    const end = 8 + i * Math.min(15, length * 0.17);
    return garment.fold(
      [
        [x + 2, 4.6 + i * 0.8],
        [at(share - 0.2)(end), lerp(6, end, 0.62) + 2],
        [at(share)(end), end],
      ],
      -2.3,
      0.95 - i * 0.1,
      0.35,
    );
  });

const fringe = ({ garment, at, hemAt }: Skirt): void => {
  const count = garment.small ? 14 : 52;
  let path = '';
  for (let i = 0; i <= count; i++) {
    const share = i / count;
    const y = hemAt(share) - 0.2;
    const x = at(share)(y);
    path += `M${x.toFixed(2)} ${y.toFixed(2)}L${(x + garment.jitter(0.35)).toFixed(2)} ${(y + 2.2 + garment.jitter(0.4)).toFixed(2)}`;
  }
  garment.add(line(path, garment.small ? 0.4 : 0.26, garment.cloth.deep), line(path, 0.14, garment.cloth.light));
};

const rolledTop = (garment: Garment): void => {
  garment.panel(
    [
      corner(-20.2, 0.6),
      [-8, 2],
      [8, 2.2],
      corner(20.2, 0.8),
      corner(20.4, 3.6),
      [8, 5],
      [-8, 4.8],
      corner(-20.4, 3.4),
    ],
    {
      edge: 0.6,
      cast: 0.6,
      wobble: 0.12,
      turn: 80,
      inner: [
        garment.fold(
          [
            [-16, 2.2],
            [-2, 3.8],
            [14, 3.2],
          ],
          0.9,
          0.9,
          0.5,
        ),
        garment.fold(
          [
            [18, 1.8],
            [6, 3.4],
            [-4, 3.2],
          ],
          -0.8,
          0.8,
          0.5,
        ),
      ],
    },
  );
};

const knot = (garment: Garment, x: number, length: number): void => {
  const drop = Math.min(30, length * 0.42);
  const tail = (dx: number, dy: number, wide: number): Node[] => [
    corner(x - 0.6, 3),
    [x + dx * 0.4 - wide * 0.5, 3 + dy * 0.5],
    corner(x + dx - wide, 3 + dy * 0.92),
    corner(x + dx + wide * 0.5, 3 + dy),
    [x + dx * 0.5 + wide * 0.7, 3 + dy * 0.5],
    corner(x + 1, 3),
  ];
  for (const [dx, dy, wide] of [
    [-7, drop, 4.2],
    [4.6, drop * 0.74, 3.6],
  ] as const)
    garment.panel(tail(dx, dy, wide), {
      edge: 0.6,
      cast: 0.8,
      wobble: 0.1,
      turn: dx * 2,
      inner: [
        garment.fold(
          [
            [x, 4],
            [x + dx * 0.4, 3 + dy * 0.5],
            [x + dx * 0.8, 3 + dy],
          ],
          1.4,
          1,
        ),
        garment.fold(
          [
            [x + 0.5, 4],
            [x + dx * 0.5 + 1, 3 + dy * 0.5],
            [x + dx + wide * 0.3, 3 + dy],
          ],
          -1.1,
          0.8,
        ),
      ],
    });
  garment.panel(
    [
      corner(x - 3, 0.8),
      [x - 0.6, 0.2],
      corner(x + 2.2, 0.4),
      [x + 2.9, 2.8],
      corner(x + 1.7, 5.6),
      [x - 0.4, 5],
      corner(x - 2.4, 6),
      [x - 2.9, 3.4],
    ],
    {
      edge: 0.7,
      cast: 0.7,
      wobble: 0.1,
      turn: 40,
      inner: [
        garment.fold(
          [
            [x - 1.8, 1],
            [x - 0.4, 3],
            [x - 0.8, 5.4],
          ],
          1,
          1,
          0.5,
        ),
        garment.fold(
          [
            [x + 0.8, 0.6],
            [x + 1.4, 2.8],
            [x + 0.2, 5],
          ],
          0.9,
          0.9,
          0.5,
        ),
      ],
    },
  );
};
