export { CLOTH_COLOURS, COLOUR_NAMES, METAL_NAMES } from './all.ts';
export type { NameTable } from './table.ts';
