import { FROM_SHOULDER_CM, type Length } from './cuts.ts';
import type { FabricId } from './fabrics.ts';
import type { Kind } from './kinds.ts';

/**
 * Percent of the body a sleeved coat of a length covers: trunk 26 and arms 14 to the waist, then seat 6, thighs 19 and
 * lower legs 14. Source: the shares of Lund and Browder 1944, from memory.
 */
const COAT_COVERS: Readonly<Record<Length, number>> = {
  none: 40,
  cropped: 36,
  waist: 40,
  hip: 46,
  mini: 52,
  thigh: 56,
  knee: 65,
  midi: 70,
  calf: 72,
  ankle: 79,
  full: 79,
  floor: 79,
};

/** The lengths a coat can have, from short to long. */
const COAT_LENGTHS = ['cropped', 'waist', 'hip', 'thigh', 'knee', 'midi', 'calf', 'full'] as const;

/** How long a piece is: by its word, and by the tape where it was measured, which counts before the word. */
export interface HowLong {
  readonly length?: Length | undefined;
  /** From the neck point to the hem. */
  readonly lengthCm?: number | undefined;
}

/** Percent of the body a coat covers that ends so many centimetres below the neck point, by the lengths above and below. */
const coversAtCm = (cm: number): number => {
  const [shortest] = COAT_LENGTHS;
  const above = COAT_LENGTHS.findLast((length) => FROM_SHOULDER_CM[length] <= cm) ?? shortest;
  const below = COAT_LENGTHS.find((length) => FROM_SHOULDER_CM[length] > cm) ?? above;
  const span = FROM_SHOULDER_CM[below] - FROM_SHOULDER_CM[above];
  const share = span <= 0 ? 0 : Math.max(0, cm - FROM_SHOULDER_CM[above]) / span;
  return COAT_COVERS[above] + (COAT_COVERS[below] - COAT_COVERS[above]) * share;
};

/** Percent of the body a coat covers: by the tape, by its word, or as its kind does. */
export const coatCovers = (kind: Kind, { length = kind.length, lengthCm }: HowLong): number =>
  lengthCm === undefined ? COAT_COVERS[length] : coversAtCm(lengthCm);

/** How much more of the body a coat covers than its kind does; 1 for any other piece, whose length says little of it. */
export const coveredMore = (kind: Kind, long: HowLong): number =>
  kind.group === 'coats' ? coatCovers(kind, long) / COAT_COVERS[kind.length] : 1;

/** What a jacket to the hip covers. */
export const HIP_COVERS = COAT_COVERS.hip;

/**
 * How much heavier a down coat is by the area than the short jacket, which is made to fold small: from the thigh down
 * twice, for hood, strong shell and a fuller filling, and in between in step. Own choice: it takes the kind's 420 g to
 * the hip to some 1200 g to the knee, as such coats weigh on the rail.
 */
const LONG_DOWN_HEAVIER = 2;

/** How much heavier a coat is for its area than its kind. */
export const madeHeavier = (kind: Kind, fabric: FabricId, long: HowLong): number => {
  if (kind.group !== 'coats' || fabric !== 'down') return 1;
  const past = (percent: number): number => Math.max(0, percent - HIP_COVERS);
  const step = past(COAT_COVERS.thigh);
  const beyond = Math.min(step, past(coatCovers(kind, long))) - Math.min(step, past(COAT_COVERS[kind.length]));
  return Math.max(1, 1 + (LONG_DOWN_HEAVIER - 1) * (beyond / step));
};
