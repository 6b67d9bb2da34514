import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind } from '../drawing.ts';
import { corner, type Garment, lerp, line, type Node, type Painted, pen, stitch, tone } from '../kit/index.ts';
import { biasDrape, gatherFolds, skirtFlutes, skirtShade } from '../lower/skirt-folds.ts';
import { longSeam, skirtHemStitch } from '../lower/skirt-parts.ts';
import { armBinding } from '../upper/finish.ts';
import { neckInside } from '../upper/necklines.ts';
import { patchPocket } from '../upper/pockets.ts';
import type { UpperShape } from '../upper/shape.ts';
import { block, upperBlock } from './blocks.ts';
import { bodiceShade, type DressDesign, drawDress, waistSeam } from './draw.ts';
import { type Dress, shoulderLine, type TopLine } from './frame.ts';
import { strap } from './straps.ts';

const kind =
  (design: DressDesign): DrawKind =>
  (piece, detail) =>
    drawDress(piece, detail, design);

/** The inside of the back, seen above the front's edge. */
const backInside = ({ garment, upper }: Dress, top: number, deep: number, label = true): void => {
  const half = upper.chest / 2 - 0.6;
  garment.inside(
    [
      corner(-half, upper.armhole + 0.9),
      [-half * 0.58, top + 0.8],
      [0, top],
      [half * 0.58, top + 0.8],
      corner(half, upper.armhole + 0.9),
      corner(0, deep + 3),
    ],
    { fill: garment.cloth.deep, ...(label && { label: [0, top + 0.8] as const }) },
  );
};

/** Rising from the underarm to a point where a strap is sewn on, `x` from the middle at height `y`. */
const strapPoint = ({ chest, armhole }: UpperShape, x: number, y: number, neck: Node[]): TopLine => ({
  neck,
  right: [
    corner(x, y),
    [lerp(x, chest / 2, 0.4), lerp(y, armhole, 0.5)],
    [lerp(x, chest / 2, 0.72), lerp(y, armhole, 0.84)],
    corner(chest / 2, armhole),
  ],
});

/** Both straps of a pair, over the shoulder: front ones from the garment's edge, back ones behind it. */
const straps = (garment: Garment, x: number, y: number, width: number, behind: boolean, lean = 0): void => {
  for (const side of [-1, 1] as const) {
    const apex = side * (x - 1.6) + lean + side * garment.jitter(0.4);
    const end: Node[] = behind
      ? [
          [side * (x + 0.4), y + 6.5],
          [side * (x - 1.2) + 0.9, y * 0.5],
          [apex + 1.2, 1.6],
          [apex + 0.7, 0.2],
        ]
      : [
          [side * x, y + 0.6],
          [side * (x - 0.5), y * 0.5],
          [apex - 0.1, 2.2],
          [apex + 0.3, 0.1],
        ];
    strap(garment, end, width, behind);
  }
};

const COWL = 10;
const SLIP_TOP = 16.5;
const slip: DressDesign = {
  block: {
    ...block(
      upperBlock({ chest: 38.5, waist: 34, shoulder: 20, armhole: 25.8, neck: 20, neckDepth: 28, sleeve: undefined }),
      43.5,
      43,
      62,
    ),
    spread: 0.2,
  },
  line: (upper) => {
    const y = SLIP_TOP;
    return strapPoint(upper, 10, y, [
      [-6.4, y + COWL * 0.78],
      [0.7, y + COWL + 1],
      [7.2, y + COWL * 0.62],
    ]);
  },
  beneath: (d) => {
    straps(d.garment, 10, SLIP_TOP, 0.6, true, 0.6);
    backInside(d, SLIP_TOP + 5.6, SLIP_TOP + COWL);
  },
  waistSeam: false,
  onBodice: (d) => [...cowlFolds(d), ...slipPull(d)],
  onSkirt: (d) => [
    ...biasDrape(d.skirt, 34),
    ...skirtFlutes(d.skirt, 0.45),
    skirtHemStitch(d.skirt, 1, d.garment.cloth.ink, 0.4),
  ],
  over: (d) => {
    const y = SLIP_TOP;
    const edge: Node[] = [
      [-10, y],
      [-6.4, y + COWL * 0.78],
      [0.7, y + COWL + 1],
      [7.2, y + COWL * 0.62],
      [10, y],
    ];
    d.garment.add(
      line(edge, 0.42, d.garment.cloth.bright, 0.85),
      line(
        edge.map(([x, v]): Node => [x, v + 0.45]),
        0.16,
        d.garment.cloth.ink,
        0.45,
      ),
    );
    straps(d.garment, 10, y, 0.6, false, -0.5);
  },
};

