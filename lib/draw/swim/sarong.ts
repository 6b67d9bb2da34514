import type { DrawKind } from '../drawing.ts';
import { corner, Garment, lerp, line, type Node, type Painted, pen, shape } from '../kit/index.ts';
import { backOfHem, hangSkirt, type Skirt } from '../lower/skirt.ts';
import { skirtFlutes, skirtShade } from '../lower/skirt-folds.ts';
import { hemWidth, skirtLength } from '../lower/skirt-measures.ts';

const KNOT = -0.3;

/** A sarong: a square of thin cloth wrapped round the hip and knotted, its corner hanging, its edge fringed. */
export const sarong: DrawKind = (piece, detail) => {
  const garment = new Garment(piece, detail);
  const length = skirtLength(piece).cm;
  const hip = 47;
  const skirt = hangSkirt(garment, {
    waist: 40,
    hip,
    hem: hemWidth(piece.cut, hip, length - 20),
    top: 1.6,
    hipAt: Math.min(18, length * 0.5),
    bottom: length,
    band: 0,
  });
  const x = 40 * KNOT;
  garment.inside([corner(-19.6, 2), [0, 0.2], corner(19.6, 2), corner(0, 6)], { fill: garment.cloth.lining });
  backOfHem(skirt);
  const outline = skirt.outline.map(
    ([a, y, c], i): Node => (i === 0 ? [a, y - 0.4, c] : i === 1 ? [a, y + 0.2, c] : [a, y, c]),
  );
  const edge: Node[] = [
    [x + 1, 4],
    [x + 5, lerp(4, length, 0.35)],
    [x + 13, lerp(4, length, 0.75)],
    [x + 17, length + 2],
  ];
  garment.panel(outline, {
    round: { from: [-hip / 2, 0], to: [hip / 2, 0], strength: 0.7 },
    inner: [
      ...skirtShade(skirt),
      shape(
        [...edge, corner(x + 2, length + 2), corner(x - 4, length * 0.5), corner(x - 1, 4)],
        garment.cloth.ink,
        0.14,
      ),
      ...swags(skirt, x),
      garment.plane(
        edge.map(([a, y]): Node => [a - 1, y]),
        1.5,
        garment.cloth.ink,
        0.55,
        0.6,
      ),
      pen(edge, 0.44, garment.cloth.ink, 0.9, 0.6),
      garment.plane(
        edge.map(([a, y]): Node => [a + 0.9, y]),
        0.5,
        garment.cloth.bright,
        0.6,
        0.6,
      ),
      ...skirtFlutes(skirt, 0.8),
    ],
  });
  fringe(skirt);
  rolledTop(garment);
  knot(garment, x, length);
  return garment
    .anchor('waist', [0, 2])
    .anchor('left waist', [-20, 2])
    .anchor('right waist', [20, 2])
    .anchor('hem', [0, length])
    .finish();
};

/** Swags that hang from the knot across the hip. */
const swags = ({ garment, at, measures: { length } }: Skirt, x: number): Painted[] =>
  [0.5, 0.72, 0.9, 0.98].map((share, i) => {
    const end = 8 + i * Math.min(15, length * 0.17);
    return garment.fold(
      [
        [x + 2, 4.6 + i * 0.8],
        [at(share - 0.2)(end), lerp(6, end, 0.62) + 2],
        [at(share)(end), end],
      ],
      -2.3,
      0.95 - i * 0.1,
      0.35,
    );
  });

const fringe = ({ garment, at, hemAt }: Skirt): void => {
  const count = garment.small ? 14 : 52;
  let path = '';
  for (let i = 0; i <= count; i++) {
    const share = i / count;
    const y = hemAt(share) - 0.2;
    const x = at(share)(y);
    path += `M${x.toFixed(2)} ${y.toFixed(2)}L${(x + garment.jitter(0.35)).toFixed(2)} ${(y + 2.2 + garment.jitter(0.4)).toFixed(2)}`;
  }
  garment.add(line(path, garment.small ? 0.4 : 0.26, garment.cloth.deep), line(path, 0.14, garment.cloth.light));
};

const rolledTop = (garment: Garment): void => {
  garment.panel(
    [
      corner(-20.2, 0.6),
      [-8, 2],
      [8, 2.2],
      corner(20.2, 0.8),
      corner(20.4, 3.6),
      [8, 5],
      [-8, 4.8],
      corner(-20.4, 3.4),
    ],
    {
      edge: 0.6,
      cast: 0.6,
      wobble: 0.12,
      turn: 80,
      inner: [
        garment.fold(
          [
            [-16, 2.2],
            [-2, 3.8],
            [14, 3.2],
          ],
          0.9,
          0.9,
          0.5,
        ),
        garment.fold(
          [
            [18, 1.8],
            [6, 3.4],
            [-4, 3.2],
          ],
          -0.8,
          0.8,
          0.5,
        ),
      ],
    },
  );
};

const knot = (garment: Garment, x: number, length: number): void => {
  const drop = Math.min(30, length * 0.42);
  const tail = (dx: number, dy: number, wide: number): Node[] => [
    corner(x - 0.6, 3),
    [x + dx * 0.4 - wide * 0.5, 3 + dy * 0.5],
    corner(x + dx - wide, 3 + dy * 0.92),
    corner(x + dx + wide * 0.5, 3 + dy),
    [x + dx * 0.5 + wide * 0.7, 3 + dy * 0.5],
    corner(x + 1, 3),
  ];
  for (const [dx, dy, wide] of [
    [-7, drop, 4.2],
    [4.6, drop * 0.74, 3.6],
  ] as const)
    garment.panel(tail(dx, dy, wide), {
      edge: 0.6,
      cast: 0.8,
      wobble: 0.1,
      turn: dx * 2,
      inner: [
        garment.fold(
          [
            [x, 4],
            [x + dx * 0.4, 3 + dy * 0.5],
            [x + dx * 0.8, 3 + dy],
          ],
          1.4,
          1,
        ),
        garment.fold(
          [
            [x + 0.5, 4],
            [x + dx * 0.5 + 1, 3 + dy * 0.5],
            [x + dx + wide * 0.3, 3 + dy],
          ],
          -1.1,
          0.8,
        ),
      ],
    });
  garment.panel(
    [
      corner(x - 3, 0.8),
      [x - 0.6, 0.2],
      corner(x + 2.2, 0.4),
      [x + 2.9, 2.8],
      corner(x + 1.7, 5.6),
      [x - 0.4, 5],
      corner(x - 2.4, 6),
      [x - 2.9, 3.4],
    ],
    {
      edge: 0.7,
      cast: 0.7,
      wobble: 0.1,
      turn: 40,
      inner: [
        garment.fold(
          [
            [x - 1.8, 1],
            [x - 0.4, 3],
            [x - 0.8, 5.4],
          ],
          1,
          1,
          0.5,
        ),
        garment.fold(
          [
            [x + 0.8, 0.6],
            [x + 1.4, 2.8],
            [x + 0.2, 5],
          ],
          0.9,
          0.9,
          0.5,
        ),
      ],
    },
  );
};
