import { corner, type Garment } from '../kit/index.ts';
import type { UpperShape } from '../upper/shape.ts';

/** The inside of the back neck, seen through the opening of a collar. */
export const collarInside = ({ garment, upper }: { readonly garment: Garment; readonly upper: UpperShape }): void => {
  const half = upper.neck / 2;
  garment.inside(
    [
      corner(-half - 0.5, 0.2),
      [-half * 0.5, -2.6],
      [0, -3],
      [half * 0.5, -2.6],
      corner(half + 0.5, 0.2),
      corner(0, upper.neckDepth + 2),
    ],
    {
      label: [0, -0.8],
    },
  );
};
