import type { Cloth } from '../fabric/index.ts';
import {
  shape as flat,
  type Garment,
  line,
  mirrored,
  type Node,
  type Painted,
  pen,
  ribsBetween,
  stitch,
} from '../kit/index.ts';
import { bandNodes, beside } from './finish.ts';
import type { UpperShape } from './shape.ts';

const both = (draw: (side: 1 | -1) => void): void => {
  draw(-1);
  draw(1);
};

export interface ShirtCollar {
  /** How far the points reach below the neck points. */
  readonly points?: number;
  /** How far the points turn outwards: 0 for a straight collar, 2 for a spread one. */
  readonly spread?: number;
  /** Height of the stand at the back. */
  readonly stand?: number;
  readonly cloth?: Cloth;
  readonly stitched?: boolean;
  readonly buttonDown?: boolean;
}

/** A turned-down collar on a stand: shirts, overshirts, trench coats. */
export const shirtCollar = (garment: Garment, shape: UpperShape, options: ShirtCollar = {}): void => {
  const cloth = options.cloth ?? garment.cloth;
  const half = shape.neck / 2;
  const deep = shape.neckDepth;
  const points = options.points ?? 9.5;
  const spread = options.spread ?? 0.8;
  const stand = options.stand ?? 3.6;
  garment.panel(
    [
      [-half - 0.2, -stand * 0.5, 'corner'],
      [-half * 0.5, -stand],
      [half * 0.5, -stand],
      [half + 0.2, -stand * 0.5, 'corner'],
      [half - 1.4, 0.2, 'corner'],
      [0, -stand * 0.32],
      [-half + 1.4, 0.2, 'corner'],
    ],
    { cloth, edge: 0.5, turn: 90, fill: cloth.shade, wobble: 0.06 },
  );
  both((side) => {
    const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
    const leaf: Node[] = [
      s(0.5, deep - 0.8, 'corner'),
      s(half * 0.6, 2.6),
      s(half - 1.5, -stand * 0.2),
      s(half - 0.1, -stand * 0.78, 'corner'),
      s(half + 2.3, 0.4),
      s(half + 2.2 + spread * 0.5, points * 0.5),
      s(half + 0.6 + spread, points, 'corner'),
      s(half * 0.52, Math.max(points - 1.2, deep + 0.6)),
    ];
    garment.panel(leaf, {
      cloth,
      turn: side * 38,
      edge: 0.6,
      wobble: 0.08,
      cast: 0.85,
      round: { from: [side * half - 4, 0], to: [side * half + 4, 4], strength: 0.4 },
      inner:
        options.stitched === false || garment.small
          ? []
          : [
              stitch(
                [
                  s(1.4, deep - 0.2),
                  s(half * 0.55, Math.max(points - 1.9, deep)),
                  s(half + 0.2 + spread, points - 0.9, 'corner'),
                  s(half + 1.5 + spread * 0.5, points * 0.5),
                  s(half + 1.6, 0.8),
                  s(half, -stand * 0.6),
                ],
                cloth.ink,
                0.7,
              ),
            ],
    });
    if (options.buttonDown) garment.button(side * (half + 0.2 + spread), points - 1.2, 0.4, cloth.bright);
  });
};

