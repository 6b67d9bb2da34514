import { PAPER } from '../card/palette.ts';
import type { Box } from '../drawing.ts';
import { type FlatLay, type LayItem, layFlat, layMarkup, type Placed } from '../flat-lay/index.ts';

/** `paper`: on the card's paper. `clear`: no ground, shade below, for light pages. `night`: no ground, a pool of light, for dark pages. */
export type PictureGround = 'paper' | 'clear' | 'night';

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** A picture ready to paint: what lies where, and how large the paper is. Pixels. */
export interface LaidPicture extends PictureSize {
  readonly lay: FlatLay;
  /** Pixels around a piece shown alone. */
  readonly room?: number;
}

/** A look laid flat without anything around it. */
export const lookPicture = (items: readonly LayItem[], { width, height }: PictureSize): LaidPicture => {
  const margin = Math.round(Math.min(width, height) * 0.025);
  const frame = { x: margin, y: margin, width: width - 2 * margin, height: height - 2 * margin };
  return { lay: layFlat(items, frame), width, height };
};

/** The same lay with every piece drawn anew, for small size. */
export const redrawn = (picture: LaidPicture, items: readonly LayItem[]): LaidPicture => {
  const byId = new Map(items.map((item) => [`${item.id} ${item.slot}`, item]));
  const placed = picture.lay.placed.map((each): Placed => {
    const item = byId.get(`${each.item.id} ${each.item.slot}`);
    return item === undefined ? each : { ...each, item };
  });
  return { ...picture, lay: { ...picture.lay, placed } };
};

export interface PiecePictureOptions {
  /** Pixels; the height follows from the drawing unless it is given. */
  readonly width: number;
  readonly height?: number;
  /** One scale for several pictures, pixels a centimetre; undefined fits the piece into the picture. */
  readonly pxPerCm?: number;
}

/** Room for the shade around a piece, centimetres for a piece a metre high. */
const MARGIN = 0.035;

/** Centimetres of paper around a piece shown alone. */
export const pieceMargin = ({ width, height }: Pick<Box, 'width' | 'height'>): number =>
  Math.max(1.2, Math.max(width, height) * MARGIN);

/** A single piece, straight, in the middle of its picture. */
export const piecePicture = (item: LayItem, { width, height, pxPerCm }: PiecePictureOptions): LaidPicture => {
  const { box } = item.picture;
  const margin = pieceMargin(box);
  const fitted = Math.min(
    width / (box.width + 2 * margin),
    height === undefined ? Number.POSITIVE_INFINITY : height / (box.height + 2 * margin),
  );
  const scale = pxPerCm ?? fitted;
  const size = { width, height: height ?? Math.round((box.height + 2 * margin) * scale) };
  const extent = {
    x: Math.round((size.width - box.width * scale) / 2),
    y: Math.round((size.height - box.height * scale) / 2),
    width: box.width * scale,
    height: box.height * scale,
  };
  const placed: Placed = {
    item,
    transform: [scale, 0, 0, scale, extent.x - box.x * scale, extent.y - box.y * scale],
    turn: 0,
    extent,
    visible: 1,
  };
  return { lay: { scale, frame: { x: 0, y: 0, ...size }, placed: [placed] }, ...size, room: margin * scale };
};

/** A laid picture as an SVG document. Ids start with `prefix`. */
export const pictureSvg = (
  { lay, width, height }: LaidPicture,
  ground: Exclude<PictureGround, 'night'>,
  { paper = PAPER, prefix = 'l' }: { readonly paper?: string; readonly prefix?: string } = {},
): string => {
  const sheet = ground === 'paper' ? `<rect width="${width}" height="${height}" fill="${paper}"/>` : '';
  const inner = layMarkup(lay, `${prefix}-`);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}">${sheet}${inner}</svg>`;
};
