/** From and to, centimetres. */
type Range = readonly [low: number, high: number];

/** What any piece can be long; what is written beyond is a slip of the pen. Own choice. */
export const LENGTH_CM: Range = [1, 250];
/** Heels as they are worn: what is written beyond counts and is drawn as the nearest of these. common practice, no source */
export const HEEL_CM: Range = [0, 14];
/** Shafts of boots above the seat of the foot, likewise. common practice, no source */
export const SHAFT_CM: Range = [11, 60];

/** A measure within its range. */
export const within = ([low, high]: Range, cm: number): number => Math.min(high, Math.max(low, cm));
