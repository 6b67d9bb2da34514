import { corner, type Garment, lerp, linesBetween, type Node, stitch, tone } from '../kit/index.ts';
import { ellipsePath } from '../kit/paths.ts';
import { line, shape } from '../kit/pens.ts';
import { seamPen } from './seam-pen.ts';

interface Waist {
  readonly garment: Garment;
  readonly measures: { readonly waist: number; readonly band: number };
}

const bandNodes = (half: number, band: number, dip: number): Node[] => [
  corner(-half - 0.15, 0),
  [-half * 0.4, dip * 0.9],
  [half * 0.4, dip],
  corner(half + 0.15, 0),
  corner(half + 0.3, band),
  [half * 0.4, band + dip],
  [-half * 0.4, band + dip * 0.9],
  corner(-half - 0.3, band),
];

const along = (half: number, y: number, dip: number): Node[] => [
  [-half, y],
  [-half * 0.4, y + dip * 0.9],
  [half * 0.4, y + dip],
  [half, y],
];

const DIP = 1.2;

/** A sewn waistband with its stitching; `overlap` marks the end of the band at the front. */
export const sewnBand = (
  { garment, measures: { waist, band } }: Waist,
  {
    thread = garment.cloth.bright,
    opacity = 0.4,
    overlap = true,
  }: { thread?: string; opacity?: number; overlap?: boolean } = {},
): void => {
  const half = waist / 2;
  garment.panel(bandNodes(half, band, DIP), {
    edge: 0.45,
    cast: 0.6,
    wobble: 0.08,
    turn: 90,
    round: { from: [-half, 0], to: [half, 0], strength: 0.8 },
    inner: garment.small
      ? []
      : [
          stitch(along(half, band - 0.6, DIP), thread, opacity),
          stitch(along(half, 0.65, DIP), thread, opacity),
          ...(overlap
            ? [
                seamPen(
                  garment,
                  [
                    [2.5, 1],
                    [2.6, band + 1.2],
                  ],
                  0.3,
                  0.9,
                ),
              ]
            : []),
        ],
  });
};

/** Loops for a belt at shares of half the waist. */
export const beltLoops = (
  { garment, measures: { waist, band } }: Waist,
  shares: readonly number[],
  { width = 1.1, thread }: { width?: number; thread?: string } = {},
): void => {
  for (const share of shares) {
    const x = (share * waist) / 2;
    const y = DIP * (1 - share * share);
    const w = width / 2;
    garment.panel(
      [corner(x - w, y - 0.15), corner(x + w, y - 0.15), corner(x + w, y + band + 0.9), corner(x - w, y + band + 0.9)],
      {
        covers: false,
        edge: 0.2,
        wobble: 0.05,
        cast: 0.4,
        rim: false,
        weave: false,
        inner:
          garment.small || thread === undefined
            ? []
            : [
                stitch(
                  [
                    [x - w + 0.25, y],
                    [x - w + 0.25, y + band],
                  ],
                  thread,
                  0.8,
                ),
                stitch(
                  [
                    [x + w - 0.25, y],
                    [x + w - 0.25, y + band],
                  ],
                  thread,
                  0.8,
                ),
              ],
      },
    );
  }
};

/** A round metal button with a rim. */
export const shankButton = ({ garment }: Pick<Waist, 'garment'>, x: number, y: number, metal: string): void => {
  garment.add(
    shape(ellipsePath([x + 0.2, y + 0.25], 0.88), garment.cloth.ink, 0.55),
    shape(ellipsePath([x, y], 0.85), metal),
  );
  if (!garment.small)
    garment.add(
      line(ellipsePath([x, y], 0.56), 0.14, tone(metal, -0.2), 0.8),
      shape(ellipsePath([x - 0.24, y - 0.28], 0.26), tone(metal, 0.18), 0.9),
    );
};

/** A tab with a button at each side of the band, which draws the waist in. */
export const sideAdjusters = ({ garment, measures: { waist, band } }: Waist, colour: string): void => {
  for (const side of [-1, 1] as const) {
    const x = side * (waist / 2);
    const y = band * 0.5 + 0.1;
    garment.panel(
      [
        corner(x + side * 0.2, y - 1),
        [x - side * 4, y - 0.75],
        [x - side * 5.4, y + 0.3],
        [x - side * 4, y + 1.25],
        corner(x + side * 0.2, y + 1.1),
      ],
      { covers: false, edge: 0.3, cast: 0.6, wobble: 0.05, rim: false },
    );
    garment.button(x - side * 4.2, y + 0.25, 0.55, colour);
  }
};

