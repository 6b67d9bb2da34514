import type { DrawKind } from '../drawing.ts';
import { armholeSeam } from './body.ts';
import { pullover } from './designs.ts';
import { ribBand } from './finish.ts';
import { FINE, JUMPER } from './knit-shapes.ts';
import { rollCollar } from './stand-collars.ts';

const RIB_CUFF = { cuff: 'rib', cuffHeight: 6.4 } as const;

export const KNITS = {
  'knitted top': pullover({
    usual: {
      ...FINE,
      length: 56,
      neck: 18,
      neckDepth: 6.6,
      sleeve: { length: 20, elbow: 15.5, cuff: 14.6, upper: 51, fore: 48 },
    },
    neckline: 'crew',
    finish: 'rib',
    bandWidth: 2.2,
    hem: 'rib',
    ribHeight: 5,
    sleeve: { cuff: 'rib', cuffHeight: 3 },
  }),
  'crew-neck jumper': pullover({
    mayBend: true,
    usual: JUMPER,
    neckline: 'crew',
    finish: 'rib',
    bandWidth: 2.8,
    hem: 'rib',
    ribHeight: 6.4,
    sleeve: RIB_CUFF,
  }),
  'v-neck jumper': pullover({
    mayBend: true,
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
    mayBend: true,
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
} satisfies Record<string, DrawKind>;
