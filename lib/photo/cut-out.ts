import sharp from 'sharp';
import { cutGarment } from '../colour/index.ts';
import { smallPixels } from './colours.ts';
import { corrupt, openPhoto } from './open.ts';
import { type Outline, outlineOf } from './outline.ts';
import { bad, good, type PhotoResult } from './trouble.ts';

/** A garment cut out of its photo. */
export interface PhotoCutout {
  /** PNG with a transparent ground, without metadata, cropped to the garment. */
  readonly png: Uint8Array;
  readonly width: number;
  readonly height: number;
  /** Where the garment is, in shares of the picture. */
  readonly outline: Outline;
}

/** Softness of the cut edge, in pixels of the finished picture. */
const EDGE_BLUR = 0.8;

/**
 * The garment of a photo without its ground, at most `longerSide` pixels. Trouble when garment and ground cannot be told
 * apart, so that no one publishes a square of carpet.
 */
export const cutOutPhoto = async (
  contentFolder: string,
  name: string,
  longerSide: number,
): Promise<PhotoResult<PhotoCutout>> => {
  const photo = await openPhoto(contentFolder, name);
  if (!photo.ok) return photo;
  const pixels = await smallPixels(photo.value, longerSide);
  if (!pixels.ok) return pixels;
  const { width, height, rgba } = pixels.value;
  const cut = cutGarment(pixels.value);
  if (cut === undefined) {
    return bad(
      `the garment in "${name}" cannot be told from its ground`,
      'photograph it on one plain cloth of another colour, with room round it',
    );
  }
  try {
    const mask = await sharp(
      cut.mask.map((inside) => inside * 255),
      { raw: { width, height, channels: 1 } },
    )
      .blur(EDGE_BLUR)
      .extractChannel(0)
      .raw()
      .toBuffer();
    const shown = Buffer.from(rgba);
    mask.forEach((opacity, pixel) => {
      shown[pixel * 4 + 3] = Math.min(shown[pixel * 4 + 3] ?? 255, opacity);
    });
    const { left, top, width: across, height: down } = cut.box;
    const png = await sharp(shown, { raw: { width, height, channels: 4 } })
      .extract({ left, top, width: across, height: down })
      .png({ compressionLevel: 9 })
      .toBuffer();
    return good({ png, width: across, height: down, outline: await outlineOf(png) });
  } catch {
    return corrupt(name);
  }
};
