import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import type { Cloth } from '../fabric/index.ts';
import { Garment, lerp, mirrored, move, type Node, type Painted, pen, reversed, tone } from '../kit/index.ts';
import { blockBody, blockSleeve } from './blocks.ts';
import { armholeSeam, sideAnchors, sideLine } from './body.ts';
import { bodyShade } from './folds.ts';
import { drawLapel, type Lapel, tailoredCollar } from './lapels.ts';
import { breastWelt, flapPocket, patchPocket, seamLine, weltPocket } from './pockets.ts';
import { type UpperShape, upperShape } from './shape.ts';
import { drawSleeve, type SleeveOptions, sleeveFrame } from './sleeve.ts';

export interface TailoredDesign {
  readonly usual: UpperShape;
  /** Without one the fronts keep a plain V. */
  readonly lapel?: Omit<Lapel, 'cloth' | 'collarCloth'>;
  readonly facing?: (garment: Garment) => Cloth;
  readonly collarCloth?: (garment: Garment) => Cloth;
  /** Where the fronts meet. */
  readonly breakY: number;
  /** How far the upper front lies over the middle. */
  readonly overlap: number;
  /** How much the fronts curve away at the hem: 0 for a straight corner. */
  readonly cutaway: number;
  readonly buttons?: {
    readonly rows: readonly number[];
    readonly from: number;
    readonly gap: number;
    readonly count: number;
    readonly radius: number;
    readonly colour?: string;
  };
  readonly pockets?: 'flap' | 'patch' | 'welt' | 'jetted' | 'slant';
  readonly pocketY?: number;
  readonly breast?: 'welt' | 'patch';
  readonly cuffButtons?: number;
  readonly sleeve?: SleeveOptions;
  readonly mayBend?: boolean;
  readonly scoop?: number;
  readonly darts?: boolean;
  readonly folds?: number;
  readonly lining?: (garment: Garment) => string;
  readonly stitched?: boolean;
  /** After the fronts and pockets, before an arm laid over. */
  readonly front?: (garment: Garment, shape: UpperShape) => void;
  readonly after?: (garment: Garment, shape: UpperShape) => void;
}

/** The lining: the piece's second colour if it is plain and has one, else a tone of the ground. */
const liningOf = (garment: Garment, plain: boolean): string =>
  (plain ? garment.cloth.accents[0] : undefined) ??
  tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? 0.14 : -0.2, 1.1);

