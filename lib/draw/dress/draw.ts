import type { Detail, Drawing, DrawnPiece } from '../drawing.ts';
import { Garment, lerp, type Node, type Painted, pen, reversed } from '../kit/index.ts';
import { blockBelow } from '../lower/colour-block.ts';
import { seamPen } from '../lower/seam-pen.ts';
import { backOfHem } from '../lower/skirt.ts';
import { armholeSeam } from '../upper/body.ts';
import { bodyFoldLines } from '../upper/folds.ts';
import type { UpperShape } from '../upper/shape.ts';
import { drawSleeve, type SleeveOptions } from '../upper/sleeve.ts';
import { bodice, type Dress, type DressBlock, dressFrame, frontInOne, type TopLine } from './frame.ts';

/** What makes one kind of dress different from another. */
export interface DressDesign {
  readonly block: DressBlock;
  readonly line: (upper: UpperShape) => TopLine;
  /** Behind everything: the inside of the back, straps that go over the shoulder. */
  readonly beneath?: (dress: Dress) => void;
  readonly sleeve?: SleeveOptions;
  readonly scoop?: number;
  /** Whether bodice and skirt are sewn together at the waist. */
  readonly waistSeam: boolean;
  readonly onBodice: (dress: Dress) => readonly Painted[];
  readonly onSkirt: (dress: Dress) => readonly Painted[];
  /** Over it all: collar, placket, belt, pockets, front straps. */
  readonly over?: (dress: Dress) => void;
  readonly backHem?: boolean;
  readonly roundness?: number;
}

/** Draws a dress after a design. */
export const drawDress = (piece: DrawnPiece, detail: Detail, design: DressDesign): Drawing => {
  const garment = new Garment(piece, detail);
  const dress = dressFrame(piece, garment, design.block, design.line);
  const { upper, skirt } = dress;
  design.beneath?.(dress);
  if (design.backHem ?? skirt.flutes.length > 1) backOfHem(skirt);
  const half = Math.max(skirt.measures.hip, skirt.measures.hem * 0.8) / 2 + 1;
  const strength = design.roundness ?? 0.75;
  const block = blockBelow(garment, lerp(dress.waistAt, skirt.measures.length, 0.5), half + 10, skirt.measures.length);
  if (design.waistSeam) {
    garment.panel(skirt.outline, {
      round: { from: [-half, 0], to: [half, 0], strength },
      inner: [...block, ...design.onSkirt(dress)],
    });
    setIn(dress, design);
    garment.panel(bodice(dress), {
      cast: 0.45,
      shift: [0.6, 1.1],
      round: { from: [-upper.chest / 2, 0], to: [upper.chest / 2, 0], strength },
      inner: design.onBodice(dress),
    });
  } else {
    setIn(dress, design);
    garment.panel(frontInOne(dress), {
      round: { from: [-half, 0], to: [half, 0], strength },
      inner: [...block, ...design.onSkirt(dress), ...design.onBodice(dress)],
    });
  }
  if (upper.sleeve)
    garment.add(
      ...([1, -1] as const).map((side) =>
        pen(armholeSeam(upper, side, design.scoop), 0.3, garment.cloth.ink, 0.6, 0.5),
      ),
    );
  design.over?.(dress);
  return finishDress(dress);
};

const setIn = ({ garment, upper }: Dress, { sleeve = {} }: DressDesign): void => {
  drawSleeve(garment, upper, -1, sleeve);
  drawSleeve(garment, upper, 1, sleeve);
};

const finishDress = ({ garment, upper, waistAt, skirt: { measures } }: Dress): Drawing =>
  garment
    .anchor('neck', [0, 0])
    .anchor('left shoulder', [-upper.shoulder / 2, upper.slope])
    .anchor('right shoulder', [upper.shoulder / 2, upper.slope])
    .anchor('waist', [0, waistAt])
    .anchor('hem', [0, measures.length])
    .anchor('left hem', [-measures.hem / 2, measures.length])
    .anchor('right hem', [measures.hem / 2, measures.length])
    .finish();

/** Light and shade on the bust, and the folds that run from the underarms to the waist. */
export const bodiceShade = (
  { garment, upper, waistAt }: Pick<Dress, 'garment' | 'upper' | 'waistAt'>,
  strength = 1,
): Painted[] => {
  const { bright, ink, sheen, depth } = garment.cloth;
  const ch = upper.chest / 2;
  const short: UpperShape = { ...upper, length: waistAt, hem: upper.waist };
  return [
    garment.plane(
      [
        [-ch * 0.45, upper.armhole - 8],
        [-ch * 0.4, lerp(upper.armhole, waistAt, 0.5)],
        [-ch * 0.34, waistAt + 3],
      ],
      ch * 0.17,
      bright,
      0.32 * sheen * strength,
    ),
    garment.plane(
      [
        [ch * 0.5, upper.armhole - 4],
        [ch * 0.48, lerp(upper.armhole, waistAt, 0.5)],
        [ch * 0.42, waistAt + 3],
      ],
      ch * 0.17,
      ink,
      0.24 * depth * strength,
    ),
    ...bodyFoldLines(garment, short, waistAt)
      .slice(0, garment.small ? 3 : 5)
      .map((fold) => garment.fold(fold.nodes, fold.width, fold.strength * 0.8 * strength, 0.26)),
  ];
};

/** Seams that shape a bodice: from the armhole over the bust to the waist. */
export const princessSeams = (
  { garment, upper, waistAt }: Pick<Dress, 'garment' | 'upper' | 'waistAt'>,
  until = waistAt,
): Painted[] =>
  ([-1, 1] as const).flatMap((side) => {
    const ch = upper.chest / 2;
    const run: Node[] = [
      [side * (Math.min(upper.shoulder, upper.chest) / 2 - 1.4), lerp(upper.slope, upper.armhole, 0.66)],
      [side * ch * 0.6, upper.armhole + 2],
      [side * ch * 0.48, lerp(upper.armhole, waistAt, 0.5)],
      [side * upper.waist * 0.23, waistAt],
      ...(until > waistAt ? ([[side * upper.waist * 0.25, until]] as const) : []),
    ];
    return [
      seamPen(garment, run, 0.3, 0.7),
      pen(
        run.map(([x, y]): Node => [x - 0.35, y]),
        0.22,
        garment.cloth.bright,
        0.45,
        0.5,
      ),
    ];
  });

/** The seam at the waist with gathers above it. */
export const waistSeam = ({ garment, upper, waistAt }: Dress): Painted =>
  seamPen(
    garment,
    [
      [-upper.waist / 2, waistAt],
      [0, waistAt + 1.1],
      [upper.waist / 2, waistAt],
    ],
    0.34,
  );

/** A belt of the dress's own cloth round the waist. */
export const selfBelt = ({ garment, upper, waistAt }: Dress, height: number): void => {
  const half = upper.waist / 2 + 0.3;
  const y = waistAt - height / 2;
  const edge = (v: number): Node[] => [
    [-half, v, 'corner'],
    [0, v + 1],
    [half, v, 'corner'],
  ];
  garment.panel([...edge(y), ...reversed(edge(y + height))], {
    edge: 0.4,
    cast: 0.5,
    wobble: 0.06,
    turn: 90,
    covers: false,
  });
};
