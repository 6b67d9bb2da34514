import type { Cut, Length } from '../../vocabulary/cuts.ts';
import type { DrawnPiece } from '../drawing.ts';
import { clampLength, type DrawnLength } from '../kit/index.ts';

/** A skirt lying flat, in centimetres; widths are half the girth. */
export interface SkirtMeasures {
  readonly waist: number;
  readonly hip: number;
  readonly hem: number;
  readonly length: number;
  readonly band: number;
}

/** How fast a skirt widens below the hip: hem width added for each centimetre of length. common practice, no source */
const FLARE: Readonly<Record<Cut, number>> = {
  fitted: -0.06,
  slim: -0.05,
  tapered: -0.08,
  straight: 0.02,
  regular: 0.1,
  tailored: 0.02,
  bootcut: 0.1,
  'a-line': 0.3,
  wrap: 0.24,
  boxy: 0.06,
  relaxed: 0.16,
  wide: 0.42,
  flared: 0.44,
  pleated: 0.34,
  full: 0.46,
  oversized: 0.3,
  cocoon: 0.04,
};

/** Length from the waist, medium size: where each word ends on the body. common practice, no source */
const LENGTHS_CM: Readonly<Record<Length, number>> = {
  none: 34,
  cropped: 38,
  waist: 34,
  hip: 36,
  thigh: 42,
  mini: 42,
  knee: 58,
  midi: 76,
  calf: 84,
  ankle: 94,
  full: 98,
  floor: 104,
};
const SHORTEST = 28;
const LONGEST = 116;
const HIP_DEPTH = 20;

/** Length from the top of the waistband; what the stylist measured counts, within what a person can wear. */
export const skirtLength = (piece: Pick<DrawnPiece, 'length' | 'lengthCm'>): DrawnLength =>
  clampLength(piece.lengthCm, LENGTHS_CM[piece.length], SHORTEST, LONGEST);

/** Hem width of a skirt that is `hip` wide `HIP_DEPTH` below the waist. */
export const hemWidth = (cut: Cut, hip: number, below: number): number =>
  Math.max(hip * 0.72, hip + FLARE[cut] * Math.max(0, below));

/** Measures of a skirt from its cut and length. */
export const skirtMeasures = (
  piece: Pick<DrawnPiece, 'cut' | 'length' | 'lengthCm'>,
  { waist = 35, hip = 47, band = 3.6 }: Partial<Pick<SkirtMeasures, 'waist' | 'hip' | 'band'>> = {},
): SkirtMeasures => {
  const length = skirtLength(piece).cm;
  return { waist, hip, band, length, hem: hemWidth(piece.cut, hip, length - HIP_DEPTH) };
};