/** The cowl hangs lower on one side: its folds are not level. */
const cowlFolds = ({ garment }: Dress): Painted[] =>
  [0, 1, 2].map((i) => {
    const y = SLIP_TOP + 1 + i * 2.2;
    const low = SLIP_TOP + COWL + 3 + i * 3.4;
    return garment.fold(
      [
        [-10.4 - i * 0.3, y],
        [-6.6, lerp(y, low, 0.74)],
        [1 + i * 0.7, low],
        [7.6, lerp(y, low, 0.6)],
        [10.6 + i * 0.3, y - 0.6],
      ],
      2.2 - i * 0.2,
      0.9 - i * 0.2,
      0.5,
    );
  });

const slipPull = ({ garment, upper, waistAt }: Dress): Painted[] => {
  const half = upper.chest / 2;
  const { bright, ink, sheen, depth } = garment.cloth;
  return [
    garment.plane(
      [
        [-half * 0.5, upper.armhole + 2],
        [-half * 0.56, waistAt],
        [-half * 0.5, waistAt + 10],
      ],
      2.6,
      bright,
      0.34 * sheen,
    ),
    garment.plane(
      [
        [half * 0.42, upper.armhole + 6],
        [half * 0.5, waistAt],
        [half * 0.4, waistAt + 12],
      ],
      2.6,
      ink,
      0.4 * depth,
    ),
    garment.fold(
      [
        [-half + 0.4, upper.armhole + 3],
        [-half * 0.66, upper.armhole + 10],
        [-half * 0.3, waistAt - 2],
        [-half * 0.12, waistAt + 14],
      ],
      2.4,
      0.6,
    ),
    garment.fold(
      [
        [half - 0.4, upper.armhole + 4],
        [half * 0.72, upper.armhole + 8],
        [half * 0.56, upper.armhole + 14],
      ],
      -1.9,
      0.6,
    ),
    garment.fold(
      [
        [upper.waist / 2 + 0.4, waistAt + 2],
        [upper.waist * 0.34, waistAt + 5],
        [upper.waist * 0.16, waistAt + 4],
      ],
      -1.9,
      0.6,
    ),
  ];
};

const SUN_TOP = 14;
const sun: DressDesign = {
  block: block(
    upperBlock({ chest: 41, waist: 36, shoulder: 22, armhole: 24, neck: 22, neckDepth: 18, sleeve: undefined }),
    47,
    39,
    58,
  ),
  line: (upper) =>
    strapPoint(upper, 9.6, SUN_TOP, [
      [-8.4, SUN_TOP + 5, 'corner'],
      [0, SUN_TOP + 5.6],
      [8.4, SUN_TOP + 5, 'corner'],
    ]),
  beneath: (d) => {
    straps(d.garment, 9.2, SUN_TOP, 2.6, true);
    backInside(d, SUN_TOP + 8, SUN_TOP + 8);
  },
  waistSeam: true,
  onBodice: (d) => [...bodiceShade(d, 0.4), ...shirring(d)],
  onSkirt: (d) => [
    ...skirtShade(d.skirt),
    ...gatherFolds(d.skirt, d.waistAt + 1, 24, 10, 1),
    ...skirtFlutes(d.skirt),
    skirtHemStitch(d.skirt, 2.4),
  ],
  over: (d) => {
    const { garment, upper } = d;
    garment.add(waistSeam(d));
    frill(garment, upper);
    straps(garment, 9.2, SUN_TOP + 1, 2.6, false);
    for (const side of [-1, 1])
      patchPocket(garment, side * 13.5, d.waistAt + 14, { width: 12, height: 13, lean: side * -5 });
  },
};

