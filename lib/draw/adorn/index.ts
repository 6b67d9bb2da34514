export { ACCESSORIES, JEWELLERY } from './adornments.ts';
export { adornmentLength } from './length.ts';
export { SMALL_JEWELLERY_SCALE } from './metal.ts';
