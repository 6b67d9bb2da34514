import { Resvg } from '@resvg/resvg-js';
import { differenceCiede2000 } from 'culori';
import type { Detail, Drawing, DrawKind, DrawnPiece, Mark, MarkGroup } from '../../../lib/draw/drawing.ts';
import { drawingSvg } from '../../../lib/draw/svg.ts';
import { KINDS, type KindId } from '../../../lib/vocabulary/index.ts';

/** A plain piece of a kind with the kind's own cut, length and fabric. */
export const pieceOf = (
  kind: KindId,
  over: Partial<DrawnPiece> & { readonly hex?: readonly string[] } = {},
): DrawnPiece => {
  const { hex = ['#6b7257'], ...rest } = over;
  const { cut, length, fabric, heelCm } = KINDS[kind];
  return {
    id: kind.replaceAll(' ', '-'),
    wardrobe: 'ada',
    name: kind,
    kind,
    colours: hex.map((value) => ({ name: value, hex: value, oklch: { l: 0.5, c: 0.05, h: 0 }, share: 1 / hex.length })),
    pattern: { type: 'plain', scale: 'medium' },
    cut,
    length,
    fabric,
    heelCm,
    ...rest,
  };
};

export interface Picture {
  readonly pixels: Buffer;
  readonly width: number;
  readonly height: number;
}

/** The drawing on nothing, `scale` pixels to the centimetre. */
export const picture = (drawing: Drawing, scale: number): Picture => {
  const svg = drawingSvg(drawing, { prefix: 'p', width: Math.round(drawing.box.width * scale) });
  const image = new Resvg(svg, { font: { loadSystemFonts: false } }).render();
  return { pixels: image.pixels, width: image.width, height: image.height };
};

/** Rows and columns that hold opaque paint, in centimetres. */
export const paintedSize = (drawing: Drawing, scale = 6): { readonly width: number; readonly height: number } => {
  const { pixels, width, height } = picture(drawing, scale);
  let [left, top, right, bottom] = [width, height, -1, -1];
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      if ((pixels[(y * width + x) * 4 + 3] ?? 0) > 200) {
        left = Math.min(left, x);
        right = Math.max(right, x);
        top = Math.min(top, y);
        bottom = Math.max(bottom, y);
      }
  return { width: (right - left + 1) / scale, height: (bottom - top + 1) / scale };
};

/** Median of each channel over the opaque pixels, as `#rrggbb`. */
export const medianColour = (drawing: Drawing): string => {
  const { pixels } = picture(drawing, 3.5);
  const channels: number[][] = [[], [], []];
  for (let i = 0; i < pixels.length; i += 4)
    if (pixels[i + 3] === 255) for (const [k, channel] of channels.entries()) channel.push(pixels[i + k] ?? 0);
  const middle = channels.map((channel) => channel.sort((a, b) => a - b)[channel.length >> 1] ?? 0);
  return `#${middle.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
};

export const difference = differenceCiede2000();

/** Share of the cells of a 40 by 40 grid in which two drawings, each fitted to it, clearly differ. */
export const unlikeness = (one: Drawing, other: Drawing): number => {
  const [a, b] = [one, other].map((drawing) => grid(drawing, 40));
  if (!a || !b) return 0;
  return a.filter((value, i) => Math.abs(value - (b[i] ?? 0)) > 14).length / a.length;
};

/** Lightness over white of a drawing fitted into a square of `size` pixels, at its own proportions. */
const grid = (drawing: Drawing, size: number): number[] => {
  const scale = size / Math.max(drawing.box.width, drawing.box.height);
  const { pixels, width, height } = picture(drawing, scale);
  const cells = new Array<number>(size * size).fill(255);
  const [dx, dy] = [Math.floor((size - width) / 2), Math.floor((size - height) / 2)];
  for (let y = 0; y < Math.min(size, height); y++)
    for (let x = 0; x < Math.min(size, width); x++) {
      const i = (y * width + x) * 4;
      const alpha = (pixels[i + 3] ?? 0) / 255;
      // resvg gives premultiplied pixels
      const grey = ((pixels[i] ?? 0) + (pixels[i + 1] ?? 0) + (pixels[i + 2] ?? 0)) / 3;
      cells[(y + dy) * size + x + dx] = grey + 255 * (1 - alpha);
    }
  return cells;
};

/** Every path of a drawing. */
export const paths = (marks: readonly (Mark | MarkGroup)[]): string[] =>
  marks.flatMap((mark) => ('marks' in mark ? [...(mark.clip ? [mark.clip] : []), ...paths(mark.marks)] : [mark.path]));

/** What is wrong with a drawing as data; empty when nothing is. */
export const faults = (drawing: Drawing): string[] => {
  const found: string[] = [];
  for (const path of [...paths(drawing.marks), ...drawing.tiles.flatMap((tile) => paths(tile.marks))])
    if (!/^M[-\d. MLCQZe]+$/.test(path)) found.push(`path ${path.slice(0, 60)}`);
  const { x, y, width, height } = drawing.box;
  if (![x, y, width, height].every(Number.isFinite) || width <= 0 || height <= 0) found.push('box');
  for (const ring of drawing.outline)
    for (const [px, py] of ring)
      if (!(px >= x && px <= x + width && py >= y && py <= y + height)) found.push(`outline ${px} ${py}`);
  for (const [name, [px, py]] of Object.entries(drawing.anchors))
    if (!Number.isFinite(px) || !Number.isFinite(py)) found.push(`anchor ${name}`);
  return found;
};

export const kilobytes = (drawing: Drawing): number => drawingSvg(drawing, { prefix: 'a' }).length / 1024;

export const kindsOf = (group: string): KindId[] =>
  (Object.keys(KINDS) as KindId[]).filter((kind) => KINDS[kind].group === group);

export type Artists = Readonly<Partial<Record<KindId, DrawKind>>>;
export const drawn = (artists: Artists, piece: DrawnPiece, detail: Detail = 'full'): Drawing => {
  const artist = artists[piece.kind];
  if (artist === undefined) throw new Error(`nobody draws ${piece.kind}`);
  return artist(piece, detail);
};
