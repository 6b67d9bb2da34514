import { corner, lerp, type Node, type Painted, pen } from '../kit/index.ts';
import { skirtShade } from '../lower/skirt-folds.ts';
import { skirtHemStitch } from '../lower/skirt-parts.ts';
import { armBinding } from '../upper/finish.ts';
import { neckInside } from '../upper/necklines.ts';
import type { UpperShape } from '../upper/shape.ts';
import { block, upperBlock } from './blocks.ts';
import { bodiceShade, type DressDesign } from './draw.ts';
import { type Dress, shoulderLine } from './frame.ts';

/** Cocktail dress: heart-shaped neckline, folds swept from a knot at the waist. */
export const cocktail: DressDesign = {
  block: block(
    upperBlock({ chest: 42, waist: 34, shoulder: 36, armhole: 21.5, neck: 24, neckDepth: 16.5, sleeve: undefined }),
    45.5,
    38,
    58,
  ),
  line: shoulderLine((upper) => heartNeck(upper), 2.6),
  scoop: 2.6,
  beneath: (d) => neckInside(d.garment, { ...d.upper, neckDepth: d.upper.neckDepth + 1.5 }, 'square', -2.6, false),
  waistSeam: false,
  backHem: false,
  roundness: 1,
  onBodice: (d) => [...bodiceShade(d, 0.4), ...bustPleats(d)],
  onSkirt: (d) => [...skirtShade(d.skirt), ...ruching(d), skirtHemStitch(d.skirt, 1, d.garment.cloth.ink, 0.4)],
  over: (d) => {
    const { garment, upper } = d;
    const edge: Node[] = [[-upper.neck / 2, 0], ...heartNeck(upper), [upper.neck / 2, 0]];
    garment.add(
      pen(
        edge.map(([x, y]): Node => [x, y + 0.1]),
        0.34,
        garment.cloth.ink,
        0.75,
        0.5,
      ),
    );
    armBinding(garment, upper, 2.6);
    gatherKnot(d);
  },
};

/** A wide neckline that comes down in two arcs. */
const heartNeck = ({ neck, neckDepth }: UpperShape): Node[] => [
  [-neck * 0.44, neckDepth * 0.5],
  [-neck * 0.36, neckDepth * 0.78, 'corner'],
  [-neck * 0.2, neckDepth * 0.8],
  [0, neckDepth, 'corner'],
  [neck * 0.2, neckDepth * 0.8],
  [neck * 0.36, neckDepth * 0.78, 'corner'],
  [neck * 0.44, neckDepth * 0.5],
];

/** Small pleats below the arcs of the neckline. */
const bustPleats = ({ garment, upper: { neck, neckDepth } }: Dress): Painted[] =>
  [-1, 1].flatMap((side) =>
    [0.1, 0.24].map((share, i) =>
      garment.fold(
        [
          [side * neck * share, neckDepth * 0.9 - i * 1.4],
          [side * neck * (share + 0.03), neckDepth + 4],
          [side * neck * (share + 0.1), neckDepth + 9 - i * 2],
        ],
        1.1 * side,
        0.75,
      ),
    ),
  );

/** Folds gathered into the left side seam at the waist, which sweep across the hips. */
const ruching = ({ garment, waistAt, skirt: { at, measures } }: Dress): Painted[] =>
  [0, 1, 2, 3, 4, 5].map((i) => {
    const y = waistAt - 1.5 + i * 2.2;
    const end = lerp(waistAt - 9, waistAt + 34, i / 5);
    const far = 0.94 - Math.abs(i - 2) * 0.05;
    return garment.fold(
      [
        [at(0.03)(y), y],
        [at(0.36)(lerp(y, end, 0.34)), lerp(y, end, 0.3)],
        [at(far)(Math.min(end, measures.length - 8)), Math.min(end, measures.length - 8)],
      ],
      i < 2 ? 1.6 : -1.9,
      0.85 - i * 0.05,
      0.3,
    );
  });

const gatherKnot = ({ garment, waistAt, skirt: { left } }: Dress): void => {
  const x = left(waistAt + 4) + 1.6;
  garment.panel(
    [
      corner(x - 1.8, waistAt - 0.8),
      [x, waistAt - 1.5],
      corner(x + 1.9, waistAt - 0.4),
      [x + 1.5, waistAt + 2.8],
      corner(x + 2, waistAt + 6.4),
      [x, waistAt + 7.1],
      corner(x - 1.6, waistAt + 6.6),
      [x - 1.2, waistAt + 3],
    ],
    {
      covers: false,
      edge: 0.5,
      cast: 0.5,
      wobble: 0.06,
      turn: 50,
      inner: [-0.8, 0.6].map((dx) =>
        garment.fold(
          [
            [x + dx, waistAt - 0.6],
            [x + dx * 1.4, waistAt + 3],
            [x + dx, waistAt + 6.6],
          ],
          0.8,
          0.9,
          0.5,
        ),
      ),
    },
  );
};
