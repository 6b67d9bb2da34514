import { PAPER } from '../card/palette.ts';
import type { Box, Point } from '../drawing.ts';
import { itemMarkup, type LayItem, layFlat, layMarkup, type Under } from '../flat-lay/index.ts';
import { shortNumber } from '../svg-path.ts';

/** `paper`: on the card's paper. `clear`: no ground, shade below, for light pages. `night`: no ground, a pale rim, for dark pages. */
export type PictureGround = 'paper' | 'clear' | 'night';

const UNDER: Readonly<Record<PictureGround, Under>> = { paper: 'shade', clear: 'shade', night: 'rim' };

const document = (box: Box, width: number, ground: PictureGround, paper: string, inner: string): string => {
  const view = [box.x, box.y, box.width, box.height].map(shortNumber).join(' ');
  const sheet =
    ground === 'paper'
      ? `<rect x="${shortNumber(box.x)}" y="${shortNumber(box.y)}" width="${shortNumber(box.width)}" height="${shortNumber(box.height)}" fill="${paper}"/>`
      : '';
  const height = Math.round((width * box.height) / box.width);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="${view}" preserveAspectRatio="xMidYMid meet">${sheet}${inner}</svg>`;
};

export interface LookPictureOptions {
  readonly width: number;
  readonly height: number;
  readonly ground: PictureGround;
  readonly paper?: string;
  readonly prefix?: string;
}

/** A look laid flat without anything around it, as an SVG document. `width` and `height` in pixels; rasterise it at any width. */
export const lookPictureSvg = (items: readonly LayItem[], options: LookPictureOptions): string => {
  const { width, height, ground, paper = PAPER, prefix = 'l' } = options;
  const margin = Math.round(Math.min(width, height) * 0.025);
  const lay = layFlat(items, { x: margin, y: margin, width: width - 2 * margin, height: height - 2 * margin });
  return document({ x: 0, y: 0, width, height }, width, ground, paper, layMarkup(lay, `${prefix}-`, UNDER[ground]));
};

export interface PiecePictureOptions {
  /** Pixels; the height follows from the drawing unless it is given. */
  readonly width: number;
  readonly height?: number;
  /** One scale for several pictures, pixels a centimetre; undefined fits the piece into the picture. */
  readonly pxPerCm?: number;
  readonly ground: PictureGround;
  readonly paper?: string;
  readonly prefix?: string;
}

/** Room for the shade around a piece, centimetres for a piece a metre high. */
const MARGIN = 0.035;

/** A single piece, as an SVG document in centimetres. */
export const piecePictureSvg = (item: LayItem, options: PiecePictureOptions): string => {
  const { width, height, pxPerCm, ground, paper = PAPER, prefix = 'p' } = options;
  const { box } = item.picture;
  const margin = Math.max(1.2, Math.max(box.width, box.height) * MARGIN);
  const fitted = Math.min(
    width / (box.width + 2 * margin),
    height === undefined ? Number.POSITIVE_INFINITY : height / (box.height + 2 * margin),
  );
  const scale = pxPerCm ?? fitted;
  const centre: Point = [box.x + box.width / 2, box.y + box.height / 2];
  const size = { width: width / scale, height: height === undefined ? box.height + 2 * margin : height / scale };
  const view: Box = { x: centre[0] - size.width / 2, y: centre[1] - size.height / 2, ...size };
  return document(view, width, ground, paper, itemMarkup(item, `${prefix}-`, UNDER[ground], scale));
};
