import type { DrawKind } from '../drawing.ts';
import { type Garment, pen, stitch } from '../kit/index.ts';
import { armholeSeam } from './body.ts';
import { drawButtoned } from './buttoned.ts';
import { type CardiganDesign, drawCardigan } from './cardigan.ts';
import { frontZip } from './closures.ts';
import { hoodBack, hoodFront, rollCollar, standCollar } from './collars.ts';
import { ribBand } from './finish.ts';
import { pouchPocket, seamLine, zipPocket } from './pockets.ts';
import { drawPullover, type PulloverDesign } from './pullover.ts';
import type { UpperShape } from './shape.ts';

const pullover =
  (design: PulloverDesign): DrawKind =>
  (piece, detail) =>
    drawPullover(piece, detail, design);
const cardigan =
  (design: CardiganDesign): DrawKind =>
  (piece, detail) =>
    drawCardigan(piece, detail, design);

const JUMPER: UpperShape = {
  chest: 51,
  waist: 49.5,
  hem: 43.5,
  length: 62,
  shoulder: 44,
  slope: 5,
  armhole: 24,
  neck: 17,
  neckDepth: 7,
  hemDip: 0.5,
  blouse: 1.4,
  sleeve: { length: 58, elbow: 16, cuff: 9, upper: 24, fore: 8 },
};

const FINE: UpperShape = {
  ...JUMPER,
  chest: 46,
  waist: 43.5,
  hem: 42.5,
  length: 60,
  shoulder: 40,
  slope: 4.6,
  armhole: 22,
  blouse: 0.5,
  sleeve: { length: 58, elbow: 13.6, cuff: 8.4, upper: 22, fore: 7 },
};

const RIB_CUFF = { cuff: 'rib', cuffHeight: 6.4 } as const;

/** Seams from the neck to the underarm instead of a set-in sleeve. */
const raglan = (garment: Garment, shape: UpperShape) =>
  [-1, 1].map((side) =>
    seamLine(
      garment,
      [
        [side * shape.neck * 0.5, 1.4],
        [side * shape.chest * 0.36, shape.armhole * 0.56],
        [side * shape.chest * 0.5, shape.armhole],
      ],
      0.7,
    ),
  );

const SWEAT: UpperShape = {
  ...JUMPER,
  chest: 55,
  waist: 54,
  hem: 47,
  length: 66,
  shoulder: 50,
  slope: 6,
  armhole: 26,
  neck: 17.5,
  neckDepth: 7.4,
  blouse: 2,
  sleeve: { length: 55, elbow: 18.5, cuff: 9.6, upper: 25, fore: 9 },
};

