import { corner, group, type Node, type Painted, shape, stitch, tone } from '../kit/index.ts';
import { patchPocket } from '../upper/pockets.ts';
import { buttonColour } from './button-colour.ts';
import { COPPER, denimThread } from './denim.ts';
import { seamPen } from './seam-pen.ts';
import type { Skirt, SkirtRecipe } from './skirt.ts';
import { hipFolds, skirtFlutes, skirtShade } from './skirt-folds.ts';
import { skirtHemStitch } from './skirt-parts.ts';
import { beltLoops, sewnBand, shankButton } from './waistband.ts';

/** Mini skirt: patch pockets, two buttons. */
export const mini: SkirtRecipe = {
  block: { waist: 35, hip: 46, band: 4 },
  onCloth: (s) => [...skirtShade(s), ...hipFolds(s, 0.6), ...skirtFlutes(s, 0.9), skirtHemStitch(s, 2.4)],
  over: (s) => {
    const y = s.top + Math.min(7, s.measures.length * 0.16);
    const height = Math.min(13, s.measures.length * 0.32);
    for (const side of [-1, 1] as const)
      patchPocket(s.garment, side * 11.2, y, { width: 11.5, height, lean: side * -2 });
  },
  band: (s) => {
    sewnBand(s, { thread: s.garment.cloth.ink, opacity: 0.5, overlap: false });
    for (const side of [-1, 1] as const)
      s.garment.button(side * 6.5, s.measures.band / 2 + 1, 0.8, buttonColour(s.garment.cloth.ground));
  },
};

/** Denim skirt: buttoned front, hip pockets, faded. */
export const denim: SkirtRecipe = {
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
