import type { DrawKind } from '../drawing.ts';
import { line, type Node, pen, stitch } from '../kit/index.ts';
import { armholeSeam } from './body.ts';
import { frontZip } from './closures.ts';
import { flatCollar } from './collars.ts';
import { weltPocket, zipPocket } from './cut-pockets.ts';
import { buttoned, tailored } from './designs.ts';
import { armBinding, beside, ribBand } from './finish.ts';
import { biker, denimFront, STEEL, STEEL_SHADE, waistBand } from './jacket-fronts.ts';
import { JACKET, OVERSHIRT } from './layer-shapes.ts';
import { standCollar } from './stand-collars.ts';

export const JACKETS = {
  'denim jacket': buttoned({
    usual: {
      ...OVERSHIRT,
      chest: 52,
      waist: 49,
      hem: 46.5,
      length: 57,
      shoulder: 45,
      armhole: 24,
      neck: 16,
      neckDepth: 7,
    },
    sleeve: { cuff: 'barrel', cuffHeight: 5.4 },
    mayBend: true,
    hem: 'edge',
    front: (garment, shape) => {
      denimFront(garment, shape);
      waistBand(garment, shape, 3.8);
    },
    collar: (garment, shape) => flatCollar(garment, shape, { points: 10.4, wide: 2.2 }),
  }),
  'leather jacket': tailored({
    usual: {
      ...JACKET,
      chest: 49,
      waist: 45,
      hem: 44,
      length: 56,
      shoulder: 42,
      armhole: 23.5,
      neck: 16,
      sleeve: { length: 61, elbow: 15.5, cuff: 10.5, upper: 22, fore: 8 },
    },
    lapel: { style: 'notch', breakY: 20, width: 11 },
    breakY: 20,
    overlap: 8.6,
    cutaway: 0,
    darts: false,
    folds: 0.75,
    stitched: true,
    sleeve: {
      cuff: 'hem',
      inner: (f) => [
        pen(
          [
            [
              f.wristOut[0] + f.acrossFore[0] * 1.6 - f.fore[0] * 11,
              f.wristOut[1] + f.acrossFore[1] * 1.6 - f.fore[1] * 11,
            ],
            [f.wristOut[0] + f.acrossFore[0] * 1.4, f.wristOut[1] + f.acrossFore[1] * 1.4],
          ],
          0.6,
          STEEL,
          1,
          0.5,
        ),
      ],
    },
    front: biker,
  }),
  'bomber jacket': buttoned({
    usual: {
      ...OVERSHIRT,
      chest: 57,
      waist: 57,
      hem: 47,
      length: 61,
      shoulder: 47,
      slope: 5.4,
      armhole: 26,
      neck: 17,
      neckDepth: 8.5,
      blouse: 2.6,
      sleeve: { length: 57, elbow: 19, cuff: 9.6, upper: 25, fore: 9 },
    },
    sleeve: {
      cuff: 'rib',
      cuffHeight: 6.4,
      bishop: 1,
      // the zipped pocket on one sleeve
      inner: (f) =>
        f.shoulder[0] > 0
          ? []
          : [14].flatMap((from) => {
              const at = (along: number): Node => [
                f.shoulder[0] + f.upper[0] * along + f.acrossUpper[0] * 2,
                f.shoulder[1] + f.upper[1] * along + f.acrossUpper[1] * 2,
              ];
              return [line([at(from), at(from + 10)], 0.9, STEEL_SHADE), line([at(from), at(from + 10)], 0.34, STEEL)];
            }),
    },
    hem: 'rib',
    ribHeight: 6.4,
    front: (garment, shape) => {
      frontZip(garment, shape.neckDepth - 1, shape.length - 0.4, { metal: STEEL, width: 1.2 });
      for (const side of [-1, 1] as const)
        weltPocket(garment, side * shape.chest * 0.28, shape.length - 20, 15, 3, side * 24);
    },
    collar: (garment, shape) => {
      const half = shape.neck / 2;
      const run: Node[] = [
        [-half - 0.4, -1.4],
        [-half * 0.72, shape.neckDepth * 0.46],
        [0, shape.neckDepth],
        [half * 0.72, shape.neckDepth * 0.46],
        [half + 0.4, -1.4],
      ];
      ribBand(garment, run.slice(0, 3), 3, -1.6, 0.6);
      ribBand(garment, run.slice(2), 3, -1.6, 0.6);
    },
  }),
  gilet: buttoned({
    usual: {
      ...OVERSHIRT,
      chest: 52,
      waist: 50.5,
      hem: 51,
      length: 64,
      shoulder: 38,
      slope: 4.4,
      armhole: 26.5,
      neck: 16.5,
      neckDepth: 7,
      sleeve: undefined,
    },
    hem: 'edge',
    baffles: 6.2,
    scoop: 1.6,
    folds: 0.3,
    front: (garment, shape) => {
      armBinding(garment, shape, 1.6, 1.4);
      for (const side of [-1, 1] as const)
        garment.add(
          ...(garment.small ? [] : [stitch(beside(armholeSeam(shape, side, 1.6), side * 0.7), garment.cloth.ink, 0.6)]),
        );
      frontZip(garment, shape.neckDepth - 3, shape.length - 0.6, { width: 1.1 });
      for (const side of [-1, 1]) zipPocket(garment, side * shape.hem * 0.31, shape.length - 17, 14, side * 9);
    },
    collar: (garment, shape) => standCollar(garment, shape, 10, { gap: 3.2, quilted: 1 }),
  }),
} satisfies Record<string, DrawKind>;
