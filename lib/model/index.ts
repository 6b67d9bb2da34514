export type {
  Aversions,
  Bag,
  BagMeasure,
  Brief,
  BriefTraveller,
  DayPart,
  Occasion,
  Setting,
  TripPlace,
  Weather,
} from './brief.ts';
export type { Capsule, FixedLook } from './capsule.ts';
export type { NamedColour, PieceColour } from './colour.ts';
export type { CloRange, LayerStep, LookComfort } from './comfort.ts';
export type { HouseRuleSettings, RuleSeverity } from './house-rules.ts';
export type { ListLine, PackingListPlan, StockLine, Sundry } from './list.ts';
export type { Look, LookCounts, WornPiece } from './look.ts';
export type { ClockTime, IsoDate, Measure } from './measure.ts';
export type { PackedBag, PackedPiece, PackedSundry, Packing } from './packing.ts';
export type { DressInterval, Piece, PieceField, SourceFile } from './piece.ts';
export type {
  Plan,
  PlanEntry,
  PlanMend,
  PlannedDay,
  PlannedOccasion,
  UnservedOccasion,
  Way,
  WeakPoint,
} from './plan.ts';
export type { Finding, Problem } from './problem.ts';
export type { Studio } from './studio.ts';
