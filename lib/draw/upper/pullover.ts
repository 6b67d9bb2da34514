import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { curvePath, Garment, line, type Node, type Painted, pen, ribsBetween, stitch } from '../kit/index.ts';
import { blockBody, blockSleeve } from './blocks.ts';
import { armholeSeam, frontOutline, halfWidthAt, sideAnchors } from './body.ts';
import { beside, ribHem } from './finish.ts';
import { bodyFoldLines, bodyShade } from './folds.ts';
import { backBand, finishNeck, frontNeck, type Neckline, neckInside } from './necklines.ts';
import { type UpperShape, upperShape } from './shape.ts';
import { drawSleeve, isBent, type SleeveOptions } from './sleeve.ts';
import { bodyStripes } from './stripes.ts';

export interface PulloverDesign {
  readonly usual: UpperShape;
  readonly neckline: Neckline;
  readonly finish: 'rib' | 'band' | 'edge' | 'none';
  readonly bandWidth?: number;
  /** How far the back of the neck stands above the neck points. */
  readonly backRise?: number;
  readonly sleeve?: SleeveOptions;
  /** Whether one arm may be laid over the body; which pieces do is seeded. */
  readonly mayBend?: boolean;
  readonly hem: 'stitched' | 'rib' | 'edge';
  readonly ribHeight?: number;
  /** Ribs down body and sleeves, of the cloth itself. */
  readonly ribbed?: boolean;
  /** Height from which crosswise stripes run; a plain yoke above. */
  readonly stripesFrom?: number;
  readonly scoop?: number;
  readonly folds?: number;
  /** Painted on the body, clipped to it. */
  readonly inner?: (garment: Garment, shape: UpperShape) => readonly Painted[];
  /** Laid on at the end: collar, placket, pocket, hood. */
  readonly extra?: (garment: Garment, shape: UpperShape) => void;
  /** Laid beneath everything: the back of a hood. */
  readonly beneath?: (garment: Garment, shape: UpperShape) => void;
}

/** Everything pulled over the head: tees, tops, jumpers, sweatshirts. */
export const drawPullover = (piece: DrawnPiece, detail: Detail, design: PulloverDesign): Drawing => {
  const garment = new Garment(piece, detail);
  const shape = upperShape(piece, design.usual);
  const { cloth } = garment;
  const rise = design.backRise ?? 1;
  design.beneath?.(garment, shape);
  neckInside(garment, shape, design.neckline, rise);
  if (design.finish === 'rib' || design.finish === 'band') backBand(garment, shape, rise, design.bandWidth ?? 2);
  const outline = garment.wobble(frontOutline(garment, shape, frontNeck(shape, design.neckline), design.scoop), 0.12);
  garment.silhouette(outline);
  const ribbed = design.ribbed || cloth.surface === 'rib knit';
  const sleeve: SleeveOptions = { ...blockSleeve(garment), ...design.sleeve, ...(ribbed && { ribs: 24 }) };
  drawSleeve(garment, shape, -1, sleeve);
  const bent = design.mayBend === true && isBent(piece, garment, shape);
  if (!bent) drawSleeve(garment, shape, 1, sleeve);
  const until = design.hem === 'rib' ? shape.length - (design.ribHeight ?? 6) : shape.length;
  const folds = bodyFoldLines(garment, shape, until);
  garment.panel(outline, {
    wobble: 0,
    contour: false,
    knit: !ribbed,
    print: cloth.stripes === undefined,
    cast: shape.sleeve ? 0.3 : 0,
    round: { from: [-shape.chest / 2, 0], to: [shape.chest / 2, 0], strength: 0.8 },
    inner: [
      ...blockBody(garment, shape),
      ...(ribbed ? bodyRibs(garment, shape) : []),
      ...bodyStripes(garment, shape, folds, design.stripesFrom ?? 0, until),
      ...(design.inner?.(garment, shape) ?? []),
      ...bodyShade(garment, shape, design.folds ?? 1, until, folds),
      ...hemMarks(garment, shape, design),
    ],
  });
  if (shape.sleeve)
    garment.add(
      ...([1, -1] as const).map((side) => pen(armholeSeam(shape, side, design.scoop), 0.3, cloth.ink, 0.6, 0.5)),
    );
  if (design.finish !== 'none') finishNeck(garment, shape, design.neckline, design.finish, design.bandWidth);
  design.extra?.(garment, shape);
  if (bent) drawSleeve(garment, shape, 1, { ...sleeve, over: true, castOn: curvePath(outline) });
  sideAnchors(garment, shape);
  return garment.finish();
};

const bodyRibs = (garment: Garment, shape: UpperShape): Painted[] => {
  const edge = (side: 1 | -1): Node[] => [
    [side * (shape.shoulder / 2), 0],
    [side * (shape.chest / 2), shape.armhole],
    [side * halfWidthAt(shape, (shape.armhole + shape.length) / 2), (shape.armhole + shape.length) / 2],
    [side * (shape.hem / 2), shape.length],
  ];
  return [
    ribsBetween(edge(-1), edge(1), Math.round(shape.chest / 1.1), garment.cloth, { width: 0.18, small: garment.small }),
  ];
};

const hemMarks = (garment: Garment, shape: UpperShape, design: PulloverDesign): Painted[] => {
  const { length, hem, hemDip } = shape;
  const ink = garment.cloth.ink;
  if (design.hem === 'rib') return ribHem(garment, hem / 2, length - (design.ribHeight ?? 6), length);
  if (garment.small || design.hem === 'edge') return [];
  const run: Node[] = [
    [-hem / 2 - 1, length - hemDip - 1.9],
    [-hem * 0.25, length - hemDip * 0.2 - 1.8],
    [0, length - 1.6],
    [hem * 0.25, length - hemDip * 0.2 - 1.8],
    [hem / 2 + 1, length - hemDip - 1.9],
  ];
  return [stitch(run, ink, 0.65), line(beside(run, 0.4), 0.1, ink, 0.35)];
};
