import type { DrawKind } from '../drawing.ts';
import { pen, stitch } from '../kit/index.ts';
import { pullover } from './designs.ts';
import { armBinding } from './finish.ts';
import { drawCamisole, drawHalter } from './strappy.ts';
import { TEE } from './top-shapes.ts';
import { drawWrapTop } from './wrap-top.ts';

/** Tops of woven cloth that hang from the shoulder or the neck. */
export const LIGHT_TOPS = {
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
} satisfies Record<string, DrawKind>;
