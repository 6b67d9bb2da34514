import type { UpperShape } from './shape.ts';

export const JUMPER: UpperShape = {
  chest: 51,
  waist: 49.5,
  hem: 43.5,
  length: 62,
  shoulder: 44,
  slope: 5,
  armhole: 24,
  neck: 17,
  neckDepth: 7,
  hemDip: 0.5,
  blouse: 1.4,
  sleeve: { length: 58, elbow: 16, cuff: 9, upper: 24, fore: 8 },
};

export const FINE: UpperShape = {
  ...JUMPER,
  chest: 46,
  waist: 43.5,
  hem: 42.5,
  length: 60,
  shoulder: 40,
  slope: 4.6,
  armhole: 22,
  blouse: 0.5,
  sleeve: { length: 58, elbow: 13.6, cuff: 8.4, upper: 22, fore: 7 },
};

export const SWEAT: UpperShape = {
  ...JUMPER,
  chest: 55,
  waist: 54,
  hem: 47,
  length: 66,
  shoulder: 50,
  slope: 6,
  armhole: 26,
  neck: 17.5,
  neckDepth: 7.4,
  blouse: 2,
  sleeve: { length: 55, elbow: 18.5, cuff: 9.6, upper: 25, fore: 9 },
};
