import type { Detail, Drawing, DrawKind, DrawnPiece } from '../drawing.ts';
import { corner, Garment, lerp, line, mirrored, type Node, type Painted, pen, reversed, stitch } from '../kit/index.ts';
import { cord } from './bikini.ts';
import { elasticEdge, legOpening, stretchShade } from './stretch.ts';

/** Low briefs from `top` down; with ties at the sides, or a cord at the front. */
export const briefs = (garment: Garment, top: number, { tied }: { readonly tied: boolean }): void => {
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
      fill: garment.cloth.lining,
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
    fill: garment.cloth.lining,
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
