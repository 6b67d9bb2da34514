import {
  shape as flat,
  type Garment,
  group,
  line,
  type Node,
  type Painted,
  pen,
  rectanglePath,
  stitch,
  tone,
} from '../kit/index.ts';
import type { UpperShape } from './shape.ts';

/** A placket down the front with its buttons. */
export const placket = (
  garment: Garment,
  shape: UpperShape,
  options: {
    readonly width?: number;
    readonly buttons: number;
    readonly radius?: number;
    readonly colour?: string;
    readonly until?: number;
    readonly hidden?: boolean;
    readonly from?: number;
    readonly plain?: boolean;
  },
): void => {
  const { cloth } = garment;
  const half = (options.width ?? 3) / 2;
  const top = options.from ?? shape.neckDepth - 0.4;
  const end = options.until ?? shape.length;
  const middle = (top + end) / 2;
  garment.panel(
    [
      [-half, top, 'corner'],
      [half, top, 'corner'],
      [half + 0.1, middle],
      [half - 0.1, end + 0.1, 'corner'],
      [-half, end + 0.15, 'corner'],
      [-half - 0.1, middle],
    ],
    {
      covers: false,
      loose: true,
      edge: 0.3,
      shift: [0.3, 0],
      wobble: 0.06,
      rim: false,
      inner:
        garment.small || options.plain
          ? []
          : [-1, 1].map((side) =>
              stitch(
                [
                  [side * (half - 0.45), top + 0.3],
                  [side * (half - 0.4), middle],
                  [side * (half - 0.5), end],
                ],
                cloth.ink,
                0.6,
              ),
            ),
    },
  );
  garment.add(
    garment.fold(
      [
        [-half - 0.1, top + 2],
        [-half - 0.5, middle - 3],
        [-half - 0.2, end - 1],
      ],
      0.9,
      0.5,
      0.5,
    ),
  );
  if (options.hidden) return;
  const colour = options.colour ?? tone(cloth.ground, -0.2, 0.6);
  const first = top + 2.6;
  const last = options.until === undefined ? end - 9 : end - 2;
  for (let i = 0; i < options.buttons; i++)
    garment.button(
      garment.jitter(0.08),
      options.buttons === 1 ? first : first + ((last - first) * i) / (options.buttons - 1),
      options.radius ?? 0.6,
      colour,
    );
};

/** A zip along a line: tape, teeth and a slider near the top. */
export const zip = (
  garment: Garment,
  run: readonly Node[],
  options: { readonly metal?: string; readonly width?: number; readonly pull?: number } = {},
): void => {
  const { cloth } = garment;
  const metal = options.metal ?? tone(cloth.ground, cloth.depth < 0.6 || cloth.depth === 1 ? -0.25 : 0.25, 0.4);
  const width = options.width ?? 1;
  const marks: Painted[] = [
    line(run, width + 0.7, cloth.ink, 0.4),
    line(run, width, cloth.deep),
    line(run, width * 0.42, metal, 1, garment.small ? undefined : [0.28, 0.24]),
  ];
  garment.add(group(marks));
  const top = run[0];
  if (top === undefined) return;
  const [x, y] = [top[0], top[1] + (options.pull ?? 1.2)];
  garment.add(
    flat(rectanglePath(x - 0.55, y - 0.5, 1.1, 1.3), metal),
    flat(rectanglePath(x - 0.32, y + 0.8, 0.64, 2.4), metal),
    line(rectanglePath(x - 0.32, y + 0.8, 0.64, 2.4), 0.1, cloth.ink, 0.7),
  );
};

/** A straight zip in the middle of the front. */
export const frontZip = (
  garment: Garment,
  top: number,
  bottom: number,
  options: Parameters<typeof zip>[2] = {},
): void =>
  zip(
    garment,
    [
      [0, top],
      [0.15, (top + bottom) / 2],
      [0, bottom],
    ],
    options,
  );

/** A row or two of buttons down a front; `x` is where each row stands. */
export const buttonRows = (
  garment: Garment,
  rows: readonly number[],
  ys: readonly number[],
  radius: number,
  colour: string,
  holes = true,
): void => {
  for (const y of ys)
    for (const x of rows) {
      garment.button(x + garment.jitter(0.08), y, radius, colour);
      if (holes && !garment.small && x === rows[0])
        garment.add(
          pen(
            [
              [x - radius * 1.9, y + 0.1],
              [x - radius * 0.4, y],
            ],
            0.24,
            garment.cloth.ink,
            0.75,
          ),
        );
    }
};

/** A horn toggle with its cord loops. */
export const toggle = (garment: Garment, y: number, horn: string): void => {
  const { cloth } = garment;
  const leather = tone(horn, -0.16);
  for (const side of [-1, 1] as const) {
    garment.panel(
      [
        [side * 5.4, y - 1.4, 'corner'],
        [side * 8.4, y - 1.6, 'corner'],
        [side * 9.4, y],
        [side * 8.4, y + 1.6, 'corner'],
        [side * 5.4, y + 1.4, 'corner'],
      ],
      { fill: leather, weave: false, covers: false, loose: true, edge: 0.3, wobble: 0.05 },
    );
  }
  for (const [from, to] of [
    [-6.4, -0.6],
    [6.4, 0.8],
  ] as const)
    for (const away of [-0.4, 0.4])
      garment.add(
        line(
          [
            [from, y + away + 0.16],
            [(from + to) / 2, y + away * 1.8 + 0.2],
            [to, y + away * 0.3 + 0.16],
          ],
          0.4,
          cloth.ink,
          0.4,
        ),
        line(
          [
            [from, y + away],
            [(from + to) / 2, y + away * 1.8],
            [to, y + away * 0.3],
          ],
          0.36,
          leather,
        ),
      );
  const peg: Node[] = [
    [-2.9, y - 0.1],
    [-1.4, y - 0.85],
    [1.2, y - 0.9],
    [2.8, y + 0.2],
    [1.1, y + 0.8],
    [-1.5, y + 0.75],
  ];
  garment.add(
    flat(
      peg.map(([a, b]): Node => [a + 0.2, b + 0.4]),
      cloth.ink,
      0.45,
    ),
    flat(peg, horn),
    line(peg.concat([peg[0] ?? [0, 0]]), 0.12, leather),
    pen(
      [
        [-2, y - 0.25],
        [0, y - 0.55],
        [2, y - 0.15],
      ],
      0.4,
      tone(horn, 0.2),
      0.7,
    ),
  );
};
