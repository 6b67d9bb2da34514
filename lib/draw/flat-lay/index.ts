export type { Cutout, FlatLay, Frame, LayItem, Placed } from './item.ts';
export { layFlat, VISIBLE_AT_LEAST } from './lay.ts';
export { itemMarkup, layMarkup, type Under } from './markup.ts';
