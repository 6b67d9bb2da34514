export { BAGS } from './bags.ts';
