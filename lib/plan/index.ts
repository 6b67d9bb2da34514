export { fixedFor, leftForLater } from './candidates.ts';
export { type PackedDamp, packedDamp } from './damp.ts';
export { findingsOfBrief } from './findings.ts';
export {
  findingsOfFixed,
  findingsOfNumber,
  findingsOfPlan,
  findingsOfReserve,
} from './findings-of-plan.ts';
export { findingsOfRooms } from './findings-of-rooms.ts';
export { findingsOfWashing } from './findings-of-washing.ts';
export { findingsOfFinish, withSocks } from './finish.ts';
export type { LookRestriction, LookSource, RankedLook } from './look-source.ts';
export type { WardrobeBehind } from './mend-ways.ts';
export { type Moment, momentsOf } from './moments.ts';
export { nearestInWords } from './nearest.ts';
export { planTrip, type TripQuestion } from './plan.ts';
export type { Programme, Solved, Solver, Term } from './programme.ts';
export { findingsOfRepeats } from './repeats.ts';
export { coatsAtHand, isInARoom } from './room.ts';
export { createStandsIn, type StandsIn } from './stand-in.ts';
export { findingsOfUse, usedIn } from './used.ts';
export { stillWet } from './washing.ts';
export { piecesOfWay } from './way-record.ts';
