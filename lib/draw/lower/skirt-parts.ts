import type { Edge } from '../kit/edges.ts';
import { alongEdge } from '../kit/edges.ts';
import {
  corner,
  group,
  lerp,
  line,
  type Node,
  type Painted,
  pen,
  reversed,
  shape,
  stitch,
  tone,
} from '../kit/index.ts';
import { seamPen } from './seam-pen.ts';
import type { Skirt } from './skirt.ts';

const NOTHING: Painted = group([]);

/** Stitching round the hem, `up` centimetres from its edge. */
export const skirtHemStitch = (
  { garment, at, hemAt }: Skirt,
  up: number,
  thread = garment.cloth.ink,
  opacity = 0.55,
): Painted =>
  garment.small
    ? NOTHING
    : stitch(
        [0, 0.25, 0.5, 0.75, 1].map((share): Node => [at(share)(hemAt(share) - up), hemAt(share) - up]),
        thread,
        opacity,
      );

/** A shaped seam or dart from the waist down. */
export const waistDarts = ({ garment, at, top }: Skirt, shares: readonly number[], reach: number): Painted =>
  group(
    shares.map((share) =>
      seamPen(
        garment,
        [
          [at(share)(top), top - 0.2],
          [at(lerp(share, 0.5, -0.03))(top + reach), top + reach],
        ],
        0.36,
        0.8,
        0.25,
      ),
    ),
  );

/** A seam from waist to hem, with its light side. */
export const longSeam = ({ garment, down, top, measures: { length } }: Skirt, share: number, width = 0.3): Painted => {
  const run = down(share, top, length + 1, 4);
  return group([
    seamPen(garment, run, width, 0.7, 0.5),
    garment.small
      ? NOTHING
      : pen(
          run.map(([x, y]): Node => [x - 0.35, y]),
          0.24,
          garment.cloth.bright,
          0.5,
          0.5,
        ),
  ]);
};

/** A box pleat let in below a seam: two edges that open towards the hem over a shaded bottom. */
export const boxPleat = (
  { garment, at, hemAt, measures: { length } }: Skirt,
  share: number,
  from: number,
  spread: number,
): Painted => {
  const x = at(share);
  const low = hemAt(share) + 1;
  const left: Node[] = [
    [x(from), from],
    [x(length) - spread * 0.6, lerp(from, low, 0.6)],
    [x(length) - spread, low],
  ];
  const right: Node[] = [
    [x(from), from],
    [x(length) + spread * 0.6, lerp(from, low, 0.6)],
    [x(length) + spread, low],
  ];
  return group([
    shape([...left, ...reversed(right)], garment.cloth.deep, 0.6),
    garment.plane(
      [
        [x(from), from + 2],
        [x(length), lerp(from, low, 0.6)],
        [x(length), low],
      ],
      spread * 0.7,
      garment.cloth.ink,
      0.4,
      0.7,
    ),
    seamPen(garment, left, 0.36, 0.85, 0.7),
    seamPen(garment, right, 0.36, 0.85, 0.7),
    seamPen(
      garment,
      [
        [x(length), lerp(from, low, 0.3)],
        [x(length) + 0.1, low],
      ],
      0.2,
      0.5,
      0.6,
    ),
  ]);
};

/** A patch pocket with a stitched border and a deeper hem at its mouth. */
export const patchPocket = (
  { garment }: Pick<Skirt, 'garment'>,
  centre: readonly [x: number, y: number],
  size: { readonly width: number; readonly height: number; readonly pointed?: boolean; readonly turn?: number },
  thread = garment.cloth.ink,
): void => {
  const [x, y] = centre;
  const w = size.width / 2;
  const { height } = size;
  const point = size.pointed ? 1.8 : 0;
  const tilt = size.turn ?? 0;
  const border = (inset: number): Node[] => [
    corner(x - w + inset, y + tilt + inset * 0.2),
    corner(x + w - inset, y - tilt + inset * 0.2),
    corner(x + w - inset - 0.3, y + height - point - inset),
    size.pointed ? corner(x, y + height - inset) : [x, y + height - inset + 0.3],
    corner(x - w + inset + 0.3, y + height - point - inset),
  ];
  garment.panel(border(0), {
    covers: false,
    edge: 0.4,
    cast: 0.45,
    wobble: 0.07,
    shift: [x * 0.13 + 0.4, 0.3],
    inner: garment.small
      ? []
      : [
          stitch([...border(0.55), border(0.55)[0] ?? [0, 0]], thread, 0.7),
          stitch(
            [
              [x - w, y + tilt + 2.2],
              [x + w, y - tilt + 2.2],
            ],
            thread,
            0.7,
          ),
          garment.plane(
            [
              [x - w * 0.3, y + 2],
              [x - w * 0.35, y + height],
            ],
            w * 0.4,
            garment.cloth.bright,
            0.25,
          ),
        ],
  });
};

