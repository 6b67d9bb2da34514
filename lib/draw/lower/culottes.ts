import type { Node, Painted } from '../kit/index.ts';
import { hemStitch, slantPocket } from './front.ts';
import type { Leg } from './leg.ts';
import { legDrape, legShade } from './leg-folds.ts';
import { seamPen } from './seam-pen.ts';
import type { TrouserRecipe, Trousers } from './trousers.ts';
import { sewnBand } from './waistband.ts';

/** Culottes: wide legs with a deep pleat each, so that they fall like a skirt. */
export const culottes: TrouserRecipe = {
  block: { waist: 35, hip: 49, rise: 32, band: 4.6 },
  roundness: 0.6,
  onLeg: (t, leg) => [
    ...legShade(t.garment, leg, t.measures),
    ...legDrape(t.garment, leg, t.measures, 1.1),
    ...inverted(t, leg),
    slantPocket(t, leg),
    hemStitch(t, leg, t.garment.cloth.ink, 2.6, 0.5),
  ],
  front: (t) =>
    t.garment.add(
      seamPen(
        t.garment,
        [
          [0.1, t.measures.band],
          [0.2, 18],
          [-0.5, t.measures.rise],
        ],
        0.3,
        0.7,
        0.5,
      ),
    ),
  band: (t) => sewnBand(t, { overlap: false }),
};

/** A deep pleat that opens from the waistband down to the hem. */
const inverted = ({ garment, measures: { band, length } }: Trousers, leg: Leg): Painted[] => {
  const run = leg.down(0.46, band, length + 1, 4);
  return [
    garment.plane(
      run.map(([x, y]): Node => [x + 0.9, y]),
      1.6,
      garment.cloth.ink,
      0.42,
      0.75,
    ),
    seamPen(garment, run, 0.42, 0.8, 0.6),
    garment.plane(
      run.map(([x, y]): Node => [x - 1.4, y]),
      1.1,
      garment.cloth.bright,
      0.5,
      0.6,
    ),
  ];
};
