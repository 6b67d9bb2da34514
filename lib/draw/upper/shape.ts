import { type Cut, KINDS } from '../../vocabulary/index.ts';
import type { DrawnPiece } from '../drawing.ts';
import { clampLength, type DrawnLength, FROM_SHOULDER } from '../kit/index.ts';
import { withItsSleeves } from './arms.ts';
import { tuckedShape } from './tucked.ts';

export interface SleeveShape {
  /** Shoulder to cuff along the outer edge. */
  readonly length: number;
  /** Widths laid flat. */
  readonly elbow: number;
  readonly cuff: number;
  /** Degrees from straight down, outwards: upper arm and forearm. */
  readonly upper: number;
  readonly fore: number;
}

/** An upper garment laid flat, in centimetres; y runs down from the neck point of the shoulder. */
export interface UpperShape {
  readonly chest: number;
  readonly waist: number;
  readonly hem: number;
  readonly length: number;
  readonly shoulder: number;
  /** How far the shoulder drops from neck to arm. */
  readonly slope: number;
  readonly armhole: number;
  readonly neck: number;
  readonly neckDepth: number;
  /** How much the hem dips in the middle (shirt tails are negative at the side). */
  readonly hemDip: number;
  /** How far the cloth hangs over a ribbed hem. */
  readonly blouse: number;
  readonly sleeve: SleeveShape | undefined;
}

interface Ease {
  readonly chest: number;
  readonly waist: number;
  readonly hem: number;
  readonly shoulder: number;
  readonly armhole: number;
  readonly sleeve: number;
  readonly length: number;
}
const ease = (
  chest: number,
  waist: number,
  hem: number,
  shoulder: number,
  armhole: number,
  sleeve: number,
  length = 0,
): Ease => ({ chest, waist, hem, shoulder, armhole, sleeve, length });

/** Centimetres each cut adds to a regular one, laid flat. common practice, no source */
const EASE: Readonly<Record<Cut, Ease>> = {
  fitted: ease(-6, -8, -5.5, -2, -1.8, -2.4),
  slim: ease(-3.5, -5, -3, -1.2, -0.8, -1.4),
  tapered: ease(0, -1, -4, 0, 0, -0.5),
  straight: ease(0, 0, 0, 0, 0, 0),
  regular: ease(0, 0, 0, 0, 0, 0),
  tailored: ease(-0.5, -4.5, -0.5, -0.5, -0.5, -0.5),
  bootcut: ease(0, 0, 2, 0, 0, 0),
  wrap: ease(0, -2.5, 0, 0, 0, 0),
  'a-line': ease(0, 3, 11, 0, 0, 0),
  boxy: ease(4, 6, 4.5, 2.5, 1.6, 1.4, -3),
  relaxed: ease(5, 6, 5, 2.4, 1.8, 1.8, 1),
  wide: ease(8.5, 10, 10, 3.5, 2.8, 2.8, 1),
  flared: ease(0, -2, 14, 0, 0, 0),
  pleated: ease(2, 2, 5, 0, 0, 0.5),
  full: ease(9, 12, 16, 3, 3, 3, 1),
  oversized: ease(12.5, 14, 12, 8.5, 4.6, 3.8, 4),
  cocoon: ease(9, 14, 0, 5.5, 3.6, 2.6, 1),
};

const LOW = 30;
const HIGH = 155;

/** The length an upper garment is drawn at: measured, or moved from its usual length by `length` and cut. */
export const upperLength = (piece: DrawnPiece, usual: number): DrawnLength => {
  const kind = KINDS[piece.kind];
  const byWord =
    piece.length === 'none' || kind.length === 'none' ? 0 : FROM_SHOULDER[piece.length] - FROM_SHOULDER[kind.length];
  return clampLength(piece.lengthCm, usual + byWord + EASE[piece.cut].length - EASE[kind.cut].length, LOW, HIGH);
};

/** The measured length of an upper garment as it is drawn; nothing when none was measured. */
export const upperDrawnLength = (piece: DrawnPiece): DrawnLength | undefined =>
  piece.lengthCm === undefined ? undefined : clampLength(piece.lengthCm, FROM_SHOULDER[piece.length], LOW, HIGH);

/**
 * The shape of a piece from the usual shape of its kind: the cut moves widths away from the kind's usual cut, the
 * length moves the hem, which keeps the run of the side seam; sleeves reach as far as what the piece covers.
 */
export const upperShape = (piece: DrawnPiece, ofKind: UpperShape): UpperShape => {
  const loose = looseShape(piece, ofKind);
  return piece.tuck === 'in' ? tuckedShape(loose) : loose;
};

const looseShape = (piece: DrawnPiece, ofKind: UpperShape): UpperShape => {
  const usual = withItsSleeves(piece, ofKind);
  const to = EASE[piece.cut];
  const from = EASE[KINDS[piece.kind].cut];
  const more = (part: keyof Ease) => to[part] - from[part];
  const { cm } = upperLength(piece, usual.length);
  const flare = (cm - usual.length) * (cm > usual.length ? 0.09 : 0.05);
  const fall = cm / usual.length;
  return {
    ...usual,
    chest: usual.chest + more('chest'),
    waist: usual.waist + more('waist'),
    hem: usual.hem + more('hem') * (more('hem') > 8 ? Math.max(0.6, Math.min(1.6, fall)) : 1) + flare,
    shoulder: usual.shoulder + more('shoulder'),
    slope: usual.slope + Math.max(0, more('shoulder')) * 0.16,
    armhole: Math.min(usual.armhole + more('armhole'), cm - 6),
    length: cm,
    sleeve: usual.sleeve && {
      ...usual.sleeve,
      elbow: usual.sleeve.elbow + more('sleeve'),
      cuff: usual.sleeve.cuff + more('sleeve') * (usual.sleeve.length < 30 ? 1 : 0.35),
      // a dropped shoulder takes from the sleeve's length what it adds to the shoulder
      length: usual.sleeve.length - Math.max(0, more('shoulder')) * 0.4,
    },
  };
};
