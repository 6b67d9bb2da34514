import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font } from 'fontkit';
import { FACES, type Face, type FontStyle } from './faces.ts';
import { plainText, UncoveredTextError, withoutCharacters } from './text.ts';
import { unwrapWoff } from './unwrap.ts';

/** A font as satori takes it. */
export interface SatoriFont {
  readonly name: string;
  readonly data: ArrayBuffer;
  readonly weight: 300 | 400 | 500 | 600;
  readonly style: 'normal' | 'italic';
}

/** Text in one face, for painters that set one font at a time. */
export interface Run {
  readonly face: Face;
  readonly text: string;
}

/** One letter of a shaped word. */
export interface Letter {
  readonly face: Face;
  readonly glyph: number;
  /** Outline in thousandths of an em, y downwards, absolute M, L, Q, C and Z; empty for a space. */
  readonly outline: string;
  /** Where it stands, thousandths of an em from the start of the word. */
  readonly at: number;
}

/** The letters of a word, and how wide it is, thousandths of an em. */
export interface ShapedWord {
  readonly letters: readonly Letter[];
  readonly width: number;
}

/** The house's fonts. Files are read when first asked for and kept as long as this record is. */
export interface Fonts {
  /** The plain sfnt of a face. */
  sfnt(face: Face): Uint8Array<ArrayBuffer>;
  /** Characters of a text that no font has, each once, in order; they must be reported. Empty for Latin, Greek and Cyrillic text. */
  uncovered(text: string): readonly string[];
  /** The text without the characters that no font has; an ellipsis where nothing is left of it. */
  settable(text: string): string;
  /** Splits text into runs of one face. Throws `UncoveredTextError`. */
  runs(text: string, style: FontStyle): readonly Run[];
  /** Shapes a word (kerning, ligatures) with the first of these faces that has each character. `spacing` is added after every letter, thousandths of an em. */
  letters(word: string, faces: readonly Face[], spacing?: number): ShapedWord;
  /** CSS font-family for satori: only the faces this text needs, in order. Throws `UncoveredTextError`. */
  stack(text: string, style: FontStyle): string;
  /** Fonts for satori to set these texts; the same array again for the same faces, so that satori parses each once. */
  satori(texts: readonly { readonly text: string; readonly style: FontStyle }[]): readonly SatoriFont[];
}

const require = createRequire(import.meta.url);

const readFace = (face: Face): Uint8Array<ArrayBuffer> => unwrapWoff(readFileSync(require.resolve(face.file)));

const DRAW: Readonly<Record<string, string>> = {
  moveTo: 'M',
  lineTo: 'L',
  quadraticCurveTo: 'Q',
  bezierCurveTo: 'C',
  closePath: 'Z',
};

/** A glyph's commands as a path, rounded to a thousandth of an em. */
const outlinePath = (commands: readonly { command: string; args: readonly number[] }[], em: number): string =>
  commands
    .map(({ command, args }) => {
      const numbers = args.map((value, index) => Math.round(value * em) * (index % 2 === 0 ? 1 : -1));
      return `${DRAW[command] ?? 'L'}${numbers.join(' ')}`;
    })
    .join('');

const isLetter = (character: string): boolean => /\p{L}/u.test(character);

