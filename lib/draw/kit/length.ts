import { FROM_SHOULDER_CM } from '../../vocabulary/index.ts';
import { clamp } from './geometry.ts';

/** A length as drawn: `clamped` when what was asked for lies outside what such a garment can be. */
export interface DrawnLength {
  readonly cm: number;
  readonly clamped: boolean;
}

/** Holds a length within `low` to `high` centimetres; anything that is not a number becomes `fallback`. */
export const clampLength = (asked: number | undefined, fallback: number, low: number, high: number): DrawnLength => {
  if (asked === undefined) return { cm: clamp(fallback, low, high), clamped: false };
  if (!Number.isFinite(asked)) return { cm: clamp(fallback, low, high), clamped: true };
  const cm = clamp(asked, low, high);
  return { cm, clamped: cm !== asked };
};

/** Where a garment hung from the shoulder ends, centimetres below the neck point. */
export const FROM_SHOULDER = FROM_SHOULDER_CM;
