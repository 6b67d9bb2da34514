import { group, type Node, type Painted, stitch } from '../kit/index.ts';
import { seamPen } from './seam-pen.ts';
import type { Skirt, SkirtRecipe } from './skirt.ts';
import { gatherFolds, skirtFlutes, skirtShade } from './skirt-folds.ts';
import { gatheredBand } from './waistband.ts';

/** Maxi skirt: three tiers, each gathered into the one above. */
export const maxi: SkirtRecipe = {
  block: { waist: 34, hip: 48, band: 3.6 },
  onCloth: (s) => {
    const seams = tierSeams(s);
    const tiers = [s.top, ...seams];
    return [
      ...skirtShade(s),
      ...tiers.flatMap((from, i) =>
        gatherFolds(s, from, ((seams[i] ?? s.measures.length) - from) * 0.75, 7 + i * 2, 1.1),
      ),
      ...seams.map((y) => tierSeam(s, y)),
      ...skirtFlutes(s, 0.7),
    ];
  },
  band: (s) => gatheredBand(s, { ribs: 26, strength: 0.7 }),
};

/** Heights where the tiers of a skirt are sewn together: each deeper than the one above. */
const tierSeams = ({ top, measures: { length } }: Skirt): number[] => {
  const fall = length - top;
  return fall < 40 ? [top + fall * 0.5] : [top + fall * 0.27, top + fall * 0.6];
};

const tierSeam = ({ garment, at }: Skirt, y: number): Painted => {
  const nodes = [0, 0.25, 0.5, 0.75, 1].map((share): Node => [at(share)(y), y + Math.sin(Math.PI * share) * 1.6]);
  return group([
    garment.plane(
      nodes.map(([x, v]): Node => [x, v + 0.8]),
      1.1,
      garment.cloth.ink,
      0.5,
    ),
    seamPen(garment, nodes, 0.4, 0.85, 0.5),
    garment.small
      ? group([])
      : stitch(
          nodes.map(([x, v]): Node => [x, v - 0.6]),
          garment.cloth.ink,
          0.5,
        ),
  ]);
};
