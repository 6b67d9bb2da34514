import { open } from 'node:fs/promises';
import sharp, { type Sharp } from 'sharp';
import { type PictureKind, pictureKind, SIGNATURE_BYTES } from './picture-kind.ts';
import { photoInside } from './safe-path.ts';
import { bad, good, type PhotoResult } from './trouble.ts';

/** Most pixels of a photo: above the 50 megapixels of today's phones. It bounds the memory that decoding can take. */
export const MOST_PIXELS = 64_000_000;
/** Fewer pixels on a side than this say nothing of a garment. */
const LEAST_SIDE = 8;

/** A photo that was found, looked at and can be decoded; nothing of it is in memory yet. */
export interface OpenPhoto {
  /** Name below the content folder, as written. */
  readonly name: string;
  readonly kind: 'jpeg' | 'png' | 'webp' | 'avif';
  /** Size as it is meant to be seen, after the camera's orientation. */
  readonly width: number;
  readonly height: number;
  /** A new decoder, upright, in sRGB. Metadata is dropped from all it puts out. */
  readonly decode: () => Sharp;
}

const REFUSALS: Readonly<Record<Exclude<PictureKind, OpenPhoto['kind']>, readonly [string, string]>> = {
  heic: ['is a HEIC picture, which cannot be read here', 'export it as JPEG'],
  gif: ['is a GIF picture', 'export it as JPEG or PNG'],
  tiff: ['is a TIFF picture', 'export it as JPEG or PNG'],
  svg: ['is an SVG drawing, which may carry a script', 'export it as PNG'],
  unknown: ['is not a picture, whatever its name says', 'give a JPEG, PNG, WebP or AVIF file'],
};

const signature = async (file: string): Promise<Uint8Array> => {
  const handle = await open(file, 'r');
  try {
    const bytes = new Uint8Array(SIGNATURE_BYTES);
    const { bytesRead } = await handle.read(bytes, 0, SIGNATURE_BYTES, 0);
    return bytes.subarray(0, bytesRead);
  } finally {
    await handle.close();
  }
};

/**
 * Opens a photo of the content folder: JPEG, PNG, WebP or AVIF. The kind is told by its first bytes, never by its name.
 * Missing, outside, huge, corrupt and other files come back as trouble.
 */
export const openPhoto = async (contentFolder: string, name: string): Promise<PhotoResult<OpenPhoto>> => {
  const inside = await photoInside(contentFolder, name);
  if (!inside.ok) return inside;
  const file = inside.value;
  const kind = pictureKind(await signature(file));
  if (kind !== 'jpeg' && kind !== 'png' && kind !== 'webp' && kind !== 'avif') {
    const [what, mend] = REFUSALS[kind];
    return bad(`"${name}" ${what}`, mend);
  }
  const decode = (): Sharp =>
    sharp(file, { limitInputPixels: MOST_PIXELS, failOn: 'error', animated: false, autoOrient: true }).toColourspace(
      'srgb',
    );
  try {
    // the header alone is read here, without the limit, so that a huge photo gets its own message
    const { width, height } = await sharp(file, { limitInputPixels: false }).metadata();
    if (width * height > MOST_PIXELS) {
      return bad(
        `the photo "${name}" has ${Math.round((width * height) / 1e6)} megapixels`,
        'export it smaller: 3000 pixels on the longer side is plenty',
      );
    }
    if (Math.min(width, height) < LEAST_SIDE) {
      return bad(`the photo "${name}" is only ${width} × ${height} pixels`, 'give a larger photo');
    }
    const { autoOrient } = await decode().metadata();
    return good({ name, kind, width: autoOrient.width, height: autoOrient.height, decode });
  } catch {
    return corrupt(name);
  }
};

/** The trouble of a file whose header or pixels cannot be read. */
export const corrupt = (name: string): ReturnType<typeof bad> =>
  bad(`the photo "${name}" is damaged`, 'export it again from the original');
