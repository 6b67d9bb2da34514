import { type Node, type Painted, pen, stitch } from '../kit/index.ts';
import { skirtFlutes, skirtShade } from '../lower/skirt-folds.ts';
import { skirtHemStitch } from '../lower/skirt-parts.ts';
import { finishNeck, frontNeck, neckInside } from '../upper/necklines.ts';
import { patchPocket } from '../upper/pockets.ts';
import { block, SHORT_SLEEVE, upperBlock } from './blocks.ts';
import { bodiceShade, type DressDesign } from './draw.ts';
import { type Dress, shoulderLine } from './frame.ts';

/** T-shirt dress: ribbed neck, breast pocket, slits at the sides. */
export const tShirtDress: DressDesign = {
  block: block(
    upperBlock({
      chest: 48,
      waist: 47,
      shoulder: 42,
      armhole: 23,
      neck: 17.5,
      neckDepth: 8.5,
      sleeve: { ...SHORT_SLEEVE, length: 21, elbow: 18.5, cuff: 17.5 },
    }),
    49,
  ),
  line: shoulderLine((upper) => frontNeck(upper, 'crew')),
  beneath: (d) => neckInside(d.garment, d.upper, 'crew', 1),
  sleeve: { cuff: 'hem' },
  waistSeam: false,
  backHem: false,
  onBodice: (d) => bodiceShade({ ...d, waistAt: 52 }),
  onSkirt: (d) => [
    ...skirtShade(d.skirt),
    ...skirtFlutes(d.skirt),
    ...sideSlits(d),
    skirtHemStitch(d.skirt, 1.9),
    skirtHemStitch(d.skirt, 2.4),
  ],
  over: (d) => {
    patchPocket(d.garment, 9.8, 18.6, { width: 9, height: 10 });
    finishNeck(d.garment, d.upper, 'crew', 'rib', 2);
  },
};

const sideSlits = ({ garment, skirt: { left, right, measures } }: Dress): Painted[] =>
  [left, right].flatMap((edge, i) => {
    const inwards = i === 0 ? 1 : -1;
    const from = measures.length - 11;
    const run: Node[] = [
      [edge(from) + inwards * 0.4, from],
      [edge(measures.length) + inwards * 1.3, measures.length],
    ];
    return [
      pen(run, 0.55, garment.cloth.ink, 0.8, 0.7),
      garment.small
        ? pen(run, 0.1, garment.cloth.ink)
        : stitch(
            run.map(([x, y]): Node => [x + inwards * 0.9, y]),
            garment.cloth.ink,
            0.5,
          ),
    ];
  });
