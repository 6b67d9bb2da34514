import { KINDS } from '../../vocabulary/index.ts';
import type { DrawnPiece } from '../drawing.ts';
import { clampLength, type DrawnLength, FROM_SHOULDER, type Garment, lerp, mirrored, type Node } from '../kit/index.ts';
import { hangSkirt, type Skirt } from '../lower/skirt.ts';
import { hemWidth } from '../lower/skirt-measures.ts';
import { sideLine } from '../upper/body.ts';
import { type UpperShape, upperShape } from '../upper/shape.ts';

/** The usual cut of a dress, in centimetres laid flat; heights run down from the neck point of the shoulder. */
export interface DressBlock {
  readonly upper: UpperShape;
  readonly waistAt: number;
  readonly hip: number;
  readonly hipAt: number;
  /** Hem width the design adds for each centimetre below the hip, whatever the cut. */
  readonly spread?: number;
}

/** The upper edge of a dress, and its right side down to the underarm. */
export interface TopLine {
  /** From the upper left corner to the upper right one, both left out. */
  readonly neck: readonly Node[];
  /** From the upper right corner over the shoulder or along the top to the underarm. */
  readonly right: readonly Node[];
}

/** A dress being drawn. */
export interface Dress {
  readonly garment: Garment;
  readonly upper: UpperShape;
  readonly waistAt: number;
  readonly skirt: Skirt;
  readonly top: TopLine;
  /** The right side from the upper corner to the waist. */
  readonly right: readonly Node[];
  readonly left: readonly Node[];
}

const SHORTEST = 62;
const LONGEST = 154;

/** Length from the shoulder; what the stylist measured counts, within what a person can wear. */
export const dressLength = (piece: Pick<DrawnPiece, 'length' | 'lengthCm'>): DrawnLength =>
  clampLength(piece.lengthCm, FROM_SHOULDER[piece.length], SHORTEST, LONGEST);

/** The shape of the upper part of a dress `length` long, its widths eased by the piece's cut. */
export const dressUpper = (piece: DrawnPiece, usual: UpperShape, length: number): UpperShape =>
  upperShape({ ...piece, length: KINDS[piece.kind].length, lengthCm: length }, { ...usual, length });

/** Lays out a dress: bodice, waist, and the skirt that hangs from it. */
export const dressFrame = (
  piece: DrawnPiece,
  garment: Garment,
  block: DressBlock,
  line: (upper: UpperShape) => TopLine,
): Dress => {
  const length = dressLength(piece).cm;
  const upper = dressUpper(piece, block.upper, length);
  const hip = block.hip + (upper.chest - block.upper.chest) * 0.7;
  const hipAt = Math.min(block.hipAt, length - 6);
  const skirt = hangSkirt(garment, {
    waist: upper.waist,
    hip,
    hem: hemWidth(piece.cut, hip, length - hipAt) + (block.spread ?? 0) * (length - hipAt),
    top: block.waistAt,
    hipAt,
    bottom: length,
    band: 0,
  });
  const top = line(upper);
  const right: Node[] = [
    ...top.right,
    [lerp(upper.chest, upper.waist, 0.66) / 2, lerp(upper.armhole, block.waistAt, 0.58)],
    [upper.waist / 2, block.waistAt],
  ];
  return { garment, upper, waistAt: block.waistAt, skirt, top, right, left: mirrored(right) };
};

/** A top line over the shoulders, with or without sleeves set in. */
export const shoulderLine =
  (neck: (upper: UpperShape) => Node[], scoop?: number) =>
  (upper: UpperShape): TopLine => ({ neck: neck(upper), right: sideLine(upper, scoop).slice(0, 6) });

/** The whole front in one piece, without a waist seam. */
export const frontInOne = ({ top, right, left, skirt }: Dress): Node[] => [
  left[0] ?? [0, 0],
  ...top.neck,
  ...right,
  ...skirt.outline.slice(2),
  ...[...left].reverse().slice(0, -1),
];

/** The bodice alone, cut off at the waist seam, which dips a little in the middle. */
export const bodice = ({ top, right, left, waistAt }: Dress): Node[] => {
  const end = right[right.length - 1] ?? [0, 0];
  return [
    left[0] ?? [0, 0],
    ...top.neck,
    ...right.slice(0, -1),
    [end[0], end[1], 'corner'],
    [0, waistAt + 1.1],
    [-end[0], end[1], 'corner'],
    ...[...left].reverse().slice(1, -1),
  ];
};
