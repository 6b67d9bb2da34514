import type { PDFDocument, PDFImage, PDFRef } from 'pdf-lib';
import type { Size } from '../paper.ts';

export interface Picture {
  readonly ref: PDFRef;
  /** Pixels. */
  readonly size: Size;
}

/** JPEG and PNG pictures of one document; the same bytes are stored once. */
export interface Pictures {
  add(bytes: Uint8Array): Promise<Picture>;
}

const isPng = (bytes: Uint8Array): boolean => bytes[0] === 0x89 && bytes[1] === 0x50;

export const createPictures = (pdf: PDFDocument): Pictures => {
  const known = new Map<Uint8Array, Picture>();
  return {
    add: async (bytes) => {
      const before = known.get(bytes);
      if (before !== undefined) return before;
      const image: PDFImage = await (isPng(bytes) ? pdf.embedPng(bytes) : pdf.embedJpg(bytes));
      const picture = { ref: image.ref, size: { width: image.width, height: image.height } };
      known.set(bytes, picture);
      return picture;
    },
  };
};