/** Makes the house's fonts ready: one source for cards, pictures and PDF. Reads files on demand; throws when one is missing. */
export const loadFonts = (read: (face: Face) => Uint8Array<ArrayBuffer> = readFace): Fonts => {
  const files = new Map<string, Uint8Array<ArrayBuffer>>();
  const opened = new Map<string, Font>();
  const outlines = new Map<string, string>();
  const covers = new Map<string, ReadonlySet<number>>();
  const shaped = new Map<string, ShapedWord>();
  const families = new Map<string, readonly SatoriFont[]>();

  const sfnt = (face: Face): Uint8Array<ArrayBuffer> => {
    const bytes = files.get(face.file) ?? read(face);
    files.set(face.file, bytes);
    return bytes;
  };
  const open = (face: Face): Font => {
    const known = opened.get(face.file);
    if (known !== undefined) return known;
    const font = create(Buffer.from(sfnt(face)));
    if (!('characterSet' in font)) throw new Error(`${face.file} holds a collection of fonts`);
    opened.set(face.file, font);
    return font;
  };
  const covered = (face: Face): ReadonlySet<number> => {
    const known = covers.get(face.file);
    if (known !== undefined) return known;
    const set = new Set(open(face).characterSet);
    covers.set(face.file, set);
    return set;
  };
  const faceFor = (character: string, faces: readonly Face[]): Face | undefined => {
    const code = character.codePointAt(0) ?? 0;
    return faces.find((face) => covered(face).has(code));
  };

  /** A title mostly in a script the serif lacks is set in the sans throughout, digits and stops included. */
  const order = (text: string, style: FontStyle): readonly Face[] => {
    const faces = FACES[style];
    const letters = [...text].filter(isLetter);
    const foreign = letters.filter((letter) => faceFor(letter, faces)?.serif === false);
    return foreign.length * 2 > letters.length ? faces.filter((face) => !face.serif) : faces;
  };
  const uncovered = (text: string): readonly string[] => [
    ...new Set([...plainText(text)].filter((character) => faceFor(character, FACES.text) === undefined)),
  ];

  const settable = (text: string): string => {
    const lost = new Set(uncovered(text));
    return lost.size === 0 ? text : withoutCharacters(text.normalize('NFC'), lost);
  };

  const split = (text: string, plain: string, faces: readonly Face[]): readonly Run[] => {
    const missing: string[] = [];
    const found: { face: Face; text: string }[] = [];
    for (const character of plain) {
      const last = found.at(-1);
      const face =
        last !== undefined && character === ' ' && covered(last.face).has(32) ? last.face : faceFor(character, faces);
      if (face === undefined) missing.push(character);
      else if (last?.face === face) last.text += character;
      else found.push({ face, text: character });
    }
    if (missing.length > 0) throw new UncoveredTextError(text, [...new Set(missing)]);
    return found;
  };
  const runs = (text: string, style: FontStyle): readonly Run[] => {
    const plain = plainText(text);
    return split(text, plain, order(plain, style));
  };
  const outlineOf = (face: Face, glyph: number): string => {
    const key = `${face.file} ${glyph}`;
    const font = open(face);
    const made = outlines.get(key) ?? outlinePath(font.getGlyph(glyph).path.commands, 1000 / font.unitsPerEm);
    outlines.set(key, made);
    return made;
  };
  const shape = (word: string, faces: readonly Face[], spacing: number): ShapedWord => {
    const found: Letter[] = [];
    let at = 0;
    for (const { face, text } of split(word, word, faces)) {
      const font = open(face);
      const em = 1000 / font.unitsPerEm;
      const { glyphs, positions } = font.layout(text, spacing === 0 ? [] : { liga: false });
      glyphs.forEach(({ id }, index) => {
        found.push({ face, glyph: id, outline: outlineOf(face, id), at: at + (positions[index]?.xOffset ?? 0) * em });
        at += (positions[index]?.xAdvance ?? 0) * em + spacing;
      });
    }
    return { letters: found, width: at };
  };
  const letters = (word: string, faces: readonly Face[], spacing = 0): ShapedWord => {
    const key = `${word}\n${spacing}\n${faces.map(({ file }) => file).join('\n')}`;
    const made = shaped.get(key) ?? shape(word, faces, spacing);
    shaped.set(key, made);
    return made;
  };
  const needed = (text: string, style: FontStyle): readonly Face[] => {
    const used = new Set(runs(text, style).map((run) => run.face));
    const faces = order(plainText(text), style);
    return faces.filter((face, index) => used.has(face) || index === 0);
  };

  return {
    sfnt,
    uncovered,
    settable,
    runs,
    letters,
    stack: (text, style) =>
      needed(text, style)
        .map((face) => `'${face.name}'`)
        .join(', '),
    satori: (texts) => {
      const faces = new Map(texts.flatMap(({ text, style }) => needed(text, style)).map((face) => [face.file, face]));
      const key = [...faces.keys()].sort().join('\n');
      const made =
        families.get(key) ??
        [...faces.values()].map(
          (face): SatoriFont => ({
            name: face.name,
            data: sfnt(face).buffer,
            weight: face.weight,
            style: face.italic ? 'italic' : 'normal',
          }),
        );
      families.set(key, made);
      return made;
    },
  };
};
