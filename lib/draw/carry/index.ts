export { BAGS } from './bags.ts';
export { bagLength } from './length.ts';
