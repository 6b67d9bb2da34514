import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { alongEdge, type Edge, edgeBetween, edgeThrough } from '../kit/edges.ts';
import { corner, Garment, lerp, type Node, type Painted, reversed, tone } from '../kit/index.ts';
import { blockBelow } from './colour-block.ts';
import { type SkirtMeasures, skirtMeasures } from './skirt-measures.ts';

/** A skirt being drawn; the same part hangs from the waist of a dress. */
export interface Skirt {
  readonly garment: Garment;
  readonly measures: SkirtMeasures;
  /** Height the skirt starts at: the lower edge of the band, or the waist seam of a dress. */
  readonly top: number;
  readonly outline: readonly Node[];
  readonly left: Edge;
  readonly right: Edge;
  /** The edge a share of the way across: 0 at the left side seam, 1 at the right. */
  readonly at: (share: number) => Edge;
  readonly down: (share: number, from: number, to: number, steps?: number) => Node[];
  /** Where the hem is at a share of the way across. */
  readonly hemAt: (share: number) => number;
  /** Shares of the hem where a fold starts, between the flutes. */
  readonly flutes: readonly number[];
}

interface Hang {
  readonly waist: number;
  readonly hip: number;
  readonly hem: number;
  /** Heights of waist, hip and hem on the paper. */
  readonly top: number;
  readonly hipAt: number;
  readonly bottom: number;
  readonly band: number;
}

/** How many flutes a hem falls into: none when it is hardly wider than the hip. */
const fluteCount = (garment: Garment, { hip, hem }: Hang): number => {
  const fullness = (hem - hip * 0.96) / 9;
  const count = Math.round(fullness * garment.cloth.drape.folds + 1);
  return Math.max(0, Math.min(garment.small ? 3 : 6, fullness < 0.15 ? 0 : count));
};

/** Hangs a skirt from `top`: side seams, a hem that curves down at the middle and waves in flutes. */
export const hangSkirt = (garment: Garment, hang: Hang): Skirt => {
  const { waist, hip, hem, top, hipAt, bottom, band } = hang;
  const lean = garment.jitter(0.02) * hem;
  const side = (s: 1 | -1): Node[] => {
    const [w, h, e] = [waist / 2, hip / 2, hem / 2];
    const below = bottom - hipAt;
    return [
      [s * w, top, 'corner'],
      [s * lerp(w, h, 0.52), lerp(top, hipAt, 0.36)],
      [s * lerp(h, e, 0.02), hipAt],
      [s * lerp(h, e, 0.5) + lean * 0.4, hipAt + below * 0.52],
      [s * e + lean, bottom - sideRise(hang), 'corner'],
    ];
  };
  const [right, left] = [side(1), side(-1)];
  const count = fluteCount(garment, hang);
  const flutes = Array.from({ length: count }, (_, i) => (i + 0.5 + garment.jitter(0.22)) / count);
  const wave = Math.min(1.1, 0.25 + Math.max(0, hem - hip) * 0.022);
  const curve = (share: number): number => bottom - sideRise(hang) * (2 * share - 1) ** 2;
  const across = (share: number): number => lerp(-hem / 2, hem / 2, share) + lean;
  const hemNodes: Node[] = [];
  flutes.forEach((share, i) => {
    const next = flutes[i + 1] ?? 1 + 0.5 / count;
    hemNodes.push([across(share), curve(share) - wave * 0.7]);
    if (next < 1) hemNodes.push([across((share + next) / 2), curve((share + next) / 2) + wave * 0.6]);
  });
  const middle: Node[] =
    count > 0 ? hemNodes : [0.25, 0.5, 0.75].map((share) => [across(share), curve(share) + garment.jitter(0.15)]);
  const [leftEdge, rightEdge] = [edgeThrough(left), edgeThrough(right)];
  const at = (share: number): Edge => edgeBetween(leftEdge, rightEdge, share);
  return {
    garment,
    measures: { waist, hip, hem, length: bottom, band },
    top,
    left: leftEdge,
    right: rightEdge,
    at,
    down: (share, from, to, steps = 3) => alongEdge(at(share), from, to, 0, steps),
    hemAt: curve,
    flutes,
    outline: [...left.slice(0, 1), ...right, ...reversed(middle), ...reversed(left).slice(0, -1)],
  };
};

