export { chooseCapsule } from './choose.ts';
export { type CostOfPiece, costsOf } from './costs.ts';
export { type Refusal, refusalOf, refusedPieces } from './eligible.ts';
export { type Position, positionsOf, seatPieces } from './fill.ts';
export type { Addition } from './gains.ts';
export { coloursToBuy, thingsToBuy } from './grid.ts';
export { type ImaginedPiece, imagine } from './imagine.ts';
export { type Improvements, improve, type Swap } from './improve.ts';
export type { ImproveQuestion } from './improve-question.ts';
export { type Limits, limitsOf, overLimits, packedOf } from './limits.ts';
export { checkList, findingsOfList, type LineCheck, type ListCheck } from './list-check.ts';
export { lookSourceOf } from './look-source.ts';
export {
  type CombinedMoods,
  combineMoods,
  compareMoods,
  type Mood,
  type MoodComparison,
  type MoodSide,
  type PlanQuality,
  planQuality,
} from './moods.ts';
export { judgePicture, type PictureVerdict, seenPieces } from './picture.ts';
export { createPricer, type Pricing } from './pricing.ts';
export type { Purchase } from './purchases.ts';
export type { Choice, ChooseQuestion, Proposal } from './record.ts';
export { type Move, type SharedBags, sharedBags, type TravellersBag, tellBag, tellMove } from './shared-bags.ts';
export { gainOf, tellAddition, tellCost, tellPurchase, tellSwap, thingOf, toPay } from './tell.ts';
export { silhouetteOf, tradeFindings } from './trade.ts';
export { listFromTraits, type ReasonedList, type TripTraits, traitsOf } from './traits.ts';
export { type Lendable, type SideBySide, type Together, type Traveller, travelTogether } from './travellers.ts';
