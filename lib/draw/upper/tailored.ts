import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { type Cloth, plainCloth } from '../fabric/index.ts';
import { Garment, lerp, pen, tone } from '../kit/index.ts';
import { blockSleeve } from './blocks.ts';
import { armholeSeam, sideAnchors } from './body.ts';
import { drawLapel, type Lapel, tailoredCollar } from './lapels.ts';
import { openButtons, openEdge, openInside } from './open-front.ts';
import { type UpperShape, upperShape } from './shape.ts';
import { drawSleeve, type SleeveOptions } from './sleeve.ts';
import { cuffButtons, frontNodes, frontShade, pockets, rows } from './tailored-front.ts';
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
  /** Whether one front may be laid open on the lining; which pieces are is seeded. */
  readonly mayOpen?: boolean;
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

/** What is seen of the inside above fronts that meet. */
const closedInside = (garment: Garment, shape: UpperShape, breakY: number, lining: string): void => {
  const half = shape.neck / 2;
  garment.inside(
    [
      [-half - 0.4, -0.4, 'corner'],
      [0, -3.4],
      [half + 0.4, -0.4, 'corner'],
      [half * 0.62, breakY * 0.6],
      [1, breakY + 1, 'corner'],
      [-half * 0.62, breakY * 0.6],
    ],
    { fill: lining, label: [0, 1.4] },
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
};

/** Everything with two overlapping fronts that turn back in lapels: blazers, suit jackets, wool coats, trench coats. */
export const drawTailored = (piece: DrawnPiece, detail: Detail, design: TailoredDesign): Drawing => {
  const garment = new Garment(piece, detail);
  const shape = upperShape(piece, design.usual);
  const half = shape.neck / 2;
  const breakY = Math.min(design.breakY, shape.length - 14);
  const mayBend = design.mayBend !== false && shape.sleeve !== undefined && garment.random() > 0.4;
  const open = design.mayOpen === true && garment.random() > 0.4;
  const bent = mayBend && !open;
  const lining = design.lining?.(garment) ?? liningOf(garment, piece.pattern.type === 'plain');
  const arm = (side: 1 | -1, over: boolean): void => {
    if (shape.sleeve === undefined) return;
    drawSleeve(garment, shape, side, { cuff: 'hem', ...blockSleeve(garment), ...design.sleeve, over });
    cuffButtons(garment, shape, side, over, design.cuffButtons ?? 0);
  };
  arm(-1, false);
  if (!bent) arm(1, false);
  if (open) openInside(garment, shape, breakY, plainCloth(lining, 'satin', detail));
  else closedInside(garment, shape, breakY, lining);
  const lapel = design.lapel && {
    ...design.lapel,
    breakY,
    ...(design.facing && { cloth: design.facing(garment) }),
    ...(design.collarCloth && { collarCloth: design.collarCloth(garment) }),
    ...(design.stitched && { stitched: true }),
  };
  for (const side of [-1, 1] as const) {
    const meets = open ? openEdge(breakY, side)(breakY) : side === 1 ? -design.overlap : design.overlap * 0.2;
    garment.panel(frontNodes(garment, shape, side, { ...design, breakY }, open), {
      shift: [side * 1.1, 0],
      cast: 0.5,
      round:
        side === 1
          ? { from: [-shape.chest * 0.3, 0], to: [shape.chest / 2 + 1.5, 0], strength: 0.8 }
          : { from: [-shape.chest / 2 - 1.5, 0], to: [shape.chest * 0.26, 0], strength: 0.8 },
      inner: frontShade(garment, shape, side, design),
    });
    if (shape.sleeve) garment.add(pen(armholeSeam(shape, side, design.scoop), 0.34, garment.cloth.ink, 0.6, 0.5));
    if (side === 1 && !open)
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
  if (design.buttons && open) openButtons(garment, shape, breakY, design.buttons);
  else if (design.buttons) rows(garment, design.buttons, shape);
  if (bent) arm(1, true);
  if (lapel) tailoredCollar(garment, shape, lapel);
  design.after?.(garment, shape);
  sideAnchors(garment, shape);
  return garment.finish();
};
