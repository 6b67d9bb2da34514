import Colour from 'colorjs.io';
import fc from 'fast-check';
import { PDFArray, PDFDict, PDFDocument, PDFHexString, PDFName, PDFNumber, PDFRawStream, type PDFRef } from 'pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import {
  bookletPdf,
  cardSheetPdf,
  dayPlanPdf,
  type Printed,
  packingListPdf,
  wearTablePdf,
} from '../../lib/print/index.ts';
import { inksFor, legibleOnWhite } from '../../lib/print/ink.ts';
import { makeGuide } from './guide.ts';
import { bytesOf, elements, readPdf, type Tagged } from './reader.ts';
import { SOURCES } from './sources.ts';

const guide = makeGuide({ looks: 6 });

const DOCUMENTS: readonly (readonly [name: string, make: () => Promise<Printed>])[] = [
  ['packing list', () => packingListPdf(guide, SOURCES)],
  ['day plan', () => dayPlanPdf(guide, SOURCES)],
  ['wear table', () => wearTablePdf(guide, SOURCES)],
  ['booklet', () => bookletPdf(guide, SOURCES)],
  ['imposed booklet', () => bookletPdf(guide, SOURCES, { imposed: true, bleed: true })],
  ['card sheets', () => cardSheetPdf(guide, SOURCES)],
];

const HEADINGS = ['H1', 'H2', 'H3', 'H4', 'H5', 'H6'];

// ISO 14289-1:2014 (PDF/UA-1); clauses from memory.
describe.each(DOCUMENTS)('the %s is accessible', (_name, make) => {
  let bytes: Uint8Array;
  let read: Awaited<ReturnType<typeof readPdf>>;
  let file: PDFDocument;
  let all: readonly Tagged[];

  beforeAll(async () => {
    bytes = bytesOf(await make());
    read = await readPdf(bytes, { marks: true });
    file = await PDFDocument.load(bytes, { updateMetadata: false });
    all = read.pages.flatMap(({ structure }) => elements(structure));
  });

  it('5: says that it follows the standard, in its metadata', () => {
    expect(read.xmp('pdfuaid:part')).toBe('1');
  });

  it('7.1: shows its title, names it in the metadata, and is marked as tagged', () => {
    expect(read.titleShown).toBe(true);
    expect(String(read.xmp('dc:title'))).toContain('Vienna, Ljubljana, Trieste');
    expect(read.info.Title).toBe(read.xmp('dc:title'));
    expect(read.marked).toBe(true);
  });

  it('7.1: has nothing on a page that is neither tagged nor an artifact', () => {
    expect(read.pages.map(({ unmarked }) => unmarked)).toEqual(read.pages.map(() => 0));
  });

  it('7.1: files every piece of marked content and every field under its element, both ways', () => {
    const { context, catalog } = file;
    const root = catalog.lookup(PDFName.of('StructTreeRoot'), PDFDict);
    const numbers = root.lookup(PDFName.of('ParentTree'), PDFDict).lookup(PDFName.of('Nums'), PDFArray);
    const owners = new Map<number, PDFRef | readonly string[]>();
    for (let at = 0; at < numbers.size(); at += 2) {
      const key = numbers.lookup(at, PDFNumber).asNumber();
      const held = context.lookup(numbers.get(at + 1));
      owners.set(key, held instanceof PDFArray ? held.asArray().map(String) : (numbers.get(at + 1) as PDFRef));
    }
    for (const page of file.getPages()) {
      const key = page.node.lookup(PDFName.of('StructParents'), PDFNumber).asNumber();
      const filed = owners.get(key);
      if (!Array.isArray(filed)) throw new Error('a page has no row in the parent tree');
      filed.forEach((owner, id) => {
        const element = context.lookup(
          context.enumerateIndirectObjects().find(([ref]) => String(ref) === owner)?.[0],
          PDFDict,
        );
        const kids = element.lookup(PDFName.of('K'), PDFArray).asArray();
        const holds = kids.some((kid) =>
          kid instanceof PDFNumber
            ? kid.asNumber() === id && element.get(PDFName.of('Pg')) === page.ref
            : kid instanceof PDFDict &&
              kid.get(PDFName.of('Pg')) === page.ref &&
              kid.lookupMaybe(PDFName.of('MCID'), PDFNumber)?.asNumber() === id,
        );
        expect(holds).toBe(true);
      });
    }
  });

  it('7.2: names its language', () => {
    expect(file.catalog.lookup(PDFName.of('Lang'), PDFHexString).decodeText()).toBe('en-GB');
  });

  it('7.3: describes every figure', () => {
    const figures = all.filter(({ role }) => role === 'Figure');
    for (const { alt } of figures) expect((alt ?? '').trim()).not.toBe('');
  });

  it('7.4.2: begins with a first-level heading and skips no level', () => {
    const levels = all.filter(({ role }) => HEADINGS.includes(role)).map(({ role }) => HEADINGS.indexOf(role) + 1);
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    levels.forEach((level, index) => {
      if (index > 0) expect(level).toBeLessThanOrEqual((levels[index - 1] ?? 0) + 1);
    });
  });

  it('7.5: gives every table header cells with a scope', () => {
    const scopes = file.context
      .enumerateIndirectObjects()
      .flatMap(([, object]) =>
        object instanceof PDFDict && object.get(PDFName.of('S')) === PDFName.of('TH') ? [object] : [],
      )
      .map((header) => header.lookupMaybe(PDFName.of('A'), PDFDict)?.get(PDFName.of('Scope')));
    expect(scopes.every((scope) => scope === PDFName.of('Row') || scope === PDFName.of('Column'))).toBe(true);
    expect(all.some(({ role }) => role === 'Table')).toBe(scopes.length > 0);
  });

  it('7.5: gives every row of a table the same number of columns', () => {
    const held = (element: PDFDict): readonly PDFDict[] =>
      element
        .lookup(PDFName.of('K'), PDFArray)
        .asArray()
        .flatMap((kid) => {
          const found = file.context.lookup(kid);
          return found instanceof PDFDict && found.has(PDFName.of('S')) ? [found] : [];
        });
    const span = (cell: PDFDict): number =>
      cell.lookupMaybe(PDFName.of('A'), PDFDict)?.lookupMaybe(PDFName.of('ColSpan'), PDFNumber)?.asNumber() ?? 1;
    for (const [, table] of file.context.enumerateIndirectObjects()) {
      if (!(table instanceof PDFDict) || table.get(PDFName.of('S')) !== PDFName.of('Table')) continue;
      const widths = held(table).map((row) => {
        expect(row.get(PDFName.of('S'))).toBe(PDFName.of('TR'));
        return held(row).reduce((sum, cell) => sum + span(cell), 0);
      });
      expect(new Set(widths).size).toBe(1);
    }
  });

  it('7.6: builds lists from items with a body', () => {
    for (const { role, children } of all) {
      const roles = children.flatMap((child) => ('role' in child ? [child.role] : []));
      if (role === 'L') expect(new Set(roles)).toEqual(new Set(['LI']));
      if (role === 'LI') expect(roles).toContain('LBody');
    }
  });

  it('7.18: reads fields in the order of the structure, each with a name to read out and a tag', () => {
    for (const page of file.getPages()) {
      expect(page.node.get(PDFName.of('Tabs'))).toBe(PDFName.of('S'));
      for (const annotation of page.node.Annots()?.asArray() ?? []) {
        const widget = file.context.lookup(annotation, PDFDict);
        expect(widget.lookup(PDFName.of('TU'), PDFHexString).decodeText()).not.toBe('');
        expect(widget.lookup(PDFName.of('StructParent'), PDFNumber).asNumber()).toBeGreaterThanOrEqual(0);
      }
    }
  });

  it('7.21: embeds every font, with the letters behind its glyphs', () => {
    const fonts = file.context
      .enumerateIndirectObjects()
      .flatMap(([, object]) =>
        object instanceof PDFDict && object.get(PDFName.of('Type')) === PDFName.of('Font') ? [object] : [],
      );
    expect(fonts.length).toBeGreaterThan(0);
    for (const font of fonts) {
      if (font.get(PDFName.of('Subtype')) === PDFName.of('Type0')) {
        expect(font.lookup(PDFName.of('ToUnicode'))).toBeInstanceOf(PDFRawStream);
      } else {
        expect(font.lookup(PDFName.of('FontDescriptor'), PDFDict).lookup(PDFName.of('FontFile2'))).toBeInstanceOf(
          PDFRawStream,
        );
        expect(font.get(PDFName.of('CIDToGIDMap'))).toBe(PDFName.of('Identity'));
      }
    }
  });

  it('has bookmarks, and dates that do not depend on the clock', () => {
    expect(read.outline.length).toBeGreaterThan(0);
    expect(String(read.info.CreationDate)).toContain('20271002');
    expect(bytes.length).toBeGreaterThan(0);
  });
});

