import satori from 'satori';
import { type Fonts, plainText, type SatoriFont } from '../../type/index.ts';
import type { Box } from '../drawing.ts';
import { type FlatLay, layFlat, layMarkup } from '../flat-lay/index.ts';
import { tapeTicks } from '../tape.ts';
import { CARD_SIZES, type CardInput } from './input.ts';
import { type LaidWord, wordsMarkup, wordsOf } from './letters.ts';
import { grainMarkup, ruleMarkup, stitchMarkup, tapeMarkup } from './ornaments.ts';
import { type CardColours, coloursOf } from './palette.ts';
import { GRAIN, smallPrint, TAPE_TOP } from './small-print.ts';
import { swatchMarkup } from './swatch.ts';
import { landscapeTree, portraitTree } from './text.ts';
import { createTextSetter, type Node, type TextSetter } from './tree.ts';

type Boxes = ReadonlyMap<string, Box>;

/** Lays a tree out in satori; gives the words where they stand, and where the named boxes came to lie. */
const setInSatori = async (
  tree: Node,
  size: { readonly width: number; readonly height: number },
  fonts: Fonts,
  texts: TextSetter['texts'],
): Promise<{ readonly words: readonly LaidWord[]; readonly boxes: Boxes }> => {
  const boxes = new Map<string, Box>();
  const svg = await satori(tree as unknown as Parameters<typeof satori>[0], {
    ...size,
    embedFont: false,
    fonts: fonts.satori(texts) as SatoriFont[],
    loadAdditionalAsset: async (script: string, segment: string) => {
      throw new Error(`a font is missing for "${segment}" (${script})`);
    },
    onNodeDetected: ({ key, left, top, width, height }) => {
      if (typeof key === 'string') boxes.set(key, { x: left, y: top, width, height });
    },
  });
  return { words: wordsOf(svg), boxes };
};

const escaped = (text: string): string =>
  plainText(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const boxNamed = (boxes: Boxes, name: string): Box => {
  const found = boxes.get(name);
  if (found === undefined) throw new Error(`the card has no box "${name}"`);
  return found;
};

/** Sizes tried in turn for the texts of a card. */
const SHRINKS = [1, 0.86, 0.74, 0.64, 0.54, 0.44] as const;
/** The pieces keep at least this share of the card's height. */
const LEAST_ART = 0.3;

/** Lays out the texts, smaller until all of them fit the card and leave room for the pieces. */
const setTexts = async (input: CardInput, colours: CardColours, fonts: Fonts): ReturnType<typeof setInSatori> => {
  const size = CARD_SIZES[input.format];
  const grow = input.format === 'portrait' ? portraitTree : landscapeTree;
  for (const shrink of SHRINKS) {
    const text = createTextSetter(fonts, shrink);
    const laid = await setInSatori(grow(input, colours, text), size, fonts, text.texts);
    const lowest = Math.max(0, ...laid.words.map(({ y, size: em }) => y + em * 0.35));
    const footer = boxNamed(laid.boxes, 'notch');
    if (
      lowest < size.height - 8 &&
      footer.y + footer.height < size.height &&
      boxNamed(laid.boxes, 'stitch').y < boxNamed(laid.boxes, 'legend').y &&
      boxNamed(laid.boxes, 'art').height >= size.height * LEAST_ART
    ) {
      return laid;
    }
  }
  throw new Error(`the texts of card ${input.number} do not fit: shorten its title or the names of its pieces`);
};

/** A finished card, and what it is made of, for checks and for sheets. */
export interface Card {
  /** The whole card; written when it is asked for. */
  readonly svg: string;
  /** The card without its pieces, to lay them on as pixels. */
  readonly sheet: string;
  readonly width: number;
  readonly height: number;
  readonly lay: FlatLay;
  /** Every word where it stands; those of the tape and the grain line last. */
  readonly words: readonly LaidWord[];
  /** Where the texts, ornaments and the art lie, pixels. */
  readonly boxes: Boxes;
}

export interface DrawCardOptions {
  /** Starts every id, for several cards in one document. Default `c`. */
  readonly prefix?: string;
  /** Told where the pieces lie before the last texts are set, so that they can be painted meanwhile. */
  readonly onLaid?: (lay: FlatLay) => void;
}

/**
 * Draws a card. Texts wrap and step down in size, and are never cut. Throws `UncoveredTextError` with the characters when a
 * text holds some that no font has.
 */
export const drawCard = async (
  input: CardInput,
  fonts: Fonts,
  { prefix = 'c', onLaid }: DrawCardOptions = {},
): Promise<Card> => {
  const colours = coloursOf(input);
  const size = CARD_SIZES[input.format];
  const { words, boxes } = await setTexts(input, colours, fonts);
  const lay = layFlat(input.pieces, boxNamed(boxes, 'art'));
  onLaid?.(lay);
  const ticks = tapeTicks(input.tape.unit, lay.scale, TAPE_TOP, size.height - 30);
  const all = [...words, ...smallPrint(input, ticks, colours, fonts)];
  const rule = boxes.get('rule');
  const below = [
    `<title>${escaped(input.title)}</title><desc>${escaped(input.pieces.map(({ name }) => name).join(', '))}</desc>`,
    `<rect width="${size.width}" height="${size.height}" fill="${colours.paper}"/>`,
    tapeMarkup(ticks, colours),
    input.format === 'portrait' ? grainMarkup(GRAIN.x, GRAIN.top, GRAIN.bottom, colours) : '',
    stitchMarkup(boxNamed(boxes, 'stitch'), colours.accent, input.number + input.title),
    rule === undefined ? '' : ruleMarkup(rule, colours, false),
    ruleMarkup(boxNamed(boxes, 'notch'), colours, true),
  ].join('');
  const swatches = (short: boolean): string =>
    input.pieces
      .map((piece, index) =>
        swatchMarkup(piece, boxNamed(boxes, `swatch ${index}`), lay.scale, `${prefix}w${index}-`, colours, short),
      )
      .join('');
  const texts = (short: boolean): string => wordsMarkup(all, fonts, `${prefix}t`, short);
  const open = `<svg xmlns="http://www.w3.org/2000/svg" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" role="img">`;
  return {
    get svg() {
      return `${open}${below}${layMarkup(lay, `${prefix}-`)}${swatches(true)}${texts(true)}</svg>`;
    },
    sheet: `${open}${below}${swatches(false)}${texts(false)}</svg>`,
    ...size,
    lay,
    words: all,
    boxes,
  };
};

/** The card as an SVG document. */
export const cardSvg = async (input: CardInput, fonts: Fonts): Promise<string> => (await drawCard(input, fonts)).svg;
