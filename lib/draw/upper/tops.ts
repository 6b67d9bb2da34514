import type { DrawKind } from '../drawing.ts';
import { type Garment, pen, stitch } from '../kit/index.ts';
import { drawBodysuit } from './bodysuit.ts';
import { type ButtonedDesign, drawButtoned } from './buttoned.ts';
import { placket } from './closures.ts';
import { bowCollar, shirtCollar } from './collars.ts';
import { armBinding } from './finish.ts';
import { patchPocket } from './pockets.ts';
import { drawPullover, type PulloverDesign } from './pullover.ts';
import type { UpperShape } from './shape.ts';
import { drawCamisole, drawHalter } from './strappy.ts';
import { drawWrapTop } from './wrap-top.ts';

const pullover =
  (design: PulloverDesign): DrawKind =>
  (piece, detail) =>
    drawPullover(piece, detail, design);
const buttoned =
  (design: ButtonedDesign): DrawKind =>
  (piece, detail) =>
    drawButtoned(piece, detail, design);

const short = { length: 20, elbow: 18.5, cuff: 17.5, upper: 38, fore: 34 };
const long = { length: 59, elbow: 14.5, cuff: 9.5, upper: 23, fore: 8 };

const TEE: UpperShape = {
  chest: 49,
  waist: 47.5,
  hem: 49,
  length: 64,
  shoulder: 41.5,
  slope: 4.4,
  armhole: 22.5,
  neck: 17.5,
  neckDepth: 8.5,
  hemDip: 0.9,
  blouse: 0,
  sleeve: short,
};

const SHIRT: UpperShape = {
  chest: 53,
  waist: 50.5,
  hem: 53,
  length: 74,
  shoulder: 44,
  slope: 4.8,
  armhole: 24,
  neck: 15.4,
  neckDepth: 7,
  hemDip: 6.5,
  blouse: 0,
  sleeve: { length: 60, elbow: 16.5, cuff: 11, upper: 23, fore: 9 },
};

const PEARL = '#f2ede2';

/** Short placket of a polo or a henley, open at the top. */
const shortPlacket = (garment: Garment, shape: UpperShape, length: number, buttons: number, width = 3): void => {
  placket(garment, shape, {
    width,
    buttons,
    until: shape.neckDepth + length,
    radius: 0.55,
    colour: garment.cloth.depth === 0.5 ? PEARL : garment.cloth.deep,
  });
  const end = shape.neckDepth + length;
  garment.add(
    pen(
      [
        [-width / 2, end - 1],
        [width / 2, end - 1],
      ],
      0.2,
      garment.cloth.ink,
      0.6,
      0.5,
    ),
    pen(
      [
        [-width / 2, end],
        [width / 2, end],
      ],
      0.3,
      garment.cloth.ink,
      0.7,
      0.5,
    ),
  );
};

