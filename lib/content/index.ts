export { slug } from './brief.ts';
export { insideFolder } from './files.ts';
export { nearestWords, writeInstead } from './nearest.ts';
export { type Content, type ContentResult, readContent, type Trip } from './read.ts';
export { occasionsNamed } from './references.ts';
