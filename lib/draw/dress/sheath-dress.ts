import { lerp, type Painted, pen } from '../kit/index.ts';
import { skirtShade } from '../lower/skirt-folds.ts';
import { longSeam } from '../lower/skirt-parts.ts';
import { armBinding } from '../upper/finish.ts';
import { finishNeck, frontNeck, neckInside } from '../upper/necklines.ts';
import { block, upperBlock } from './blocks.ts';
import { bodiceShade, type DressDesign, princessSeams, waistSeam } from './draw.ts';
import { type Dress, shoulderLine } from './frame.ts';

/** Sheath dress: sleeveless, shaped by seams, a short slit. */
export const sheath: DressDesign = {
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
