import { corner, lerp, type Node, type Painted, pen } from '../kit/index.ts';
import { biasDrape, gatherFolds, skirtFlutes } from '../lower/skirt-folds.ts';
import { block, upperBlock } from './blocks.ts';
import { bodiceShade, type DressDesign, waistSeam } from './draw.ts';
import type { Dress } from './frame.ts';
import { backInside, strapPoint, straps } from './strap-line.ts';

const GOWN_TOP = 15.5;

/** Evening gown: pleated bodice on straps, a skirt with a split and a short train. */
export const gown: DressDesign = {
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
