export type { Cutout, FlatLay, Frame, LayItem, Placed } from './item.ts';
export { layFlat, VISIBLE_AT_LEAST } from './lay.ts';
export { bareMarkup, itemMarkup, layMarkup, type Under } from './markup.ts';
export { SHADE } from './shade.ts';
export { pictureOfShape, type Shape, shapeOf } from './shape.ts';
