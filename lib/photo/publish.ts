import { corrupt, openPhoto } from './open.ts';
import { good, type PhotoResult } from './trouble.ts';

/** A photo as it may be published: upright, sRGB, no larger than asked, without any metadata. */
export interface PublishedPhoto {
  readonly bytes: Uint8Array;
  readonly width: number;
  readonly height: number;
  readonly type: 'image/webp' | 'image/jpeg' | 'image/png';
}

export interface PublishOptions {
  /** Longer side at most, pixels. */
  readonly longerSide: number;
  readonly format: 'webp' | 'jpeg' | 'png';
}

/** WebP and JPEG quality at which cloth shows no artefacts on a phone. Own choice. */
const QUALITY = 82;

/**
 * A photo made fit to publish. Place, time, camera, comments, previews and colour profile are dropped; the camera's
 * orientation and the profile are applied first. Never enlarged. The same photo gives the same bytes.
 */
export const publishPhoto = async (
  contentFolder: string,
  name: string,
  { longerSide, format }: PublishOptions,
): Promise<PhotoResult<PublishedPhoto>> => {
  const photo = await openPhoto(contentFolder, name);
  if (!photo.ok) return photo;
  const small = photo.value
    .decode()
    .resize({ width: longerSide, height: longerSide, fit: 'inside', withoutEnlargement: true });
  try {
    const coded =
      format === 'webp'
        ? small.webp({ quality: QUALITY })
        : format === 'jpeg'
          ? small.flatten({ background: '#ffffff' }).jpeg({ quality: QUALITY, mozjpeg: true })
          : small.png();
    const { data, info } = await coded.toBuffer({ resolveWithObject: true });
    return good({ bytes: data, width: info.width, height: info.height, type: `image/${format}` });
  } catch {
    return corrupt(name);
  }
};