export const KNITS = {
  'knitted top': pullover({
    usual: {
      ...FINE,
      length: 56,
      neck: 18,
      neckDepth: 6.6,
      sleeve: { length: 20, elbow: 15.5, cuff: 14.6, upper: 34, fore: 30 },
    },
    neckline: 'crew',
    finish: 'rib',
    bandWidth: 2.2,
    hem: 'rib',
    ribHeight: 5,
    sleeve: { cuff: 'rib', cuffHeight: 3 },
  }),
  'crew-neck jumper': pullover({
    usual: JUMPER,
    neckline: 'crew',
    finish: 'rib',
    bandWidth: 2.8,
    hem: 'rib',
    ribHeight: 6.4,
    sleeve: RIB_CUFF,
  }),
  'v-neck jumper': pullover({
    usual: {
      ...JUMPER,
      chest: 50,
      waist: 48,
      hem: 45,
      length: 64,
      shoulder: 42.5,
      slope: 4.6,
      neck: 17,
      neckDepth: 20,
      blouse: 0.9,
    },
    neckline: 'v',
    finish: 'rib',
    bandWidth: 2.6,
    hem: 'rib',
    ribHeight: 5,
    sleeve: { cuff: 'rib', cuffHeight: 5.4 },
  }),
  'roll-neck': pullover({
    usual: {
      ...JUMPER,
      chest: 52,
      waist: 50,
      hem: 43,
      shoulder: 47,
      slope: 5.6,
      armhole: 25,
      neck: 17.6,
      neckDepth: 5,
      blouse: 1.8,
      sleeve: { length: 56, elbow: 16.4, cuff: 9, upper: 23, fore: 7 },
    },
    neckline: 'crew',
    finish: 'none',
    hem: 'rib',
    ribHeight: 6.5,
    ribbed: true,
    sleeve: { cuff: 'rib', cuffHeight: 7 },
    extra: (garment, shape) => rollCollar(garment, shape, 16, true),
  }),
  'fine roll-neck': pullover({
    usual: { ...FINE, neck: 15, neckDepth: 4 },
    neckline: 'crew',
    finish: 'none',
    hem: 'rib',
    ribHeight: 4,
    sleeve: { cuff: 'rib', cuffHeight: 5 },
    extra: (garment, shape) => rollCollar(garment, shape, 12, false),
  }),
  cardigan: cardigan({
    usual: { ...JUMPER, chest: 50, waist: 48.5, hem: 46, length: 64, neckDepth: 22, blouse: 0.8 },
    neckline: 'v',
    buttons: 6,
    bandWidth: 3.2,
    ribHeight: 5.5,
    pockets: true,
  }),
  'long cardigan': cardigan({
    usual: {
      ...JUMPER,
      chest: 54,
      waist: 54,
      hem: 56,
      length: 84,
      shoulder: 46,
      slope: 5.4,
      armhole: 26,
      neckDepth: 34,
      blouse: 0,
      sleeve: { length: 57, elbow: 18, cuff: 11, upper: 22, fore: 7 },
    },
    neckline: 'v',
    buttons: 0,
    bandWidth: 4.4,
    ribHeight: 5,
    pockets: true,
    open: 9,
  }),
  'cropped cardigan': cardigan({
    usual: { ...FINE, chest: 46.5, waist: 44, hem: 40, length: 49, neck: 17.5, neckDepth: 6.6, blouse: 0.8 },
    neckline: 'crew',
    buttons: 7,
    bandWidth: 2.6,
    ribHeight: 4.5,
    metalButtons: true,
  }),
  slipover: pullover({
    usual: {
      ...JUMPER,
      chest: 48,
      waist: 46.5,
      hem: 43.5,
      length: 60,
      shoulder: 37,
      slope: 4.2,
      armhole: 25,
      neck: 17.5,
      neckDepth: 20,
      blouse: 0.8,
      sleeve: undefined,
    },
    neckline: 'v',
    finish: 'rib',
    bandWidth: 2.8,
    scoop: 1.4,
    hem: 'rib',
    ribHeight: 5.5,
    extra: (garment, shape) => {
      for (const side of [-1, 1] as const)
        ribBand(garment, armholeSeam(shape, side, 1.4), side === 1 ? -0.4 : -2.2, side === 1 ? 2.2 : 0.4);
    },
  }),
  sweatshirt: pullover({
    usual: SWEAT,
    neckline: 'crew',
    finish: 'rib',
    bandWidth: 2.6,
    hem: 'rib',
    ribHeight: 6.5,
    sleeve: { cuff: 'rib', cuffHeight: 7 },
    inner: (garment, shape) => {
      const y = shape.neckDepth;
      return [
        ...raglan(garment, shape),
        ...(garment.small
          ? []
          : [
              stitch(
                [
                  [-2.4, y + 1.2],
                  [0, y + 5.6, 'corner'],
                  [2.4, y + 1.2],
                ],
                garment.cloth.ink,
                0.8,
              ),
            ]),
      ];
    },
  }),
  hoodie: pullover({
    usual: { ...SWEAT, length: 67, neck: 18, neckDepth: 9 },
    neckline: 'crew',
    finish: 'none',
    hem: 'rib',
    ribHeight: 6.5,
    sleeve: { cuff: 'rib', cuffHeight: 7 },
    beneath: (garment, shape) => hoodBack(garment, shape),
    extra: (garment, shape) => {
      pouchPocket(garment, shape.length - 26, 31, 19);
      hoodFront(garment, shape, { cords: true });
    },
  }),
  'fleece jacket': (piece, detail) =>
    drawButtoned(piece, detail, {
      usual: {
        ...SWEAT,
        chest: 54,
        waist: 53,
        hem: 53,
        length: 67,
        shoulder: 47,
        armhole: 25.5,
        neck: 17,
        neckDepth: 8,
        blouse: 0,
        sleeve: { length: 58, elbow: 18, cuff: 11, upper: 24, fore: 9 },
      },
      hem: 'stitched',
      sleeve: { cuff: 'elastic', cuffHeight: 2.2 },
      folds: 0.8,
      inner: (garment, shape) => [
        ...raglan(garment, shape),
        seamLine(
          garment,
          [
            [-shape.chest / 2, 29],
            [0, 30.6],
            [shape.chest / 2, 29],
          ],
          0.6,
        ),
      ],
      front: (garment, shape) => {
        frontZip(garment, shape.neckDepth - 2, shape.length - 0.6);
        zipPocket(garment, -shape.chest * 0.3, 23, 11, 4);
        for (const side of [-1, 1]) zipPocket(garment, side * shape.hem * 0.33, shape.length - 19, 15, side * 13);
      },
      collar: (garment, shape) => {
        standCollar(garment, shape, 9, { gap: 3.4 });
        garment.add(
          pen(
            [
              [0, shape.neckDepth - 2],
              [0.1, shape.neckDepth + 1.4],
            ],
            0.5,
            garment.cloth.ink,
            0.8,
          ),
        );
      },
    }),
} satisfies Record<string, DrawKind>;