const shirtFront =
  (buttons: number, options: { pocket?: boolean; pockets?: boolean; yoke?: boolean } = {}) =>
  (garment: Garment, shape: UpperShape): void => {
    placket(garment, shape, { width: 3, buttons, radius: 0.52, colour: PEARL });
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

export const TOPS = {
  't-shirt': pullover({ usual: TEE, neckline: 'crew', finish: 'rib', bandWidth: 2, hem: 'stitched' }),
  'long-sleeved tee': pullover({
    usual: { ...TEE, sleeve: long },
    neckline: 'crew',
    finish: 'rib',
    bandWidth: 1.8,
    hem: 'stitched',
  }),
  'boat-neck top': pullover({
    usual: {
      ...TEE,
      chest: 50,
      waist: 50,
      hem: 50.5,
      length: 60,
      shoulder: 44,
      slope: 4,
      neck: 26,
      neckDepth: 4.4,
      sleeve: { length: 47, elbow: 16, cuff: 13, upper: 29, fore: 19 },
    },
    neckline: 'boat',
    finish: 'band',
    bandWidth: 1.5,
    backRise: -1.4,
    stripesFrom: 13,
    hem: 'stitched',
  }),
  henley: pullover({
    usual: { ...TEE, length: 67, neck: 16.5, neckDepth: 7, sleeve: long },
    neckline: 'crew',
    finish: 'rib',
    bandWidth: 1.6,
    hem: 'stitched',
    sleeve: { cuff: 'rib', cuffHeight: 4.5 },
    extra: (garment, shape) => shortPlacket(garment, shape, 13, 3),
  }),
  'tank top': pullover({
    usual: {
      ...TEE,
      chest: 44,
      waist: 42.5,
      hem: 45,
      length: 62,
      shoulder: 30,
      slope: 2,
      armhole: 23.5,
      neck: 20.5,
      neckDepth: 14.5,
      sleeve: undefined,
    },
    neckline: 'scoop',
    finish: 'band',
    bandWidth: 1.3,
    backRise: -5,
    scoop: 0.6,
    hem: 'stitched',
    extra: (garment, shape) => armBinding(garment, shape, 0.6),
  }),
  camisole: (piece, detail) =>
    drawCamisole(piece, detail, {
      ...TEE,
      chest: 45,
      waist: 44,
      hem: 48.5,
      length: 62,
      neck: 22,
      neckDepth: 24,
      armhole: 24.5,
      hemDip: 0.6,
      sleeve: undefined,
    }),
  'shell top': pullover({
    usual: {
      ...TEE,
      chest: 48,
      waist: 47,
      hem: 50,
      length: 59,
      shoulder: 38,
      slope: 3.6,
      armhole: 22.5,
      neck: 19,
      neckDepth: 9,
      sleeve: undefined,
    },
    neckline: 'crew',
    finish: 'edge',
    backRise: 0.2,
    scoop: 0.9,
    hem: 'stitched',
    inner: (garment, shape) =>
      [-1, 1].map((side) =>
        pen(
          [
            [side * (shape.chest / 2), shape.armhole + 6],
            [side * shape.chest * 0.36, shape.armhole + 4],
            [side * shape.chest * 0.26, shape.armhole + 2],
          ],
          0.2,
          garment.cloth.ink,
          0.55,
        ),
      ),
    extra: (garment, shape) => armBinding(garment, shape, 0.9),
  }),
  'halter top': (piece, detail) =>
    drawHalter(piece, detail, {
      ...TEE,
      chest: 42,
      waist: 41,
      hem: 44,
      length: 54,
      neck: 13,
      neckDepth: 7,
      armhole: 26,
      sleeve: undefined,
    }),
  'polo shirt': pullover({
    usual: {
      ...TEE,
      chest: 50.5,
      waist: 49,
      hem: 50.5,
      length: 67,
      neck: 15.5,
      neckDepth: 6,
      sleeve: { ...short, length: 21 },
    },
    neckline: 'crew',
    finish: 'none',
    hem: 'stitched',
    sleeve: { cuff: 'rib', cuffHeight: 2.6 },
    extra: (garment, shape) => {
      shortPlacket(garment, shape, 13.5, 3, 3.2);
      shirtCollar(garment, shape, { points: 8.2, spread: 1.2, stand: 2.4, stitched: false });
    },
  }),
  shirt: buttoned({
    usual: SHIRT,
    sleeve: { cuff: 'shirt', cuffHeight: 6 },
    mayBend: true,
    hem: 'stitched',
    front: shirtFront(7, { pocket: true, yoke: true }),
    collar: (garment, shape) => shirtCollar(garment, shape, { points: 8.8, spread: 0.6, buttonDown: true }),
  }),
  'dress shirt': buttoned({
    usual: { ...SHIRT, chest: 51, waist: 47, hem: 50.5, length: 77, hemDip: 7.5 },
    sleeve: { cuff: 'barrel', cuffHeight: 7 },
    hem: 'stitched',
    folds: 0.75,
    front: shirtFront(8, { yoke: true }),
    collar: (garment, shape) => shirtCollar(garment, shape, { points: 8.4, spread: 2.6, stand: 4.2 }),
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
      sleeve: { length: 24, elbow: 20.5, cuff: 20, upper: 33, fore: 29 },
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
  tunic: pullover({
    usual: {
      ...TEE,
      chest: 53,
      waist: 53,
      hem: 60,
      length: 82,
      shoulder: 42,
      neck: 16.5,
      neckDepth: 6.6,
      armhole: 24,
      hemDip: 1.2,
      sleeve: { length: 54, elbow: 18, cuff: 15, upper: 26, fore: 14 },
    },
    neckline: 'crew',
    finish: 'band',
    bandWidth: 2,
    hem: 'stitched',
    sleeve: { cuff: 'turned', cuffHeight: 4 },
    inner: (garment, shape) =>
      [-1, 1].map((side) =>
        pen(
          [
            [side * (shape.hem / 2 - 0.2), shape.length - 15],
            [side * (shape.hem / 2 - 1.4), shape.length - 6],
            [side * (shape.hem / 2 - 1), shape.length],
          ],
          0.5,
          garment.cloth.ink,
          0.8,
          0.6,
        ),
      ),
    extra: (garment, shape) => {
      const { cloth } = garment;
      garment.inside([
        [-1.4, shape.neckDepth, 'corner'],
        [1.6, shape.neckDepth, 'corner'],
        [0.1, shape.neckDepth + 15, 'corner'],
      ]);
      garment.add(
        stitch(
          [
            [-2.6, shape.neckDepth + 0.8],
            [-1.9, shape.neckDepth + 16.4, 'corner'],
            [2, shape.neckDepth + 16.4, 'corner'],
            [2.8, shape.neckDepth + 0.8],
          ],
          cloth.ink,
          0.7,
        ),
        pen(
          [
            [0.1, shape.neckDepth + 15],
            [0.2, shape.neckDepth + 16.4],
          ],
          0.3,
          cloth.ink,
          0.8,
        ),
      );
    },
  }),
  'wrap top': (piece, detail) =>
    drawWrapTop(piece, detail, {
      ...TEE,
      chest: 48,
      waist: 43,
      hem: 47,
      length: 60,
      shoulder: 40,
      neck: 19,
      neckDepth: 24,
      sleeve: { length: 57, elbow: 15.5, cuff: 11.5, upper: 24, fore: 10 },
    }),
  bodysuit: (piece, detail) =>
    drawBodysuit(piece, detail, {
      ...TEE,
      chest: 42,
      waist: 37,
      hem: 40,
      length: 64,
      shoulder: 37,
      neck: 21,
      neckDepth: 13,
      armhole: 21,
      sleeve: { ...long, elbow: 12.5, cuff: 8 },
    }),
  'thermal top': pullover({
    usual: {
      ...TEE,
      chest: 43.5,
      waist: 41,
      hem: 43,
      length: 66,
      shoulder: 38,
      neck: 15.5,
      neckDepth: 5,
      armhole: 21,
      sleeve: { ...long, elbow: 12.6, cuff: 7.8 },
    },
    neckline: 'crew',
    finish: 'rib',
    bandWidth: 2.4,
    hem: 'stitched',
    ribbed: true,
    sleeve: { cuff: 'rib', cuffHeight: 5 },
    inner: (garment, shape) =>
      [-1, 1].map((side) =>
        pen(
          [
            [side * shape.neck * 0.52, 0.4],
            [side * shape.chest * 0.42, shape.armhole * 0.6],
            [side * shape.chest * 0.5, shape.armhole],
          ],
          0.3,
          garment.cloth.ink,
          0.7,
          0.5,
        ),
      ),
  }),
} satisfies Record<string, DrawKind>;
