export { writeAssets } from './assets.ts';
export { type SiteInput, type SiteModel, type SitePart, siteModel } from './model.ts';
export type { CardPictures, Download, Picture, PictureIndex, PictureSet, PiecePictures } from './pictures.ts';
export { renderSite } from './render.ts';
