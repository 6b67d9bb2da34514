import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { FACES } from '../../lib/type/faces.ts';
import { loadFonts, plainText, SCRIPTS, STYLES, UncoveredTextError, unwrapWoff } from '../../lib/type/index.ts';

const require = createRequire(import.meta.url);
const woffOf = (file: string): Buffer => readFileSync(require.resolve(file));
const outline = (font: Font, text: string): readonly string[] =>
  font.layout(text).glyphs.map((glyph) => glyph.path.toSVG());

describe('unwrapping', () => {
  const woff = woffOf('@fontsource/noto-sans/files/noto-sans-latin-400-normal.woff');

  it('gives a font with the same outlines as an independent reader finds in the WOFF', () => {
    const text = 'Vögel fräßen 0123456789 façade';
    const expected = outline(create(woff) as Font, text);
    expect(outline(create(Buffer.from(unwrapWoff(woff))) as Font, text)).toEqual(expected);
  });

  it('keeps every table checksum of the OpenType specification, section "Calculating checksums"', () => {
    const sfnt = unwrapWoff(woff);
    const view = new DataView(sfnt.buffer);
    const count = view.getUint16(4);
    expect(count).toBeGreaterThan(8);
    for (let index = 0; index < count; index++) {
      const at = 12 + index * 16;
      const tag = String.fromCharCode(...sfnt.slice(at, at + 4));
      if (tag === 'head') continue;
      const offset = view.getUint32(at + 8);
      let sum = 0;
      for (let word = 0; word < Math.ceil(view.getUint32(at + 12) / 4); word++) {
        sum = (sum + view.getUint32(offset + word * 4)) >>> 0;
      }
      expect([tag, sum]).toEqual([tag, view.getUint32(at + 4)]);
    }
  });

  it('refuses what is no WOFF 1.0 file', () => {
    expect(() =>
      unwrapWoff(new TextEncoder().encode('wOF2 and then something that is long enough to be a header')),
    ).toThrow(/wOFF/);
    expect(() => unwrapWoff(new Uint8Array(3))).toThrow(/wOFF/);
  });
});

describe('fonts', () => {
  const fonts = loadFonts();

  it('has a file for every style and script', () => {
    for (const style of Object.keys(STYLES) as (keyof typeof STYLES)[]) {
      for (const face of FACES[style]) expect(fonts.sfnt(face).length, face.file).toBeGreaterThan(1000);
    }
    expect(new Set(FACES.title.map((face) => face.name)).size).toBe(SCRIPTS.length + 3);
  });

  // Pangrams of the languages: from memory.
  it.each([
    ['Polish', 'Pchnąć w tę łódź jeża lub ośm skrzyń fig'],
    ['Czech', 'Příliš žluťoučký kůň úpěl ďábelské ódy'],
    ['Hungarian', 'Árvíztűrő tükörfúrógép'],
    ['Turkish', 'Pijamalı hasta yağız şoföre çabucak güvendi'],
    ['Greek', 'Ξεσκεπάζω την ψυχοφθόρα βδελυγμία'],
    ['Bulgarian', 'Жълтата дюля беше щастлива, че пухът цъфна'],
    ['Ukrainian', 'Чуєш їх, доцю, га? Кумедна ж ти, прощайся без ґольфів!'],
    ['Vietnamese', 'Áo khoác dạ màu xanh rêu, váy chữ A, ủng cổ ngắn'],
  ])('sets %s', (_, text) => {
    expect(fonts.uncovered(text)).toEqual([]);
    for (const style of ['title', 'text'] as const) {
      expect(
        fonts
          .runs(text, style)
          .map((run) => run.text)
          .join(''),
      ).toBe(text);
    }
  });

  it('draws every run with real glyphs, never the missing-glyph box', () => {
    for (const run of fonts.runs('Łódź, Αθήνα and Ямбол: 14 °C, 2½ h', 'title')) {
      const font = create(Buffer.from(fonts.sfnt(run.face))) as Font;
      expect(font.layout(run.text).glyphs.every((glyph) => glyph.id !== 0)).toBe(true);
    }
  });

  it('reports every character it lacks, once, in order', () => {
    expect(fonts.uncovered('毛衣 and → 毛 🧥')).toEqual(['毛', '衣', '→', '🧥']);
    expect(() => fonts.stack('a 毛衣', 'text')).toThrow(UncoveredTextError);
    try {
      fonts.runs('a 毛衣', 'text');
      expect.unreachable();
    } catch (error) {
      expect(error instanceof UncoveredTextError && error.characters).toEqual(['毛', '衣']);
    }
  });

  it.each([
    ['毛衣 Grey jumper 🧥', 'Grey jumper'],
    ['Grey 毛 衣 jumper', 'Grey jumper'],
    ['Grey毛jumper', 'Greyjumper'],
    ['Grey jumper (毛)', 'Grey jumper'],
    ['Shirt, 毛衣 Jumper 🧥, Coat 🧥.', 'Shirt, Jumper, Coat.'],
    ['Coat (毛 wool)', 'Coat (wool)'],
    ['毛衣', '…'],
    ['5  ', '5  '],
    ['soft\u00adhyphen', 'soft\u00adhyphen'],
  ])('sets %s without what it lacks', (text, shown) => {
    expect(fonts.settable(text)).toBe(shown);
  });

  it('names only the faces a text needs', () => {
    expect(fonts.stack('Rust overshirt', 'title')).toBe("'Fraunces latin'");
    expect(fonts.stack('Łódź', 'title')).toBe("'Fraunces latin', 'Fraunces latin-ext'");
    expect(fonts.stack('Вечеря в 7', 'title')).toBe("'Noto Sans latin', 'Noto Sans cyrillic'");
    expect(fonts.stack('Dinner in Ямбол, and then home', 'title')).toBe("'Fraunces latin', 'Noto Sans cyrillic'");
  });

  it('gives satori the same array for the same faces', () => {
    const texts = [{ text: 'Coat', style: 'text' as const }];
    expect(fonts.satori(texts)).toBe(fonts.satori([{ text: 'Skirt', style: 'text' }]));
    expect(fonts.satori([{ text: '', style: 'title' }]).map((font) => font.name)).toEqual(['Fraunces latin']);
  });

  it('composes accents and drops only what by definition draws nothing', () => {
    expect(plainText('cafe\u0301\u00ad\u200d\ufe0f\nnow\tthen')).toBe('café now then');
    expect(fonts.uncovered('line\nbreak \u2066isolated\u2069')).toEqual([]);
  });
});
