import type { KindId } from '../../vocabulary/index.ts';
import type { DrawKind } from '../drawing.ts';
import { corner, type Garment, type Node, type Painted, pen, shape, stitch, tone } from '../kit/index.ts';
import { ellipsePath, rectanglePath } from '../kit/paths.ts';
import { turnUp } from '../lower/cuffs.ts';
import { denimFade, denimThread } from '../lower/denim.ts';
import { hemStitch, scoopPocket, seamStitching, slantPocket } from '../lower/front.ts';
import { legCrumple, legDrape, legFolds, legShade } from '../lower/leg-folds.ts';
import { waistTie } from '../lower/skirt-parts.ts';
import { drawCord, gatheredBand } from '../lower/waistband.ts';
import { placket } from '../upper/closures.ts';
import { shirtCollar } from '../upper/collars.ts';
import { patchPocket } from '../upper/pockets.ts';
import type { UpperShape } from '../upper/shape.ts';
import { SHORT_SLEEVE, upperBlock } from './blocks.ts';
import { bodiceShade } from './draw.ts';
import { shoulderLine } from './frame.ts';
import { strap } from './straps.ts';
import { drawSuit, type Suit, type SuitDesign } from './suit.ts';

const collarInside = ({ garment, upper }: Suit): void => {
  const half = upper.neck / 2;
  garment.inside(
    [
      corner(-half - 0.5, 0.2),
      [-half * 0.5, -2.6],
      [0, -3],
      [half * 0.5, -2.6],
      corner(half + 0.5, 0.2),
      corner(0, upper.neckDepth + 2),
    ],
    {
      label: [0, -0.8],
    },
  );
};
const openNeck = ({ neck, neckDepth }: UpperShape): Node[] => [
  [-neck * 0.3, neckDepth * 0.5],
  corner(-0.6, neckDepth),
  corner(0.6, neckDepth),
  [neck * 0.3, neckDepth * 0.5],
];
const dull = (hex: string): string => tone(hex, -0.2, 0.6);

/** A belt of the cloth itself round the waist, tied at the front. */
const tiedBelt = ({ garment, upper, waistAt }: Suit, x: number): void => {
  const half = upper.waist / 2 + 0.5;
  garment.panel(
    [
      corner(-half, waistAt - 1.8),
      [0, waistAt - 0.8],
      corner(half, waistAt - 1.8),
      corner(half, waistAt + 1.8),
      [0, waistAt + 2.8],
      corner(-half, waistAt + 1.8),
    ],
    {
      covers: false,
      edge: 0.4,
      cast: 0.5,
      wobble: 0.06,
      turn: 90,
    },
  );
  waistTie({ garment }, x, waistAt + 0.7, 24);
};

const jumpsuit: SuitDesign = {
  upper: upperBlock({
    chest: 46,
    waist: 38,
    shoulder: 39.5,
    armhole: 22.5,
    neck: 16,
    neckDepth: 17,
    sleeve: { ...SHORT_SLEEVE, length: 21, elbow: 18, cuff: 17.5 },
  }),
  waistAt: 40,
  legs: { hip: 48.5, rise: 29, ease: 0.5 },
  line: shoulderLine(openNeck),
  beneath: collarInside,
  sleeve: { cuff: 'turned', cuffHeight: 3.4 },
  onBodice: (s) => bodiceShade(s, 0.9),
  onLeg: (s, leg) => [
    ...legShade(s.garment, leg, s.measures),
    ...legFolds(s.garment, leg, s.measures, 0.7),
    ...legDrape(s.garment, leg, s.measures),
    slantPocket(s, leg),
    hemStitch(s, leg, s.garment.cloth.ink, 2.6, 0.5),
  ],
  over: (s) => {
    placket(s.garment, s.upper, {
      width: 2.6,
      buttons: 3,
      until: s.waistAt + 0.6,
      radius: 0.65,
      colour: dull(s.garment.cloth.ground),
    });
    tiedBelt(s, 3.2);
    shirtCollar(s.garment, s.upper, { points: 11, spread: 2.4, stand: 3 });
  },
};

const playsuit: SuitDesign = {
  upper: upperBlock({
    chest: 48,
    waist: 41,
    shoulder: 40.5,
    armhole: 23,
    neck: 16,
    neckDepth: 10,
    sleeve: { ...SHORT_SLEEVE, length: 18, elbow: 19, cuff: 19 },
  }),
  waistAt: 39,
  legs: { hip: 50, rise: 29, ease: 1 },
  line: shoulderLine(openNeck),
  beneath: collarInside,
  sleeve: { cuff: 'hem' },
  onBodice: (s) => [...bodiceShade(s), ...waistTucks(s)],
  onLeg: (s, leg) => [
    ...legShade(s.garment, leg, s.measures),
    ...legFolds(s.garment, leg, s.measures),
    ...legCrumple(s.garment, leg, s.measures, 3),
    slantPocket(s, leg, s.garment.cloth.ink),
  ],
  hem: (s, leg) => turnUp(s, leg, 3.6),
  over: (s) => {
    placket(s.garment, s.upper, { width: 2.8, buttons: 4, until: s.waistAt, radius: 0.65, colour: '#e9e0cf' });
    patchPocket(s.garment, 10.4, 19.5, { width: 9.6, height: 10.5 });
    patchPocket(s.garment, -10.4, 19.5, { width: 9.6, height: 10.5 });
    elasticWaist(s);
    shirtCollar(s.garment, s.upper, { points: 9.5, spread: 2.2, stand: 2.6 });
  },
};

const waistTucks = ({ garment, upper, waistAt }: Suit): Painted[] =>
  [-0.36, -0.2, 0.22, 0.38].map((share, i) => {
    const x = upper.waist * share;
    return garment.fold(
      [
        [x, waistAt],
        [x * 1.02, waistAt - 4],
        [x * 1.05, waistAt - 7 - (i % 2) * 3],
      ],
      1.1 * Math.sign(share),
      0.8,
      0.22,
    );
  });

/** A gathered waist with a cord, sewn between bodice and shorts. */
const elasticWaist = ({ garment, upper, waistAt }: Suit): void => {
  const top = waistAt - 1.8;
  gatheredBand({ garment, measures: { waist: upper.waist + 0.6, band: 3.4 } }, { ribs: 26, strength: 0.8, top });
  drawCord({ garment, measures: { waist: upper.waist, band: 3.4 } }, tone(garment.cloth.ground, 0.16, 0.5), {
    length: 14,
    top,
  });
};

const BIB = 16;
const METAL = '#b9a27a';
const dungarees: SuitDesign = {
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

const kind =
  (design: SuitDesign): DrawKind =>
  (piece, detail) =>
    drawSuit(piece, detail, design);

/** One-pieces with legs. */
export const LEGGED = {
  jumpsuit: kind(jumpsuit),
  playsuit: kind(playsuit),
  dungarees: kind(dungarees),
} satisfies Partial<Record<KindId, DrawKind>>;
