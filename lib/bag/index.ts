export { exactly, sumOf } from './measures.ts';
export { type PackQuestion, packTrip } from './pack.ts';