/** Everything with two overlapping fronts that turn back in lapels: blazers, suit jackets, wool coats, trench coats. */
export const drawTailored = (piece: DrawnPiece, detail: Detail, design: TailoredDesign): Drawing => {
  const garment = new Garment(piece, detail);
  const shape = upperShape(piece, design.usual);
  const half = shape.neck / 2;
  const breakY = Math.min(design.breakY, shape.length - 14);
  const bent = design.mayBend !== false && shape.sleeve !== undefined && garment.random() > 0.4;
  const arm = (side: 1 | -1, over: boolean): void => {
    if (shape.sleeve === undefined) return;
    drawSleeve(garment, shape, side, { cuff: 'hem', ...blockSleeve(garment), ...design.sleeve, over });
    cuffButtons(garment, shape, side, over, design.cuffButtons ?? 0);
  };
  arm(-1, false);
  if (!bent) arm(1, false);
  garment.inside(
    [
      [-half - 0.4, -0.4, 'corner'],
      [0, -3.4],
      [half + 0.4, -0.4, 'corner'],
      [half * 0.62, breakY * 0.6],
      [1, breakY + 1, 'corner'],
      [-half * 0.62, breakY * 0.6],
    ],
    { fill: design.lining?.(garment) ?? liningOf(garment, piece.pattern.type === 'plain'), label: [0, 1.4] },
  );
  garment.add(
    garment.fold(
      [
        [-half * 0.36, 4],
        [-half * 0.3, breakY * 0.4],
        [-1, breakY * 0.76],
      ],
      1.8,
      0.7,
    ),
    garment.fold(
      [
        [half * 0.42, 6],
        [half * 0.3, breakY * 0.44],
        [1.6, breakY * 0.76],
      ],
      -1.8,
      0.6,
    ),
  );
  const lapel = design.lapel && {
    ...design.lapel,
    breakY,
    ...(design.facing && { cloth: design.facing(garment) }),
    ...(design.collarCloth && { collarCloth: design.collarCloth(garment) }),
    ...(design.stitched && { stitched: true }),
  };
  for (const side of [-1, 1] as const) {
    const meets = side === 1 ? -design.overlap : design.overlap * 0.2;
    garment.panel(frontNodes(garment, shape, side, { ...design, breakY }), {
      shift: [side * 1.1, 0],
      cast: 0.5,
      round:
        side === 1
          ? { from: [-shape.chest * 0.3, 0], to: [shape.chest / 2 + 1.5, 0], strength: 0.8 }
          : { from: [-shape.chest / 2 - 1.5, 0], to: [shape.chest * 0.26, 0], strength: 0.8 },
      inner: frontShade(garment, shape, side, design),
    });
    if (shape.sleeve) garment.add(pen(armholeSeam(shape, side, design.scoop), 0.34, garment.cloth.ink, 0.6, 0.5));
    if (side === 1)
      garment.add(
        garment.fold(
          [
            [meets - 0.2, breakY + 2],
            [meets - 0.5, lerp(breakY, shape.length, 0.5)],
            [meets - 0.2, shape.length - design.cutaway - 2],
          ],
          -1.6,
          0.65,
          0.5,
        ),
      );
    pockets(garment, shape, side, design);
    if (lapel) drawLapel(garment, shape, side, meets, lapel);
    else
      garment.add(
        pen(
          [
            [side * (half - 0.6), 1],
            [side * half * 0.6, breakY * 0.5],
            [meets, breakY],
          ],
          0.2,
          garment.cloth.ink,
          0.5,
          0.5,
        ),
      );
  }
  design.front?.(garment, shape);
  if (design.buttons) rows(garment, design.buttons, shape);
  if (bent) arm(1, true);
  if (lapel) tailoredCollar(garment, shape, lapel);
  design.after?.(garment, shape);
  sideAnchors(garment, shape);
  return garment.finish();
};

const rows = (garment: Garment, buttons: NonNullable<TailoredDesign['buttons']>, shape: UpperShape): void => {
  const { cloth } = garment;
  const colour = buttons.colour ?? tone(cloth.ground, cloth.depth === 0.75 ? 0.12 : -0.22, 0.7);
  for (let i = 0; i < buttons.count; i++) {
    const y = buttons.from + i * buttons.gap;
    if (y > shape.length - 5) break;
    for (const x of buttons.rows) {
      garment.button(x + garment.jitter(0.08), y, buttons.radius, colour);
      if (!garment.small && x === buttons.rows[0])
        garment.add(
          pen(
            [
              [x - buttons.radius * 1.9, y + 0.1],
              [x - buttons.radius * 0.4, y],
            ],
            0.24,
            cloth.ink,
            0.7,
          ),
        );
    }
  }
};

