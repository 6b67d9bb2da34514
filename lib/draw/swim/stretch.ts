import { corner, type Garment, lerp, line, type Node, type Painted } from '../kit/index.ts';

/** Right edge of the leg from the hip to the gusset; `cut` is how high it stands at the side. */
export const legOpening = (hip: number, cut: number, fork: number, gusset: number): Node[] => [
  corner(hip, cut),
  [lerp(hip, gusset, 0.46), lerp(cut, fork, 0.26)],
  [lerp(hip, gusset, 0.84), lerp(cut, fork, 0.64)],
  corner(gusset, fork),
];

/** A narrow elastic edge with its two rows of stitching. */
export const elasticEdge = (garment: Garment, nodes: readonly Node[], into: readonly [number, number]): Painted[] => {
  const moved = (by: number): Node[] =>
    nodes.map(([x, y]): Node => [x + Math.sign(x || into[0]) * into[0] * by, y + into[1] * by]);
  if (garment.small) return [];
  return [line(moved(0.75), 0.16, garment.cloth.ink, 0.4), line(moved(0.45), 0.22, garment.cloth.bright, 0.5)];
};

/** Stretch cloth lies smooth: a sheen down one side, a few tight pulls across. */
export const stretchShade = (garment: Garment, half: number, from: number, to: number): Painted[] => {
  const { bright, ink, sheen, depth } = garment.cloth;
  const side = garment.random() > 0.5 ? 1 : -1;
  const mid = lerp(from, to, 0.5);
  return [
    garment.plane(
      [
        [-half * 0.42, from - 2],
        [-half * 0.34, mid],
        [-half * 0.4, to + 2],
      ],
      half * 0.2,
      bright,
      0.42 * sheen,
    ),
    garment.plane(
      [
        [half * 0.56, from],
        [half * 0.5, mid],
        [half * 0.54, to],
      ],
      half * 0.2,
      ink,
      0.3 * depth,
    ),
    garment.fold(
      [
        [side * half * 0.98, lerp(from, to, 0.4)],
        [side * half * 0.5, lerp(from, to, 0.45)],
        [side * half * 0.05, lerp(from, to, 0.43)],
      ],
      1.5 * side,
      0.5,
    ),
    garment.fold(
      [
        [-side * half * 0.98, lerp(from, to, 0.56)],
        [-side * half * 0.55, lerp(from, to, 0.63)],
        [-side * half * 0.1, lerp(from, to, 0.68)],
      ],
      -1.6 * side,
      0.5,
    ),
  ];
};