/** Rows of elastic thread that gather the bodice. */
const shirring = ({ garment, upper, waistAt }: Dress): Painted[] => {
  const rows = garment.small ? 4 : 9;
  const marks: Painted[] = [];
  for (let i = 0; i < rows; i++) {
    const y = lerp(SUN_TOP + 9.5, waistAt - 0.6, i / (rows - 1));
    const half = lerp(upper.chest, upper.waist, (y - upper.armhole) / (waistAt - upper.armhole)) / 2 + 1;
    const row: Node[] = [
      [-half, y],
      [-half * 0.4, y + 0.6],
      [half * 0.3, y + 0.5],
      [half, y],
    ];
    marks.push(
      line(row, 0.2, garment.cloth.ink, 0.42),
      line(
        row.map(([x, v]): Node => [x, v + 0.5]),
        0.3,
        garment.cloth.bright,
        0.4,
      ),
    );
    if (!garment.small)
      marks.push(
        line(
          row.map(([x, v]): Node => [x, v + 1.1]),
          0.9,
          garment.cloth.ink,
          0.13,
          [0.3, 0.75],
        ),
      );
  }
  return marks;
};

/** A little heading of gathered cloth along the top edge. */
const frill = (garment: Garment, { chest, armhole }: UpperShape): void => {
  const edge: Node[] = [
    [-chest / 2, armhole],
    [-9.8, SUN_TOP + 3.6],
    [-8.4, SUN_TOP + 5],
    [0, SUN_TOP + 5.6],
    [8.4, SUN_TOP + 5],
    [9.8, SUN_TOP + 3.6],
    [chest / 2, armhole],
  ];
  garment.add(
    pen(
      edge.map(([x, y]): Node => [x, y + 1.5]),
      0.3,
      garment.cloth.ink,
      0.6,
      0.5,
    ),
  );
  if (!garment.small)
    garment.add(
      stitch(
        edge.map(([x, y]): Node => [x, y + 2]),
        garment.cloth.ink,
        0.5,
      ),
    );
};

const cocktail: DressDesign = {
  block: block(
    upperBlock({ chest: 42, waist: 34, shoulder: 36, armhole: 21.5, neck: 24, neckDepth: 16.5, sleeve: undefined }),
    45.5,
    38,
    58,
  ),
  line: shoulderLine((upper) => heartNeck(upper), 2.6),
  scoop: 2.6,
  beneath: (d) => neckInside(d.garment, { ...d.upper, neckDepth: d.upper.neckDepth + 1.5 }, 'square', -2.6, false),
  waistSeam: false,
  backHem: false,
  roundness: 1,
  onBodice: (d) => [...bodiceShade(d, 0.4), ...bustPleats(d)],
  onSkirt: (d) => [...skirtShade(d.skirt), ...ruching(d), skirtHemStitch(d.skirt, 1, d.garment.cloth.ink, 0.4)],
  over: (d) => {
    const { garment, upper } = d;
    const edge: Node[] = [[-upper.neck / 2, 0], ...heartNeck(upper), [upper.neck / 2, 0]];
    garment.add(
      pen(
        edge.map(([x, y]): Node => [x, y + 0.1]),
        0.34,
        garment.cloth.ink,
        0.75,
        0.5,
      ),
    );
    armBinding(garment, upper, 2.6);
    gatherKnot(d);
  },
};

/** A wide neckline that comes down in two arcs. */
const heartNeck = ({ neck, neckDepth }: UpperShape): Node[] => [
  [-neck * 0.44, neckDepth * 0.5],
  [-neck * 0.36, neckDepth * 0.78, 'corner'],
  [-neck * 0.2, neckDepth * 0.8],
  [0, neckDepth, 'corner'],
  [neck * 0.2, neckDepth * 0.8],
  [neck * 0.36, neckDepth * 0.78, 'corner'],
  [neck * 0.44, neckDepth * 0.5],
];

/** Small pleats below the arcs of the neckline. */
const bustPleats = ({ garment, upper: { neck, neckDepth } }: Dress): Painted[] =>
  [-1, 1].flatMap((side) =>
    [0.1, 0.24].map((share, i) =>
      garment.fold(
        [
          [side * neck * share, neckDepth * 0.9 - i * 1.4],
          [side * neck * (share + 0.03), neckDepth + 4],
          [side * neck * (share + 0.1), neckDepth + 9 - i * 2],
        ],
        1.1 * side,
        0.75,
      ),
    ),
  );