describe('the checks themselves', () => {
  it('find what is not marked, on a page made without care', async () => {
    const careless = await PDFDocument.create();
    careless.addPage([200, 200]).drawRectangle({ x: 10, y: 10, width: 50, height: 50 });
    const read = await readPdf(await careless.save(), { marks: true });
    expect(read.pages[0]?.unmarked).toBeGreaterThan(0);
    expect(read.marked).toBe(false);
    expect(read.titleShown).toBe(false);
  });
});

describe('colours of text', () => {
  // WCAG 2.2, 1.4.3: 4.5 to 1; measured with another library than the one that makes them.
  const contrast = (hex: string): number => new Colour(hex).contrastWCAG21(new Colour('#ffffff'));

  it('are legible on white paper', () => {
    const { ink, soft, thread, water } = inksFor('#9e4527');
    for (const hex of [ink, soft, thread, water]) expect(contrast(hex)).toBeGreaterThanOrEqual(4.5);
  });

  it('stay legible whatever accent a palette gives', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffff }), (value) => {
        const hex = `#${value.toString(16).padStart(6, '0')}`;
        expect(contrast(legibleOnWhite(hex))).toBeGreaterThanOrEqual(4.49);
      }),
    );
  });
});

describe('reading order', () => {
  it('of an imposed booklet is that of its pages, not of its sheets', async () => {
    const plain = await readPdf(bytesOf(await bookletPdf(guide, SOURCES)));
    const imposed = await PDFDocument.load(bytesOf(await bookletPdf(guide, SOURCES, { imposed: true })), {
      updateMetadata: false,
    });
    const headings = plain.pages
      .flatMap(({ structure }) => elements(structure))
      .filter(({ role }) => role === 'H2').length;
    const root = imposed.catalog.lookup(PDFName.of('StructTreeRoot'), PDFDict);
    const document = imposed.context.lookup(root.lookup(PDFName.of('K'), PDFArray).get(0), PDFDict);
    const pages = document
      .lookup(PDFName.of('K'), PDFArray)
      .asArray()
      .map((kid) => imposed.context.lookup(kid, PDFDict))
      .filter((element) => element.get(PDFName.of('S')) === PDFName.of('H2'))
      .map((element) => imposed.getPages().findIndex(({ ref }) => ref === element.get(PDFName.of('Pg'))));
    expect(pages).toHaveLength(headings);
    // Outermost sheet first: page 2 lies on the back of the first sheet, page 3 on the front of the second.
    expect(pages.slice(0, 2)).toEqual([1, 2]);
  });
});