/** How much higher the hem ends at the side seams: more for a full skirt. */
const sideRise = ({ hip, hem, top, bottom }: Hang): number =>
  Math.min(4.5, 0.7 + (Math.max(0, hem - hip) * 18) / Math.max(40, bottom - top));

/** What makes one kind of skirt different from another. */
export interface SkirtRecipe {
  readonly block?: Parameters<typeof skirtMeasures>[1];
  /** Painted on the skirt, clipped to it. */
  readonly onCloth: (skirt: Skirt) => readonly Painted[];
  /** Sewn on: pockets, plackets, overlaps. */
  readonly over?: (skirt: Skirt) => void;
  readonly band: (skirt: Skirt) => void;
  /** Whether the back of the hem shows beneath the front; default true for skirts that flare. */
  readonly backHem?: boolean;
  readonly roundness?: number;
}

const HIP_DEPTH = 20;

/** The skirt of a piece, hung below its waistband. */
export const skirtFor = (piece: DrawnPiece, garment: Garment, block: SkirtRecipe['block']): Skirt => {
  const measures = skirtMeasures(piece, block);
  return hangSkirt(garment, {
    ...measures,
    top: measures.band - 0.3,
    hipAt: Math.min(HIP_DEPTH, measures.length * 0.5),
    bottom: measures.length,
  });
};

/** Draws a skirt after a recipe: back of the waist, back of the hem, the skirt, what is sewn on, the waistband. */
export const drawSkirt = (piece: DrawnPiece, detail: Detail, recipe: SkirtRecipe): Drawing => {
  const garment = new Garment(piece, detail);
  const skirt = skirtFor(piece, garment, recipe.block);
  if (piece.tuck !== 'around') backOfWaist(skirt);
  if (recipe.backHem ?? skirt.flutes.length > 1) backOfHem(skirt);
  skirtPanel(skirt, recipe.onCloth(skirt), recipe.roundness);
  recipe.over?.(skirt);
  recipe.band(skirt);
  return finishSkirt(skirt);
};

/** Paints the cloth of a skirt with what lies on it. */
export const skirtPanel = ({ garment, outline, measures }: Skirt, inner: readonly Painted[], strength = 0.85): void => {
  const half = Math.max(measures.hip, measures.hem * 0.85) / 2 + 1;
  const block = blockBelow(garment, lerp(0, measures.length, 0.64), half + 8, measures.length);
  garment.panel(outline, { round: { from: [-half, 0], to: [half, 0], strength }, inner: [...block, ...inner] });
};

/** Names the anchors and ends the drawing. */
export const finishSkirt = ({ garment, measures: { waist, length, hem } }: Skirt): Drawing =>
  garment
    .anchor('waist', [0, 1])
    .anchor('left waist', [-waist / 2, 0])
    .anchor('right waist', [waist / 2, 0])
    .anchor('hem', [0, length])
    .anchor('left hem', [-hem / 2, length])
    .anchor('right hem', [hem / 2, length])
    .finish();

/** The inner side of the back of the hem, seen where the front waves up. */
export const backOfHem = ({ garment, left, right, hemAt, measures: { length } }: Skirt): void => {
  const top = length - 8;
  const inset = 1.4;
  const y = (share: number) => hemAt(share) + (Math.abs(share - 0.5) < 0.4 ? 0.25 : -0.5);
  const x = (share: number) => lerp(left(length) + inset, right(length) - inset, share);
  garment.inside(
    [
      corner(x(0), top),
      corner(x(1), top),
      corner(x(1), y(1)),
      ...[0.75, 0.5, 0.25].map((share): Node => [x(share), y(share)]),
      corner(x(0), y(0)),
    ],
    { fill: garment.cloth.lining },
  );
};

/** The inside of the back of the waist. */
export const backOfWaist = ({ garment, measures: { waist } }: Skirt): void => {
  const half = waist / 2;
  garment.inside([corner(-half + 0.4, 0.6), [0, -0.9], corner(half - 0.4, 0.6), corner(0, 3)], {
    fill: tone(garment.cloth.ground, -0.12, 0.85),
    label: [0, -0.1],
  });
};
