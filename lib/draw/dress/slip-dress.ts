import { lerp, line, type Node, type Painted } from '../kit/index.ts';
import { biasDrape, skirtFlutes } from '../lower/skirt-folds.ts';
import { skirtHemStitch } from '../lower/skirt-parts.ts';
import { block, upperBlock } from './blocks.ts';
import type { DressDesign } from './draw.ts';
import type { Dress } from './frame.ts';
import { backInside, strapPoint, straps } from './strap-line.ts';

const COWL = 10;

const SLIP_TOP = 16.5;

/** Slip dress: cut on the bias, a cowl that hangs lower on one side, cords for straps. */
export const slip: DressDesign = {
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
    straps(d.garment, 10, SLIP_TOP, 0.6, true);
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
    straps(d.garment, 10, y, 0.6, false);
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