/** A tube of cloth that stands and is folded down: a roll-neck. */
export const rollCollar = (garment: Garment, shape: UpperShape, height: number, ribbed: boolean): void => {
  const { cloth } = garment;
  const w = shape.neck / 2 - 0.2;
  const top = -height * 0.6;
  const low = height * 0.4;
  const tube: Node[] = [
    [-w, top + 1, 'corner'],
    [-w - 0.8, top * 0.5],
    [-w - 0.7, 0.4],
    [-w - 1, low * 0.45],
    [-w - 0.2, low * 0.7],
    [-w * 0.5, low],
    [w * 0.45, low + 0.2],
    [w + 0.1, low * 0.72],
    [w + 1, low * 0.44],
    [w + 0.8, 0.4],
    [w + 1, top * 0.5],
    [w, top + 1, 'corner'],
    [w * 0.5, top - 0.1],
    [-w * 0.5, top - 0.2],
  ];
  const left: Node[] = [
    [-w, top - 1],
    [-w * 1.1, top * 0.2],
    [-w * 1.14, low + 1.5],
  ];
  const right = mirrored(left);
  const ribs: Painted[] = ribbed ? [ribsBetween(left, right, 25, cloth, { dark: 0.22, small: garment.small })] : [];
  garment.panel(tube, {
    cast: 1.1,
    round: { from: [-w - 1, 0], to: [w + 1, 0], strength: 1 },
    inner: [
      ...ribs,
      garment.fold(
        [
          [-w * 0.95, top * 0.42],
          [-w * 0.2, top * 0.16],
          [w * 0.5, top * 0.24],
        ],
        1.5,
        0.75,
      ),
      garment.fold(
        [
          [w, top * 0.7],
          [w * 0.4, top * 0.54],
          [-w * 0.1, top * 0.58],
        ],
        -1.2,
        0.6,
      ),
      garment.plane(
        [
          [-w, top + 2.2],
          [0, top + 2.8],
          [w, top + 2.2],
        ],
        0.9,
        cloth.bright,
        0.5,
      ),
    ],
  });
  garment.inside(
    [
      [-w + 0.5, top + 0.75, 'corner'],
      [-w * 0.5, top - 0.5],
      [w * 0.5, top - 0.45],
      [w - 0.5, top + 0.75, 'corner'],
      [w * 0.5, top + 1.5],
      [-w * 0.5, top + 1.55],
    ],
    { fill: cloth.deep },
  );
};

/** A standing band closed or open in front: funnel necks, zipped jackets. `gap` is its opening at the top. */
export const standCollar = (
  garment: Garment,
  shape: UpperShape,
  height: number,
  options: { readonly gap?: number; readonly ribs?: boolean; readonly cloth?: Cloth; readonly quilted?: number } = {},
): void => {
  const cloth = options.cloth ?? garment.cloth;
  const half = shape.neck / 2;
  const deep = shape.neckDepth;
  const gap = options.gap ?? 3;
  const top = -height * 0.62;
  // the far side, then the two halves that meet in front
  garment.panel(
    [
      [-half - 0.2, 0.4, 'corner'],
      [-half * 0.95, top * 0.9],
      [-half * 0.4, top - 0.7],
      [half * 0.4, top - 0.7],
      [half * 0.95, top * 0.9],
      [half + 0.2, 0.4, 'corner'],
      [0, deep * 0.7, 'corner'],
    ],
    { cloth, fill: cloth.lining, weave: false, edge: 0.6, wobble: 0.06 },
  );
  both((side) => {
    const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
    const edgeIn: Node[] = [s(0, deep + 0.6), s(gap * 0.5, top * 0.55 + 2.4)];
    const edgeOut: Node[] = [s(half + 1.4, 1.4), s(half * 0.98, top * 0.95)];
    garment.panel(
      [
        s(0, deep + 0.6, 'corner'),
        s(gap * 0.3, deep * 0.3),
        s(gap * 0.5, top * 0.55 + 2.4, 'corner'),
        s(half * 0.62, top * 0.9 + 1.2),
        s(half * 0.98, top * 0.95, 'corner'),
        s(half + 1, -0.6),
        s(half + 1.4, 1.6, 'corner'),
        s(half * 0.62, deep * 0.78),
      ],
      {
        cloth,
        edge: 0.6,
        wobble: 0.06,
        cast: 0.5,
        turn: side * 20,
        round: { from: [side === 1 ? 0 : -half - 1, 0], to: [side === 1 ? half + 1 : 0, 0], strength: 0.5 },
        inner: [
          ...(options.ribs ? [ribsBetween(edgeIn, edgeOut, 10, cloth, { dark: 0.26, small: garment.small })] : []),
          ...Array.from({ length: options.quilted ?? 0 }, (_, i): Painted => {
            const t = (i + 1) / ((options.quilted ?? 0) + 1);
            return pen(
              [
                s(gap * 0.4 * t, deep + (top * 0.55 + 2.4 - deep) * t),
                s(half * 0.7, 2.4 + (top - 1.4) * t),
                s(half + 1.3, 1.4 + (top - 1.4) * t),
              ],
              0.34,
              cloth.ink,
              0.7,
              0.5,
            );
          }),
        ],
      },
    );
  });
};

