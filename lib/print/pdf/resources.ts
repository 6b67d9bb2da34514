import { type PDFDocument, PDFName, type PDFRef } from 'pdf-lib';
import { num } from './numbers.ts';

/** What one content stream refers to by name. */
export interface Resources {
  readonly fonts: Map<string, PDFRef>;
  readonly objects: Map<string, PDFRef>;
  /** The document's graphics states, when this stream uses any. */
  states?: PDFRef;
}

export const createResources = (): Resources => ({ fonts: new Map(), objects: new Map() });

/** The same ref always gets the same name. */
export const objectName = (resources: Resources, ref: PDFRef): string => {
  const name = `X${ref.objectNumber}`;
  resources.objects.set(name, ref);
  return name;
};

export const writeResources = ({ context }: PDFDocument, { fonts, objects, states }: Resources) => {
  const dictionary = context.obj({});
  if (fonts.size > 0) dictionary.set(PDFName.of('Font'), context.obj(Object.fromEntries(fonts)));
  if (objects.size > 0) dictionary.set(PDFName.of('XObject'), context.obj(Object.fromEntries(objects)));
  if (states !== undefined) dictionary.set(PDFName.of('ExtGState'), states);
  return dictionary;
};

/** Opacities of one document, in one dictionary that every stream shares. */
export interface Opacities {
  /** Name of the graphics state that paints at this opacity, 0 to 1. */
  use(resources: Resources, opacity: number): string;
}

export const createOpacities = ({ context }: PDFDocument): Opacities => {
  const states = context.obj({});
  const ref = context.register(states);
  return {
    use: (resources, opacity) => {
      resources.states = ref;
      const percent = Math.round(Math.min(1, Math.max(0, opacity)) * 100);
      const name = `G${percent}`;
      const value = Number(num(percent / 100));
      if (!states.has(PDFName.of(name))) states.set(PDFName.of(name), context.obj({ ca: value, CA: value }));
      return name;
    },
  };
};
