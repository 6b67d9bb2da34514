import type { DrawKind } from '../drawing.ts';
import { plainCloth } from '../fabric/index.ts';
import { type Garment, type Node, pen, tone } from '../kit/index.ts';
import { drawcord } from './belts.ts';
import { frontZip, placket } from './closures.ts';
import { COAT, JACKET, stormFlap } from './coat-shapes.ts';
import { flatCollar } from './collars.ts';
import { flapPocket, weltPocket, zipPocket } from './cut-pockets.ts';
import { buttoned } from './designs.ts';
import { hoodBack, hoodFront } from './hood.ts';
import { patchPocket } from './pockets.ts';
import { seamLine } from './seams.ts';
import type { UpperShape } from './shape.ts';
import { standCollar } from './stand-collars.ts';

/** The cloth without its quilting, for a hood or collar that is only lined. */
const unquilted = (garment: Garment): Garment['cloth'] => ({ ...garment.cloth, tiles: [] });

const FUR = '#b59a78';

/** The bound edge of a quilted jacket. */
const binding = (garment: Garment, shape: UpperShape): void => {
  const { cloth } = garment;
  const run: Node[] = [
    [-shape.hem / 2 + 0.4, shape.length - 1.2],
    [0, shape.length - 0.5],
    [shape.hem / 2 - 0.4, shape.length - 1.2],
  ];
  garment.add(pen(run, 1.3, cloth.deep, 0.9, 0.5));
};