/** An overlapping front edge with its own fold of light, from the waist to the hem. */
export const overlapEdge = (skirt: Skirt, edge: Edge, from: number, to: number): Painted => {
  const { garment } = skirt;
  const run = alongEdge(edge, from, to, 0, 5);
  return group([
    garment.plane(
      run.map(([x, y]): Node => [x + 0.9, y]),
      1.3,
      garment.cloth.ink,
      0.5,
      0.6,
    ),
    seamPen(garment, run, 0.45, 0.9, 0.6),
    garment.plane(
      run.map(([x, y]): Node => [x - 0.8, y]),
      0.5,
      garment.cloth.bright,
      0.5,
      0.6,
    ),
    ...(garment.small
      ? []
      : [
          stitch(
            run.map(([x, y]): Node => [x - 1.1, y]),
            garment.cloth.ink,
            0.45,
          ),
        ]),
  ]);
};

/** A tie knotted at the waist: two loops, a knot and two hanging ends, all of the skirt's own cloth. */
export const waistTie = ({ garment }: Pick<Skirt, 'garment'>, x: number, y: number, drop: number, size = 1): void => {
  const tail = (dx: number, dy: number, bend: number, w: number): Node[] => [
    corner(x - w * 0.4, y + 0.4),
    [x + dx * 0.35 + bend - w * 0.6, y + dy * 0.5],
    corner(x + dx - w, y + dy),
    corner(x + dx + w, y + dy + 1.2),
    [x + dx * 0.35 + bend + w * 0.9, y + dy * 0.5],
    corner(x + w * 0.6, y + 0.4),
  ];
  // a loop lies as a flat fold: narrow at the knot, drooping at its end
  const loop = (side: 1 | -1, reach: number, lift: number): Node[] => [
    corner(x + side * 0.4, y - 0.6),
    [x + side * reach * 0.5, y - lift],
    [x + side * reach * 0.9, y - lift * 0.5],
    corner(x + side * reach, y + 1.2 * size),
    [x + side * reach * 0.72, y + 2.6 * size],
    [x + side * reach * 0.36, y + 1.7 * size],
    corner(x + side * 0.4, y + 0.9),
  ];
  const panel = (nodes: Node[], turn: number) =>
    garment.panel(nodes, { edge: 0.45, cast: 0.6, wobble: 0.08, turn, rim: false });
  panel(tail(-2.6, drop, -0.8, 1.15 * size), 6);
  panel(tail(2.8, drop * 0.86, 0.9, 1.15 * size), -8);
  panel(loop(-1, 7.4 * size, 1.5), 60);
  panel(loop(1, 6.6 * size, 1.9), -60);
  for (const side of [-1, 1] as const)
    garment.add(
      garment.fold(
        [
          [x + side * 0.6, y + 0.2],
          [x + side * 2.6 * size, y - 0.2],
          [x + side * 4.6 * size, y - 0.1],
        ],
        0.6 * side,
        0.9,
      ),
    );
  garment.panel(
    [
      corner(x - 1.2, y - 1),
      [x, y - 1.25],
      corner(x + 1.1, y - 1.1),
      [x + 1.35, y + 0.2],
      corner(x + 0.95, y + 1.4),
      corner(x - 0.9, y + 1.5),
      [x - 1.3, y + 0.2],
    ],
    {
      covers: false,
      edge: 0.5,
      cast: 0.5,
      wobble: 0.05,
      inner: [
        garment.fold(
          [
            [x - 0.5, y - 1],
            [x - 0.2, y + 0.2],
            [x - 0.5, y + 1.4],
          ],
          0.6,
          1,
          0.5,
        ),
      ],
    },
  );
};

/** A closing zip hidden in a seam: only its line and the pull show. */
export const hiddenZip = ({ garment }: Pick<Skirt, 'garment'>, x: number, from: number, to: number): Painted =>
  group([
    seamPen(
      garment,
      [
        [x, from],
        [x + 0.1, to],
      ],
      0.34,
      0.85,
      0.5,
    ),
    ...(garment.small
      ? []
      : [
          line(
            [
              [x - 0.5, from + 0.5],
              [x - 0.45, to],
            ],
            0.1,
            garment.cloth.ink,
            0.4,
          ),
          shape(
            [
              [x - 0.3, from + 0.4],
              [x + 0.3, from + 0.4],
              [x + 0.35, from + 2.4],
              [x - 0.35, from + 2.4],
            ],
            tone('#9a9a98', -0.05),
          ),
        ]),
  ]);
