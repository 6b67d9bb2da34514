import type { DrawKind } from '../drawing.ts';
import { tone } from '../kit/index.ts';
import { drawButtoned } from '../upper/buttoned.ts';
import { placket } from '../upper/closures.ts';
import { shirtCollar } from '../upper/collars.ts';
import { patchPocket } from '../upper/pockets.ts';
import type { UpperShape } from '../upper/shape.ts';

const BEACH: UpperShape = {
  chest: 64,
  waist: 64,
  hem: 66,
  length: 80,
  shoulder: 53,
  slope: 6,
  armhole: 29,
  neck: 17,
  neckDepth: 21,
  hemDip: 8,
  blouse: 0,
  sleeve: { length: 45, elbow: 21, cuff: 17.5, upper: 28, fore: 16 },
};

/** A beach shirt: a big shirt worn open at the neck, its sleeves rolled, its tails long. */
export const beachShirt: DrawKind = (piece, detail) =>
  drawButtoned(piece, detail, {
    usual: BEACH,
    sleeve: { cuff: 'turned', cuffHeight: 6 },
    hem: 'stitched',
    folds: 1.15,
    front: (garment, shape) => {
      placket(garment, shape, { width: 3.4, buttons: 4, radius: 0.6, colour: tone(garment.cloth.ground, -0.12, 0.6) });
      patchPocket(garment, 15, 27, { width: 13, height: 14.5 });
    },
    collar: (garment, shape) => shirtCollar(garment, shape, { points: 13, spread: 4, stand: 2 }),
  });
