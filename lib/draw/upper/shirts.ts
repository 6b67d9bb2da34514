import type { DrawKind } from '../drawing.ts';
import { type Garment, stitch } from '../kit/index.ts';
import { bowCollar } from './bow.ts';
import { placket } from './closures.ts';
import { closedCollar, shirtCollar } from './collars.ts';
import { buttoned } from './designs.ts';
import { patchPocket } from './pockets.ts';
import type { UpperShape } from './shape.ts';
import { PEARL, SHIRT } from './top-shapes.ts';

const shirtFront =
  (buttons: number, options: { pocket?: boolean; pockets?: boolean; yoke?: boolean; width?: number } = {}) =>
  (garment: Garment, shape: UpperShape): void => {
    placket(garment, shape, { width: options.width ?? 3, buttons, radius: 0.52, colour: PEARL });
    const x = shape.chest * 0.235;
    if (options.pocket) patchPocket(garment, x, 20.5, { width: 10.5, height: 12, pointed: true });
    if (options.pockets)
      for (const side of [-1, 1])
        patchPocket(garment, side * x, 20.5, {
          width: 11,
          height: 12.6,
          pointed: true,
          flap: 4.6,
          pointedFlap: true,
          button: PEARL,
        });
    if (options.yoke)
      garment.add(
        ...[-1, 1].map((side) =>
          stitch(
            [
              [side * shape.neck * 0.56, 3.2],
              [side * shape.shoulder * 0.34, 5.4],
              [side * shape.shoulder * 0.485, 7.6],
            ],
            garment.cloth.ink,
            0.6,
          ),
        ),
      );
  };

export const SHIRTS = {
  shirt: buttoned({
    usual: SHIRT,
    sleeve: { cuff: 'shirt', cuffHeight: 6 },
    mayBend: true,
    hem: 'stitched',
    front: shirtFront(7, { pocket: true, yoke: true }),
    collar: (garment, shape) => shirtCollar(garment, shape, { points: 8.8, spread: 0.6, buttonDown: true }),
  }),
  'dress shirt': buttoned({
    usual: { ...SHIRT, chest: 51, waist: 48, hem: 51, length: 77, neck: 14.6, neckDepth: 4.4, hemDip: 3.4 },
    sleeve: { cuff: 'barrel', cuffHeight: 7 },
    hem: 'stitched',
    folds: 0.75,
    front: shirtFront(7, { yoke: true, width: 3.4 }),
    collar: (garment, shape) => closedCollar(garment, shape, { points: 9.2, spread: 2.4, stand: 3.6, button: PEARL }),
  }),
  'short-sleeved shirt': buttoned({
    usual: {
      ...SHIRT,
      chest: 54.5,
      waist: 55,
      hem: 55.5,
      length: 67,
      hemDip: 0.6,
      neck: 17,
      neckDepth: 12,
      sleeve: { length: 24, elbow: 20.5, cuff: 19, upper: 50, fore: 47 },
    },
    hem: 'stitched',
    front: shirtFront(5, { pocket: true }),
    collar: (garment, shape) => shirtCollar(garment, shape, { points: 10.6, spread: 3.4, stand: 2.2 }),
  }),
  'flannel shirt': buttoned({
    usual: { ...SHIRT, chest: 54.5, waist: 53, hem: 54.5 },
    sleeve: { cuff: 'shirt', cuffHeight: 6 },
    mayBend: true,
    hem: 'stitched',
    front: shirtFront(7, { pockets: true, yoke: true }),
    collar: (garment, shape) => shirtCollar(garment, shape, { points: 9.4, spread: 0.8 }),
  }),
  blouse: buttoned({
    usual: {
      ...SHIRT,
      chest: 51,
      waist: 50,
      hem: 54,
      length: 65,
      shoulder: 39.5,
      hemDip: 1.6,
      neck: 17.5,
      neckDepth: 14,
      sleeve: { length: 60, elbow: 18.5, cuff: 9.4, upper: 24, fore: 6 },
    },
    sleeve: { cuff: 'band', cuffHeight: 3.6, bishop: 3.2, puff: 1.2 },
    hem: 'stitched',
    folds: 1.1,
    inner: (garment, shape) =>
      [-1, 1].flatMap((side) =>
        [0.5, 0.66, 0.82].map((share, i) =>
          garment.fold(
            [
              [side * shape.shoulder * 0.5 * share, 3.2 + i * 0.7],
              [side * shape.shoulder * 0.5 * (share - 0.04), 11],
              [side * shape.shoulder * 0.5 * (share + 0.03), 19 - i * 2],
            ],
            -1 * side,
            0.7,
          ),
        ),
      ),
    front: (garment, shape) =>
      placket(garment, shape, { width: 2.4, buttons: 6, radius: 0.48, colour: PEARL, plain: true }),
    collar: (garment, shape) => shirtCollar(garment, shape, { points: 8.6, spread: 2.2, stand: 2.2, stitched: false }),
  }),
  'bow blouse': buttoned({
    usual: {
      ...SHIRT,
      chest: 51,
      waist: 49.5,
      hem: 53,
      length: 66,
      shoulder: 40,
      hemDip: 1.6,
      neck: 14.5,
      neckDepth: 6,
      sleeve: { length: 60, elbow: 18, cuff: 9.4, upper: 23, fore: 5 },
    },
    sleeve: { cuff: 'band', cuffHeight: 5.4, bishop: 2.8, puff: 0.8 },
    hem: 'stitched',
    folds: 1.1,
    front: (garment, shape) => placket(garment, shape, { width: 2.4, buttons: 6, hidden: true, plain: true }),
    collar: bowCollar,
  }),
} satisfies Record<string, DrawKind>;
