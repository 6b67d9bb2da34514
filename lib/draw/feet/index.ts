export { HEEL_AT_MOST } from './lasts.ts';
export { shoeLength } from './length.ts';
export { SHOES } from './shoes.ts';
