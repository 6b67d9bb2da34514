export { SHOES } from './shoes.ts';
