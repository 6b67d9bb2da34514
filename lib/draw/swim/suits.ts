import type { Detail, Drawing, DrawKind, DrawnPiece } from '../drawing.ts';
import { strap } from '../dress/straps.ts';
import {
  clampLength,
  corner,
  type DrawnLength,
  Garment,
  lerp,
  line,
  mirrored,
  type Node,
  type Painted,
  pen,
  reversed,
  stitch,
} from '../kit/index.ts';
import { blockBelow } from '../lower/colour-block.ts';

const SHORTEST = 54;
const LONGEST = 84;

/** Length of a one-piece from the shoulder to the fork. */
export const swimsuitLength = (piece: Pick<DrawnPiece, 'lengthCm'>): DrawnLength =>
  clampLength(piece.lengthCm, 68, SHORTEST, LONGEST);

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

/** A one-piece swimsuit: scooped front, straps that cross lower at the back, legs cut high. */
export const swimsuit: DrawKind = (piece, detail) => {
  const garment = new Garment(piece, detail);
  const fork = swimsuitLength(piece).cm;
  const at = (share: number) => fork * share;
  const [bust, waist, hip, gusset] = [17.6, 14.6, 17.4, 3.6];
  const [top, under, waistAt, cut] = [at(0.1), at(0.3), at(0.58), at(0.74)];
  backOfSuit(garment, { bust, hip, fork, under, cut });
  const right: Node[] = [
    corner(11.4, top * 0.42),
    [12.6, top + 3.4],
    [15, lerp(top, under, 0.8)],
    corner(bust, under),
    [lerp(bust, waist, 0.7), lerp(under, waistAt, 0.55)],
    [waist, waistAt],
    ...legOpening(hip, cut, fork, gusset),
  ];
  const neck: Node[] = [
    [-8, top * 0.42, 'corner'],
    [-7.4, top + 5],
    [-4, top + 10],
    [0, top + 11.4],
    [4, top + 10],
    [7.4, top + 5],
    [8, top * 0.42, 'corner'],
  ];
  garment.panel(
    [corner(-11.4, top * 0.42), ...neck, ...right, [0, fork + 0.8], ...reversed(mirrored(right)).slice(0, -1)],
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

const backOfSuit = (
  garment: Garment,
  m: { bust: number; hip: number; fork: number; under: number; cut: number },
): void => {
  const { bust, hip, fork, under, cut } = m;
  for (const side of [-1, 1])
    strap(
      garment,
      [
        [side * 9.6, 4.6],
        [side * 9.3, 1],
        [side * 8.8, 6],
        [side * 9.4, under - 3.4],
      ],
      2.4,
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
    { fill: garment.cloth.deep, label: [0, under - 2] },
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
      fill: garment.cloth.deep,
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

/** A cord with its shade and light, as of a bikini's ties. */
const cord = (garment: Garment, nodes: readonly Node[], width = 0.55): void => strap(garment, nodes, width);

/** A bikini: triangle top with its ties, briefs tied at the sides. */
export const bikini: DrawKind = (piece, detail) => {
  const garment = new Garment(piece, detail);
  const j = (amount = 0.6) => garment.jitter(amount);
  cord(garment, [
    [-7.6, 9.6],
    [-7.4, 4],
    [-4.4 + j(), 0.6],
    [1.2, 1.2],
    [4.6 + j(), 5.4],
    [2.6, 8.6],
  ]);
  cord(garment, [
    [7.6, 9.6],
    [8.2, 3.6],
    [5.6 + j(), 0.2],
    [0, 1.6],
    [-3.4, 5],
    [-2.2 + j(), 9.4],
  ]);
  for (const side of [-1, 1])
    cord(garment, [
      [side * 14.4, 24.4],
      [side * 17.6, 23.2 + j()],
      [side * 20.4, 24.4],
      [side * 18.6, 27.4],
      [side * 22 + j(), 29.6],
    ]);
  garment.add(
    line(
      [
        [-14.4, 24.4],
        [0, 25.4],
        [14.4, 24.4],
      ],
      0.9,
      garment.cloth.ink,
    ),
    line(
      [
        [-14.4, 24.3],
        [0, 25.3],
        [14.4, 24.3],
      ],
      0.6,
      garment.cloth.ground,
    ),
  );
  for (const side of [-1, 1] as const) cup(garment, side);
  briefs(garment, 40, { tied: true });
  return garment
    .anchor('neck', [0, 0])
    .anchor('waist', [0, 40])
    .anchor('fork', [0, 62])
    .anchor('hem', [0, 62])
    .finish();
};

const cup = (garment: Garment, side: 1 | -1): void => {
  const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
  garment.panel(
    [s(7.6, 9, 'corner'), s(11.2, 16), s(14.6, 24.6, 'corner'), s(8, 25.6), s(1.4, 25, 'corner'), s(4, 16.4)],
    {
      wobble: 0.08,
      cast: 0.3,
      turn: side * -8,
      round: { from: [side === 1 ? 1 : -15, 0], to: [side === 1 ? 15 : -1, 0], strength: 1 },
      inner: [
        pen([s(8, 17), s(8.2, 21), s(7.6, 25)], 0.28, garment.cloth.ink, 0.55, 0.6),
        ...[-3.6, -1.2, 1.4, 3.8].map((dx) =>
          garment.fold([s(8 + dx * 1.2, 25), s(8 + dx, 22), s(7.8 + dx * 0.7, 19.6)], 0.8 * side, 0.8),
        ),
        ...(garment.small
          ? []
          : [
              line([s(7, 10.5), s(4.6, 16.8), s(2, 24)], 0.16, garment.cloth.ink, 0.4),
              line([s(8.2, 10.5), s(10.7, 16.4), s(13.8, 24)], 0.16, garment.cloth.ink, 0.4),
            ]),
      ],
    },
  );
};

/** Low briefs from `top` down; with ties at the sides, or a cord at the front. */
const briefs = (garment: Garment, top: number, { tied }: { readonly tied: boolean }): void => {
  const hip = tied ? 15.5 : 17;
  const side = tied ? 3.4 : 8.5;
  const fork = top + (tied ? 20 : 23);
  const gusset = tied ? 3.4 : 4.4;
  garment.panel(
    [
      corner(-hip + 0.6, top - 0.6),
      [0, top + 0.2],
      corner(hip - 0.6, top - 0.6),
      corner(hip - 0.3, top + side + 3.4),
      [hip * 0.6, lerp(top + side, fork, 0.74)],
      corner(gusset, fork),
      corner(-gusset, fork),
      [-hip * 0.6, lerp(top + side, fork, 0.74)],
      corner(-hip + 0.3, top + side + 3.4),
    ],
    {
      fill: garment.cloth.deep,
      weave: false,
      edge: 0.6,
      wobble: 0.06,
    },
  );
  if (tied)
    for (const s of [-1, 1]) {
      cord(garment, [
        [s * hip, top + 1.6],
        [s * (hip + 3.4), top - 1.4],
        [s * (hip + 5), top + 1],
        [s * (hip + 0.6), top + 2],
      ]);
      cord(garment, [
        [s * hip, top + 1.8],
        [s * (hip + 2.4), top + 5],
        [s * (hip + 1.8 + garment.jitter(0.6)), top + 9.6],
      ]);
      cord(garment, [
        [s * hip, top + 1.8],
        [s * (hip + 3.6), top + 4.4],
        [s * (hip + 4.4 + garment.jitter(0.6)), top + 8.2],
      ]);
    }
  const right: Node[] = [corner(hip, top), ...legOpening(hip + 0.2, top + side, fork, gusset)];
  garment.panel(
    [corner(-hip, top), [0, top + 1.8], ...right, [0, fork + 0.7], ...reversed(mirrored(right)).slice(0, -1)],
    {
      cast: 0.3,
      round: { from: [-hip, 0], to: [hip, 0], strength: 1 },
      inner: [
        ...stretchShade(garment, hip * 0.9, top + 2, fork),
        ...(garment.small
          ? []
          : [
              stitch(
                [
                  [-hip, top + 1.1],
                  [0, top + 2.9],
                  [hip, top + 1.1],
                ],
                garment.cloth.ink,
                0.5,
              ),
            ]),
        ...([1, -1] as const).flatMap((s) =>
          elasticEdge(
            garment,
            legOpening(hip + 0.2, top + side, fork, gusset).map(([x, y]): Node => [s * x, y]),
            [-0.6, -0.8],
          ),
        ),
        ...(tied ? [] : sideSeams(garment, hip, top, side)),
      ],
    },
  );
};

const sideSeams = (garment: Garment, hip: number, top: number, side: number): Painted[] =>
  [-1, 1].map((s) =>
    pen(
      [
        [s * (hip - 4.6), top],
        [s * (hip - 4.2), top + side * 0.6],
        [s * (hip - 4.4), top + side + 3.6],
      ],
      0.3,
      garment.cloth.ink,
      0.7,
      0.5,
    ),
  );

/** Swim briefs: a broad side, a cord at the waist. */
export const swimBriefs: DrawKind = (piece: DrawnPiece, detail: Detail): Drawing => {
  const garment = new Garment(piece, detail);
  garment.inside([corner(-16.6, 0.6), [0, -0.9], corner(16.6, 0.6), corner(0, 3)], {
    fill: garment.cloth.deep,
    label: [0, -0.2],
  });
  briefs(garment, 0, { tied: false });
  const { accents, bright, depth } = garment.cloth;
  const colour = accents[0] ?? (depth < 0.9 ? '#e9e3d6' : bright);
  for (const [x, low] of [
    [-1.6, 9.6],
    [1.9, 8.4],
  ] as const)
    cordEnd(garment, x, low, colour);
  return garment.anchor('waist', [0, 1]).anchor('fork', [0, 23]).anchor('hem', [0, 23]).finish();
};

const cordEnd = (garment: Garment, x: number, low: number, colour: string): void => {
  const run: Node[] = [
    [Math.sign(x) * 0.7, 2.6],
    [x * 0.6, 4.4],
    [x, low],
  ];
  garment.add(
    line(
      run.map(([a, y]): Node => [a + 0.2, y + 0.25]),
      0.6,
      garment.cloth.ink,
      0.5,
    ),
    line(run, 0.5, colour),
  );
};
