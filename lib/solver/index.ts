export { loadSolver } from './highs.ts';
