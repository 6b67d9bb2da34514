import { create, type Font } from 'fontkit';
import { type PDFDocument, PDFNumber, type PDFRef, PDFString } from 'pdf-lib';
import type { Face, Fonts } from '../../type/index.ts';

/** One glyph as it is set; lengths in thousandths of the type size. */
export interface SetGlyph {
  /** Number of the glyph in the embedded subset. */
  readonly id: number;
  /** Natural advance, which the font's own table of widths gives. */
  readonly advance: number;
  /** Added to the advance: kerning. */
  readonly kern: number;
  readonly dx: number;
  readonly dy: number;
}

/** A font file as one document uses it: only the glyphs that were set are embedded. */
export interface Typeface {
  /** Resource name in content streams. */
  readonly name: string;
  readonly ref: PDFRef;
  shape(text: string): readonly SetGlyph[];
}

export interface Typefaces {
  of(face: Face): Typeface;
  all(): readonly Typeface[];
  write(): void;
}

interface Subset {
  includeGlyph(id: number): number;
  encode(): Uint8Array;
}

interface Used {
  readonly advance: number;
  readonly text: string;
}

const hex4 = (value: number): string => value.toString(16).padStart(4, '0').toUpperCase();

const utf16 = (text: string): string =>
  Array.from({ length: text.length }, (_, at) => hex4(text.charCodeAt(at))).join('');

/** ToUnicode map (ISO 32000-1, 9.10.3): blocks of at most a hundred, as the CMap format asks. */
const unicodeMap = (used: ReadonlyMap<number, Used>): string => {
  const rows = [...used].map(([id, { text }]) => `<${hex4(id)}> <${utf16(text)}>`);
  const blocks: string[] = [];
  for (let at = 0; at < rows.length; at += 100) {
    const block = rows.slice(at, at + 100);
    blocks.push(`${block.length} beginbfchar\n${block.join('\n')}\nendbfchar`);
  }
  return [
    '/CIDInit /ProcSet findresource begin',
    '12 dict begin',
    'begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def',
    '/CMapType 2 def',
    '1 begincodespacerange',
    '<0000> <FFFF>',
    'endcodespacerange',
    ...blocks,
    'endcmap',
    'CMapName currentdict /CMap defineresource pop',
    'end',
    'end',
  ].join('\n');
};

/** Six letters before the name mark a subset (ISO 32000-1, 9.6.4); here they count the document's fonts. */
const subsetName = (index: number, name: string): string => {
  const letters = Array.from({ length: 6 }, (_, at) =>
    String.fromCharCode(65 + (Math.floor(index / 26 ** (5 - at)) % 26)),
  );
  return `${letters.join('')}+${name}`;
};

const SYMBOLIC = 4;
const ITALIC = 64;

const openFont = (bytes: Uint8Array): Font => {
  const font = create(Buffer.from(bytes));
  if (!('layout' in font)) throw new Error('a font collection was given where one font is needed');
  return font;
};

/** The font files of one document, opened when first used. */
export const createTypefaces = (pdf: PDFDocument, fonts: Fonts): Typefaces => {
  const { context } = pdf;
  const faces = new Map<string, Typeface & { write(): void }>();

  const open = (face: Face, index: number): Typeface & { write(): void } => {
    const font = openFont(fonts.sfnt(face));
    const subset = font.createSubset() as unknown as Subset;
    const scale = 1000 / font.unitsPerEm;
    const used = new Map<number, Used>();
    const ref = context.nextRef();
    const shape = (text: string): readonly SetGlyph[] => {
      const { glyphs, positions } = font.layout(text);
      return glyphs.map((glyph, at): SetGlyph => {
        const id = subset.includeGlyph(glyph.id);
        const advance = glyph.advanceWidth * scale;
        if (!used.has(id)) used.set(id, { advance, text: String.fromCodePoint(...glyph.codePoints) });
        const position = positions[at];
        return {
          id,
          advance,
          kern: ((position?.xAdvance ?? glyph.advanceWidth) - glyph.advanceWidth) * scale,
          dx: (position?.xOffset ?? 0) * scale,
          dy: (position?.yOffset ?? 0) * scale,
        };
      });
    };
    const write = (): void => {
      const sorted = new Map([...used].sort(([a], [b]) => a - b));
      const name = subsetName(index, font.postscriptName ?? 'Face');
      const file = context.register(
        context.flateStream(subset.encode(), { Length1: PDFNumber.of(subset.encode().length) }),
      );
      const descriptor = context.register(
        context.obj({
          Type: 'FontDescriptor',
          FontName: name,
          Flags: SYMBOLIC | (face.italic ? ITALIC : 0),
          FontBBox: [font.bbox.minX, font.bbox.minY, font.bbox.maxX, font.bbox.maxY].map((n) => Math.round(n * scale)),
          ItalicAngle: Math.round(font.italicAngle),
          Ascent: Math.round(font.ascent * scale),
          Descent: Math.round(font.descent * scale),
          CapHeight: Math.round(font.capHeight * scale),
          StemV: 80,
          FontFile2: file,
        }),
      );
      const widths = [...sorted].flatMap(([id, { advance }]) => [id, [Math.round(advance * 10) / 10]]);
      const descendant = context.register(
        context.obj({
          Type: 'Font',
          Subtype: 'CIDFontType2',
          BaseFont: name,
          CIDSystemInfo: { Registry: PDFString.of('Adobe'), Ordering: PDFString.of('Identity'), Supplement: 0 },
          FontDescriptor: descriptor,
          DW: 0,
          W: widths,
          CIDToGIDMap: 'Identity',
        }),
      );
      context.assign(
        ref,
        context.obj({
          Type: 'Font',
          Subtype: 'Type0',
          BaseFont: name,
          Encoding: 'Identity-H',
          DescendantFonts: [descendant],
          ToUnicode: context.register(context.flateStream(unicodeMap(sorted))),
        }),
      );
    };
    return { name: `F${index}`, ref, shape, write };
  };

  return {
    of: (face) => {
      const made = faces.get(face.file) ?? open(face, faces.size);
      faces.set(face.file, made);
      return made;
    },
    all: () => [...faces.values()],
    write: () => {
      for (const face of faces.values()) face.write();
    },
  };
};