/** Folds gathered into the left side seam at the waist, which sweep across the hips. */
const ruching = ({ garment, waistAt, skirt: { at, measures } }: Dress): Painted[] =>
  [0, 1, 2, 3, 4, 5].map((i) => {
    const y = waistAt - 1.5 + i * 2.2;
    const end = lerp(waistAt - 9, waistAt + 34, i / 5);
    const far = 0.94 - Math.abs(i - 2) * 0.05;
    return garment.fold(
      [
        [at(0.03)(y), y],
        [at(0.36)(lerp(y, end, 0.34)), lerp(y, end, 0.3)],
        [at(far)(Math.min(end, measures.length - 8)), Math.min(end, measures.length - 8)],
      ],
      i < 2 ? 1.6 : -1.9,
      0.85 - i * 0.05,
      0.3,
    );
  });

const gatherKnot = ({ garment, waistAt, skirt: { left } }: Dress): void => {
  const x = left(waistAt + 4) + 1.6;
  garment.panel(
    [
      corner(x - 1.8, waistAt - 0.8),
      [x, waistAt - 1.5],
      corner(x + 1.9, waistAt - 0.4),
      [x + 1.5, waistAt + 2.8],
      corner(x + 2, waistAt + 6.4),
      [x, waistAt + 7.1],
      corner(x - 1.6, waistAt + 6.6),
      [x - 1.2, waistAt + 3],
    ],
    {
      covers: false,
      edge: 0.5,
      cast: 0.5,
      wobble: 0.06,
      turn: 50,
      inner: [-0.8, 0.6].map((dx) =>
        garment.fold(
          [
            [x + dx, waistAt - 0.6],
            [x + dx * 1.4, waistAt + 3],
            [x + dx, waistAt + 6.6],
          ],
          0.8,
          0.9,
          0.5,
        ),
      ),
    },
  );
};

const GOWN_TOP = 15.5;
const gown: DressDesign = {
  block: block(
    upperBlock({ chest: 39.5, waist: 33, shoulder: 22, armhole: 25.5, neck: 18, neckDepth: 27, sleeve: undefined }),
    45,
    41,
    62,
  ),
  line: (upper) =>
    strapPoint(upper, 10.4, GOWN_TOP, [
      [-8, GOWN_TOP + 3.4],
      [-4.4, GOWN_TOP + 6.6],
      [0, GOWN_TOP + 10.5, 'corner'],
      [4.4, GOWN_TOP + 6.6],
      [8, GOWN_TOP + 3.4],
    ]),
  beneath: (d) => {
    straps(d.garment, 10.2, GOWN_TOP, 1.1, true);
    backInside(d, GOWN_TOP + 7, GOWN_TOP + 11, false);
    train(d);
  },
  waistSeam: true,
  onBodice: (d) => [...bodiceShade(d, 0.5), ...gownDrape(d)],
  onSkirt: (d) => [
    ...biasDrape(d.skirt, d.waistAt, false),
    ...gatherFolds(d.skirt, d.waistAt + 1, 34, 6, 0.65),
    ...skirtFlutes(d.skirt, 0.6),
    sideSplit(d),
  ],
  over: (d) => {
    d.garment.add(waistSeam(d));
    straps(d.garment, 10.2, GOWN_TOP, 1.1, false);
  },
};

/** The back of the skirt, a little longer than the front, spread to one side. */
const train = ({ garment, skirt: { measures, left, right } }: Dress): void => {
  const { length, hem } = measures;
  const top = lerp(62, length, 0.55);
  garment.panel(
    [
      corner(left(top) + 1, top),
      corner(right(top) - 1, top),
      corner(right(length) + 3.4, length - 4),
      [hem * 0.3, length + 3.6],
      [0, length + 4.2],
      [-hem * 0.3, length + 2.4],
      corner(left(length) - 0.4, length - 3),
    ],
    {
      fill: garment.cloth.shade,
      weave: false,
      edge: 0.8,
      inner: [
        garment.plane(
          [
            [0, length + 1],
            [hem * 0.2, length + 1.5],
            [hem * 0.4, length],
          ],
          3,
          garment.cloth.ink,
          0.5,
        ),
      ],
    },
  );
};

/** Pleats laid across the bust to the waist on one side. */
const gownDrape = ({ garment, upper, waistAt }: Dress): Painted[] =>
  [-1, 1].flatMap((side) =>
    [0, 1, 2].map((i) =>
      garment.fold(
        [
          [side * (9.8 - i * 1.8), GOWN_TOP + 1.6 + i * 3],
          [side * (7.6 - i * 2.4), lerp(GOWN_TOP + 6, waistAt, 0.5)],
          [-side * (0.6 + i * 1.4) - upper.waist * 0.06, waistAt - 1 - i * 0.5],
        ],
        -1.3 * side,
        0.8,
        0.4,
      ),
    ),
  );

