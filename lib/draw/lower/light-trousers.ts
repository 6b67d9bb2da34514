import { lerp } from '../kit/index.ts';
import { buttonColour } from './button-colour.ts';
import { hemSlit } from './cuffs.ts';
import { cordColour, waistGathers } from './easy-waist.ts';
import { fly, hemStitch, slantPocket } from './front.ts';
import { legCrumple, legDrape, legFolds, legShade, pressedCrease } from './leg-folds.ts';
import { seamPen } from './seam-pen.ts';
import type { TrouserRecipe } from './trousers.ts';
import { drawCord, gatheredBand, sewnBand } from './waistband.ts';

/** Cropped trousers: creased, slit at the ankle. */
export const cropped: TrouserRecipe = {
  block: { waist: 36, hip: 47, rise: 28, band: 4 },
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures, 0.8),
    pressedCrease(t.garment, leg, t.measures, t.measures.rise * 0.7),
    slantPocket(t, leg),
    hemSlit(t, leg, 5),
  ],
  front: (t) => fly(t, t.garment.cloth.ink),
  band: (t) => {
    sewnBand(t, { thread: t.garment.cloth.ink, overlap: false });
    const { band } = t.measures;
    t.garment.add(
      seamPen(
        t.garment,
        [
          [0.2, 1],
          [0.1, band + 1.2],
        ],
        0.34,
        0.9,
      ),
    );
    for (const x of [1.6, -1.6]) t.garment.button(x, band / 2 + 1.1, 0.7, buttonColour(t.garment.cloth.ground));
  },
};

/** Linen trousers: gathered waist with a cord, crumpled. */
export const linen: TrouserRecipe = {
  block: { waist: 35, hip: 50, rise: 30, band: 4.4 },
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures, 0.9),
    ...legDrape(t.garment, leg, t.measures, 0.8),
    ...legCrumple(t.garment, leg, t.measures, 9),
    waistGathers(t, leg),
    slantPocket(t, leg, t.garment.cloth.ink),
    hemStitch(t, leg, t.garment.cloth.ink, 3.4, 0.6),
  ],
  front: (t) => {
    const { band, rise } = t.measures;
    t.garment.add(
      seamPen(
        t.garment,
        [
          [0.1, band],
          [0.3, lerp(band, rise, 0.5)],
          [-0.6, rise],
        ],
        0.32,
        0.7,
        0.5,
      ),
    );
  },
  band: (t) => {
    gatheredBand(t, { ribs: 22, strength: 0.7 });
    drawCord(t, cordColour(t.garment.cloth.ground), { length: 13 });
  },
};
