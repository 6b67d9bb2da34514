import { coloursOfPixels, type PhotoColours, type Pixels } from '../colour/index.ts';
import { corrupt, type OpenPhoto, openPhoto } from './open.ts';
import { good, type PhotoResult, type PhotoTrouble } from './trouble.ts';

/** Longer side of the picture that colours are read from; cloth needs no more, and it bounds time and memory. */
const READING_SIDE = 320;

/** The photo's pixels, upright and small. */
export const smallPixels = async (photo: OpenPhoto, longerSide = READING_SIDE): Promise<PhotoResult<Pixels>> => {
  try {
    const { data, info } = await photo
      .decode()
      .resize({ width: longerSide, height: longerSide, fit: 'inside', withoutEnlargement: true, kernel: 'mitchell' })
      .ensureAlpha()
      .raw({ depth: 'uchar' })
      .toBuffer({ resolveWithObject: true });
    return good({ width: info.width, height: info.height, rgba: data });
  } catch {
    return corrupt(photo.name);
  }
};

/** Longer side at which a photo is decoded to see that it is whole, pixels. */
const CHECKING_SIDE = 48;

/** What is wrong with a photo, decoded to its end; undefined when it can be used. */
export const checkPhoto = async (contentFolder: string, name: string): Promise<PhotoTrouble | undefined> => {
  const photo = await openPhoto(contentFolder, name);
  if (!photo.ok) return photo.trouble;
  const pixels = await smallPixels(photo.value, CHECKING_SIDE);
  return pixels.ok ? undefined : pixels.trouble;
};

/** The colours of a garment photographed on a plain ground, with shares; see `coloursOfPixels`. */
export const coloursOfPhoto = async (contentFolder: string, name: string): Promise<PhotoResult<PhotoColours>> => {
  const photo = await openPhoto(contentFolder, name);
  if (!photo.ok) return photo;
  const pixels = await smallPixels(photo.value);
  return pixels.ok ? good(coloursOfPixels(pixels.value)) : pixels;
};
