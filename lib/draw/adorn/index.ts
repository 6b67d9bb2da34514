export { ACCESSORIES, JEWELLERY } from './adornments.ts';
export { adornmentLength } from './length.ts';
export { drawnLarger, SMALL_JEWELLERY_SCALE } from './metal.ts';
