export { lookPictureSvg, type PictureGround, piecePictureSvg } from './picture.ts';
export { createRasteriser, type Pixels, type Rasteriser, type RasterOptions } from './rasteriser.ts';
