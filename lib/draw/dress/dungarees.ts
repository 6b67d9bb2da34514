import { corner, type Garment, type Node, pen, shape, stitch, tone } from '../kit/index.ts';
import { ellipsePath, rectanglePath } from '../kit/paths.ts';
import { turnUp } from '../lower/cuffs.ts';
import { denimFade, denimThread } from '../lower/denim.ts';
import { scoopPocket, seamStitching } from '../lower/front.ts';
import { legFolds, legShade } from '../lower/leg-folds.ts';
import { patchPocket } from '../upper/pockets.ts';
import { upperBlock } from './blocks.ts';
import { bodiceShade } from './draw.ts';
import { strap } from './straps.ts';
import type { SuitDesign } from './suit.ts';

const BIB = 16;

const METAL = '#b9a27a';

/** Dungarees: a bib with a pocket, buckled straps, jeans below. */
export const dungarees: SuitDesign = {
  upper: upperBlock({ chest: 42, waist: 41, shoulder: 22, armhole: 34, neck: 22, neckDepth: BIB, sleeve: undefined }),
  waistAt: 41,
  legs: { hip: 50, rise: 30, ease: 1.5 },
  line: ({ chest, armhole }) => ({
    neck: [[0, BIB + 0.6]],
    right: [corner(11.6, BIB), [12.3, BIB + 7], [15.4, armhole - 3], corner(chest / 2, armhole)],
  }),
  beneath: (s) => {
    const half = s.upper.chest / 2 - 0.8;
    for (const side of [-1, 1])
      strap(
        s.garment,
        [
          [side * 5, 30],
          [side * 9.4, BIB * 0.6],
          [side * 8.6, 0.4],
        ],
        3.4,
        true,
      );
    s.garment.inside(
      [
        corner(-half, s.upper.armhole),
        [-8, 29],
        [0, 28.4],
        [8, 29],
        corner(half, s.upper.armhole),
        corner(0, s.waistAt),
      ],
      { fill: s.garment.cloth.shade },
    );
  },
  onBodice: (s) => {
    const thread = denimThread(s.garment);
    const { chest, armhole } = s.upper;
    const edge: Node[] = [
      [11.2, BIB],
      [11.8, BIB + 7],
      [14.9, armhole - 2.6],
      [chest / 2, armhole + 0.9],
    ];
    return [
      ...bodiceShade(s, 0.6),
      ...(s.garment.small
        ? []
        : [
            stitch(
              [
                [-11, BIB + 0.9],
                [11, BIB + 0.9],
              ],
              thread,
              0.85,
            ),
            ...[1, -1].map((side) =>
              stitch(
                edge.map(([x, y]): Node => [side * x, y]),
                thread,
                0.85,
              ),
            ),
          ]),
    ];
  },
  onLeg: (s, leg) => {
    const thread = denimThread(s.garment);
    return [
      denimFade(s.garment, leg, s.measures),
      ...legShade(s.garment, leg, s.measures),
      ...legFolds(s.garment, leg, s.measures),
      seamStitching(s, leg, thread),
      scoopPocket(s, leg, thread, METAL),
    ];
  },
  hem: (s, leg) => turnUp(s, leg, 5),
  over: (s) => {
    const { garment, waistAt, upper } = s;
    const thread = denimThread(garment);
    patchPocket(garment, 0, BIB + 4.6, { width: 14, height: 12.5, pointed: true });
    if (!garment.small) {
      garment.add(
        stitch(
          [
            [0, BIB + 4.8],
            [0, BIB + 16.6],
          ],
          thread,
          0.7,
        ),
      );
      for (const dy of [0.9, 2.6])
        garment.add(
          stitch(
            [
              [-upper.waist / 2, waistAt - dy],
              [0, waistAt + 1 - dy],
              [upper.waist / 2, waistAt - dy],
            ],
            thread,
            0.8,
          ),
        );
    }
    garment.add(
      pen(
        [
          [-upper.waist / 2, waistAt + 0.3],
          [0, waistAt + 1.4],
          [upper.waist / 2, waistAt + 0.3],
        ],
        0.36,
        garment.cloth.ink,
        0.85,
        0.5,
      ),
    );
    for (const side of [-1, 1] as const) {
      strap(
        garment,
        [
          [side * 9, BIB + 1.4],
          [side * 10, BIB * 0.5],
          [side * 8.8, 0.2],
        ],
        3.4,
      );
      buckle(garment, side * 9, BIB + 2.6);
      for (const y of [waistAt - 4, waistAt + 2.4]) metalButton(garment, side * (upper.waist / 2 - 1.5), y, 0.7);
    }
  },
};

/** The sliding clip of a dungaree strap, hooked over its button. */
const buckle = (garment: Garment, x: number, y: number): void => {
  const frame = rectanglePath(x - 2, y - 3.4, 4, 4.2);
  garment.add(
    { path: rectanglePath(x - 1.8, y - 3.1, 4, 4.2), stroke: garment.cloth.ink, width: 0.7, opacity: 0.5 },
    { path: frame, stroke: tone(METAL, -0.25), width: 0.75 },
    { path: frame, stroke: METAL, width: 0.5 },
  );
  metalButton(garment, x, y, 0.95);
};

const metalButton = (garment: Garment, x: number, y: number, radius: number): void => {
  garment.add(
    shape(ellipsePath([x + 0.18, y + 0.24], radius), garment.cloth.ink, 0.5),
    shape(ellipsePath([x, y], radius), tone(METAL, -0.12)),
    shape(ellipsePath([x - 0.08, y - 0.1], radius * 0.72), METAL),
  );
};
