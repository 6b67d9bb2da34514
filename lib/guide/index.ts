export { buildGuides } from './all.ts';
export { type Beside, besideGuides, type Keep } from './beside.ts';
export { type BetterQuestion, improveGuide } from './better.ts';
export {
  buildGuide,
  engineFor,
  type GuideQuestion,
  piecesOfCapsule,
  planGuide,
  rulesFor,
} from './build.ts';
export { dampInWords } from './damp.ts';
export { freeDay, inPlaceOfLook, placeOfDay, wayInWords } from './day-words.ts';
export {
  areMoods,
  companionsOf,
  type Family,
  familyOf,
  guidesTogether,
  type MoodPair,
  moodPair,
  type Party,
  partyOf,
} from './family.ts';
export { findingsOfLetters } from './letters.ts';
export { inGroupOrder } from './order.ts';
export { piecesToName } from './piece-names.ts';
export type { Guide, GuideLook, GuidePair, GuidePiece } from './record.ts';
export { piecesNotWorn, refusalFindings } from './refused.ts';
export { dayOf, isForWater, wearItInShort } from './wear-it.ts';
export { type Wearing, wearingOf } from './wearing.ts';
