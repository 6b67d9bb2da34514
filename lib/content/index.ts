export { slug } from './brief.ts';
export { insideFolder } from './files.ts';
export { nearestWords, writeInstead } from './nearest.ts';
export { type Content, type ContentResult, readContent } from './read.ts';
export { occasionsNamed } from './references.ts';
export type { ReadOptions, Trip } from './trips.ts';
export { briefFor, wardrobeOn } from './wardrobe.ts';
