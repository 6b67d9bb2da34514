import { lerp, type Painted, pen } from '../kit/index.ts';
import { buttonColour } from '../lower/button-colour.ts';
import { gatherFolds, skirtFlutes, skirtShade } from '../lower/skirt-folds.ts';
import { skirtHemStitch } from '../lower/skirt-parts.ts';
import { waistTie } from '../lower/waist-tie.ts';
import { finishNeck, frontNeck, neckInside } from '../upper/necklines.ts';
import { block, SHORT_SLEEVE, upperBlock } from './blocks.ts';
import { bodiceShade, type DressDesign, waistSeam } from './draw.ts';
import { type Dress, shoulderLine } from './frame.ts';

/** Tea dress: V neck, small buttons, puffed sleeves, tie at the waist. */
export const tea: DressDesign = {
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
        garment.cloth.accents[0] ?? buttonColour(garment.cloth.ground),
      );
    waistTie({ garment }, upper.waist * 0.4, waistAt + 0.2, 17, 0.75);
  },
};

/** Gathers below the shoulder seams. */
export const shoulderGathers = ({ garment, upper }: Dress): Painted[] =>
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
