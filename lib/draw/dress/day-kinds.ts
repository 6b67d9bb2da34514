import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind } from '../drawing.ts';
import { edgeThrough } from '../kit/edges.ts';
import { corner, lerp, linesBetween, type Node, type Painted, pen, stitch, tone } from '../kit/index.ts';
import { gatherFolds, skirtFlutes, skirtShade } from '../lower/skirt-folds.ts';
import { longSeam, overlapEdge, skirtHemStitch, waistTie } from '../lower/skirt-parts.ts';
import { placket } from '../upper/closures.ts';
import { rollCollar, shirtCollar } from '../upper/collars.ts';
import { armBinding } from '../upper/finish.ts';
import { finishNeck, frontNeck, neckInside } from '../upper/necklines.ts';
import { patchPocket } from '../upper/pockets.ts';
import { block, ELBOW_SLEEVE, LONG_SLEEVE, SHORT_SLEEVE, upperBlock } from './blocks.ts';
import { bodiceShade, type DressDesign, drawDress, princessSeams, selfBelt, waistSeam } from './draw.ts';
import { type Dress, shoulderLine } from './frame.ts';

const kind =
  (design: DressDesign): DrawKind =>
  (piece, detail) =>
    drawDress(piece, detail, design);
const dull = (hex: string): string => tone(hex, -0.2, 0.6);

const collared = (upper: { readonly neck: number; readonly neckDepth: number }): Node[] => [
  [-upper.neck * 0.3, upper.neckDepth * 0.42],
  [-1, upper.neckDepth, 'corner'],
  [1, upper.neckDepth, 'corner'],
  [upper.neck * 0.3, upper.neckDepth * 0.42],
];

const collarInside = ({ garment, upper }: Dress): void => {
  const half = upper.neck / 2;
  garment.inside(
    [
      corner(-half - 0.5, 0.2),
      [-half * 0.5, -2.6],
      [0, -3],
      [half * 0.5, -2.6],
      corner(half + 0.5, 0.2),
      corner(0, upper.neckDepth + 1),
    ],
    {
      label: [0, -0.8],
    },
  );
};

const shirtDress: DressDesign = {
  block: block(
    upperBlock({ chest: 48, waist: 43, shoulder: 41, armhole: 23, neck: 15.5, neckDepth: 8, sleeve: LONG_SLEEVE }),
    49,
  ),
  line: shoulderLine(collared),
  beneath: collarInside,
  sleeve: { cuff: 'shirt', cuffHeight: 6 },
  waistSeam: false,
  backHem: false,
  onBodice: (d) => bodiceShade(d),
  onSkirt: (d) => [
    ...skirtShade(d.skirt),
    ...skirtFlutes(d.skirt, 0.9),
    ...beltGathers(d),
    skirtHemStitch(d.skirt, 2.2),
  ],
  over: (d) => {
    const { garment, upper, waistAt } = d;
    const length = d.skirt.measures.length;
    placket(
      garment,
      { ...upper, length },
      {
        width: 3,
        buttons: Math.max(5, Math.round((length - 20) / 10)),
        radius: 0.62,
        colour: dull(garment.cloth.ground),
      },
    );
    patchPocket(garment, 10.6, 20.5, { width: 9.4, height: 10.5, pointed: true });
    selfBelt(d, 3.6);
    waistTie({ garment }, -3.5, waistAt + 0.6, 25);
    shirtCollar(garment, upper, { points: 8.6 });
  },
};

/** Short folds above and below a belt that draws the cloth in. */
const beltGathers = ({ garment, upper, waistAt, skirt }: Dress): Painted[] => {
  const up = [-0.32, -0.12, 0.16, 0.34].map((share) => {
    const x = share * upper.waist;
    return garment.fold(
      [
        [x, waistAt],
        [x * 1.04, waistAt - 4],
        [x * 1.1 + garment.jitter(), waistAt - 8 - garment.random() * 4],
      ],
      1.1 * Math.sign(share),
      0.75,
      0.22,
    );
  });
  return [...up, ...gatherFolds(skirt, waistAt + 1.6, 16, 6, 0.8)];
};

