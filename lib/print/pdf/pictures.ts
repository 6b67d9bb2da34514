import type { PDFDocument, PDFRef } from 'pdf-lib';
import sharp from 'sharp';
import type { Size } from '../paper.ts';

export interface Picture {
  readonly ref: PDFRef;
  /** Pixels. */
  readonly size: Size;
}

/** Photos of one document, as JPEG at the resolution that paper can show. */
export interface Pictures {
  /** Makes a JPEG or PNG ready for a box in millimetres; the same bytes are stored once. Undefined when they cannot be read. */
  load(bytes: Uint8Array, box: Size): Promise<Picture | undefined>;
}

/** Resolution of photos in print, dots an inch: common practice, no source. */
const PHOTO_DOTS_AN_INCH = 300;
const QUALITY = 80;
/** A JPEG this little too large is stored as it came, not compressed a second time. */
const NEAR_ENOUGH = 1.1;
const MILLIMETRES_AN_INCH = 25.4;
/** More pixels than this are refused before they are unpacked. */
const MOST_PIXELS = 100_000_000;

export const createPictures = (pdf: PDFDocument): Pictures => {
  const known = new Map<Uint8Array, Picture>();

  const fitted = async (bytes: Uint8Array, box: Size): Promise<Uint8Array> => {
    const image = sharp(bytes, { limitInputPixels: MOST_PIXELS });
    const { width, height, format, orientation = 1, space } = await image.metadata();
    const wanted = {
      width: Math.ceil((box.width / MILLIMETRES_AN_INCH) * PHOTO_DOTS_AN_INCH),
      height: Math.ceil((box.height / MILLIMETRES_AN_INCH) * PHOTO_DOTS_AN_INCH),
    };
    const excess = Math.min(width / wanted.width, height / wanted.height);
    if (format === 'jpeg' && space === 'srgb' && orientation === 1 && excess <= NEAR_ENOUGH) return bytes;
    return image
      .rotate()
      .flatten({ background: '#ffffff' })
      .resize({ ...wanted, fit: 'outside', withoutEnlargement: true })
      .toColourspace('srgb')
      .jpeg({ quality: QUALITY })
      .toBuffer();
  };

  return {
    load: async (bytes, box) => {
      const before = known.get(bytes);
      if (before !== undefined) return before;
      const ready = await fitted(bytes, box).catch(() => undefined);
      if (ready === undefined) return undefined;
      const image = await pdf.embedJpg(ready);
      const picture = { ref: image.ref, size: { width: image.width, height: image.height } };
      known.set(bytes, picture);
      return picture;
    },
  };
};

/** The largest area of a picture's shape in the middle of a box. */
export const fitIn = <T extends Size & { readonly x: number; readonly y: number }>(size: Size, box: T): T => {
  const scale = Math.min(box.width / size.width, box.height / size.height);
  const [width, height] = [size.width * scale, size.height * scale];
  return { ...box, x: box.x + (box.width - width) / 2, y: box.y + (box.height - height) / 2, width, height };
};
