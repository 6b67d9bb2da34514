export { ACCESSORIES, JEWELLERY } from './adornments.ts';
export { SMALL_JEWELLERY_SCALE } from './metal.ts';
