import { type PDFDocument, PDFName, type PDFRef } from 'pdf-lib';
import { num } from './numbers.ts';

/** What one content stream refers to by name. */
export interface Resources {
  readonly fonts: Map<string, PDFRef>;
  readonly objects: Map<string, PDFRef>;
  readonly states: Map<string, PDFRef>;
}

export const createResources = (): Resources => ({ fonts: new Map(), objects: new Map(), states: new Map() });

/** The same ref always gets the same name. */
export const objectName = (resources: Resources, ref: PDFRef): string => {
  const name = `X${ref.objectNumber}`;
  resources.objects.set(name, ref);
  return name;
};

export const writeResources = (pdf: PDFDocument, resources: Resources) => {
  const { context } = pdf;
  const dictionary = context.obj({});
  const parts = [
    ['Font', resources.fonts],
    ['XObject', resources.objects],
    ['ExtGState', resources.states],
  ] as const;
  for (const [name, entries] of parts) {
    if (entries.size > 0) dictionary.set(PDFName.of(name), context.obj(Object.fromEntries(entries)));
  }
  return dictionary;
};

/** Opacities of one document, each written once. */
export interface Opacities {
  /** Name of the graphics state that paints at this opacity, 0 to 1. */
  use(resources: Resources, opacity: number): string;
}

export const createOpacities = (pdf: PDFDocument): Opacities => {
  const made = new Map<string, PDFRef>();
  return {
    use: (resources, opacity) => {
      const value = num(Math.min(1, Math.max(0, opacity)), 2);
      const ref =
        made.get(value) ??
        pdf.context.register(pdf.context.obj({ Type: 'ExtGState', ca: Number(value), CA: Number(value) }));
      made.set(value, ref);
      const name = `G${ref.objectNumber}`;
      resources.states.set(name, ref);
      return name;
    },
  };
};
