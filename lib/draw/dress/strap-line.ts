import { corner, type Garment, lerp, type Node } from '../kit/index.ts';
import { fallenCord } from '../upper/fallen-cord.ts';
import type { UpperShape } from '../upper/shape.ts';
import type { Dress, TopLine } from './frame.ts';
import { CORD, strap } from './straps.ts';

/** The inside of the back, seen above the front's edge. */
export const backInside = ({ garment, upper }: Dress, top: number, deep: number, label = true): void => {
  const half = upper.chest / 2 - 0.6;
  garment.inside(
    [
      corner(-half, upper.armhole + 0.9),
      [-half * 0.58, top + 0.8],
      [0, top],
      [half * 0.58, top + 0.8],
      corner(half, upper.armhole + 0.9),
      corner(0, deep + 3),
    ],
    { fill: garment.cloth.lining, ...(label && { label: [0, top + 0.8] as const }) },
  );
};

/** Rising from the underarm to a point where a strap is sewn on, `x` from the middle at height `y`. */
export const strapPoint = ({ chest, armhole }: UpperShape, x: number, y: number, neck: Node[]): TopLine => ({
  neck,
  right: [
    corner(x, y),
    [lerp(x, chest / 2, 0.4), lerp(y, armhole, 0.5)],
    [lerp(x, chest / 2, 0.72), lerp(y, armhole, 0.84)],
    corner(chest / 2, armhole),
  ],
});

/** Both straps of a pair, over the shoulder: front ones from the garment's edge, back ones behind it. */
export const straps = (garment: Garment, x: number, y: number, width: number, behind: boolean): void => {
  for (const side of [-1, 1] as const) {
    if (width <= CORD) {
      strap(garment, fallenCord(side, x, y, behind), width, behind);
      continue;
    }
    const apex = side * (x - 1.6) + side * garment.jitter(0.4);
    const end: Node[] = behind
      ? [
          [side * (x + 0.4), y + 6.5],
          [side * (x - 1.2) + 0.9, y * 0.5],
          [apex + 1.2, 1.6],
          [apex + 0.7, 0.2],
        ]
      : [
          [side * x, y + 0.6],
          [side * (x - 0.5), y * 0.5],
          [apex - 0.1, 2.2],
          [apex + 0.3, 0.1],
        ];
    strap(garment, end, width, behind);
  }
};
