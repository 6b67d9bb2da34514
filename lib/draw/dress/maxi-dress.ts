import { lerp, type Node, type Painted, pen } from '../kit/index.ts';
import { gatherFolds, skirtFlutes, skirtShade } from '../lower/skirt-folds.ts';
import { finishNeck, frontNeck, neckInside } from '../upper/necklines.ts';
import { block, upperBlock } from './blocks.ts';
import { bodiceShade, type DressDesign, selfBelt } from './draw.ts';
import { type Dress, shoulderLine } from './frame.ts';
import { shoulderGathers } from './tea-dress.ts';

/** Maxi dress: V neck, fluttering sleeves, a flounce at the hem. */
export const maxi: DressDesign = {
  block: block(
    upperBlock({
      chest: 44,
      waist: 36,
      shoulder: 37,
      armhole: 22,
      neck: 17,
      neckDepth: 19,
      sleeve: { length: 15, elbow: 17, cuff: 18.5, upper: 55, fore: 52 },
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
