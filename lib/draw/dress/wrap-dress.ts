import { edgeThrough } from '../kit/edges.ts';
import { lerp, type Node, type Painted, pen } from '../kit/index.ts';
import { skirtFlutes, skirtShade } from '../lower/skirt-folds.ts';
import { overlapEdge, skirtHemStitch } from '../lower/skirt-parts.ts';
import { waistTie } from '../lower/waist-tie.ts';
import { neckInside } from '../upper/necklines.ts';
import { block, ELBOW_SLEEVE, upperBlock } from './blocks.ts';
import { bodiceShade, type DressDesign, selfBelt } from './draw.ts';
import { type Dress, shoulderLine } from './frame.ts';

/** Wrap dress: fronts that cross, tied at the left of the waist. */
export const wrapDress: DressDesign = {
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
