import { PDFDocument, PDFStreamWriter } from 'pdf-lib';
import type { Fonts } from '../../type/index.ts';
import { POINTS_A_MILLIMETRE, type Size } from '../paper.ts';
import { createSetter, type Setter } from '../set/setter.ts';
import { createDrawings, type Drawings } from './drawings.ts';
import { type DocumentFacts, writeMetadata } from './metadata.ts';
import { type Bookmark, writeOutline } from './outline.ts';
import { createPictures, type Pictures } from './pictures.ts';
import { createOpacities } from './resources.ts';
import { createSheet, type Sheet, type SheetBoxes } from './sheet.ts';
import { createSurface, type Surface } from './surface.ts';
import { createTagTree, type TagTree } from './tags.ts';
import { createTickBoxes, type TickBoxes } from './tick-box.ts';
import { createTypefaces } from './typefaces.ts';

/** One PDF while it is being made. */
export interface Press {
  readonly tags: TagTree;
  readonly setter: Setter;
  readonly drawings: Drawings;
  readonly pictures: Pictures;
  readonly ticks: TickBoxes;
  addSheet(size: Size, boxes?: SheetBoxes): Sheet;
  /** A page on a sheet that may hold others. */
  pageOn(sheet: Sheet, size: Size, origin: { readonly x: number; readonly y: number }): Surface;
  /** A page on a sheet of its own. */
  addPage(size: Size): Surface;
  /** A line in the table of contents, pointing at y millimetres down a page. */
  bookmark(title: string, level: number, surface: Surface, y: number): void;
  /** Writes everything; the press is spent. */
  finish(): Promise<{ readonly bytes: Uint8Array; readonly pages: number }>;
}

/** Small objects are packed together and compressed as one; many in a stream compress far better than few. */
const OBJECTS_A_STREAM = 2000;
const OBJECTS_A_TICK = 500;

export const createPress = async (fonts: Fonts, facts: DocumentFacts): Promise<Press> => {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const tags = createTagTree(pdf);
  const typefaces = createTypefaces(pdf, fonts);
  const ticks = createTickBoxes(pdf, tags);
  const sheets: Sheet[] = [];
  const bookmarks: Bookmark[] = [];
  const addSheet = (size: Size, boxes?: SheetBoxes): Sheet => {
    const sheet = createSheet(pdf, tags, size, boxes);
    sheets.push(sheet);
    return sheet;
  };
  return {
    tags,
    setter: createSetter(fonts, typefaces),
    drawings: createDrawings(pdf, createOpacities(pdf)),
    pictures: createPictures(pdf),
    ticks,
    addSheet,
    pageOn: (sheet, size, origin) => createSurface(sheet, tags, size, origin),
    addPage: (size) => createSurface(addSheet(size), tags, size),
    bookmark: (title, level, surface, y) => {
      const { sheet, origin } = surface;
      const top = (sheet.size.height - origin.y - y) * POINTS_A_MILLIMETRE;
      bookmarks.push({ title, level, page: sheet.page.ref, top: Math.round(top) });
    },
    finish: async () => {
      for (const sheet of sheets) sheet.finish();
      typefaces.write();
      ticks.write();
      tags.write();
      writeOutline(pdf, bookmarks);
      writeMetadata(pdf, facts);
      await pdf.flush();
      const bytes = await PDFStreamWriter.forContext(
        pdf.context,
        OBJECTS_A_TICK,
        true,
        OBJECTS_A_STREAM,
      ).serializeToBuffer();
      return { bytes, pages: sheets.length };
    },
  };
};
