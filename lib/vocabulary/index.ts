export { ACTIVITIES, type ActivityId } from './activities.ts';
export { COVERAGE, type Coverage } from './coverage.ts';
export { CUTS, type Cut, FROM_SHOULDER_CM, LENGTHS, type Length } from './cuts.ts';
export { DRESS_CODES, type DressCode, dressIndex } from './dress-codes.ts';
export {
  estimateClo,
  estimateDryHours,
  estimateGrams,
  estimateLitres,
  estimateWears,
  FABRIC_WORDS,
  fabricNamed,
  fabricOf,
  given,
  UNCERTAINTY,
} from './estimate.ts';
export { FABRICS, type Fabric, type FabricId, FINE_SURFACES, SURFACES, type Surface } from './fabrics.ts';
export { FEELS, type Feels } from './feels.ts';
export { isForWarmth, isSkirt, KIND_GROUPS, KIND_IDS, KINDS, type Kind, type KindGroup, type KindId } from './kinds.ts';
export { HEEL_CM, LENGTH_CM, SHAFT_CM, within } from './measures.ts';
export { CONTRADICTORY_NEEDS, NEEDS, NEEDS_OF_WEATHER, NEEDS_ON_FOOT, type Need } from './needs.ts';
export { OTHER_WORDS } from './other-words.ts';
export { PATTERN_SCALES, PATTERN_TYPES, type PatternScale, type PatternType, QUIET_PATTERNS } from './patterns.ts';
export {
  CORE_SLOTS,
  JEWELLERY_SITES,
  type JewellerySite,
  LAYER_SLOTS,
  PLACES,
  type Place,
  SLOTS,
  type Slot,
} from './places.ts';
export { fabricRefused, isFabricWord, keptOffSkin } from './refused.ts';
export { euShoeSize, sizeFactor } from './sizes.ts';
export { SUNDRY_GROUPS, SUNDRY_PACES, SUNDRY_TRAITS, type SundryPace, type SundryTrait } from './sundry-traits.ts';
export { type Tuck, tucksOf } from './tucked.ts';