const tShirtDress: DressDesign = {
  block: block(
    upperBlock({
      chest: 48,
      waist: 47,
      shoulder: 42,
      armhole: 23,
      neck: 17.5,
      neckDepth: 8.5,
      sleeve: { ...SHORT_SLEEVE, length: 21, elbow: 18.5, cuff: 17.5 },
    }),
    49,
  ),
  line: shoulderLine((upper) => frontNeck(upper, 'crew')),
  beneath: (d) => neckInside(d.garment, d.upper, 'crew', 1),
  sleeve: { cuff: 'hem' },
  waistSeam: false,
  backHem: false,
  onBodice: (d) => bodiceShade({ ...d, waistAt: 52 }),
  onSkirt: (d) => [
    ...skirtShade(d.skirt),
    ...skirtFlutes(d.skirt),
    ...sideSlits(d),
    skirtHemStitch(d.skirt, 1.9),
    skirtHemStitch(d.skirt, 2.4),
  ],
  over: (d) => {
    patchPocket(d.garment, 9.8, 18.6, { width: 9, height: 10 });
    finishNeck(d.garment, d.upper, 'crew', 'rib', 2);
  },
};

const sideSlits = ({ garment, skirt: { left, right, measures } }: Dress): Painted[] =>
  [left, right].flatMap((edge, i) => {
    const inwards = i === 0 ? 1 : -1;
    const from = measures.length - 11;
    const run: Node[] = [
      [edge(from) + inwards * 0.4, from],
      [edge(measures.length) + inwards * 1.3, measures.length],
    ];
    return [
      pen(run, 0.55, garment.cloth.ink, 0.8, 0.7),
      garment.small
        ? pen(run, 0.1, garment.cloth.ink)
        : stitch(
            run.map(([x, y]): Node => [x + inwards * 0.9, y]),
            garment.cloth.ink,
            0.5,
          ),
    ];
  });

const knitted: DressDesign = {
  block: block(
    upperBlock({
      chest: 42,
      waist: 37,
      shoulder: 36.5,
      armhole: 20.5,
      neck: 16,
      neckDepth: 5.5,
      sleeve: { length: 60, elbow: 13.5, cuff: 9, upper: 20, fore: 7 },
    }),
    45,
  ),
  line: shoulderLine((upper) => frontNeck(upper, 'crew')),
  beneath: (d) => neckInside(d.garment, d.upper, 'crew', 1, false),
  sleeve: { cuff: 'rib', cuffHeight: 8, ribs: 22 },
  waistSeam: false,
  backHem: false,
  roundness: 1,
  onBodice: (d) => bodiceShade(d, 0.8),
  onSkirt: (d) => [...ribs(d), ...skirtShade(d.skirt), ...knitFolds(d)],
  over: (d) => rollCollar(d.garment, d.upper, 15, true),
};

/** Ribs from the shoulders to the hem, which follow the sides, and a border at the hem. */
const ribs = ({ garment, upper, right, skirt }: Dress): Painted[] => {
  const side = edgeThrough([...right.slice(2).map(([x, y]): Node => [x, y])]);
  const { length } = skirt.measures;
  const heights = [upper.slope, upper.armhole, 31, 40, 50, 61, lerp(61, length, 0.5), length + 1];
  const edge = (sign: 1 | -1): Node[] => heights.map((y) => [sign * (y <= 40 ? side(y) : skirt.right(y)), y]);
  const count = Math.round(upper.chest / (garment.small ? 3 : 1.05));
  const { ink, bright } = garment.cloth;
  const dark = linesBetween(edge(-1), edge(1), count, garment.small ? 0.4 : 0.18, ink, garment.small ? 0.15 : 0.22);
  if (garment.small) return [dark];
  const border = length - 7;
  return [
    dark,
    linesBetween(edge(-1), edge(1), count, 0.22, bright, 0.5, 0.008, 1.008),
    garment.plane(
      [
        [skirt.left(border), border - 0.6],
        [0, border + 0.6],
        [skirt.right(border), border - 0.6],
      ],
      0.8,
      ink,
      0.35,
    ),
    pen(
      [
        [skirt.left(border), border],
        [0, border + 1],
        [skirt.right(border), border],
      ],
      0.24,
      ink,
      0.6,
      0.5,
    ),
  ];
};

