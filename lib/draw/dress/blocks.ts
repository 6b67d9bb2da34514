import type { SleeveShape, UpperShape } from '../upper/shape.ts';
import type { DressBlock } from './frame.ts';

/** Sleeves of medium size, laid flat. common practice, no source */
export const LONG_SLEEVE: SleeveShape = { length: 58, elbow: 15, cuff: 9.5, upper: 22, fore: 8 };
export const SHORT_SLEEVE: SleeveShape = { length: 20, elbow: 17, cuff: 16, upper: 53, fore: 50 };
export const ELBOW_SLEEVE: SleeveShape = { length: 31, elbow: 16, cuff: 15, upper: 30, fore: 24 };

/** A dress of medium size, laid flat; `length` is set by the piece. common practice, no source */
export const upperBlock = (part: Partial<UpperShape> & { readonly sleeve: SleeveShape | undefined }): UpperShape => ({
  chest: 45,
  waist: 37,
  hem: 50,
  length: 118,
  shoulder: 38.5,
  slope: 4.2,
  armhole: 21.5,
  neck: 17,
  neckDepth: 9,
  hemDip: 1,
  blouse: 0,
  ...part,
});

/** A block from its upper part and the width of the hip. */
export const block = (upper: UpperShape, hip: number, waistAt = 40, hipAt = 61): DressBlock => ({
  upper,
  hip,
  waistAt,
  hipAt,
});
