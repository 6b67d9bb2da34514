export { buildGuides } from './all.ts';
export { buildGuide, engineFor, type GuideQuestion, lookSourceOf, piecesOfCapsule, planGuide } from './build.ts';
export { inGroupOrder } from './order.ts';
export { piecesToName } from './piece-names.ts';
export type { Guide, GuideLook, GuidePair, GuidePiece } from './record.ts';
