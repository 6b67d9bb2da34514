import type { Cut, Length } from '../../vocabulary/cuts.ts';
import type { DrawnPiece } from '../drawing.ts';
import { clampLength, type DrawnLength } from '../kit/index.ts';

/** Trousers lying flat, in centimetres: widths are half the girth, heights run down from the top of the waistband. */
export interface LegMeasures {
  readonly waist: number;
  readonly hip: number;
  /** Top of the waistband to the crotch. */
  readonly rise: number;
  /** Top of the waistband to the hem, along the side. */
  readonly length: number;
  readonly knee: number;
  readonly hem: number;
  readonly band: number;
}

/** What a cut adds to the hip, medium size. common practice, no source */
const HIP_EASE: Partial<Record<Cut, number>> = {
  slim: -1.5,
  relaxed: 1,
  wide: 1.5,
  full: 1.5,
  oversized: 3,
  cocoon: 2,
};

/** Leg widths at knee and hem for a leg of full length, medium size. common practice, no source */
const LEGS: Readonly<Record<Cut, readonly [knee: number, hem: number]>> = {
  fitted: [15.5, 10.5],
  slim: [18.4, 15.6],
  tapered: [19.8, 15.2],
  straight: [20.4, 19.2],
  regular: [20.8, 19.2],
  tailored: [20.6, 18],
  bootcut: [20.5, 24.5],
  'a-line': [28, 32],
  wrap: [28, 31],
  boxy: [24, 22.5],
  relaxed: [23.6, 22.2],
  wide: [26.5, 29.5],
  flared: [21.5, 31],
  pleated: [27, 22.5],
  full: [30, 38],
  oversized: [28, 28],
  cocoon: [27.5, 17.5],
};

/** Side length from the waist, medium size: where each word ends on the body. common practice, no source */
const SIDE: Readonly<Record<Length, number>> = {
  none: 32,
  cropped: 84,
  waist: 32,
  hip: 34,
  thigh: 44,
  mini: 36,
  knee: 58,
  midi: 78,
  calf: 84,
  ankle: 94,
  full: 104,
  floor: 110,
};
const SHORTEST = 28;
const LONGEST = 122;

/** Shorts and culottes keep the width of the thigh down to their hem. */
const thighWidth = (hip: number): number => hip * 0.53;

/** Length along the side for a piece with legs; what the stylist measured counts, within what a person can wear. */
export const sideLength = (piece: Pick<DrawnPiece, 'length' | 'lengthCm'>): DrawnLength =>
  clampLength(piece.lengthCm, SIDE[piece.length], SHORTEST, LONGEST);

/**
 * Measures of a pair of trousers or shorts from its cut and length.
 * @param ease centimetres added to the hip (and a part of it to the leg) by a loose block
 */
export const legMeasures = (
  piece: Pick<DrawnPiece, 'cut' | 'length' | 'lengthCm'>,
  { waist = 37, hip = 48, rise = 28, band = 4, ease = 0 }: Partial<Omit<LegMeasures, 'length'>> & { ease?: number },
): LegMeasures => {
  const length = sideLength(piece).cm;
  const [knee, hem] = LEGS[piece.cut];
  const fullHip = hip + ease + (HIP_EASE[piece.cut] ?? 0);
  const shownRise = Math.min(rise, length - 6);
  return {
    waist,
    hip: fullHip,
    rise: shownRise,
    length,
    band,
    ...leg(knee + ease * 0.3, hem + ease * 0.3, thighWidth(fullHip), shownRise, length, CLOSE.has(piece.cut)),
  };
};

/** Cuts that follow the thigh even when they end on it. */
const CLOSE: ReadonlySet<Cut> = new Set(['fitted', 'slim']);
/** A leg that ends no lower than this hangs straight from the thigh. */
const SHORTS_END = 66;
/** How much narrower the opening of shorts is than the thigh, more with every centimetre of leg. common practice, no source */
const shortsTaper = (length: number): number => 2 + 0.2 * Math.max(0, length - 46);
const KNEE_HEIGHT = 58;
const FLOOR_HEIGHT = 104;

/** A leg cut off short is as wide as the long one is at that height. */
const leg = (knee: number, hem: number, thigh: number, rise: number, length: number, close: boolean) => {
  if (length >= 88) return { knee, hem };
  const widthAt = (height: number): number =>
    height < KNEE_HEIGHT
      ? thigh + ((knee - thigh) * Math.max(0, height - rise)) / (KNEE_HEIGHT - rise)
      : knee + ((hem - knee) * (height - KNEE_HEIGHT)) / (FLOOR_HEIGHT - KNEE_HEIGHT);
  const least = close || length > SHORTS_END ? 0 : thigh - shortsTaper(length);
  return { knee: Math.max(least, widthAt(rise + (length - rise) * 0.47)), hem: Math.max(least, widthAt(length)) };
};
