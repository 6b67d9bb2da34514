import { create } from 'fontkit';
import type { PDFDocument } from 'pdf-lib';

type PdfFontkit = Parameters<PDFDocument['registerFontkit']>[0];
type Font = ReturnType<PdfFontkit['create']>;
type Listener = (value?: unknown) => void;

interface PdfSubset {
  encode(): Uint8Array;
  encodeStream?: () => unknown;
}

/** An emitter with what pdf-lib listens to: `data`, `end` and `error`. */
const streamOf = (encode: () => Uint8Array): unknown => {
  const listeners = new Map<string, Listener>();
  const run = (): void => {
    try {
      listeners.get('data')?.(encode());
      listeners.get('end')?.();
    } catch (error) {
      listeners.get('error')?.(error);
    }
  };
  const stream = {
    on(event: string, listener: Listener) {
      listeners.set(event, listener);
      if (event === 'end') queueMicrotask(run);
      return stream;
    },
  };
  return stream;
};

/**
 * What `PDFDocument.registerFontkit` takes. pdf-lib was written for an older fontkit whose subset is a stream; the subset
 * of the current one is a function, and unlike the older one it keeps every outline whole.
 */
export const pdfFontkit: PdfFontkit = {
  create(data, name) {
    const font = create(Buffer.from(data), name) as unknown as Font;
    const createSubset = font.createSubset.bind(font);
    font.createSubset = () => {
      const subset = createSubset() as unknown as PdfSubset;
      subset.encodeStream = () => streamOf(() => subset.encode());
      return subset as unknown as ReturnType<typeof createSubset>;
    };
    return font;
  },
};
