import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind } from '../drawing.ts';
import { type Edge, edgeThrough } from '../kit/edges.ts';
import { corner, group, lerp, line, type Node, type Painted, shape, stitch, tone } from '../kit/index.ts';
import { COPPER, denimThread } from './denim.ts';
import { pleatedSkirt } from './pleats.ts';
import { seamPen } from './seam-pen.ts';
import { drawSkirt, type Skirt, type SkirtRecipe } from './skirt.ts';
import { biasDrape, gatherFolds, hipFolds, skirtFlutes, skirtShade } from './skirt-folds.ts';
import {
  boxPleat,
  hiddenZip,
  longSeam,
  overlapEdge,
  patchPocket,
  skirtHemStitch,
  waistDarts,
  waistTie,
} from './skirt-parts.ts';
import { beltLoops, gatheredBand, sewnBand, shankButton } from './waistband.ts';

const dull = (hex: string): string => tone(hex, -0.12, 0.6);

const mini: SkirtRecipe = {
  block: { waist: 35, hip: 46, band: 4 },
  onCloth: (s) => [...skirtShade(s), ...hipFolds(s, 0.6), ...skirtFlutes(s, 0.9), skirtHemStitch(s, 2.4)],
  over: (s) => {
    const y = s.top + Math.min(7, s.measures.length * 0.16);
    const height = Math.min(13, s.measures.length * 0.32);
    for (const side of [-1, 1] as const) patchPocket(s, [side * 11.2, y], { width: 11.5, height, turn: side * 0.5 });
  },
  band: (s) => {
    sewnBand(s, { thread: s.garment.cloth.ink, opacity: 0.5, overlap: false });
    for (const side of [-1, 1] as const)
      s.garment.button(side * 6.5, s.measures.band / 2 + 1, 0.8, dull(s.garment.cloth.ground));
  },
};

const denim: SkirtRecipe = {
  block: { waist: 36.5, hip: 47.5, band: 4 },
  backHem: false,
  onCloth: (s) => {
    const { garment, down, top, measures } = s;
    const pale = tone(garment.cloth.ground, 0.14, 0.75);
    const thread = denimThread(garment);
    return [
      garment.plane(down(0.27, top + 12, measures.length - 4), 6, pale, 0.5),
      garment.plane(down(0.72, top + 14, measures.length - 6), 5.4, pale, 0.42),
      ...skirtShade(s),
      ...hipFolds(s, 0.8),
      ...skirtFlutes(s, 0.8),
      skirtHemStitch(s, 1.6, thread, 0.85),
      skirtHemStitch(s, 2.2, thread, 0.7),
      ...([1, -1] as const).map((side) => hipPocket(s, side, thread)),
    ];
  },
  over: (s) => buttonFront(s, denimThread(s.garment)),
  band: (s) => {
    const thread = denimThread(s.garment);
    sewnBand(s, { thread, opacity: 0.85, overlap: false });
    beltLoops(s, [-0.86, -0.4, 0.4, 0.86], { width: 1.3, thread });
    shankButton(s, 0, s.measures.band / 2 + 1.1, COPPER);
  },
};

/** A rounded pocket mouth in the hip with its facing. */
const hipPocket = (
  { garment, left, right, top, measures: { waist } }: Skirt,
  side: 1 | -1,
  thread: string,
): Painted => {
  const half = waist / 2;
  const low = top + 9;
  const outer = side === 1 ? right : left;
  const mouth = (grow: number): Node[] => [
    [side * (half - 9 - grow), top - 0.2],
    [side * (half - 7.6 - grow), top + 5 + grow * 0.6],
    [side * (half - 3), top + 8 + grow],
    [outer(low) + side * 0.6, low + grow * 0.7],
  ];
  return group([
    shape([...mouth(0), corner(outer(top) + side, top - 0.2)], garment.cloth.deep, 0.34),
    seamPen(garment, mouth(0), 0.36, 0.85, 0.5),
    ...(garment.small ? [] : [stitch(mouth(0.7), thread, 0.9), stitch(mouth(1.25), thread, 0.7)]),
  ]);
};

/** A placket down the front with metal buttons; the last ones are left open. */
const buttonFront = (s: Skirt, thread: string): void => {
  const { garment, top, hemAt } = s;
  const low = hemAt(0.5) + 0.2;
  garment.panel([corner(-1.9, top), corner(1.9, top), corner(2.1, low + 0.1), corner(-2, low)], {
    covers: false,
    edge: 0.3,
    cast: 0.4,
    wobble: 0.06,
    shift: [0.4, 0],
    inner: garment.small
      ? []
      : [-1.35, 1.35].map((x) =>
          stitch(
            [
              [x, top],
              [x * 1.05, low],
            ],
            thread,
            0.85,
          ),
        ),
  });
  const pitch = 9;
  for (let y = top + 6.5; y < low - 5; y += pitch) shankButton(s, garment.jitter(0.08), y, COPPER);
};

const pencil: SkirtRecipe = {
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
  const { ink, deep } = garment.cloth;
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
    shape([corner(0.1, from), corner(3.1, from + 0.4), corner(3.6, low), corner(-1.1, low)], deep, 0.85),
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

const aLine: SkirtRecipe = {
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

const midi: SkirtRecipe = {
  block: { waist: 33.5, hip: 45.5, band: 2.2 },
  roundness: 0.45,
  onCloth: (s) => [...biasDrape(s), ...skirtFlutes(s, 0.5), skirtHemStitch(s, 1, s.garment.cloth.ink, 0.4)],
  band: (s) => gatheredBand(s, { ribs: 26, strength: 0.6 }),
};

const wrap: SkirtRecipe = {
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

const maxi: SkirtRecipe = {
  block: { waist: 34, hip: 48, band: 3.6 },
  onCloth: (s) => {
    const seams = tierSeams(s);
    const tiers = [s.top, ...seams];
    return [
      ...skirtShade(s),
      ...tiers.flatMap((from, i) =>
        gatherFolds(s, from, ((seams[i] ?? s.measures.length) - from) * 0.75, 6 + i * 2, 0.85),
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

const kind =
  (recipe: SkirtRecipe): DrawKind =>
  (piece, detail) => {
    if (piece.cut === 'pleated') return pleatedSkirt(piece, detail);
    return drawSkirt(piece, detail, piece.cut === 'wrap' ? wrap : recipe);
  };

/** Skirts. A cut of `pleated` or `wrap` makes any of them that. */
export const SKIRTS = {
  'mini skirt': kind(mini),
  'denim skirt': kind(denim),
  'pencil skirt': kind(pencil),
  'a-line skirt': kind(aLine),
  'midi skirt': kind(midi),
  'pleated skirt': pleatedSkirt,
  'wrap skirt': kind(wrap),
  'maxi skirt': kind(maxi),
} satisfies Partial<Record<KindId, DrawKind>>;
