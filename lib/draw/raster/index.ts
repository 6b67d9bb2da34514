export {
  type LaidPicture,
  lookPicture,
  type PictureGround,
  type PictureSize,
  pictureSvg,
  pieceMargin,
  piecePicture,
  redrawn,
} from './picture.ts';
export { createRasteriser, type LaidOptions, type Pixels, type Rasteriser, type RasterOptions } from './rasteriser.ts';
