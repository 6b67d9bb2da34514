import type { Node, Painted } from '../kit/index.ts';
import { buttonColour } from '../lower/button-colour.ts';
import { gatherFolds, skirtFlutes, skirtShade } from '../lower/skirt-folds.ts';
import { skirtHemStitch } from '../lower/skirt-parts.ts';
import { waistTie } from '../lower/waist-tie.ts';
import { placket } from '../upper/closures.ts';
import { shirtCollar } from '../upper/collars.ts';
import { patchPocket } from '../upper/pockets.ts';
import { block, LONG_SLEEVE, upperBlock } from './blocks.ts';
import { collarInside } from './collar-inside.ts';
import { bodiceShade, type DressDesign, selfBelt } from './draw.ts';
import { type Dress, shoulderLine } from './frame.ts';

const collared = (upper: { readonly neck: number; readonly neckDepth: number }): Node[] => [
  [-upper.neck * 0.3, upper.neckDepth * 0.42],
  [-1, upper.neckDepth, 'corner'],
  [1, upper.neckDepth, 'corner'],
  [upper.neck * 0.3, upper.neckDepth * 0.42],
];

/** Shirt dress: collar, buttons to the hem, cuffs, tied belt. */
export const shirtDress: DressDesign = {
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
        colour: buttonColour(garment.cloth.ground),
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
