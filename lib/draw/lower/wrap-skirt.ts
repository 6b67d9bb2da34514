import { type Edge, edgeThrough } from '../kit/edges.ts';
import { lerp, type Painted } from '../kit/index.ts';
import type { Skirt, SkirtRecipe } from './skirt.ts';
import { skirtFlutes, skirtShade } from './skirt-folds.ts';
import { overlapEdge, skirtHemStitch } from './skirt-parts.ts';
import { waistTie } from './waist-tie.ts';
import { sewnBand } from './waistband.ts';

/** Wrap skirt: overlapping fronts, tied at the right of the waist. */
export const wrap: SkirtRecipe = {
  block: { waist: 34.5, hip: 46.5, band: 4 },
  onCloth: (s) => [
    ...skirtShade(s),
    ...skirtFlutes(s, 0.9),
    overlapEdge(s, wrapEdge(s), s.top, s.hemAt(0.5) + 1),
    ...wrapFolds(s),
    skirtHemStitch(s, 1.4),
  ],
  band: (s) => {
    sewnBand(s, { thread: s.garment.cloth.ink, opacity: 0.45, overlap: false });
    waistTie(s, s.measures.waist * 0.33, s.measures.band / 2 + 0.6, Math.min(24, s.measures.length * 0.4));
  },
};

/** The front edge of a wrap skirt: from the tie it falls, then swings out of the straight to the hem. */
const wrapEdge = ({ top, measures: { length, waist, hem } }: Skirt): Edge =>
  edgeThrough([
    [waist * 0.36, top],
    [waist * 0.34, lerp(top, length, 0.3)],
    [lerp(waist * 0.32, hem * 0.24, 0.6), lerp(top, length, 0.7)],
    [hem * 0.2, length + 2],
  ]);

/** Folds that run from the tie across the hip. */
const wrapFolds = ({ garment, at, top, measures: { waist, length } }: Skirt): Painted[] =>
  [0.62, 0.44, 0.26].map((share, i) => {
    const end = top + (i + 1) * Math.min(11, length * 0.15);
    return garment.fold(
      [
        [waist * 0.33, top + 0.5 + i * 0.6],
        [at(share + 0.16)(end * 0.7), lerp(top, end, 0.5)],
        [at(share)(end), end],
      ],
      -1.9,
      0.85 - i * 0.12,
      0.3,
    );
  });
