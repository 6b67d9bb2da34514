import { type Garment, type Node, stitch } from '../kit/index.ts';
import { placket } from './closures.ts';
import { seamLine } from './seams.ts';
import type { UpperShape } from './shape.ts';

export const COAT: UpperShape = {
  chest: 55,
  waist: 55,
  hem: 67,
  length: 110,
  shoulder: 44,
  slope: 4.6,
  armhole: 25,
  neck: 17,
  neckDepth: 30,
  hemDip: 1.8,
  blouse: 0,
  sleeve: { length: 62, elbow: 18, cuff: 14.5, upper: 18, fore: 5 },
};

export const JACKET: UpperShape = {
  ...COAT,
  chest: 56,
  waist: 55.5,
  hem: 56.5,
  length: 71,
  shoulder: 46,
  slope: 5,
  armhole: 25.5,
  neck: 16.5,
  neckDepth: 7,
  hemDip: 0.6,
  sleeve: { length: 60, elbow: 18, cuff: 12, upper: 22, fore: 8 },
};

/** A flap over the zip, closed by snaps. */
export const stormFlap = (
  garment: Garment,
  shape: UpperShape,
  width: number,
  snaps: number,
  until = shape.length - 1,
): void => {
  placket(garment, shape, {
    width,
    buttons: snaps,
    radius: 0.6,
    colour: garment.cloth.deep,
    until,
    from: shape.neckDepth - 3,
  });
};

export const yoke = (garment: Garment, shape: UpperShape, y: number, dip = 1.4): void => {
  const half = Math.min(shape.shoulder, shape.chest) / 2 - 0.6;
  const run: Node[] = [
    [-half, y],
    [0, y + dip],
    [half, y],
  ];
  garment.add(
    seamLine(garment, run, 0.7),
    ...(garment.small
      ? []
      : [
          stitch(
            run.map(([x, at]): Node => [x, at + 0.7]),
            garment.cloth.ink,
            0.5,
          ),
        ]),
  );
};
