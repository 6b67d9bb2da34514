import type { DrawKind } from '../drawing.ts';
import { drawPullover, type PulloverDesign } from './pullover.ts';
import type { UpperShape } from './shape.ts';

const pullover =
  (design: PulloverDesign): DrawKind =>
  (piece, detail) =>
    drawPullover(piece, detail, design);

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

export const TOPS = {
  't-shirt': pullover({ usual: TEE, neckline: 'crew', finish: 'rib', bandWidth: 2, hem: 'stitched' }),
  'long-sleeved tee': pullover({
    usual: { ...TEE, sleeve: long },
    neckline: 'crew',
    finish: 'rib',
    bandWidth: 1.8,
    hem: 'stitched',
  }),
};
