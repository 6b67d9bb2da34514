import type { DrawKind } from '../drawing.ts';
import { type Garment, pen, stitch } from '../kit/index.ts';
import { drawBodysuit } from './bodysuit.ts';
import { placket } from './closures.ts';
import { shirtCollar } from './collars.ts';
import { pullover } from './designs.ts';
import { armBinding } from './finish.ts';
import type { UpperShape } from './shape.ts';
import { drawCamisole, drawHalter } from './strappy.ts';
import { long, PEARL, short, TEE } from './top-shapes.ts';
import { drawWrapTop } from './wrap-top.ts';

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
