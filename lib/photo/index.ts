export { checkPhoto, coloursOfPhoto } from './colours.ts';
export { cutOutPhoto, type PhotoCutout } from './cut-out.ts';
export { MOST_PIXELS, type OpenPhoto, openPhoto } from './open.ts';
export { type PublishedPhoto, type PublishOptions, publishPhoto } from './publish.ts';
export type { PhotoResult, PhotoTrouble } from './trouble.ts';
