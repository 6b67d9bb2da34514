import { seamPen } from './seam-pen.ts';
import type { SkirtRecipe } from './skirt.ts';
import { biasDrape, hipFolds, skirtFlutes, skirtShade } from './skirt-folds.ts';
import { boxPleat, longSeam, skirtHemStitch } from './skirt-parts.ts';
import { gatheredBand, sewnBand } from './waistband.ts';

/** A-line skirt: panel seams and a box pleat at the front. */
export const aLine: SkirtRecipe = {
  block: { waist: 35, hip: 47, band: 3.8 },
  onCloth: (s) => [
    ...skirtShade(s),
    ...skirtFlutes(s),
    ...hipFolds(s, 0.4),
    longSeam(s, 0.27),
    longSeam(s, 0.73),
    boxPleat(s, 0.5, s.top + Math.min(16, s.measures.length * 0.3), 4.2),
    seamPen(
      s.garment,
      [
        [0, s.top],
        [0, s.top + Math.min(16, s.measures.length * 0.3)],
      ],
      0.32,
      0.8,
      0.5,
    ),
    skirtHemStitch(s, 2.6),
  ],
  band: (s) => sewnBand(s, { thread: s.garment.cloth.ink, opacity: 0.5, overlap: false }),
};

/** Midi skirt: cut on the bias, an elastic waist. */
export const midi: SkirtRecipe = {
  block: { waist: 33.5, hip: 45.5, band: 2.2 },
  roundness: 0.45,
  onCloth: (s) => [...biasDrape(s), ...skirtFlutes(s, 0.35), skirtHemStitch(s, 1, s.garment.cloth.ink, 0.4)],
  band: (s) => gatheredBand(s, { ribs: 26, strength: 0.6 }),
};
