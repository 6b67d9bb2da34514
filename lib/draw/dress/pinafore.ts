import { corner, type Painted, stitch, tone } from '../kit/index.ts';
import { skirtFlutes, skirtShade } from '../lower/skirt-folds.ts';
import { longSeam, skirtHemStitch } from '../lower/skirt-parts.ts';
import { patchPocket } from '../upper/pockets.ts';
import { block, upperBlock } from './blocks.ts';
import { bodiceShade, type DressDesign, waistSeam } from './draw.ts';
import type { Dress } from './frame.ts';
import { backInside } from './strap-line.ts';
import { strap } from './straps.ts';

const BIB = 17;

/** Pinafore: a bib on buttoned straps, patch pockets. */
export const pinafore: DressDesign = {
  block: block(
    upperBlock({ chest: 41, waist: 38, shoulder: 22, armhole: 27.5, neck: 22, neckDepth: BIB, sleeve: undefined }),
    48,
    40,
    58,
  ),
  line: ({ chest, armhole }) => ({
    neck: [[0, BIB + 0.5]],
    right: [corner(10.6, BIB), [11.4, BIB + 5], [15, armhole - 1.6], corner(chest / 2, armhole + 0.6)],
  }),
  beneath: (d) => {
    for (const side of [-1, 1])
      strap(
        d.garment,
        [
          [side * 8.6, BIB + 9],
          [side * 9.6, BIB * 0.5],
          [side * 8.4, 0.4],
        ],
        3.2,
        true,
      );
    backInside(d, BIB + 7.6, BIB + 9);
  },
  waistSeam: true,
  onBodice: (d) => [...bodiceShade(d, 0.7), ...bibStitch(d)],
  onSkirt: (d) => [
    ...skirtShade(d.skirt),
    ...skirtFlutes(d.skirt, 0.9),
    longSeam(d.skirt, 0.5),
    skirtHemStitch(d.skirt, 2.6),
  ],
  over: (d) => {
    const { garment, waistAt } = d;
    garment.add(waistSeam(d));
    if (!garment.small)
      garment.add(
        stitch(
          [
            [-19, waistAt + 0.8],
            [0, waistAt + 1.9],
            [19, waistAt + 0.8],
          ],
          garment.cloth.ink,
          0.6,
        ),
      );
    patchPocket(garment, 0, BIB + 7.4, { width: 12.5, height: 10 });
    for (const side of [-1, 1] as const) {
      patchPocket(garment, side * 13.6, waistAt + 9, { width: 12, height: 13.5, lean: side * -4 });
      strap(
        garment,
        [
          [side * 8.4, BIB + 4.4],
          [side * 9.4, BIB * 0.5],
          [side * 8.4, 0.2],
        ],
        3.2,
      );
      garment.button(side * 8.4, BIB + 2.6, 1.05, tone('#b98c4a', -0.02));
    }
  },
};

const bibStitch = ({ garment, upper }: Dress): Painted[] =>
  garment.small
    ? []
    : [
        stitch(
          [
            [-10.2, BIB + 0.9],
            [10.2, BIB + 0.9],
          ],
          garment.cloth.ink,
          0.6,
        ),
        ...[-1, 1].map((side) =>
          stitch(
            [
              [side * 10, BIB],
              [side * 10.8, BIB + 5],
              [side * 14.6, upper.armhole - 1],
              [side * (upper.chest / 2), upper.armhole + 1.5],
            ],
            garment.cloth.ink,
            0.6,
          ),
        ),
      ];
