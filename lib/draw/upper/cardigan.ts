import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { Garment, linesBetween, mirrored, type Node, pen, reversed, tone } from '../kit/index.ts';
import { armholeSeam, sideAnchors, sideLine } from './body.ts';
import { ribBand, ribHem } from './finish.ts';
import { bodyShade } from './folds.ts';
import { patchPocket } from './pockets.ts';
import { type UpperShape, upperShape } from './shape.ts';
import { drawSleeve } from './sleeve.ts';

export interface CardiganDesign {
  readonly usual: UpperShape;
  readonly neckline: 'v' | 'crew';
  /** 0 for one that hangs open without buttons. */
  readonly buttons: number;
  readonly bandWidth: number;
  readonly ribHeight: number;
  readonly pockets?: boolean;
  /** Centimetres by which the fronts stand apart at the hem. */
  readonly open?: number;
  /** Another colour for bands and pocket edges, when the piece has one. */
  readonly trimmed?: boolean;
  readonly metalButtons?: boolean;
}

/** A knitted jacket: two fronts with a ribbed band that runs round the neck; buttoned, or open on its inside. */
export const drawCardigan = (piece: DrawnPiece, detail: Detail, design: CardiganDesign): Drawing => {
  const garment = new Garment(piece, detail);
  const shape = upperShape(piece, design.usual);
  const { cloth } = garment;
  const half = shape.neck / 2;
  const open = design.open ?? 0;
  const deep = shape.neckDepth;
  const { length, hem } = shape;
  garment.inside(
    [
      [-half - 0.4, 0.2, 'corner'],
      [-half * 0.5, -1.6],
      [half * 0.5, -1.6],
      [half + 0.4, 0.2, 'corner'],
      [half * 0.7 + open * 0.5, deep],
      [open / 2 + 3, length - 1.6, 'corner'],
      [-open / 2 - 3, length - 1.6, 'corner'],
      [-half * 0.7 - open * 0.5, deep],
    ],
    { label: [0, 0.4] },
  );
  if (open)
    garment.add(
      garment.fold(
        [
          [0.6, 6],
          [1.4, length * 0.4],
          [0.2, length * 0.8],
        ],
        2,
        0.7,
        0.5,
      ),
      garment.plane(
        [
          [-open / 2, deep],
          [-open / 2, length * 0.6],
          [-open / 2, length],
        ],
        2,
        cloth.ink,
        0.3,
      ),
    );
  const edge = (side: 1 | -1): Node[] =>
    design.neckline === 'v'
      ? [
          [side * half, 0],
          [side * half * 0.74, deep * 0.42],
          [side * (open * 0.28 + half * 0.28), deep * 0.8],
          [side * (open * 0.36), deep + 5],
          [side * (open * 0.42 + garment.jitter(open ? 0.5 : 0)), length * 0.66],
          [side * (open / 2), length],
        ]
      : [
          [side * half, 0],
          [side * half * 0.9, deep * 0.4],
          [side * half * 0.5, deep * 0.9],
          [side * 0.1, deep],
        ];
  const right = sideLine(shape);
  const left = mirrored(right);
  const front = (side: 1 | -1): Node[] => {
    const run = edge(side);
    const first: Node = [side * half, 0, 'corner'];
    const down: Node[] =
      design.neckline === 'v'
        ? [...run.slice(1, -1), [side * (open / 2), length, 'corner']]
        : [...run.slice(1, -1), [0, deep, 'corner'], [0, length, 'corner']];
    return [
      first,
      ...down,
      [side * hem * 0.25, length + 0.2 + garment.jitter(0.2)],
      ...reversed(side === 1 ? right : left).slice(0, -1),
    ];
  };
  const panels = ([-1, 1] as const).map((side) => [side, garment.wobble(front(side), 0.08)] as const);
  for (const [, nodes] of panels) garment.silhouette(nodes);
  for (const side of [-1, 1] as const) drawSleeve(garment, shape, side, { cuff: 'rib', cuffHeight: design.ribHeight });
  const trim = design.trimmed ? (cloth.accents[0] ?? cloth.deep) : undefined;
  for (const [side, nodes] of panels)
    garment.panel(nodes, {
      contour: false,
      wobble: 0,
      cast: 0.35,
      round:
        side === 1
          ? { from: [-shape.chest * 0.3, 0], to: [shape.chest / 2, 0], strength: 0.75 }
          : { from: [-shape.chest / 2, 0], to: [shape.chest * 0.3, 0], strength: 0.75 },
      inner: [
        ...bodyShade(garment, shape, 0.7, length - design.ribHeight),
        ...ribHem(garment, hem / 2, length - design.ribHeight, length),
      ],
    });
  garment.add(...([1, -1] as const).map((side) => pen(armholeSeam(shape, side), 0.3, cloth.ink, 0.55, 0.5)));
  if (design.pockets) for (const side of [-1, 1] as const) pocket(garment, shape, side, open, trim);
  for (const side of open ? ([-1, 1] as const) : ([1] as const)) band(garment, shape, design, edge, side, trim);
  sideAnchors(garment, shape);
  return garment.finish();
};

