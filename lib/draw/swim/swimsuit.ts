import type { Drawing, DrawKind, DrawnPiece } from '../drawing.ts';
import { strap } from '../dress/straps.ts';
import {
  clampLength,
  corner,
  type DrawnLength,
  Garment,
  lerp,
  mirrored,
  type Node,
  pen,
  reversed,
} from '../kit/index.ts';
import { blockBelow } from '../lower/colour-block.ts';
import { elasticEdge, legOpening, stretchShade } from './stretch.ts';

const SHORTEST = 54;

const LONGEST = 84;

/** Length of a one-piece from the shoulder to the fork. */
export const swimsuitLength = (piece: Pick<DrawnPiece, 'lengthCm'>): DrawnLength =>
  clampLength(piece.lengthCm, 68, SHORTEST, LONGEST);

/** A one-piece swimsuit: scooped front, straps that cross lower at the back, legs cut high. */
export const swimsuit: DrawKind = (piece, detail) => {
  const garment = new Garment(piece, detail);
  const fork = swimsuitLength(piece).cm;
  const at = (share: number) => fork * share;
  const [bust, waist, hip, gusset] = [17.6, 14.6, 17.4, 3.6];
  const [top, under, waistAt, cut] = [at(0.1), at(0.3), at(0.58), at(0.74)];
  backOfSuit(garment, { bust, hip, fork, under, cut });
  const right: Node[] = [
    ...STRAP_END,
    [12.6, top + 3.4],
    [15, lerp(top, under, 0.8)],
    corner(bust, under),
    [lerp(bust, waist, 0.7), lerp(under, waistAt, 0.55)],
    [waist, waistAt],
    ...legOpening(hip, cut, fork, gusset),
  ];
  const neck: Node[] = [
    [-7.9, 2.4],
    [-7.4, top + 5],
    [-4, top + 10],
    [0, top + 11.4],
    [4, top + 10],
    [7.4, top + 5],
    [7.9, 2.4],
  ];
  garment.panel(
    [
      ...reversed(mirrored(STRAP_END)),
      ...neck,
      ...right,
      [0, fork + 0.8],
      ...reversed(mirrored(right)).slice(0, -STRAP_END.length),
    ],
    {
      round: { from: [-bust, 0], to: [bust, 0], strength: 1 },
      inner: [
        ...blockBelow(garment, waistAt - 4, bust + 4, fork),
        ...stretchShade(garment, waist, under, fork),
        pen(
          [
            [-bust + 1, under + 7],
            [-bust * 0.4, under + 9.4],
            [0, under + 8.4],
            [bust * 0.4, under + 9.4],
            [bust - 1, under + 7],
          ],
          0.26,
          garment.cloth.ink,
          0.5,
          0.5,
        ),
        ...elasticEdge(garment, neck, [1, 0.6]),
        ...([1, -1] as const).flatMap((side) =>
          elasticEdge(
            garment,
            legOpening(hip, cut, fork, gusset).map(([x, y]): Node => [side * x, y]),
            [-0.6, -0.8],
          ),
        ),
      ],
    },
  );
  return suitAnchors(garment, waistAt, fork);
};

/** Where a strap turns over the shoulder. */
const STRAP_END: readonly Node[] = [
  [8.5, 0.6],
  [9.7, 0],
  [10.9, 0.6],
  [11.5, 2.4],
];

const backOfSuit = (
  garment: Garment,
  m: { bust: number; hip: number; fork: number; under: number; cut: number },
): void => {
  const { bust, hip, fork, under, cut } = m;
  for (const side of [-1, 1])
    strap(
      garment,
      [
        [side * 9, 1.4],
        [side * 7.6, 6],
        [side * 7.4, 11],
        [side * 9, under - 3.4],
      ],
      2.6,
      true,
    );
  garment.inside(
    [
      corner(-bust + 0.4, under),
      [-9, under - 4.4],
      [0, under - 2.6],
      [9, under - 4.4],
      corner(bust - 0.4, under),
      corner(0, under + 8),
    ],
    { label: [0, under - 2] },
  );
  // the seat at the back is cut lower than the front's leg
  garment.panel(
    [
      corner(-hip + 0.8, cut + 0.3),
      corner(hip - 0.8, cut + 0.3),
      corner(hip - 0.5, cut + 5),
      [hip * 0.6, lerp(cut, fork, 0.74)],
      corner(3.4, fork),
      corner(-3.4, fork),
      [-hip * 0.6, lerp(cut, fork, 0.74)],
      corner(-hip + 0.5, cut + 5),
    ],
    {
      fill: garment.cloth.lining,
      weave: false,
      edge: 0.6,
      wobble: 0.06,
    },
  );
};

const suitAnchors = (garment: Garment, waistAt: number, fork: number): Drawing =>
  garment
    .anchor('neck', [0, 0])
    .anchor('waist', [0, waistAt])
    .anchor('fork', [0, fork])
    .anchor('hem', [0, fork])
    .finish();