export const WEATHER_COATS = {
  'rain jacket': buttoned({
    usual: { ...JACKET, length: 73 },
    sleeve: { cuff: 'elastic', cuffHeight: 3 },
    hem: 'stitched',
    beneath: (garment, shape) => hoodBack(garment, shape, 0.95),
    inner: (garment, shape) =>
      [-1, 1].map((side) =>
        seamLine(
          garment,
          [
            [side * shape.neck * 0.5, 2],
            [side * shape.chest * 0.36, shape.armhole * 0.6],
            [side * shape.chest * 0.5, shape.armhole],
          ],
          0.6,
        ),
      ),
    front: (garment, shape) => {
      frontZip(garment, shape.neckDepth - 3, shape.length - 0.6, { width: 1.1 });
      zipPocket(garment, shape.chest * 0.26, 25, 13, -8);
      for (const side of [-1, 1]) zipPocket(garment, side * shape.hem * 0.31, shape.length - 19, 17, side * 12);
    },
    collar: (garment, shape) => hoodFront(garment, shape, { size: 0.95, cords: true, meet: 4 }),
  }),
  raincoat: buttoned({
    usual: {
      ...COAT,
      chest: 57,
      waist: 60,
      hem: 74,
      length: 102,
      shoulder: 46,
      slope: 5,
      neck: 17,
      neckDepth: 7,
      sleeve: { length: 60, elbow: 19, cuff: 15, upper: 21, fore: 8 },
    },
    sleeve: { cuff: 'hem' },
    hem: 'stitched',
    beneath: (garment, shape) => hoodBack(garment, shape, 0.98),
    inner: (garment, shape) =>
      [-1, 1].map((side) =>
        seamLine(
          garment,
          [
            [side * shape.neck * 0.5, 2],
            [side * shape.chest * 0.36, shape.armhole * 0.6],
            [side * shape.chest * 0.5, shape.armhole],
          ],
          0.6,
        ),
      ),
    front: (garment, shape) => {
      stormFlap(garment, shape, 5.4, 6);
      for (const side of [-1, 1] as const) flapPocket(garment, side * shape.hem * 0.27, 56, 15, 6.4, side);
    },
    collar: (garment, shape) => hoodFront(garment, shape, { size: 0.98, meet: 4 }),
  }),
  windbreaker: buttoned({
    usual: {
      ...JACKET,
      chest: 57,
      waist: 57,
      hem: 51,
      length: 68,
      shoulder: 48,
      slope: 5.6,
      blouse: 2.2,
      sleeve: { length: 58, elbow: 19, cuff: 10, upper: 24, fore: 9 },
    },
    sleeve: { cuff: 'elastic', cuffHeight: 3 },
    hem: 'edge',
    folds: 1.1,
    inner: (garment, shape) => {
      const tint = garment.cloth.accents[0] ?? tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? 0.12 : -0.1);
      const lower: Node[] = [
        [-40, 26, 'corner'],
        [-shape.chest / 2, 27, 'corner'],
        [0, 33, 'corner'],
        [shape.chest / 2, 27, 'corner'],
        [40, 26, 'corner'],
        [40, 0, 'corner'],
        [-40, 0, 'corner'],
      ];
      return [
        {
          path: lower
            .map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`)
            .join('')
            .concat('Z'),
          fill: tint,
          opacity: 0.85,
        },
        pen(
          [
            [-shape.chest / 2, 27],
            [0, 33.2],
          ],
          0.3,
          garment.cloth.ink,
          0.7,
          0.5,
        ),
        pen(
          [
            [0, 33.2],
            [shape.chest / 2, 27],
          ],
          0.3,
          garment.cloth.ink,
          0.7,
          0.5,
        ),
      ];
    },
    front: (garment, shape) => {
      frontZip(garment, shape.neckDepth - 3, shape.length - 0.6, { width: 1 });
      for (const side of [-1, 1]) zipPocket(garment, side * shape.hem * 0.3, shape.length - 17, 14, side * 16);
      drawcord(garment, shape, shape.length - 4.6);
    },
    collar: (garment, shape) => standCollar(garment, shape, 9.6, { gap: 3.6 }),
  }),
  'quilted jacket': buttoned({
    usual: { ...JACKET, chest: 54.5, waist: 53.5, hem: 56, length: 71, shoulder: 44.5 },
    sleeve: { cuff: 'shirt', cuffHeight: 2.4 },
    hem: 'edge',
    folds: 0.4,
    mayBend: true,
    front: (garment, shape) => {
      placket(garment, shape, {
        width: 3.6,
        buttons: 6,
        radius: 0.72,
        colour: tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? 0.2 : -0.24, 0.5),
        plain: true,
      });
      for (const side of [-1, 1])
        patchPocket(garment, side * shape.hem * 0.27, shape.length - 25, {
          width: 16,
          height: 18,
          flap: 5.4,
          button: tone(garment.cloth.ground, -0.2, 0.5),
        });
      binding(garment, shape);
    },
    collar: (garment, shape) =>
      flatCollar(garment, shape, {
        points: 9.6,
        wide: 2,
        cloth: plainCloth(
          garment.cloth.accents[0] ?? tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? 0.1 : -0.16),
          'corduroy',
          garment.detail,
        ),
        stitched: false,
      }),
  }),
  'down jacket': buttoned({
    usual: {
      ...JACKET,
      chest: 57,
      waist: 55,
      hem: 54,
      length: 67,
      shoulder: 47,
      slope: 5.2,
      neck: 17,
      neckDepth: 7,
      sleeve: { length: 60, elbow: 20, cuff: 13, upper: 23, fore: 9 },
    },
    sleeve: { cuff: 'elastic', cuffHeight: 2 },
    hem: 'edge',
    baffles: 7.6,
    folds: 0.3,
    beneath: (garment, shape) => hoodBack(garment, shape, 0.9, unquilted(garment)),
    front: (garment, shape) => {
      frontZip(garment, shape.neckDepth - 4, shape.length - 0.6, { width: 1.2 });
      for (const side of [-1, 1]) zipPocket(garment, side * shape.hem * 0.32, shape.length - 17, 15, side * 10);
    },
    collar: (garment, shape) => hoodFront(garment, shape, { size: 0.9, meet: 3, cloth: unquilted(garment) }),
  }),
  parka: buttoned({
    usual: {
      ...COAT,
      chest: 60,
      waist: 57,
      hem: 63,
      length: 86,
      shoulder: 48,
      slope: 5.2,
      armhole: 27,
      neck: 18,
      neckDepth: 8,
      hemDip: 3,
      sleeve: { length: 61, elbow: 20, cuff: 14, upper: 21, fore: 7 },
    },
    sleeve: { cuff: 'shirt', cuffHeight: 6 },
    hem: 'stitched',
    mayBend: true,
    beneath: (garment, shape) => hoodBack(garment, shape, 1.08),
    front: (garment, shape) => {
      drawcord(garment, shape, Math.min(46, shape.length - 16));
      stormFlap(garment, shape, 5.6, 6);
      for (const side of [-1, 1]) {
        patchPocket(garment, side * shape.hem * 0.28, 57, {
          width: 16.5,
          height: 19,
          flap: 6.4,
          pointedFlap: true,
          button: garment.cloth.deep,
        });
        weltPocket(garment, side * shape.chest * 0.27, 29, 14, 2.8, side * 8);
      }
    },
    collar: (garment, shape) => hoodFront(garment, shape, { size: 1.08, fur: FUR, meet: 5 }),
  }),
} satisfies Record<string, DrawKind>;
