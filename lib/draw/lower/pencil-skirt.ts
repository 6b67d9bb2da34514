import { corner, group, lerp, line, type Painted, shape, stitch } from '../kit/index.ts';
import { seamPen } from './seam-pen.ts';
import type { Skirt, SkirtRecipe } from './skirt.ts';
import { hipFolds, skirtShade } from './skirt-folds.ts';
import { hiddenZip, waistDarts } from './skirt-parts.ts';
import { sewnBand } from './waistband.ts';

/** Pencil skirt, seen from the back: darts, zip, vent. */
export const pencil: SkirtRecipe = {
  block: { waist: 34, hip: 46, band: 3 },
  backHem: false,
  roundness: 1,
  onCloth: (s) => [...skirtShade(s), ...hipFolds(s, 0.7), waistDarts(s, [0.3, 0.7], 11), ...backVent(s)],
  band: (s) => {
    sewnBand(s, { thread: s.garment.cloth.bright, opacity: 0.25, overlap: false });
    s.garment.add(hiddenZip(s, 0.1, 0.9, 19));
  },
};

/** Seen from the back, as such a skirt is laid out: centre seam, and the vent that opens over its facing. */
const backVent = ({ garment, hemAt, top, measures: { length } }: Skirt): Painted[] => {
  const from = length - Math.max(10, Math.min(20, length * 0.3));
  const low = hemAt(0.5) + 1;
  const { ink, lining } = garment.cloth;
  return [
    seamPen(
      garment,
      [
        [0.1, top],
        [0.1, from],
      ],
      0.32,
      0.75,
      0.5,
    ),
    shape([corner(0.1, from), corner(3.1, from + 0.4), corner(3.6, low), corner(-1.1, low)], lining, 0.9),
    garment.plane(
      [
        [0.6, from],
        [0.8, lerp(from, low, 0.5)],
        [0.4, low],
      ],
      1.5,
      ink,
      0.5,
      0.6,
    ),
    seamPen(
      garment,
      [
        [0.1, from - 0.4],
        [-0.3, lerp(from, low, 0.5)],
        [-1.1, low],
      ],
      0.5,
      0.95,
      0.6,
    ),
    line([corner(0.1, from), corner(3.1, from + 0.4), corner(3.6, low)], 0.22, ink, 0.7),
    garment.small
      ? group([])
      : stitch(
          [
            [-0.7, from],
            [-1.1, lerp(from, low, 0.5)],
            [-1.9, low],
          ],
          garment.cloth.bright,
          0.3,
        ),
  ];
};
