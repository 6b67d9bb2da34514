import { type Painted, tone } from '../kit/index.ts';
import { turnUp } from '../lower/cuffs.ts';
import { slantPocket } from '../lower/front.ts';
import { legCrumple, legFolds, legShade } from '../lower/leg-folds.ts';
import { drawCord, gatheredBand } from '../lower/waistband.ts';
import { placket } from '../upper/closures.ts';
import { shirtCollar } from '../upper/collars.ts';
import { patchPocket } from '../upper/pockets.ts';
import { SHORT_SLEEVE, upperBlock } from './blocks.ts';
import { collarInside } from './collar-inside.ts';
import { bodiceShade } from './draw.ts';
import { shoulderLine } from './frame.ts';
import { openNeck } from './jumpsuit.ts';
import type { Suit, SuitDesign } from './suit.ts';

/** Playsuit: a short-sleeved shirt and shorts joined by a gathered waist. */
export const playsuit: SuitDesign = {
  upper: upperBlock({
    chest: 48,
    waist: 41,
    shoulder: 40.5,
    armhole: 23,
    neck: 16,
    neckDepth: 10,
    sleeve: { ...SHORT_SLEEVE, length: 18, elbow: 19, cuff: 19 },
  }),
  waistAt: 39,
  legs: { hip: 50, rise: 29, ease: 1 },
  line: shoulderLine(openNeck),
  beneath: collarInside,
  sleeve: { cuff: 'hem' },
  onBodice: (s) => [...bodiceShade(s), ...waistTucks(s)],
  onLeg: (s, leg) => [
    ...legShade(s.garment, leg, s.measures),
    ...legFolds(s.garment, leg, s.measures),
    ...legCrumple(s.garment, leg, s.measures, 3),
    slantPocket(s, leg, s.garment.cloth.ink),
  ],
  hem: (s, leg) => turnUp(s, leg, 3.6),
  over: (s) => {
    placket(s.garment, s.upper, { width: 2.8, buttons: 4, until: s.waistAt, radius: 0.65, colour: '#e9e0cf' });
    patchPocket(s.garment, 10.4, 19.5, { width: 9.6, height: 10.5 });
    patchPocket(s.garment, -10.4, 19.5, { width: 9.6, height: 10.5 });
    elasticWaist(s);
    shirtCollar(s.garment, s.upper, { points: 9.5, spread: 2.2, stand: 2.6 });
  },
};

const waistTucks = ({ garment, upper, waistAt }: Suit): Painted[] =>
  [-0.36, -0.2, 0.22, 0.38].map((share, i) => {
    const x = upper.waist * share;
    return garment.fold(
      [
        [x, waistAt],
        [x * 1.02, waistAt - 4],
        [x * 1.05, waistAt - 7 - (i % 2) * 3],
      ],
      1.1 * Math.sign(share),
      0.8,
      0.22,
    );
  });

/** A gathered waist with a cord, sewn between bodice and shorts. */
const elasticWaist = ({ garment, upper, waistAt }: Suit): void => {
  const top = waistAt - 1.8;
  gatheredBand({ garment, measures: { waist: upper.waist + 0.6, band: 3.4 } }, { ribs: 26, strength: 0.8, top });
  drawCord({ garment, measures: { waist: upper.waist, band: 3.4 } }, tone(garment.cloth.ground, 0.16, 0.5), {
    length: 14,
    top,
  });
};
