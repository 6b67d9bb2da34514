import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import type { Cloth } from '../fabric/index.ts';
import { curvePath, Garment, line, type Node, type Painted, pen, stitch } from '../kit/index.ts';
import { bodyBaffles, scalloped } from './baffles.ts';
import { blockBody, blockSleeve } from './blocks.ts';
import { armholeSeam, frontOutline, sideAnchors } from './body.ts';
import { beside, ribHem } from './finish.ts';
import { bodyShade } from './folds.ts';
import { type UpperShape, upperShape } from './shape.ts';
import { drawSleeve, isBent, type SleeveOptions } from './sleeve.ts';

export interface ButtonedDesign {
  readonly usual: UpperShape;
  readonly sleeve?: SleeveOptions;
  /** Whether one arm may be laid over the body; which pieces do is seeded. */
  readonly mayBend?: boolean;
  readonly hem: 'stitched' | 'rib' | 'edge';
  readonly ribHeight?: number;
  readonly ribCloth?: (garment: Garment) => Cloth;
  /** How far the back of the neck stands above the neck points. */
  readonly backRise?: number;
  readonly scoop?: number;
  readonly folds?: number;
  readonly lining?: string;
  /** Height of the baffles of a down-filled garment; they bulge at the sides. */
  readonly baffles?: number;
  readonly beneath?: (garment: Garment, shape: UpperShape) => void;
  readonly inner?: (garment: Garment, shape: UpperShape) => readonly Painted[];
  /** Closure, pockets, seams: under an arm that is laid over. */
  readonly front?: (garment: Garment, shape: UpperShape) => void;
  /** Collar or hood: over everything. */
  readonly collar?: (garment: Garment, shape: UpperShape) => void;
}

/** Everything that closes edge to edge in the middle of the front: shirts, overshirts, zipped jackets, cardigans. */
export const drawButtoned = (piece: DrawnPiece, detail: Detail, design: ButtonedDesign): Drawing => {
  const garment = new Garment(piece, detail);
  const shape = upperShape(piece, design.usual);
  const half = shape.neck / 2;
  const rise = design.backRise ?? 2.6;
  const bent = design.mayBend === true && isBent(piece, garment, shape);
  design.beneath?.(garment, shape);
  garment.inside(
    [
      [-half - 0.5, 0.2, 'corner'],
      [-half * 0.5, -rise],
      [0, -rise - 0.4],
      [half * 0.5, -rise],
      [half + 0.5, 0.2, 'corner'],
      [0, shape.neckDepth + 1, 'corner'],
    ],
    { label: [0, -rise + 1.8], ...(design.lining !== undefined && { fill: design.lining }) },
  );
  const neck: Node[] = [
    [-half * 0.6, shape.neckDepth * 0.42],
    [-1, shape.neckDepth, 'corner'],
    [1, shape.neckDepth, 'corner'],
    [half * 0.6, shape.neckDepth * 0.42],
  ];
  const sleeve: SleeveOptions = {
    ...blockSleeve(garment),
    ...design.sleeve,
    ...(design.baffles && { baffles: design.baffles }),
  };
  const plain = frontOutline(garment, shape, neck, design.scoop);
  const outline = garment.wobble(design.baffles ? scalloped(plain, shape, design.baffles) : plain, 0.1);
  garment.silhouette(outline);
  drawSleeve(garment, shape, -1, sleeve);
  if (!bent) drawSleeve(garment, shape, 1, sleeve);
  const until = design.hem === 'rib' ? shape.length - (design.ribHeight ?? 6) : shape.length;
  garment.panel(outline, {
    wobble: 0,
    contour: false,
    cast: shape.sleeve ? 0.3 : 0,
    round: { from: [-shape.chest / 2, 0], to: [shape.chest / 2, 0], strength: 0.75 },
    knit: design.baffles === undefined,
    inner: [
      ...blockBody(garment, shape),
      ...(design.baffles ? bodyBaffles(garment, shape, design.baffles) : []),
      ...(design.inner?.(garment, shape) ?? []),
      ...bodyShade(garment, shape, design.folds ?? 0.95, until),
      ...(design.hem === 'rib' ? ribHem(garment, shape.hem / 2, until, shape.length, design.ribCloth?.(garment)) : []),
      ...(design.hem === 'stitched' ? hemStitches(garment, shape) : []),
    ],
  });
  if (shape.sleeve)
    garment.add(
      ...([1, -1] as const).flatMap((side): Painted[] => {
        const seam = armholeSeam(shape, side, design.scoop);
        return [
          pen(seam, 0.3, garment.cloth.ink, 0.6, 0.5),
          ...(garment.small || design.folds === 0 ? [] : [stitch(beside(seam, side * 0.8), garment.cloth.ink, 0.4)]),
        ];
      }),
    );
  design.front?.(garment, shape);
  if (bent) drawSleeve(garment, shape, 1, { ...sleeve, over: true, castOn: curvePath(outline) });
  design.collar?.(garment, shape);
  sideAnchors(garment, shape);
  return garment.finish();
};

/** The stitches of a hem, painted inside the body. */
export const hemStitches = (garment: Garment, shape: UpperShape, height = 1.9): Painted[] => {
  if (garment.small) return [];
  const { length, hem, hemDip } = shape;
  const run: Node[] = [
    [-hem / 2 - 1, length - hemDip - height],
    [-hem * 0.3, length - hemDip * 0.25 - height + 0.1],
    [0, length - height + 0.2],
    [hem * 0.3, length - hemDip * 0.25 - height + 0.1],
    [hem / 2 + 1, length - hemDip - height],
  ];
  return [stitch(run, garment.cloth.ink, 0.65), line(beside(run, 0.35), 0.1, garment.cloth.ink, 0.35)];
};
