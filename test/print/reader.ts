import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { type PDFiumLibrary as Library, PDFiumLibrary } from '@hyzyla/pdfium';
import pixelmatch from 'pixelmatch';
import { PNG } from 'pngjs';
import { getDocumentProxy, getResolvedPDFJS } from 'unpdf';
import type { Printed } from '../../lib/print/index.ts';

/** Bytes of a document that must have been printed. */
export const bytesOf = ({ bytes, findings }: Printed): Uint8Array => {
  if (bytes === undefined) throw new Error(`nothing was printed: ${JSON.stringify(findings)}`);
  return bytes;
};

export interface Word {
  readonly text: string;
  /** Points from the left and from the bottom. */
  readonly x: number;
  readonly y: number;
  readonly points: number;
}

export interface Field {
  readonly name: string;
  readonly label: string;
  readonly type: string;
  readonly rectangle: readonly number[];
}

export interface Tagged {
  readonly role: string;
  readonly alt?: string;
  readonly children: readonly (Tagged | { readonly type: string })[];
}

interface ReadPage {
  /** Millimetres. */
  readonly width: number;
  readonly height: number;
  readonly words: readonly Word[];
  readonly text: string;
  readonly fields: readonly Field[];
  readonly structure: Tagged | undefined;
  /** Operators that paint outside marked content; undefined when it was not asked for. */
  readonly unmarked: number | undefined;
}

// The reader's engine asks for a method that Node has from version 21 (ECMAScript 2024, 25.1.6.9).
const buffers = ArrayBuffer.prototype as ArrayBuffer & { transferToFixedLength?: (length?: number) => ArrayBuffer };
buffers.transferToFixedLength ??= function transferToFixedLength(this: ArrayBuffer, length = this.byteLength) {
  const made = new Uint8Array(length);
  made.set(new Uint8Array(this, 0, Math.min(length, this.byteLength)));
  return made.buffer;
};

const MILLIMETRES_A_POINT = 25.4 / 72;

interface Item {
  readonly str: string;
  readonly transform: readonly number[];
  readonly height: number;
}

/** Painting operators of a page that stand outside marked content, artifacts included. */
const countUnmarked = async (page: { getOperatorList(): Promise<{ fnArray: number[] }> }): Promise<number> => {
  const { OPS } = await getResolvedPDFJS();
  const begin: readonly number[] = [OPS.beginMarkedContent, OPS.beginMarkedContentProps];
  const paints: readonly number[] = [
    OPS.showText,
    OPS.showSpacedText,
    OPS.fill,
    OPS.stroke,
    OPS.constructPath,
    OPS.paintImageXObject,
    OPS.paintFormXObjectBegin,
  ];
  let depth = 0;
  let found = 0;
  for (const operator of (await page.getOperatorList()).fnArray) {
    if (begin.includes(operator)) depth++;
    else if (operator === OPS.endMarkedContent) depth--;
    else if (depth === 0 && paints.includes(operator)) found++;
  }
  return found;
};

/** A document as an independent reader sees it: text, sizes, fields, structure, outline, metadata. */
export const readPdf = async (bytes: Uint8Array, { marks = false }: { readonly marks?: boolean } = {}) => {
  const document = await getDocumentProxy(bytes.slice());
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const { items } = await page.getTextContent();
    const words = (items as unknown as readonly Item[])
      .filter((item) => typeof item.str === 'string' && item.str.trim() !== '')
      .map(
        ({ str, transform }): Word => ({
          text: str,
          x: transform[4] ?? 0,
          y: transform[5] ?? 0,
          points: Math.hypot(transform[2] ?? 0, transform[3] ?? 0),
        }),
      );
    const annotations = await page.getAnnotations();
    pages.push({
      width: (right - left) * MILLIMETRES_A_POINT,
      height: (top - bottom) * MILLIMETRES_A_POINT,
      words,
      text: words
        .map(({ text }) => text)
        .join(' ')
        .replaceAll(/\s+/g, ' '),
      fields: annotations
        .filter(({ subtype }) => subtype === 'Widget')
        .map(
          ({ fieldName, alternativeText, fieldType, rect }): Field => ({
            name: String(fieldName),
            label: String(alternativeText),
            type: String(fieldType),
            rectangle: rect as readonly number[],
          }),
        ),
      structure: ((await page.getStructTree()) ?? undefined) as Tagged | undefined,
      unmarked: marks ? await countUnmarked(page as never) : undefined,
    });
  }
  const metadata = await document.getMetadata();
  return {
    pages,
    outline: ((await document.getOutline()) ?? []) as readonly { readonly title: string }[],
    info: metadata.info as Readonly<Record<string, unknown>>,
    xmp: (name: string): unknown => metadata.metadata?.get(name),
    marked: (await document.getMarkInfo())?.Marked === true,
    titleShown:
      ((await document.getViewerPreferences()) as { DisplayDocTitle?: boolean } | null)?.DisplayDocTitle === true,
  };
};

let library: Promise<Library> | undefined;

export interface Pixels {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue, opacity. */
  readonly data: Uint8Array;
}

/** A page painted by PDFium, the engine of a widely used browser. */
export const paintPage = async (bytes: Uint8Array, page: number, dotsAnInch: number): Promise<Pixels> => {
  library ??= PDFiumLibrary.init();
  const document = await (await library).loadDocument(bytes);
  try {
    const { width, height, data } = await document.getPage(page).render({ scale: dotsAnInch / 72, render: 'bitmap' });
    return { width, height, data: Uint8Array.from(data) };
  } finally {
    document.destroy();
  }
};

/** Share of pixels that differ to the eye. */
export const differing = (a: Pixels, b: Pixels, diff?: PNG): number => {
  if (a.width !== b.width || a.height !== b.height) return 1;
  const count = pixelmatch(a.data, b.data, diff?.data, a.width, a.height, { threshold: 0.15 });
  return count / (a.width * a.height);
};

/** Compares with the picture kept in the project; what was painted is written beside it when it differs. */
export const comparePicture = async (name: string, painted: Pixels): Promise<number> => {
  const path = fileURLToPath(new URL(`./reference/${name}.png`, import.meta.url));
  const kept = PNG.sync.read(await readFile(path));
  const share = differing({ width: kept.width, height: kept.height, data: kept.data }, painted);
  if (share > 0.002) await writePicture(path.replace('.png', '.changed.png'), painted);
  return share;
};

export const writePicture = async (path: string, { width, height, data }: Pixels): Promise<void> => {
  const png = new PNG({ width, height });
  png.data = Buffer.from(data);
  await writeFile(path, PNG.sync.write(png));
};

/** Every element of a structure tree, in reading order. */
export const elements = (root: Tagged | undefined): readonly Tagged[] =>
  root === undefined ? [] : [root, ...root.children.flatMap((child) => ('role' in child ? elements(child) : []))];
