export type { Cloth, Drape } from './cloth.ts';
export { fabric, plainCloth } from './fabric.ts';
