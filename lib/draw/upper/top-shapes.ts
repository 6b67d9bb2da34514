import type { UpperShape } from './shape.ts';

export const short = { length: 20, elbow: 18.5, cuff: 17, upper: 54, fore: 51 };

export const long = { length: 59, elbow: 14.5, cuff: 9.5, upper: 23, fore: 8 };

export const TEE: UpperShape = {
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

export const SHIRT: UpperShape = {
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

export const PEARL = '#f2ede2';
