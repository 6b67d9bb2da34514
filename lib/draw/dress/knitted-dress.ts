import { edgeThrough } from '../kit/edges.ts';
import { lerp, linesBetween, type Node, type Painted, pen } from '../kit/index.ts';
import { skirtShade } from '../lower/skirt-folds.ts';
import { frontNeck, neckInside } from '../upper/necklines.ts';
import { rollCollar } from '../upper/stand-collars.ts';
import { block, upperBlock } from './blocks.ts';
import { bodiceShade, type DressDesign } from './draw.ts';
import { type Dress, shoulderLine } from './frame.ts';

/** Knitted dress: roll-neck, ribs from shoulder to hem. */
export const knitted: DressDesign = {
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