/** A gathered or ribbed band: lines from edge to edge, deep and bright by turns. */
export const gatheredBand = (
  { garment, measures: { waist, band } }: Waist,
  { ribs = 30, strength = 1, top: from = 0 }: { ribs?: number; strength?: number; top?: number } = {},
): void => {
  const half = waist / 2;
  const count = garment.small ? Math.round(ribs / 3) : ribs;
  const { ink, bright } = garment.cloth;
  const top = along(half, from - 0.6, DIP * 0.7);
  const bottom = along(half, from + band + 0.4, DIP * 0.7);
  const shifted = (nodes: Node[]): Node[] => nodes.map(([x, y]) => [x + half / ribs, y]);
  garment.panel(
    bandNodes(half, band, DIP * 0.7).map(([x, y, c]): Node => [x, from + y + (c ? 0 : garment.jitter(0.12)), c]),
    {
      edge: 0.6,
      cast: 0.7,
      wobble: 0.06,
      weave: false,
      round: { from: [-half, 0], to: [half, 0], strength: 0.8 },
      inner: [
        linesBetween(flipColumns(top, bottom)[0], flipColumns(top, bottom)[1], count, 0.24, ink, 0.3 * strength),
        ...(garment.small
          ? []
          : [
              linesBetween(
                shifted(flipColumns(top, bottom)[0]),
                shifted(flipColumns(top, bottom)[1]),
                count,
                0.2,
                bright,
                0.5 * strength,
              ),
            ]),
      ],
    },
  );
};

/** The two end columns of a band: `linesBetween` spreads its lines from the left one to the right one. */
const flipColumns = (top: readonly Node[], bottom: readonly Node[]): [Node[], Node[]] => {
  const end = (i: number): Node[] => [top[i] ?? [0, 0], bottom[i] ?? [0, 0]];
  const left = end(0);
  const right = end(top.length - 1);
  const sag = (nodes: Node[]): Node[] => [
    nodes[0] ?? [0, 0],
    [nodes[0]?.[0] ?? 0, lerp(nodes[0]?.[1] ?? 0, nodes[1]?.[1] ?? 0, 0.5)],
    nodes[1] ?? [0, 0],
  ];
  return [sag(left), sag(right)];
};

/** A cord that comes out of the band at the centre front and hangs in two ends. */
export const drawCord = (
  { garment, measures: { band } }: Waist,
  colour: string,
  { length = 12, knot = true, top = 0 }: { length?: number; knot?: boolean; top?: number } = {},
): void => {
  const y = top + band * 0.5 + DIP * 0.7;
  const dark = tone(colour, -0.22);
  const broad = garment.small ? 2 : 1;
  const ends: Node[][] = [
    [
      [-1.5, y],
      [-0.4, y + 1.6],
      [-1.8, y + length * 0.5],
      [-1.1 + garment.jitter(0.6), y + length],
    ],
    [
      [1.5, y],
      [0.5, y + 1.6],
      [1.5, y + length * 0.45],
      [2.6 + garment.jitter(0.6), y + length * 0.9],
    ],
  ];
  for (const end of ends) {
    garment.add(
      line(
        end.map(([x, v]): Node => [x + 0.25, v + 0.3]),
        0.6 * broad,
        garment.cloth.ink,
        0.3,
      ),
      line(end, 0.62 * broad, dark),
      line(end, 0.42 * broad, colour),
    );
    const tip = end[end.length - 1] ?? [0, 0];
    if (!garment.small)
      garment.add(
        line(
          [
            [tip[0], tip[1] - 1],
            [tip[0], tip[1]],
          ],
          0.6,
          dark,
        ),
      );
  }
  if (knot)
    garment.add(
      shape(ellipsePath([0, y + 1.5], 1, 0.75), dark),
      shape(ellipsePath([-0.08, y + 1.4], 0.8, 0.55), colour),
    );
  for (const x of [-1.6, 1.6]) garment.add(shape(ellipsePath([x, y - 0.05], 0.34), garment.cloth.ink, 0.8));
};
