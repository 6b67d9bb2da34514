import type { DrawKind } from '../drawing.ts';
import { type Garment, pen, stitch } from '../kit/index.ts';
import { drawButtoned } from './buttoned.ts';
import { frontZip } from './closures.ts';
import { zipPocket } from './cut-pockets.ts';
import { cardigan, pullover } from './designs.ts';
import { hoodBack, hoodFront } from './hood.ts';
import { FINE, JUMPER, SWEAT } from './knit-shapes.ts';
import { pouchPocket } from './pockets.ts';
import { seamLine } from './seams.ts';
import type { UpperShape } from './shape.ts';
import { standCollar } from './stand-collars.ts';

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

export const SWEATS = {
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
  sweatshirt: pullover({
    mayBend: true,
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
