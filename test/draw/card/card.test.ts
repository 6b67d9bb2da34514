import satori from 'satori';
import { describe, expect, it } from 'vitest';
import { CARD_SIZES, type Card, type CardInput, drawCard, type LaidWord } from '../../../lib/draw/card/index.ts';
import type { Box } from '../../../lib/draw/drawing.ts';
import { random } from '../../../lib/draw/kit/index.ts';
import { createRasteriser } from '../../../lib/draw/raster/index.ts';
import { loadFonts, type SatoriFont, UncoveredTextError } from '../../../lib/type/index.ts';
import { drawnLook } from '../flat-lay/drawn-looks.ts';
import { paperDoll, randomLook } from '../flat-lay/paper-dolls.ts';

const fonts = loadFonts();

const cardOf = (changes: Partial<CardInput> = {}, seed = 5, name = (slot: string) => `Rust ${slot}`): CardInput => ({
  format: 'portrait',
  number: '7',
  title: 'A long walk, then the library',
  eyebrow: 'Thursday, 7 °C, dry with wind',
  wear: 'For the chamber concert on Sunday evening.',
  studio: 'A studio of our own',
  footer: 'Nine days by rail',
  note: '',
  pieces: randomLook(random(seed), `card ${seed}`).map((item) => ({
    ...item,
    name: name(item.slot),
    colour: '#9c5233',
  })),
  accent: '#2c5745',
  tape: { unit: 'cm', label: 'cm' },
  grain: 'straight grain',
  ...changes,
});

