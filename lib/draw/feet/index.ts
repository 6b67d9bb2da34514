export { shoeLength } from './length.ts';
export { SHOES } from './shoes.ts';