const pocket = (garment: Garment, shape: UpperShape, side: 1 | -1, open: number, trim: string | undefined): void => {
  const x = side * (open / 4 + shape.hem * 0.27);
  const y = shape.length - (shape.length > 72 ? 31 : 22);
  patchPocket(garment, x, y, { width: 13.5, height: 14 });
  garment.panel(
    [
      [x - 6.9, y - 0.4, 'corner'],
      [x + 6.9, y - 0.4, 'corner'],
      [x + 6.9, y + 2.4, 'corner'],
      [x - 6.9, y + 2.4, 'corner'],
    ],
    {
      covers: false,
      loose: true,
      edge: 0.3,
      wobble: 0.05,
      print: false,
      weave: false,
      ...(trim !== undefined && { fill: trim }),
      inner: garment.small
        ? []
        : [
            linesBetween(
              [
                [x - 6.9, y - 1],
                [x - 6.9, y + 3],
              ],
              [
                [x + 6.9, y - 1],
                [x + 6.9, y + 3],
              ],
              16,
              0.2,
              garment.cloth.ink,
              0.3,
            ),
          ],
    },
  );
};

const band = (
  garment: Garment,
  shape: UpperShape,
  design: CardiganDesign,
  edge: (side: 1 | -1) => Node[],
  side: 1 | -1,
  trim: string | undefined,
): void => {
  const { cloth } = garment;
  const w = design.bandWidth;
  const { length, neckDepth: deep } = shape;
  const trimCloth =
    trim === undefined ? cloth : { ...cloth, ground: trim, ink: tone(trim, -0.25), bright: tone(trim, 0.12) };
  if (design.open) {
    ribBand(garment, edge(side), side === 1 ? -w * 0.2 : -w * 0.8, side === 1 ? w * 0.8 : w * 0.2, 0.6, trimCloth);
    return;
  }
  if (design.neckline === 'v') {
    // buttoned to the middle: the lower band of the left front shows only along the neck
    ribBand(garment, edge(-1).slice(0, 4), -w * 0.85, w * 0.15, 0.6, trimCloth);
    const run: Node[] = [...edge(1).slice(0, 3), [0, deep + 3], [0, length * 0.6], [0, length + 0.1]];
    ribBand(garment, run, -w * 0.5, w * 0.5, 0.6, trimCloth);
  } else {
    const neck = [...edge(-1), ...reversed(edge(1)).slice(1)];
    ribBand(
      garment,
      [
        [0, deep - 0.6],
        [0.05, length * 0.5],
        [0, length + 0.1],
      ],
      -w * 0.5,
      w * 0.5,
      0.6,
      trimCloth,
    );
    ribBand(garment, neck, -w * 0.5, w * 0.5, 0.6, trimCloth);
  }
  const colour = design.metalButtons
    ? '#b8964f'
    : tone(trim ?? cloth.ground, cloth.depth < 0.6 ? -0.35 : cloth.depth === 0.75 ? 0.16 : -0.22, 0.7);
  const first = deep + (design.neckline === 'v' ? 2.4 : 0.1);
  const last = length - design.ribHeight * 0.5;
  for (let i = 0; i < design.buttons; i++)
    garment.button(garment.jitter(0.08), first + ((last - first) * i) / Math.max(1, design.buttons - 1), 0.95, colour);
};
