import type { Point } from '../drawing.ts';
import { direction, move } from '../kit/index.ts';
import type { UpperShape } from './shape.ts';

export type Side = 1 | -1;

/** The skeleton of a sleeve: shoulder, underarm, outer and inner points at elbow and wrist, and their directions. */
export interface SleeveFrame {
  readonly shoulder: Point;
  readonly underarm: Point;
  readonly elbowOut: Point;
  readonly elbowIn: Point;
  readonly wristOut: Point;
  readonly wristIn: Point;
  readonly upper: Point;
  readonly fore: Point;
  /** Unit vectors across the sleeve, from the outer to the inner edge. */
  readonly acrossUpper: Point;
  readonly acrossFore: Point;
  /** Degrees the grain is turned. */
  readonly turnUpper: number;
  readonly turnFore: number;
}

export const sleeveFrame = (shape: UpperShape, side: Side, bent = false): SleeveFrame => {
  const sleeve = shape.sleeve ?? { length: 1, elbow: 1, cuff: 1, upper: 30, fore: 20 };
  const upperAngle = bent ? 25 : sleeve.upper + (side === 1 ? 3 : 0);
  const foreAngle = bent ? -16 : sleeve.fore + (side === 1 ? 4 : 0);
  const upper = direction(upperAngle);
  const fore = direction(foreAngle);
  const acrossUpper: Point = [-upper[1], upper[0]];
  const acrossFore: Point = [-fore[1], fore[0]];
  const shoulder: Point = [shape.shoulder / 2, shape.slope];
  const elbowOut = move(shoulder, upper, sleeve.length * 0.52);
  const free = move(elbowOut, fore, sleeve.length * 0.48);
  // a short sleeve on a wide body must still clear the underarm
  const clear = sleeve.length < 30 ? (shape.chest / 2 + 2.2 - (free[0] + acrossFore[0] * sleeve.cuff)) / fore[0] : 0;
  const wristOut = move(free, fore, Math.max(0, Math.min(12, clear)));
  const m = (p: Point): Point => (side === 1 ? p : [-p[0], p[1]]);
  return {
    shoulder: m(shoulder),
    underarm: m([shape.chest / 2, shape.armhole]),
    elbowOut: m(elbowOut),
    elbowIn: m(move(elbowOut, acrossUpper, sleeve.elbow)),
    wristOut: m(wristOut),
    wristIn: m(move(wristOut, acrossFore, sleeve.cuff)),
    upper: m(upper),
    fore: m(fore),
    acrossUpper: m(acrossUpper),
    acrossFore: m(acrossFore),
    turnUpper: -side * ((upperAngle + foreAngle) / 2),
    turnFore: -side * foreAngle,
  };
};