const knitFolds = ({ garment, skirt: { at, measures } }: Dress): Painted[] => {
  const side = garment.random() > 0.5 ? 1 : -1;
  const s = (share: number) => 0.5 + side * share;
  return [
    garment.fold(
      [
        [at(s(0.48))(48), 48],
        [at(s(0.2))(53), 53],
        [at(s(-0.1))(52), 52],
      ],
      2.2 * side,
      0.6,
    ),
    garment.fold(
      [
        [at(s(-0.48))(66), 66],
        [at(s(-0.2))(73), 73],
        [at(s(0.06))(78), 78],
      ],
      -2.4 * side,
      0.6,
    ),
    garment.fold(
      [
        [at(s(0.2))(measures.length), measures.length],
        [at(s(0.16))(measures.length - 18), measures.length - 18],
        [at(s(0.22))(measures.length - 34), measures.length - 34],
      ],
      2 * side,
      0.6,
    ),
  ];
};

const sheath: DressDesign = {
  block: block(
    upperBlock({ chest: 43, waist: 35.5, shoulder: 36, armhole: 21, neck: 22, neckDepth: 6, sleeve: undefined }),
    46.5,
    39,
    59,
  ),
  line: shoulderLine((upper) => frontNeck(upper, 'boat'), 2),
  scoop: 2,
  beneath: (d) => neckInside(d.garment, d.upper, 'boat', -1.2, false),
  waistSeam: true,
  backHem: false,
  roundness: 1,
  onBodice: (d) => [...bodiceShade(d, 0.6), ...princessSeams(d)],
  onSkirt: (d) => [
    ...skirtShade(d.skirt),
    longSeam(d.skirt, 0.27),
    longSeam(d.skirt, 0.73),
    ...hipPull(d),
    ...frontSlit(d),
  ],
  over: (d) => {
    d.garment.add(waistSeam(d));
    armBinding(d.garment, d.upper, 2);
    finishNeck(d.garment, d.upper, 'boat', 'edge');
  },
};

const hipPull = ({ garment, waistAt, skirt: { at } }: Dress): Painted[] =>
  ([0.02, 0.98] as const).map((share, i) =>
    garment.fold(
      [
        [at(share)(waistAt + 12), waistAt + 12],
        [at(lerp(share, 0.5, 0.35))(waistAt + 14), waistAt + 14],
        [at(lerp(share, 0.5, 0.6))(waistAt + 13), waistAt + 13],
      ],
      i === 0 ? 1.6 : -1.6,
      0.55,
    ),
  );

/** A short slit in the left front seam. */
const frontSlit = ({ garment, skirt: { at, measures } }: Dress): Painted[] => {
  const x = at(0.27);
  const low = measures.length + 1;
  const from = low - 14;
  return [
    garment.plane(
      [
        [x(from), from],
        [x(low) + 0.7, low],
      ],
      0.9,
      garment.cloth.ink,
      0.7,
      0.8,
    ),
    pen(
      [
        [x(from), from],
        [x(low) - 0.2, low],
      ],
      0.6,
      garment.cloth.ink,
      0.9,
      0.8,
    ),
  ];
};

