import { drawingMarkup } from '../svg.ts';
import { shortNumber } from '../svg-path.ts';
import type { Cutout, FlatLay, LayItem, Placed } from './item.ts';
import { shadeMarkup } from './shade.ts';

/** What lies under each piece: shade on paper, or nothing. */
export type Under = 'shade' | 'nothing';

const isCutout = (picture: LayItem['picture']): picture is Cutout => 'png' in picture;

const photoMarkup = ({ png, box }: Cutout): string => {
  const at = [box.x, box.y, box.width, box.height].map(shortNumber);
  return `<image x="${at[0]}" y="${at[1]}" width="${at[2]}" height="${at[3]}" preserveAspectRatio="none" href="data:image/png;base64,${Buffer.from(png).toString('base64')}"/>`;
};

/** A piece alone in its own centimetres, written quickly rather than briefly, to be rasterised and let go. */
export const bareMarkup = ({ picture }: LayItem, prefix: string): string =>
  isCutout(picture) ? photoMarkup(picture) : drawingMarkup(picture, prefix, false);

/** A piece in its own centimetres, with what lies under it. Ids start with `prefix`. `scale` is pixels a centimetre. */
export const itemMarkup = (item: LayItem, prefix: string, under: Under, scale: number): string => {
  const below = under === 'shade' ? shadeMarkup(item, prefix, scale) : '';
  return below + (isCutout(item.picture) ? photoMarkup(item.picture) : drawingMarkup(item.picture, prefix));
};

const placedMarkup = (placed: Placed, prefix: string, under: Under, scale: number): string => {
  const [a, b, c, d] = placed.transform.slice(0, 4).map((value) => Math.round(value * 1e4) / 1e4);
  const [e, f] = placed.transform.slice(4).map((value) => Math.round(value * 100) / 100);
  return `<g transform="matrix(${a} ${b} ${c} ${d} ${e} ${f})">${itemMarkup(placed.item, prefix, under, scale)}</g>`;
};

/** The whole lay as SVG elements in pixels. Ids start with `prefix`, then the piece's place in the lay. */
export const layMarkup = (lay: FlatLay, prefix: string, under: Under = 'shade'): string =>
  lay.placed.map((placed, index) => placedMarkup(placed, `${prefix}${index}-`, under, lay.scale)).join('');