const frontNodes = (garment: Garment, shape: UpperShape, side: 1 | -1, design: TailoredDesign): Node[] => {
  const half = shape.neck / 2;
  const { length, hem } = shape;
  const { breakY, cutaway } = design;
  const over = side === 1 ? design.overlap : Math.max(1.2, design.overlap * 0.9);
  const s = (x: number, y: number, c?: 'corner'): Node => [side * x, y, c];
  const meets = side === 1 ? -over : over * 0.2;
  const outer = reversed(side === 1 ? sideLine(shape, design.scoop) : mirrored(sideLine(shape, design.scoop))).slice(
    0,
    -1,
  );
  const corner: Node[] = cutaway
    ? [
        [-side * over, length - cutaway * 1.9],
        [-side * (over - cutaway * 0.16), length - cutaway * 0.9],
        [-side * (over - cutaway * 0.6), length - cutaway * 0.24],
        s(cutaway * 0.9 - over, length + 0.3),
      ]
    : [[-side * (over + 0.3), length + 0.3, 'corner']];
  return [
    s(half, -0.4, 'corner'),
    s(half * 0.6, breakY * 0.46),
    [meets, breakY, 'corner'],
    ...(side === -1 ? ([[over, breakY + 6]] as Node[]) : []),
    [-side * over, lerp(breakY, length, 0.5)],
    ...corner,
    s(hem * 0.24, length + 0.7 + garment.jitter(0.3)),
    s(hem * 0.38, length + 0.1 + garment.jitter(0.3)),
    ...outer,
  ];
};

const frontShade = (garment: Garment, shape: UpperShape, side: 1 | -1, design: TailoredDesign): Painted[] => {
  const { cloth } = garment;
  const k = design.folds ?? 0.55;
  const marks = [...blockBody(garment, shape), ...bodyShade(garment, shape, k)];
  if (design.darts !== false) {
    const end = Math.min(shape.length - 2, design.pocketY ?? 52);
    marks.push(
      pen(
        [
          [side * 9.5, shape.armhole + 4],
          [side * 10.8, 36],
          [side * 11.6, end],
        ],
        0.26,
        cloth.ink,
        0.5,
      ),
    );
    marks.push(
      seamLine(
        garment,
        [
          [side * (shape.chest / 2 - 3), shape.armhole + 1],
          [side * (shape.waist / 2 - 4.6), 42],
          [side * (shape.hem / 2 - 6), shape.length],
        ],
        0.28,
      ),
    );
  }
  return marks;
};

const pockets = (garment: Garment, shape: UpperShape, side: 1 | -1, design: TailoredDesign): void => {
  const y = Math.min(design.pocketY ?? 50, shape.length - 13);
  const x = side * shape.hem * 0.29;
  if (design.pockets === 'flap') flapPocket(garment, x, y, 14.5, 5, side);
  if (design.pockets === 'patch') patchPocket(garment, x, y, { width: 15, height: Math.min(17, shape.length - y - 3) });
  if (design.pockets === 'jetted')
    garment.add(
      pen(
        [
          [x - 7.2, y + side * 0.3],
          [x, y],
          [x + 7.2, y - side * 0.3],
        ],
        0.5,
        garment.cloth.ink,
        0.85,
        0.5,
      ),
      pen(
        [
          [x - 7.2, y + 0.6 + side * 0.3],
          [x, y + 0.6],
          [x + 7.2, y + 0.6 - side * 0.3],
        ],
        0.4,
        garment.cloth.bright,
        0.6,
        0.5,
      ),
    );
  if (design.pockets === 'welt') weltPocket(garment, x, y + 6, 16, 3.4, side * 14);
  if (design.pockets === 'slant') weltPocket(garment, x, y, 13, 2.6, side * 52);
  if (design.breast && side === 1) {
    if (design.breast === 'welt') breastWelt(garment, shape.chest * 0.27, 23.5);
    else patchPocket(garment, shape.chest * 0.26, 22.5, { width: 10.5, height: 11.5 });
  }
};

const cuffButtons = (garment: Garment, shape: UpperShape, side: 1 | -1, over: boolean, count: number): void => {
  const f = sleeveFrame(shape, side, over);
  const colour = tone(garment.cloth.ground, garment.cloth.depth === 0.75 ? 0.12 : -0.22, 0.7);
  for (let i = 0; i < count; i++) {
    const [x, y] = move(move(f.wristOut, f.fore, -2.6 - i * 2.1), f.acrossFore, 1.5);
    garment.button(x, y, 0.7, colour);
  }
};
