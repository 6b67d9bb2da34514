import { type Garment, lerp, line, type Node, type Painted, pen, stitch } from '../kit/index.ts';
import { gatherFolds, skirtFlutes, skirtShade } from '../lower/skirt-folds.ts';
import { skirtHemStitch } from '../lower/skirt-parts.ts';
import { patchPocket } from '../upper/pockets.ts';
import type { UpperShape } from '../upper/shape.ts';
import { block, upperBlock } from './blocks.ts';
import { bodiceShade, type DressDesign, waistSeam } from './draw.ts';
import type { Dress } from './frame.ts';
import { backInside, strapPoint, straps } from './strap-line.ts';

const SUN_TOP = 14;

/** Sundress: wide straps, a bodice gathered by rows of elastic, patch pockets. */
export const sun: DressDesign = {
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