/** Where a word lies, from its baseline: ascenders of Fraunces and Noto Sans stay within 1.1 em, descenders within 0.35. */
const extentOf = ({ x, y, width, size, transform }: LaidWord): Box => {
  const upright = { x, y: y - size * 1.1, width, height: size * 1.45 };
  if (transform === '') return upright;
  const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = (transform.match(/-?[\d.]+/g) ?? []).map(Number);
  const corners = [upright.x, upright.x + upright.width].flatMap((px) =>
    [upright.y, upright.y + upright.height].map((py) => [a * px + c * py + e, b * px + d * py + f] as const),
  );
  const [xs, ys] = [corners.map(([px]) => px), corners.map(([, py]) => py)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { x: left, y: top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
};

const textExtents = (card: Card): readonly Box[] => card.words.map((word) => extentOf(word));

const written = (card: Card): string => card.words.map(({ text }) => text).join('');

const meet = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

const check = (card: Card): void => {
  for (const extent of textExtents(card)) {
    expect(extent.x).toBeGreaterThan(0);
    expect(extent.y).toBeGreaterThan(0);
    expect(extent.x + extent.width).toBeLessThan(card.width);
    expect(extent.y + extent.height).toBeLessThan(card.height);
    for (const { extent: piece, item } of card.lay.placed) {
      expect(meet(extent, piece), `text meets ${item.id}`).toBe(false);
    }
  }
};

describe('card', () => {
  it('leaves air between its small print and the line of the studio', async () => {
    const card = await drawCard(cardOf({ note: 'Gold hoops drawn larger.' }), fonts);
    const word = (text: string): LaidWord => card.words.find(({ text: set }) => set.startsWith(text)) as LaidWord;
    const [note, studio] = [word('larger'), word('studio')];
    // capitals reach 0.72 em above the baseline of the studio, tails of the note 0.25 em below its own; from the fonts
    expect(studio.y - studio.size * 0.72 - (note.y + note.size * 0.25)).toBeGreaterThanOrEqual(12);
  });

  it.each(['portrait', 'landscape'] as const)(
    'keeps text, the tape and the grain line’s words included, apart from art on 100 random %s cards of drawn pieces',
    async (format) => {
      for (let seed = 0; seed < 100; seed++) {
        const pieces = drawnLook(seed).map((item) => ({ ...item, name: `Rust ${item.slot}`, colour: '#9c5233' }));
        const card = await drawCard(cardOf({ format, pieces }, seed), fonts);
        expect(card.words.some(({ transform }) => transform !== '')).toBe(format === 'portrait');
        check(card);
      }
    },
  );

  it.each(['portrait', 'landscape'] as const)(
    'wraps a title and names of 300 characters, never cut, on a %s card',
    async (format) => {
      const words = 'Nine hundred buttons and one thread, sewn before the train leaves '.repeat(5).slice(0, 300);
      const card = await drawCard(
        cardOf({
          format,
          title: words,
          pieces: (
            [
              'top',
              'bottom',
              'outer layer',
              'shoes',
              'bag',
              'scarf',
              'belt',
              'headwear',
              'eyewear',
              'gloves',
              'legwear',
              'jewellery ears',
            ] as const
          ).map((slot) => ({ id: slot, slot, picture: paperDoll(slot, random(4)), name: words, colour: '#9c5233' })),
        }),
        fonts,
      );
      check(card);
      expect(card.lay.frame.height).toBeGreaterThan(card.height * 0.3);
      const unbroken = await drawCard(
        cardOf({ format, title: 'Wintermantelknopflochgarn'.repeat(12), wear: 'x'.repeat(300) }),
        fonts,
      );
      check(unbroken);
    },
  );

  it('never tears a range of figures over two lines', async () => {
    // however long the words before it are, and so wherever a line ends
    for (let letters = 1; letters < 40; letters += 3) {
      const wear = `${'m'.repeat(letters)} Casual to smart casual. Outdoors while strolling 17–28 °C, layers on or off.`;
      const { words } = await drawCard(cardOf({ format: 'landscape', wear, pieces: [] }), fonts);
      const at = words.findIndex(({ text }) => text === '17');
      expect(words.slice(at, at + 3).map(({ text }) => text)).toEqual(['17', '–', '28']);
      expect(new Set(words.slice(at, at + 3).map(({ y }) => Math.round(y))).size).toBe(1);
    }
  });

  it('writes every letter of a title and of the names, however they wrap', async () => {
    const title = 'Wintermantelknopflochgarn und Nähseide, '.repeat(7).trim();
    for (const format of ['portrait', 'landscape'] as const) {
      const input = cardOf({ format, title }, 9, (slot) => `${slot} of boiled wool, `.repeat(9));
      const letters = written(await drawCard(input, fonts));
      expect(letters).toContain(title.replaceAll(' ', ''));
      for (const { name } of input.pieces) expect(letters).toContain(name.replaceAll(' ', ''));
    }
  });

  it('sets usual names large enough to be read on a phone', async () => {
    const names = ['Oatmeal crew-neck jumper', 'Chestnut corduroy overshirt', 'Printed silk neckerchief'];
    const pieces = cardOf().pieces.map((piece, index) => ({ ...piece, name: names[index % names.length] ?? '' }));
    const { words } = await drawCard(cardOf({ pieces }), fonts);
    const sizes = names.flatMap((name) => words.filter(({ text }) => name.split(' ').includes(text)));
    expect(sizes.length).toBeGreaterThanOrEqual(pieces.length);
    // common practice, no source
    for (const { size } of sizes) expect((size * 390) / 1080).toBeGreaterThan(6.8);
  });

  it.each(['portrait', 'landscape'] as const)(
    'sets one name of 300 characters in a row of its own and leaves the others their size, %s',
    async (format) => {
      const words = 'Ninehundred buttons andone thread sewn beforethe train leaves '.repeat(5).slice(0, 300).trim();
      const usual = await drawCard(cardOf({ format }), fonts);
      const pieces = cardOf().pieces.map((piece, index) => (index === 1 ? { ...piece, name: words } : piece));
      const card = await drawCard(cardOf({ format, pieces }), fonts);
      check(card);
      const sizesOf = (laid: typeof card, text: string) => laid.words.filter((word) => word.text === text);
      const [before, after] = [usual, card].map((laid) => sizesOf(laid, 'Rust').map(({ size }) => size));
      expect(after).toEqual(before?.slice(1));
      const long = sizesOf(card, 'beforethe');
      expect(long.length).toBe(5);
      // below every other name, in lines that go over the whole breadth
      const lowest = Math.max(...sizesOf(card, 'Rust').map(({ y }) => y));
      for (const { y, size } of long) {
        expect(y).toBeGreaterThan(lowest);
        // on a card as broad as a phone a portrait's smallest words stay near 6 px. common practice, no source
        expect(size).toBeGreaterThanOrEqual(format === 'portrait' ? 16 : 12);
      }
      expect(new Set(long.map(({ y }) => Math.round(y))).size).toBeLessThanOrEqual(format === 'portrait' ? 3 : 5);
    },
  );

  it('sets letters where satori would draw them', async () => {
    const { svg, words } = await drawCard(cardOf({ pieces: [], eyebrow: '', wear: '', studio: '', footer: '' }), fonts);
    const word = words.find(({ text }) => text === 'library');
    if (word === undefined) throw new Error('no word');
    const [face] = word.faces;
    if (face === undefined) throw new Error('no face');
    // satori itself, with outlines embedded, asked for the same word at the same size
    const outlined = await satori(
      {
        type: 'div',
        key: null,
        props: {
          style: {
            display: 'flex',
            fontFamily: face.name,
            fontWeight: face.weight,
            fontSize: word.size,
            letterSpacing: word.spacing,
            lineHeight: 1.14,
            color: '#000000',
          },
          children: 'library',
        },
      },
      { width: 400, height: 100, fonts: fonts.satori([{ text: 'library', style: 'title' }]) as SatoriFont[] },
    );
    const own = `<svg xmlns="http://www.w3.org/2000/svg" width="400" height="100" viewBox="${word.x} ${word.y - word.size} 400 100">${svg.slice(svg.indexOf('<defs>'))}`;
    const ink = (data: Uint8Array): readonly number[] => {
      const columns = Array.from({ length: 400 }, () => 0);
      for (let at = 3; at < data.length; at += 4)
        if ((data[at] ?? 0) > 127) {
          const column = ((at - 3) / 4) % 400;
          columns[column] = (columns[column] ?? 0) + 1;
        }
      return columns;
    };
    const rasteriser = createRasteriser();
    const [theirs, ours] = await Promise.all(
      [outlined, own].map((picture) => rasteriser.pixels(picture, { grain: false })),
    );
    const [a, b] = [ink(theirs?.data ?? new Uint8Array()), ink(ours?.data ?? new Uint8Array())];
    const total = a.reduce((sum, value) => sum + value, 0);
    const width = Math.ceil(word.width) + 1;
    const apart = a.slice(0, width).reduce((sum, value, index) => sum + Math.abs(value - (b[index] ?? 0)), 0);
    expect(total).toBeGreaterThan(500);
    expect(apart / total).toBeLessThan(0.06);
  });

  it.each([
    ['Greek', 'Περίπατος και βιβλιοθήκη', 'Μάλλινο παλτό'],
    ['Bulgarian', 'Дълга разходка до библиотеката', 'Вълнено палто'],
    ['Vietnamese', 'Áo khoác dạ và váy xếp ly', 'Áo len cổ lọ'],
    ['Polish', 'Długi spacer, a potem wieża', 'Wełniany płaszcz'],
  ])('sets %s', async (_, title, piece) => {
    const card = await drawCard(
      cardOf({ title }, 5, () => piece),
      fonts,
    );
    check(card);
    expect(written(card)).toContain(title.replaceAll(' ', ''));
    expect(written(card)).toContain(piece.replaceAll(' ', ''));
  });

  it('throws the characters that no font has, so that the caller can report them', async () => {
    await expect(drawCard(cardOf({ title: 'Coat 毛衣 🧥' }), fonts)).rejects.toSatisfy(
      (error) => error instanceof UncoveredTextError && error.characters.join('') === '毛衣🧥',
    );
    await expect(
      drawCard(
        cardOf({}, 5, () => 'Coat →'),
        fonts,
      ),
    ).rejects.toBeInstanceOf(UncoveredTextError);
  });

  it('shows a true tape: its ticks stand as far apart as the lay is to scale', async () => {
    const card = await drawCard(cardOf(), fonts);
    const tape = /<path d="((?:M0 [\d.]+h\d+)+)"/.exec(card.svg)?.[1] ?? '';
    const ticks = [...tape.matchAll(/M0 ([\d.]+)h/g)].map(([, y]) => Number(y));
    expect(ticks.length).toBeGreaterThan(100);
    expect(((ticks.at(-1) ?? 0) - (ticks[0] ?? 0)) / (ticks.length - 1)).toBeCloseTo(card.lay.scale, 3);
    const inches = await drawCard(cardOf({ tape: { unit: 'in', label: 'in' } }), fonts);
    const long = /<path d="((?:M0 [\d.]+h\d+)+)"/.exec(inches.svg)?.[1] ?? '';
    const every = [...long.matchAll(/M0 ([\d.]+)h/g)].map(([, y]) => Number(y));
    expect(((every.at(-1) ?? 0) - (every[0] ?? 0)) / (every.length - 1)).toBeCloseTo(inches.lay.scale * 2.54, 3);
  });

  it('draws two skirts of 78 and 45 cm in that proportion', async () => {
    const skirt = (length: number) => ({
      ...paperDoll('one-piece', random(2)),
      outline: [
        [
          [0, 0],
          [40, 0],
          [40, length],
          [0, length],
        ],
      ] as const,
      box: { x: 0, y: 0, width: 40, height: length },
    });
    const card = await drawCard(
      cardOf({
        pieces: [
          { id: 'long', slot: 'bottom', picture: skirt(78), name: 'Long', colour: '#333333' },
          { id: 'short', slot: 'scarf', picture: skirt(45), name: 'Short', colour: '#333333' },
        ],
      }),
      fonts,
    );
    const tall = (id: string) => {
      const placed = card.lay.placed.find(({ item }) => item.id === id);
      return Math.hypot(placed?.transform[2] ?? 0, placed?.transform[3] ?? 0) * (placed?.item.picture.box.height ?? 0);
    };
    expect(tall('long') / tall('short')).toBeCloseTo(78 / 45, 6);
  });

  it('has unique ids that start with the prefix, a title and a description', async () => {
    const { svg } = await drawCard(cardOf({ title: 'Up & <down>' }), fonts, { prefix: 'look7' });
    const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id ?? '');
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.every((id) => id.startsWith('look7'))).toBe(true);
    for (const [, id] of svg.matchAll(/(?:url\(#|href="#)([^")]+)/g)) expect(ids).toContain(id);
    expect(svg).toContain('<title>Up &amp; &lt;down&gt;</title>');
    expect(svg).not.toMatch(/<text|<filter|<image/);
  });

  it('is the same bytes every time, as SVG, PNG and WebP', async () => {
    const make = async () => {
      const { svg } = await drawCard(cardOf(), loadFonts());
      const rasteriser = createRasteriser();
      const pixels = await rasteriser.pixels(svg);
      return { svg, png: await rasteriser.png(pixels), webp: await rasteriser.webp(pixels), pixels };
    };
    const [one, other] = [await make(), await make()];
    expect(other.svg).toBe(one.svg);
    expect(other.png.equals(one.png)).toBe(true);
    expect(other.webp.equals(one.webp)).toBe(true);
    expect([one.pixels.width, one.pixels.height]).toEqual([CARD_SIZES.portrait.width, CARD_SIZES.portrait.height]);
    expect(one.png.length).toBeLessThan(700_000);
    expect(one.webp.length).toBeLessThan(170_000);
  });

  it('shows a photo in place of a drawing', async () => {
    const png = Uint8Array.from(
      atob('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=='),
      (letter) => letter.charCodeAt(0),
    );
    const outline = [
      [
        [0, 0],
        [50, 0],
        [50, 70],
        [0, 70],
      ],
    ] as const;
    const { svg } = await drawCard(
      cardOf({
        pieces: [
          {
            id: 'photo',
            slot: 'top',
            name: 'A photo',
            colour: '#9c5233',
            picture: { png, pxPerCm: 8, box: { x: 0, y: 0, width: 50, height: 70 }, outline, anchors: {} },
          },
        ],
      }),
      fonts,
    );
    expect(svg).toContain('<image x="0" y="0" width="50" height="70"');
    const { data, width } = await createRasteriser().pixels(svg, { grain: false });
    expect(data.length).toBe(width * 1350 * 4);
  });
});