const tea: DressDesign = {
  block: block(
    upperBlock({
      chest: 43.5,
      waist: 35.5,
      shoulder: 37,
      armhole: 21,
      neck: 16,
      neckDepth: 16,
      sleeve: { ...SHORT_SLEEVE, length: 19, elbow: 16.5, cuff: 13 },
    }),
    47.5,
    38,
    58,
  ),
  line: shoulderLine((upper) => frontNeck(upper, 'v')),
  beneath: (d) => neckInside(d.garment, d.upper, 'v', 1),
  sleeve: { cuff: 'band', cuffHeight: 2.4, puff: 1.5 },
  waistSeam: true,
  onBodice: (d) => [...bodiceShade(d, 0.8), ...shoulderGathers(d)],
  onSkirt: (d) => [
    ...skirtShade(d.skirt),
    ...gatherFolds(d.skirt, d.waistAt + 1, 18, 7, 0.8),
    ...skirtFlutes(d.skirt),
    skirtHemStitch(d.skirt, 1.6),
  ],
  over: (d) => {
    const { garment, upper, waistAt } = d;
    garment.add(waistSeam(d));
    finishNeck(garment, upper, 'v', 'edge');
    garment.add(
      pen(
        [
          [0.2, upper.neckDepth],
          [0.3, waistAt + 1],
        ],
        0.3,
        garment.cloth.ink,
        0.8,
        0.5,
      ),
    );
    for (let i = 0; i < 5; i++)
      garment.button(
        -0.7,
        lerp(upper.neckDepth + 2.2, waistAt - 2, i / 4),
        0.55,
        garment.cloth.accents[0] ?? dull(garment.cloth.ground),
      );
    waistTie({ garment }, upper.waist * 0.4, waistAt + 0.2, 17, 0.75);
  },
};

const shoulderGathers = ({ garment, upper }: Dress): Painted[] =>
  ([-1, 1] as const).flatMap((side) =>
    [0.62, 0.76].map((share, i) => {
      const x = (side * upper.shoulder * share) / 2;
      const y = upper.slope * share;
      return garment.fold(
        [
          [x, y + 0.4],
          [x * 0.97, y + 5],
          [x * 0.93, y + 9 + i * 3],
        ],
        1 * side,
        0.7,
        0.22,
      );
    }),
  );

const wrapDress: DressDesign = {
  block: block(
    upperBlock({ chest: 44, waist: 36, shoulder: 38, armhole: 21.5, neck: 15.5, neckDepth: 25, sleeve: ELBOW_SLEEVE }),
    47,
    39,
    60,
  ),
  line: shoulderLine((upper) => crossing(upper)),
  beneath: (d) => neckInside(d.garment, { ...d.upper, neckDepth: d.upper.neckDepth + 2 }, 'v', 1),
  sleeve: { cuff: 'hem' },
  waistSeam: true,
  onBodice: (d) => [...bodiceShade(d, 0.7), ...crossedFront(d)],
  onSkirt: (d) => {
    const { skirt, waistAt } = d;
    const { waist, hem, length } = skirt.measures;
    const edge = edgeThrough([
      [-waist * 0.42, waistAt],
      [-waist * 0.36, lerp(waistAt, length, 0.3)],
      [-hem * 0.2, lerp(waistAt, length, 0.75)],
      [-hem * 0.1, length + 2],
    ]);
    return [
      ...skirtShade(skirt),
      ...skirtFlutes(skirt),
      mirroredOverlap(d, edge),
      ...tieFolds(d),
      skirtHemStitch(skirt, 1.4),
    ];
  },
  over: (d) => {
    selfBelt(d, 2.6);
    waistTie({ garment: d.garment }, -d.upper.waist * 0.42, d.waistAt + 0.2, 27);
  },
};

const crossing = ({ neck, neckDepth }: { readonly neck: number; readonly neckDepth: number }): Node[] => [
  [-neck * 0.32, neckDepth * 0.44],
  [-1.2, neckDepth, 'corner'],
  [neck * 0.3, neckDepth * 0.5],
];

/** The right front laid over the left: its edge runs on from the V to the tie at the left waist. */
const crossedFront = ({ garment, upper, waistAt }: Dress): Painted[] => {
  const { neckDepth, waist, chest, armhole } = upper;
  const edge: Node[] = [
    [upper.neck * 0.3, neckDepth * 0.5],
    [-1.2, neckDepth],
    [-waist * 0.26, lerp(neckDepth, waistAt, 0.5)],
    [-waist / 2 + 1, waistAt],
  ];
  const below = edge.slice(1);
  return [
    garment.plane(
      below.map(([x, y]): Node => [x - 0.8, y + 0.8]),
      1.3,
      garment.cloth.ink,
      0.5,
      0.5,
    ),
    pen(below, 0.45, garment.cloth.ink, 0.9, 0.5),
    garment.plane(
      below.map(([x, y]): Node => [x + 0.7, y - 0.5]),
      0.5,
      garment.cloth.bright,
      0.5,
    ),
    ...[0, 1, 2].map((i) =>
      garment.fold(
        [
          [-waist / 2 + 1.4, waistAt - 0.6 - i * 0.7],
          [-waist * (0.1 - i * 0.03), waistAt - 6 - i * 1.6],
          [chest * (0.2 + i * 0.06), armhole + 4 + i * 4],
        ],
        1.5,
        0.75,
      ),
    ),
  ];
};

