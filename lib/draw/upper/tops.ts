import type { DrawKind } from '../drawing.ts';
import { type Garment, pen } from '../kit/index.ts';
import { drawBodysuit } from './bodysuit.ts';
import { placket } from './closures.ts';
import { shirtCollar } from './collars.ts';
import { pullover } from './designs.ts';
import { armBinding } from './finish.ts';
import type { UpperShape } from './shape.ts';
import { long, PEARL, short, TEE } from './top-shapes.ts';

/** Short placket of a polo or a henley, open at the top. */
const shortPlacket = (garment: Garment, shape: UpperShape, length: number, buttons: number, width = 3): void => {
  placket(garment, shape, {
    width,
    buttons,
    until: shape.neckDepth + length,
    radius: 0.55,
    colour: garment.cloth.depth < 0.6 ? PEARL : garment.cloth.deep,
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

/** Close to the body. */
const BODYSUIT: UpperShape = {
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
};

const tuckedBodysuit = pullover({
  usual: BODYSUIT,
  neckline: 'scoop',
  finish: 'band',
  bandWidth: 1.3,
  hem: 'edge',
  sleeve: { cuff: 'hem' },
});

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
  bodysuit: (piece, detail) =>
    // what ends its legs is not seen in a waistband
    piece.tuck === 'in' ? tuckedBodysuit(piece, detail) : drawBodysuit(piece, detail, BODYSUIT),
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
