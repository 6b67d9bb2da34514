/// <reference lib="dom" />
import { layFlat, pictureOfShape } from '../../../draw/flat-lay/index.ts';
import type { Slot } from '../../../vocabulary/index.ts';
import { CLOTH_TAPE_LABEL_X, CLOTH_TAPE_WIDTH, clothTape } from '../../svg/cloth-tape.ts';
import type { TryData } from '../../try-data.ts';

const SVG = 'http://www.w3.org/2000/svg';
/** The paper in the board's own units, as high as a look's picture; the tape runs down its left edge. */
const PAPER = { width: 1000, height: 1120, margin: 24 } as const;
/** Units a centimetre of an empty board. */
const RESTING_SCALE = 8;

export interface Lying {
  readonly piece: string;
  readonly slot: Slot;
}

const element = (name: string, attributes: Readonly<Record<string, string | number>>): SVGElement => {
  const made = document.createElementNS(SVG, name);
  for (const [attribute, value] of Object.entries(attributes)) made.setAttribute(attribute, String(value));
  return made;
};

const tape = (scale: number, unit: 'cm' | 'in'): SVGElement => {
  const { fine, long, labels } = clothTape(unit, scale, PAPER.margin, PAPER.height - PAPER.margin);
  const group = element('g', { class: 'rule', 'aria-hidden': 'true' });
  group.append(element('path', { class: 'fine', d: fine }), element('path', { class: 'long', d: long }));
  for (const { y, text } of labels) {
    const label = element('text', { x: CLOTH_TAPE_LABEL_X, y });
    label.textContent = text;
    group.append(label);
  }
  return group;
};

/** Draws the pieces laid flat, each at its true size on one scale. False when there is no room for so many. */
export const drawBoard = (
  svg: SVGSVGElement,
  lying: readonly Lying[],
  { pieces, studio }: TryData,
  night: boolean,
): boolean => {
  const { width, height, margin } = PAPER;
  const frame = {
    x: CLOTH_TAPE_WIDTH,
    y: margin,
    width: width - CLOTH_TAPE_WIDTH - margin,
    height: height - 2 * margin,
  };
  const items = lying.flatMap(({ piece, slot }) => {
    const known = pieces[piece];
    return known === undefined ? [] : [{ id: piece, slot, picture: pictureOfShape(known.shape) }];
  });
  svg.setAttribute('viewBox', `0 0 ${width} ${height}`);
  if (items.length === 0) {
    svg.replaceChildren(tape(RESTING_SCALE, studio.length));
    return true;
  }
  try {
    const { placed, scale } = layFlat(items, frame);
    const images = placed.map(({ item, transform }) => {
      const {
        widthCm,
        heightCm,
        clear,
        night: dark,
      } = pieces[item.id] ?? { widthCm: 0, heightCm: 0, clear: '', night: '' };
      const { box } = item.picture;
      return element('image', {
        href: night ? dark : clear,
        x: box.x + (box.width - widthCm) / 2,
        y: box.y + (box.height - heightCm) / 2,
        width: widthCm,
        height: heightCm,
        transform: `matrix(${transform.join(' ')})`,
      });
    });
    svg.replaceChildren(tape(scale, studio.length), ...images);
    return true;
  } catch {
    svg.replaceChildren(tape(RESTING_SCALE, studio.length));
    return false;
  }
};
