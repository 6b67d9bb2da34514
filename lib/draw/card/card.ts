import satori from 'satori';
import { type Fonts, plainText, type SatoriFont } from '../../type/index.ts';
import type { Box } from '../drawing.ts';
import { type FlatLay, layFlat, layMarkup } from '../flat-lay/index.ts';
import { compactPath } from '../svg-path.ts';
import { CARD_SIZES, type CardInput } from './input.ts';
import { grainMarkup, ruleMarkup, stitchMarkup, type Tick, tapeMarkup, tapeTicks } from './ornaments.ts';
import { type CardColours, coloursOf } from './palette.ts';
import { swatchMarkup } from './swatch.ts';
import { landscapeTree, portraitTree } from './text.ts';
import { box, createTextSetter, type Node, type TextSetter } from './tree.ts';

type Boxes = ReadonlyMap<string, Box>;

/** The tape starts here. */
const TAPE_TOP = 40;
/** Where the grain line stands on a portrait card. */
const GRAIN = { x: 1040, top: 519, bottom: 761 };

/** A line to the point where the pen already is. */
const IDLE_LINE = /(-?[\d.]+ -?[\d.]+)L\1(?![\d.])/g;

/** Satori declares a mask for every box, used or not, and writes outlines of letters at twice their length. */
const tidied = (svg: string): string => {
  const masks = svg.includes('url(#satori') ? svg : svg.replaceAll(/<mask id="satori[^"]*">.*?<\/mask>/g, '');
  return masks.replaceAll(
    / d="([^"]+)"/g,
    (_, path: string) => ` d="${compactPath(path.replaceAll(IDLE_LINE, '$1'))}"`,
  );
};

/** Sets a tree in satori; gives the SVG inside its opening tag, and where the named boxes came to lie. */
const setInSatori = async (
  tree: Node,
  size: { readonly width: number; readonly height: number },
  fonts: Fonts,
  texts: TextSetter['texts'],
): Promise<{ readonly inner: string; readonly boxes: Boxes }> => {
  const boxes = new Map<string, Box>();
  const svg = await satori(tree as unknown as Parameters<typeof satori>[0], {
    ...size,
    fonts: fonts.satori(texts) as SatoriFont[],
    loadAdditionalAsset: async (script: string, segment: string) => {
      throw new Error(`a font is missing for "${segment}" (${script})`);
    },
    onNodeDetected: ({ key, left, top, width, height }) => {
      if (typeof key === 'string') boxes.set(key, { x: left, y: top, width, height });
    },
  });
  const inner = svg.slice(svg.indexOf('>') + 1, svg.lastIndexOf('</svg>'));
  return { inner: tidied(inner), boxes };
};

/** The small print of the ornaments, a tree of its own: the tape's scale is known only once the pieces lie. */
const smallPrint = (input: CardInput, ticks: readonly Tick[], colours: CardColours, text: TextSetter): Node => {
  const { width, height } = CARD_SIZES[input.format];
  const label = { fontSize: 12, lineHeight: 1, color: colours.soft };
  const at = (left: number, top: number, node: Node | undefined, css = {}): Node | undefined =>
    node && box({ position: 'absolute', left, top, ...css }, [node]);
  const grain = text.set(input.grain, 'serif italic', label);
  return box({ width, height, position: 'relative' }, [
    at(24, TAPE_TOP - 6, text.set(input.tape.label, 'serif italic', label)),
    ...ticks.flatMap(({ y, mark }) =>
      mark === undefined ? [] : [at(24, y - 5, text.set(String(mark), 'text', { ...label, fontSize: 10 }))],
    ),
    input.format === 'portrait'
      ? at(GRAIN.x + 16 - 100, (GRAIN.top + GRAIN.bottom) / 2 - 8, grain, {
          width: 200,
          height: 16,
          justifyContent: 'center',
          alignItems: 'center',
          transform: 'rotate(90deg)',
        })
      : undefined,
  ]);
};

const escaped = (text: string): string =>
  plainText(text).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

const boxNamed = (boxes: Boxes, name: string): Box => {
  const found = boxes.get(name);
  if (found === undefined) throw new Error(`the card has no box "${name}"`);
  return found;
};

/** A finished card, and what it is made of, for checks and for sheets. */
export interface Card {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  readonly lay: FlatLay;
  /** Where the texts, ornaments and the art lie, pixels. */
  readonly boxes: Boxes;
}

/**
 * Draws a card. Texts wrap and step down in size, and are never cut. Throws `UncoveredTextError` with the characters when a
 * text holds some that no font has. `prefix` starts every id, for several cards in one document.
 */
export const drawCard = async (input: CardInput, fonts: Fonts, prefix = 'c'): Promise<Card> => {
  const colours = coloursOf(input);
  const size = CARD_SIZES[input.format];
  const text = createTextSetter(fonts);
  const tree = input.format === 'portrait' ? portraitTree(input, colours, text) : landscapeTree(input, colours, text);
  const { inner: words, boxes } = await setInSatori(tree, size, fonts, text.texts);
  const lay = layFlat(input.pieces, boxNamed(boxes, 'art'));
  const ticks = tapeTicks(input.tape.unit, lay.scale, TAPE_TOP, size.height - 30);
  const small = createTextSetter(fonts);
  const { inner: labels } = await setInSatori(smallPrint(input, ticks, colours, small), size, fonts, small.texts);
  const rule = boxes.get('rule');
  const parts = [
    `<title>${escaped(input.title)}</title><desc>${escaped(input.pieces.map(({ name }) => name).join(', '))}</desc>`,
    `<rect width="${size.width}" height="${size.height}" fill="${colours.paper}"/>`,
    tapeMarkup(ticks, colours),
    input.format === 'portrait' ? grainMarkup(GRAIN.x, GRAIN.top, GRAIN.bottom, colours) : '',
    stitchMarkup(boxNamed(boxes, 'stitch'), colours.accent, input.number + input.title),
    rule === undefined ? '' : ruleMarkup(rule, colours, false),
    ruleMarkup(boxNamed(boxes, 'notch'), colours, true),
    layMarkup(lay, `${prefix}-`),
    ...input.pieces.map((piece, index) =>
      swatchMarkup(piece, boxNamed(boxes, `swatch ${index}`), lay.scale, `${prefix}w${index}-`, colours),
    ),
    words,
    labels,
  ];
  const open = `<svg xmlns="http://www.w3.org/2000/svg" width="${size.width}" height="${size.height}" viewBox="0 0 ${size.width} ${size.height}" role="img">`;
  return { svg: `${open}${parts.join('').replaceAll('satori_', `${prefix}t`)}</svg>`, ...size, lay, boxes };
};

/** The card as an SVG document. */
export const cardSvg = async (input: CardInput, fonts: Fonts): Promise<string> => (await drawCard(input, fonts)).svg;
