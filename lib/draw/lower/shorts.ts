import { buttonColour } from './button-colour.ts';
import { turnUp } from './cuffs.ts';
import { fly, hemStitch, slantPocket, waistPleats } from './front.ts';
import { legFolds, legShade, pressedCrease } from './leg-folds.ts';
import { seamPen } from './seam-pen.ts';
import type { TrouserRecipe } from './trousers.ts';
import { beltLoops, sewnBand } from './waistband.ts';

/** Shorts: as chinos, cut off above the knee. */
export const shorts: TrouserRecipe = {
  block: { waist: 38, hip: 49, rise: 26, band: 3.8 },
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures),
    slantPocket(t, leg),
    hemStitch(t, leg, t.garment.cloth.ink, 2.8, 0.7),
  ],
  front: (t) => fly(t, t.garment.cloth.ink),
  band: (t) => {
    sewnBand(t, { thread: t.garment.cloth.ink, opacity: 0.5 });
    beltLoops(t, [-0.88, -0.48, 0.48, 0.88]);
    t.garment.button(0.8, t.measures.band / 2 + 1.1, 0.72, buttonColour(t.garment.cloth.ground));
  },
};

/** Tailored shorts: pleats, crease, turn-ups. */
export const tailoredShorts: TrouserRecipe = {
  block: { waist: 35.5, hip: 48.5, rise: 29, band: 4.6 },
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legFolds(t.garment, leg, t.measures, 0.7),
    waistPleats(t, leg, 2),
    pressedCrease(t.garment, leg, t.measures),
    slantPocket(t, leg),
  ],
  hem: (t, leg) => turnUp(t, leg, 4.2),
  front: (t) => fly(t, t.garment.cloth.bright),
  band: (t) => {
    sewnBand(t, { overlap: false });
    beltLoops(t, [-0.86, -0.5, 0.5, 0.86]);
    t.garment.add(
      seamPen(
        t.garment,
        [
          [-4.2, 1],
          [-4.4, t.measures.band + 1.2],
        ],
        0.32,
        0.9,
      ),
    );
    t.garment.button(-2.8, t.measures.band / 2 + 1.1, 0.7, buttonColour(t.garment.cloth.ground));
  },
};
