import type { UpperShape } from './shape.ts';

export const JACKET: UpperShape = {
  chest: 52,
  waist: 47.5,
  hem: 54,
  length: 71,
  shoulder: 42.5,
  slope: 4.2,
  armhole: 24,
  neck: 16.4,
  neckDepth: 30,
  hemDip: 1,
  blouse: 0,
  sleeve: { length: 60, elbow: 17, cuff: 13, upper: 19, fore: 5 },
};

export const OVERSHIRT: UpperShape = {
  ...JACKET,
  chest: 56,
  waist: 56,
  hem: 56,
  length: 70,
  shoulder: 47,
  slope: 5,
  armhole: 25,
  neck: 15.5,
  neckDepth: 7.5,
  hemDip: 0.5,
  sleeve: { length: 58, elbow: 17.5, cuff: 12, upper: 23, fore: 10 },
};

export const GOLD = '#b8964f';