const mirroredOverlap = (d: Dress, edge: (y: number) => number): Painted => {
  const { skirt, waistAt } = d;
  return overlapEdge(skirt, edge, waistAt, skirt.hemAt(0.45) + 1);
};

const tieFolds = ({ garment, waistAt, skirt: { at, measures } }: Dress): Painted[] =>
  [0.42, 0.6, 0.76].map((share, i) => {
    const end = waistAt + 8 + i * 9;
    return garment.fold(
      [
        [-measures.waist * 0.4, waistAt + 0.6 + i * 0.6],
        [at(share - 0.18)(end), lerp(waistAt, end, 0.55)],
        [at(share)(end), end],
      ],
      1.9,
      0.85 - i * 0.12,
    );
  });

const maxi: DressDesign = {
  block: block(
    upperBlock({
      chest: 44,
      waist: 36,
      shoulder: 37,
      armhole: 22,
      neck: 17,
      neckDepth: 19,
      sleeve: { length: 15, elbow: 17, cuff: 18.5, upper: 48, fore: 44 },
    }),
    48,
    38,
    58,
  ),
  line: shoulderLine((upper) => frontNeck(upper, 'v')),
  beneath: (d) => neckInside(d.garment, d.upper, 'v', 1),
  sleeve: { cuff: 'hem', puff: 0.6 },
  waistSeam: true,
  onBodice: (d) => [...bodiceShade(d, 0.8), ...shoulderGathers(d), ...waistGathersUp(d)],
  onSkirt: (d) => {
    const { skirt, waistAt } = d;
    const flounce = lerp(waistAt, skirt.measures.length, 0.74);
    return [
      ...skirtShade(skirt),
      ...gatherFolds(skirt, waistAt + 1, 30, 8, 0.9),
      ...gatherFolds(skirt, flounce + 1, 12, 11, 0.9),
      ...flounceSeam(d, flounce),
      ...skirtFlutes(skirt, 0.8),
    ];
  },
  over: (d) => {
    finishNeck(d.garment, d.upper, 'v', 'edge');
    selfBelt(d, 3.2);
  },
};

const waistGathersUp = ({ garment, upper, waistAt }: Dress): Painted[] =>
  [-0.36, -0.2, 0.2, 0.36].map((share, i) => {
    const x = upper.waist * share;
    return garment.fold(
      [
        [x, waistAt],
        [x * 1.02, waistAt - 4],
        [x * 1.06, waistAt - 7 - (i % 2) * 3],
      ],
      1.1 * Math.sign(share),
      0.75,
      0.22,
    );
  });

const flounceSeam = ({ garment, skirt: { at } }: Dress, y: number): Painted[] => {
  const nodes = [0, 0.25, 0.5, 0.75, 1].map((share): Node => [at(share)(y), y + Math.sin(Math.PI * share) * 2]);
  return [
    garment.plane(
      nodes.map(([x, v]): Node => [x, v + 0.9]),
      1.1,
      garment.cloth.ink,
      0.5,
    ),
    pen(nodes, 0.4, garment.cloth.ink, 0.85, 0.5),
  ];
};

/** Dresses that hang from the shoulders. */
export const DAY_DRESSES = {
  'shirt dress': kind(shirtDress),
  'wrap dress': kind(wrapDress),
  't-shirt dress': kind(tShirtDress),
  'knitted dress': kind(knitted),
  'sheath dress': kind(sheath),
  'tea dress': kind(tea),
  'maxi dress': kind(maxi),
} satisfies Partial<Record<KindId, DrawKind>>;
