import { create, type Font } from 'fontkit';
import { PDFDocument } from 'pdf-lib';
import { extractText, getDocumentProxy } from 'unpdf';
import { describe, expect, it } from 'vitest';
import { loadFonts, pdfFontkit } from '../../lib/type/index.ts';

const fonts = loadFonts();
const text = 'Wrap, jersey — 96 % 14 °C';
const [run] = fonts.runs(text, 'text');
if (run === undefined) throw new Error('no run');

describe('fonts in a PDF', () => {
  it('keeps the outline of every glyph in the subset', async () => {
    const full = create(Buffer.from(fonts.sfnt(run.face))) as Font;
    const font = pdfFontkit.create(fonts.sfnt(run.face));
    const subset = font.createSubset();
    const glyphs = full.layout(text).glyphs;
    const ids = glyphs.map((glyph) => subset.includeGlyph(glyph.id));
    const bytes = await new Promise<Uint8Array>((resolve, reject) => {
      const stream = (
        subset as unknown as { encodeStream(): { on(event: string, run: (value: Uint8Array) => void): void } }
      ).encodeStream();
      let data = new Uint8Array();
      stream.on('data', (chunk) => {
        data = new Uint8Array(chunk);
      });
      stream.on('error', reject);
      stream.on('end', () => resolve(data));
    });
    const embedded = create(Buffer.from(bytes)) as Font;
    glyphs.forEach((glyph, index) => {
      const id = ids[index];
      expect(embedded.getGlyph(Number(id)).path.toSVG()).toBe(glyph.path.toSVG());
    });
  });

  it('writes text that an independent reader reads back, the same bytes every time', async () => {
    const make = async (): Promise<Uint8Array> => {
      const document = await PDFDocument.create({ updateMetadata: false });
      document.registerFontkit(pdfFontkit);
      const font = await document.embedFont(fonts.sfnt(run.face), { subset: true });
      document.addPage([300, 100]).drawText(text, { x: 10, y: 40, size: 12, font });
      return document.save();
    };
    const first = await make();
    expect(Buffer.from(await make()).equals(Buffer.from(first))).toBe(true);
    const read = await extractText(await getDocumentProxy(first), { mergePages: true });
    expect(read.text.trim()).toBe(text);
  });
});
