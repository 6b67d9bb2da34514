import type { Cloth } from '../fabric/index.ts';
import { shape as flat, type Garment, line, type Node, pen, stitch } from '../kit/index.ts';
import { both } from './collars.ts';
import { beside } from './finish.ts';
import type { UpperShape } from './shape.ts';
/** A hood that lies up behind the neck, its mouth open, with cords. Draw `hoodBack` first, `hoodFront` at the end. */
export const hoodBack = (garment: Garment, shape: UpperShape, size = 1, cloth = garment.cloth): void => {
  const half = shape.neck / 2;
  const w = (half + 6.2) * size;
  const h = 25 * size;
  const outline: Node[] = [
    [-half - 1, 2.6, 'corner'],
    [-w * 0.98, -h * 0.28],
    [-w * 0.92, -h * 0.68],
    [-w * 0.5, -h * 0.97],
    [0.6, -h * 1.03],
    [w * 0.52, -h * 0.96],
    [w * 0.94, -h * 0.66],
    [w * 0.98, -h * 0.26],
    [half + 1, 2.6, 'corner'],
    [0, 5],
  ];
  garment.panel(outline, {
    cloth,
    round: { from: [-w, 0], to: [w, 0], strength: 0.9 },
    inner: [
      garment.fold(
        [
          [-w * 0.9, -h * 0.5],
          [-w * 0.74, -h * 0.76],
          [-w * 0.3, -h * 0.9],
        ],
        1.4,
        0.6,
      ),
      garment.fold(
        [
          [w * 0.9, -h * 0.3],
          [w * 0.8, -h * 0.62],
          [w * 0.5, -h * 0.84],
        ],
        -1.6,
        0.7,
      ),
      pen(
        [
          [0.4, -h],
          [0.7, -h * 0.86],
        ],
        0.2,
        cloth.ink,
        0.6,
      ),
    ],
  });
};

export const hoodFront = (
  garment: Garment,
  shape: UpperShape,
  options: {
    readonly size?: number;
    readonly cords?: boolean;
    readonly fur?: string;
    readonly meet?: number;
    readonly cloth?: Cloth;
  } = {},
): void => {
  const cloth = options.cloth ?? garment.cloth;
  const size = options.size ?? 1;
  const half = shape.neck / 2;
  const w = (half + 6.2) * size;
  const h = 25 * size;
  const meet = options.meet ?? shape.neckDepth;
  const mouth: Node[] = [
    [0, meet + 1, 'corner'],
    [-half * 0.72, meet * 0.3],
    [-w * 0.66, -h * 0.3],
    [-w * 0.6, -h * 0.6],
    [-w * 0.3, -h * 0.79],
    [0.4, -h * 0.83],
    [w * 0.34, -h * 0.78],
    [w * 0.62, -h * 0.58],
    [w * 0.66, -h * 0.28],
    [half * 0.72, meet * 0.3],
  ];
  garment.inside(mouth, { fill: cloth.lining, label: [0, -h * 0.02] });
  garment.add(
    garment.fold(
      [
        [0.3, -h * 0.8],
        [1, -h * 0.4],
        [0.2, -h * 0.06],
      ],
      2,
      0.7,
      0.5,
    ),
    garment.plane(
      [
        [-w * 0.4, -h * 0.7],
        [-w * 0.5, -h * 0.3],
        [-half * 0.5, 0],
      ],
      1.8,
      cloth.ink,
      0.25,
    ),
  );
  // the two sides fold forward and cross at the throat
  both((side) => {
    const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
    garment.panel(
      [
        s(-0.6, meet + 1.6, 'corner'),
        s(half * 0.66, meet * 0.24),
        s(w * 0.64, -h * 0.32),
        s(w * 0.6, -h * 0.58, 'corner'),
        s(w * 0.9, -h * 0.4),
        s(w * 0.96, -h * 0.18),
        s(half + 2.4, 2.4),
        s(half + 1, 5),
        s(half * 0.5, meet + 2.4, 'corner'),
      ],
      {
        cloth,
        cast: 0.7,
        edge: 0.7,
        wobble: 0.1,
        turn: side * 25,
        inner: garment.small
          ? []
          : [
              stitch(
                beside(
                  [s(-0.2, meet + 1), s(half * 0.66, meet * 0.24), s(w * 0.64, -h * 0.32), s(w * 0.62, -h * 0.56)],
                  side * -1.7,
                ),
                cloth.ink,
                0.6,
              ),
              garment.fold([s(half + 1.6, 2), s(half * 0.9, -h * 0.08), s(w * 0.74, -h * 0.24)], 1.2 * side, 0.6),
            ],
      },
    );
  });
  if (options.fur) furEdge(garment, [...mouth.slice(1), mouth[0] ?? [0, 0]], options.fur);
  if (options.cords) cords(garment, half * 0.42, meet);
};

const furEdge = (garment: Garment, run: readonly Node[], colour: string): void => {
  const arch = run.slice(0, -1);
  const ragged = beside(arch, 0, garment.small ? 14 : 34);
  const tufts = (reach: number): Node[] => {
    const outer = beside(arch, reach, garment.small ? 14 : 34).map(
      ([x, y], i): Node => [x + garment.jitter(0.5), y + garment.jitter(0.5) + (i % 2 ? 0.5 : -0.5)],
    );
    return [...ragged, ...outer.reverse()];
  };
  for (const [reach, opacity] of [
    [-3.4, 1],
    [-2, 0.5],
    [2.2, 0.9],
  ] as const)
    garment.add(flat(tufts(reach), colour, opacity));
};

const cords = (garment: Garment, x: number, y: number): void => {
  const { cloth } = garment;
  both((side) => {
    const run: Node[] = [
      [side * x, y + 1.8],
      [side * (x + 0.5), y + 7],
      [side * (x - 0.2 + garment.jitter(0.5)), y + 14 + side * 1.2],
    ];
    garment.add(
      line(
        run.map(([a, b]) => [a + 0.2, b + 0.25]),
        0.62,
        cloth.ink,
        0.4,
      ),
      line(run, 0.6, cloth.deep),
      line(run, 0.42, cloth.bright),
    );
  });
};
