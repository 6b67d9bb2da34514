import { corner, type Node } from '../kit/index.ts';
import { buttonColour } from '../lower/button-colour.ts';
import { hemStitch, slantPocket } from '../lower/front.ts';
import { legDrape, legFolds, legShade } from '../lower/leg-folds.ts';
import { waistTie } from '../lower/waist-tie.ts';
import { placket } from '../upper/closures.ts';
import { shirtCollar } from '../upper/collars.ts';
import type { UpperShape } from '../upper/shape.ts';
import { SHORT_SLEEVE, upperBlock } from './blocks.ts';
import { collarInside } from './collar-inside.ts';
import { bodiceShade } from './draw.ts';
import { shoulderLine } from './frame.ts';
import type { Suit, SuitDesign } from './suit.ts';

/** A collar worn open to a point. */
export const openNeck = ({ neck, neckDepth }: UpperShape): Node[] => [
  [-neck * 0.3, neckDepth * 0.5],
  corner(-0.6, neckDepth),
  corner(0.6, neckDepth),
  [neck * 0.3, neckDepth * 0.5],
];

/** A belt of the cloth itself round the waist, tied at the front. */
const tiedBelt = ({ garment, upper, waistAt }: Suit, x: number): void => {
  const half = upper.waist / 2 + 0.5;
  garment.panel(
    [
      corner(-half, waistAt - 1.8),
      [0, waistAt - 0.8],
      corner(half, waistAt - 1.8),
      corner(half, waistAt + 1.8),
      [0, waistAt + 2.8],
      corner(-half, waistAt + 1.8),
    ],
    {
      covers: false,
      edge: 0.4,
      cast: 0.5,
      wobble: 0.06,
      turn: 90,
    },
  );
  waistTie({ garment }, x, waistAt + 0.7, 24);
};

/** Jumpsuit: open collar, turned sleeves, tied belt, wide legs. */
export const jumpsuit: SuitDesign = {
  upper: upperBlock({
    chest: 46,
    waist: 38,
    shoulder: 39.5,
    armhole: 22.5,
    neck: 16,
    neckDepth: 17,
    sleeve: { ...SHORT_SLEEVE, length: 21, elbow: 18, cuff: 17.5 },
  }),
  waistAt: 40,
  legs: { hip: 48.5, rise: 29, ease: 0.5 },
  line: shoulderLine(openNeck),
  beneath: collarInside,
  sleeve: { cuff: 'turned', cuffHeight: 3.4 },
  onBodice: (s) => bodiceShade(s, 0.9),
  onLeg: (s, leg) => [
    ...legShade(s.garment, leg, s.measures),
    ...legFolds(s.garment, leg, s.measures, 0.7),
    ...legDrape(s.garment, leg, s.measures),
    slantPocket(s, leg),
    hemStitch(s, leg, s.garment.cloth.ink, 2.6, 0.5),
  ],
  over: (s) => {
    placket(s.garment, s.upper, {
      width: 2.6,
      buttons: 3,
      until: s.waistAt + 0.6,
      radius: 0.65,
      colour: buttonColour(s.garment.cloth.ground),
    });
    tiedBelt(s, 3.2);
    shirtCollar(s.garment, s.upper, { points: 11, spread: 2.4, stand: 3 });
  },
};