const sideSplit = ({ garment, waistAt, skirt: { at, measures } }: Dress): Painted => {
  const x = at(0.68);
  const from = lerp(waistAt, measures.length, 0.52);
  const low = measures.length + 2;
  const run: Node[] = [
    [x(from), from],
    [x(lerp(from, low, 0.5)) + 0.6, lerp(from, low, 0.5)],
    [x(low) + 1.6, low],
  ];
  return {
    marks: [
      garment.plane(
        run.map(([a, y]): Node => [a + 1.6, y]),
        2.6,
        garment.cloth.ink,
        0.75,
        0.75,
      ),
      pen(run, 0.7, garment.cloth.ink, 0.9, 0.7),
      garment.plane(
        run.map(([a, y]): Node => [a - 1, y]),
        0.8,
        garment.cloth.bright,
        0.7,
        0.7,
      ),
    ],
  };
};

const BIB = 17;
const pinafore: DressDesign = {
  block: block(
    upperBlock({ chest: 41, waist: 38, shoulder: 22, armhole: 27.5, neck: 22, neckDepth: BIB, sleeve: undefined }),
    48,
    40,
    58,
  ),
  line: ({ chest, armhole }) => ({
    neck: [[0, BIB + 0.5]],
    right: [corner(10.6, BIB), [11.4, BIB + 5], [15, armhole - 1.6], corner(chest / 2, armhole + 0.6)],
  }),
  beneath: (d) => {
    for (const side of [-1, 1])
      strap(
        d.garment,
        [
          [side * 8.6, BIB + 9],
          [side * 9.6, BIB * 0.5],
          [side * 8.4, 0.4],
        ],
        3.2,
        true,
      );
    backInside(d, BIB + 7.6, BIB + 9);
  },
  waistSeam: true,
  onBodice: (d) => [...bodiceShade(d, 0.7), ...bibStitch(d)],
  onSkirt: (d) => [
    ...skirtShade(d.skirt),
    ...skirtFlutes(d.skirt, 0.9),
    longSeam(d.skirt, 0.5),
    skirtHemStitch(d.skirt, 2.6),
  ],
  over: (d) => {
    const { garment, waistAt } = d;
    garment.add(waistSeam(d));
    if (!garment.small)
      garment.add(
        stitch(
          [
            [-19, waistAt + 0.8],
            [0, waistAt + 1.9],
            [19, waistAt + 0.8],
          ],
          garment.cloth.ink,
          0.6,
        ),
      );
    patchPocket(garment, 0, BIB + 7.4, { width: 12.5, height: 10 });
    for (const side of [-1, 1] as const) {
      patchPocket(garment, side * 13.6, waistAt + 9, { width: 12, height: 13.5, lean: side * -4 });
      strap(
        garment,
        [
          [side * 8.4, BIB + 4.4],
          [side * 9.4, BIB * 0.5],
          [side * 8.4, 0.2],
        ],
        3.2,
      );
      garment.button(side * 8.4, BIB + 2.6, 1.05, tone('#b98c4a', -0.02));
    }
  },
};

const bibStitch = ({ garment, upper }: Dress): Painted[] =>
  garment.small
    ? []
    : [
        stitch(
          [
            [-10.2, BIB + 0.9],
            [10.2, BIB + 0.9],
          ],
          garment.cloth.ink,
          0.6,
        ),
        ...[-1, 1].map((side) =>
          stitch(
            [
              [side * 10, BIB],
              [side * 10.8, BIB + 5],
              [side * 14.6, upper.armhole - 1],
              [side * (upper.chest / 2), upper.armhole + 1.5],
            ],
            garment.cloth.ink,
            0.6,
          ),
        ),
      ];

/** Dresses held by straps. */
export const STRAP_DRESSES = {
  'slip dress': kind(slip),
  sundress: kind(sun),
  'cocktail dress': kind(cocktail),
  'evening gown': kind(gown),
  pinafore: kind(pinafore),
} satisfies Partial<Record<KindId, DrawKind>>;
