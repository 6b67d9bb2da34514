import type { DrawnPiece, Point } from '../drawing.ts';
import { type Cloth, plainCloth } from '../fabric/index.ts';
import {
  corner,
  curvePath,
  ellipsePath,
  type Garment,
  group,
  line,
  type Node,
  offsetLine,
  type Painted,
  pen,
  resample,
  sampleCurve,
  shape,
  stitch,
  tone,
} from '../kit/index.ts';

export const BRASS = '#b9975a';
export const STEEL = '#a9a8a4';

/** Metal parts of leather bags are brass, of technical ones steel; a third colour of a plain bag overrides both. */
export const metalOf = (garment: Garment, piece: DrawnPiece): string =>
  (piece.pattern.type === 'plain' ? garment.cloth.accents[1] : undefined) ??
  (garment.cloth.surface === 'shell' || garment.cloth.surface === 'canvas' ? STEEL : BRASS);

export interface StrapOptions {
  readonly cloth?: Cloth;
  /** The far handle lies in the shade of the near one. */
  readonly behind?: boolean;
  readonly stitched?: boolean;
  /** Rolled handles catch a stronger light down the middle. */
  readonly rolled?: boolean;
}

/** A handle or strap along a line, of one true width. */
export const strap = (garment: Garment, nodes: readonly Node[], width: number, options: StrapOptions = {}): void => {
  const cloth = options.cloth ?? garment.cloth;
  const path = curvePath(nodes, false);
  const run = resample(sampleCurve(nodes), 24);
  const aside = (share: number): Node[] =>
    offsetLine(run, width * share)
      .filter((_, i) => i % 3 === 0)
      .map((p): Node => [p[0], p[1]]);
  const edge = offsetLine(run, width / 2);
  const other = offsetLine(run, -width / 2);
  garment.cover([...edge, ...other.reverse()].map((p): Node => [p[0], p[1], 'corner']));
  garment.add(
    group([{ path, stroke: cloth.ink, width: width + 0.24 }], { move: [0.08, 0.1] }),
    { path, stroke: options.behind ? cloth.shade : cloth.ground, width },
    line(aside(0.3), width * 0.28, cloth.ink, options.behind ? 0.3 : 0.2),
    line(
      aside(options.rolled ? 0.02 : -0.24),
      width * (options.rolled ? 0.26 : 0.18),
      cloth.bright,
      0.5 * Math.min(1.2, cloth.sheen),
    ),
  );
  if (options.stitched && !garment.small)
    garment.add(stitch(aside(0.34), cloth.ink, 0.6), stitch(aside(-0.34), cloth.ink, 0.6));
};

/** A ring or frame of metal wire. */
export const wire = (path: string, metal: string, width = 0.34): Painted =>
  group([
    { path, stroke: tone(metal, -0.3), width: width + 0.18, round: true },
    { path, stroke: metal, width, round: true },
    group([{ path, stroke: tone(metal, 0.2), width: width * 0.3, round: true, opacity: 0.9 }], {
      move: [-0.04, -0.06],
    }),
  ]);

const box = (at: Point, width: number, height: number): Node[] => {
  const [x, y] = at;
  return [
    corner(x - width / 2, y - height / 2),
    corner(x + width / 2, y - height / 2),
    corner(x + width / 2, y + height / 2),
    corner(x - width / 2, y + height / 2),
  ];
};

export const frame = (at: Point, width: number, height: number, metal: string, thickness = 0.36): Painted =>
  wire(curvePath(box(at, width, height)), metal, thickness);

/** A buckle with its prong, upright. */
export const buckle = (at: Point, width: number, height: number, metal: string): Painted =>
  group([
    frame(at, width, height, metal),
    line(
      [
        [at[0], at[1] - height / 2],
        [at[0], at[1] + height * 0.42],
      ],
      0.26,
      tone(metal, -0.12),
    ),
  ]);

/** A closed metal plate with its light. */
export const plate = (at: Point, width: number, height: number, metal: string): Painted => {
  const [x, y] = at;
  const path = curvePath(box(at, width, height));
  return group([
    { path, fill: metal, stroke: tone(metal, -0.28), width: 0.2, round: true },
    line(
      [
        [x - width * 0.34, y - height * 0.32],
        [x + width * 0.2, y - height * 0.32],
      ],
      0.18,
      tone(metal, 0.2),
    ),
  ]);
};

export const stud = (at: Point, radius: number, metal: string): Painted =>
  group([
    { path: ellipsePath(at, radius), fill: metal, stroke: tone(metal, -0.28), width: 0.14 },
    shape(ellipsePath([at[0] - radius * 0.3, at[1] - radius * 0.3], radius * 0.34), tone(metal, 0.2)),
  ]);

/** A zip along a line: tape, teeth, puller. */
export const zip = (garment: Garment, nodes: readonly Node[], metal: string, puller?: Point): void => {
  const { cloth, small } = garment;
  garment.add(line(nodes, 0.9, cloth.ink, 0.85));
  garment.add(line(nodes, 0.36, metal, 1, small ? undefined : [0.2, 0.16]));
  if (!puller) return;
  const [x, y] = puller;
  garment.add(
    pen(
      [
        [x, y],
        [x + 0.2, y + 1],
        [x + 0.1, y + 2],
      ],
      0.7,
      cloth.ink,
      0.9,
      0.6,
    ),
    stud([x, y], 0.34, metal),
    line(
      [
        [x + 0.1, y + 0.5],
        [x + 0.14, y + 1.7],
      ],
      0.3,
      cloth.ground,
    ),
  );
};

/** Leather for the trims of canvas, straw and technical bags. */
export const trim = (garment: Garment, usual: string): Cloth =>
  plainCloth(garment.cloth.accents[0] ?? usual, 'leather', garment.detail);
