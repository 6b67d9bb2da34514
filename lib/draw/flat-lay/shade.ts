import type { Point } from '../drawing.ts';
import { compactPath, shortNumber } from '../svg-path.ts';
import type { LayItem } from './item.ts';
import { thinRing } from './thin-ring.ts';

/** How far the line of a shade may stray from the outline, centimetres: it is never seen sharp. */
const STRAY = 0.15;

/** Copies of the outline: how far they are moved, centimetres, and how strong they are. No strokes: wide ones cost as much as the piece. */
const COPIES: readonly (readonly [away: number, opacity: number])[] = [
  [0.28, 0.13],
  [0.55, 0.08],
  [0.9, 0.06],
  [1.35, 0.05],
];
/** On a larger scale, pixels a centimetre, the shade stays as narrow as on this one. */
const USUAL_SCALE = 6;
export const SHADE = '#35281c';

const ringPath = (ring: readonly Point[]): string => {
  const line = thinRing(ring, STRAY);
  const text = line.map(([x, y]) => `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`);
  return text.length === 0 ? '' : `M${text.join('L')}Z`;
};

const outlinePath = (item: LayItem): string => compactPath(item.picture.outline.map(ringPath).join(''));

/** Contact shade: stacked copies of the outline under the piece, cheaper to paint than any blur. Centimetres. */
export const shadeMarkup = (item: LayItem, prefix: string, scale: number): string => {
  const near = Math.min(1, USUAL_SCALE / scale);
  // no id of a drawing ends so
  const id = `${prefix}_`;
  const copies = COPIES.map(
    ([away, opacity]) =>
      `<use href="#${id}" transform="translate(${shortNumber(away * 0.62 * near)} ${shortNumber(away * near)})" fill-opacity="${opacity}"/>`,
  );
  return `<defs><path id="${id}" d="${outlinePath(item)}"/></defs><g fill="${SHADE}">${copies.join('')}</g>`;
};
