/// <reference lib="dom" />
import { layFlat, pictureOfShape } from '../../../draw/flat-lay/index.ts';
import { tapeTicks } from '../../../draw/index.ts';
import type { Slot } from '../../../vocabulary/index.ts';
import type { TryData } from '../../try-data.ts';

const SVG = 'http://www.w3.org/2000/svg';
/** The paper in the board's own units, as high as a look's picture; the tape runs down its left edge. */
const PAPER = { width: 1000, height: 1120, tape: 64, margin: 24 } as const;
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

/** A tape true to the scale at which the pieces lie. */
const tape = (scale: number, unit: 'cm' | 'in'): SVGElement => {
  const group = element('g', { class: 'rule', 'aria-hidden': 'true' });
  const ticks = tapeTicks(unit, scale, PAPER.margin, PAPER.height - PAPER.margin);
  for (const [name, wanted] of [
    ['fine', false],
    ['long', true],
  ] as const) {
    const path = ticks
      .filter(({ length }) => length > 12 === wanted)
      .map(({ y, length }) => `M0 ${Math.round(y * 10) / 10}h${length * 1.6}`);
    group.append(element('path', { class: name, d: path.join('') }));
  }
  for (const { y, mark } of ticks) {
    if (mark === undefined) continue;
    const label = element('text', { x: 34, y: y + 9 });
    label.textContent = String(mark);
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
  const frame = { x: PAPER.tape, y: margin, width: width - PAPER.tape - margin, height: height - 2 * margin };
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