/** A shaped collar that falls flat to the shoulders: pea coats, denim and leather jackets, fleece. */
export const flatCollar = (
  garment: Garment,
  shape: UpperShape,
  options: {
    readonly points?: number;
    readonly wide?: number;
    readonly cloth?: Cloth;
    readonly stitched?: boolean;
  } = {},
): void =>
  shirtCollar(garment, shape, {
    points: options.points ?? 10,
    spread: options.wide ?? 2.6,
    stand: 3.2,
    ...(options.cloth && { cloth: options.cloth }),
    ...(options.stitched !== undefined && { stitched: options.stitched }),
  });

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

/** A narrow standing band that ends in long ties knotted to a bow. */
export const bowCollar = (garment: Garment, shape: UpperShape): void => {
  const { cloth } = garment;
  const half = shape.neck / 2;
  const y = shape.neckDepth;
  const band: Node[] = [
    [-half, -0.4],
    [-half * 0.8, y * 0.4],
    [0, y],
    [half * 0.8, y * 0.4],
    [half, -0.4],
  ];
  garment.panel(bandNodes(band, 2, -1.4), { edge: 0.5, cast: 0.5, turn: 60, covers: false });
  both((side) => {
    const s = (x: number, dy: number, c?: 'corner'): Node => [side * x, y + dy, c];
    const long = side === 1 ? 29 : 24;
    garment.panel(
      [
        s(0.1, 0.4, 'corner'),
        s(2.6, 8),
        s(2.4 + side * 0.5, long * 0.6),
        s(5.4, long, 'corner'),
        s(1.2, long + 2.4, 'corner'),
        s(-0.2, long * 0.55),
        s(-1, 7),
      ],
      {
        cast: 0.8,
        edge: 0.6,
        turn: side * 8,
        inner: [garment.fold([s(0.8, 1), s(1.3, 10), s(2.4, long - 3)], -1 * side, 0.9)],
      },
    );
  });
  both((side) => {
    const s = (x: number, dy: number, c?: 'corner'): Node => [side * x, y + dy, c];
    const wide = side === 1 ? 14 : 13;
    const drop = side === 1 ? 1.2 : 0.4;
    garment.panel(
      [
        s(0.2, -0.9, 'corner'),
        s(4, -3),
        s(wide * 0.78, -4.6 + drop),
        s(wide, -0.6 + drop),
        s(wide * 0.86, 4.6 + drop),
        s(5, 3),
        s(0.2, 1.1, 'corner'),
      ],
      {
        cast: 0.9,
        edge: 0.7,
        turn: side * 70,
        inner: [
          garment.fold([s(0.6, -0.2), s(5, -0.9), s(wide * 0.7, -1.8 + drop)], -1.2 * side, 1),
          garment.fold([s(0.6, 0.6), s(4.6, 1.2), s(wide * 0.62, 2.6 + drop)], 1 * side, 0.8),
          garment.plane(
            [s(wide * 0.72, -3.4 + drop), s(wide * 0.82, 0.4 + drop), s(wide * 0.74, 3.6 + drop)],
            1.1,
            cloth.ink,
            0.3,
          ),
        ],
      },
    );
  });
  garment.panel(
    [
      [-1.7, y - 1.6],
      [1.7, y - 1.7],
      [1.9, y + 1.7],
      [-1.8, y + 1.9],
    ],
    {
      cast: 0.6,
      edge: 0.6,
      wobble: 0.05,
      inner: [
        garment.fold(
          [
            [-0.4, y - 1.4],
            [-0.2, y],
            [-0.5, y + 1.6],
          ],
          0.8,
          0.8,
        ),
      ],
    },
  );
  garment.add(
    pen(
      [
        [-half, -0.2],
        [-half * 0.8, y * 0.5],
        [-1.6, y],
      ],
      0.2,
      cloth.ink,
      0.4,
    ),
  );
};
