import { Resvg } from '@resvg/resvg-js';
import type { Drawing } from '../../../lib/draw/drawing.ts';
import { drawingMarkup } from '../../../lib/draw/svg.ts';

export interface Pixels {
  readonly width: number;
  readonly height: number;
  /** RGBA, premultiplied; what is not covered is transparent. */
  readonly data: Uint8Array;
}

/** Rasterises a drawing into a square of `size` pixels, its longer side filling it, or at `scale` pixels a centimetre. */
export const rasterOf = (drawing: Drawing, size: number, scale?: number): Pixels => {
  const { x, y, width, height } = drawing.box;
  const k = scale ?? size / Math.max(width, height);
  const [w, h] = scale === undefined ? [size, size] : [Math.ceil(width * k), Math.ceil(height * k)];
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${w}" height="${h}"><g transform="translate(${(w - width * k) / 2} ${(h - height * k) / 2}) scale(${k}) translate(${-x} ${-y})">${drawingMarkup(drawing, 'p')}</g></svg>`;
  const image = new Resvg(svg, { font: { loadSystemFonts: false } }).render();
  return { width: image.width, height: image.height, data: image.pixels };
};

/** Rows and columns that are covered: the extent of what was painted, in pixels. */
export const extentOf = ({ width, data }: Pixels): { readonly width: number; readonly height: number } => {
  let [left, right, top, bottom] = [1e9, -1, 1e9, -1];
  for (let i = 3; i < data.length; i += 4) {
    if ((data[i] ?? 0) < 128) continue;
    const at = (i - 3) / 4;
    left = Math.min(left, at % width);
    right = Math.max(right, at % width);
    top = Math.min(top, Math.floor(at / width));
    bottom = Math.max(bottom, Math.floor(at / width));
  }
  return { width: right - left + 1, height: bottom - top + 1 };
};

/** Median colour of the opaque pixels, `#rrggbb`, channel by channel. */
export const medianColour = ({ data }: Pixels): string => {
  const channels: number[][] = [[], [], []];
  for (let i = 0; i < data.length; i += 4)
    if ((data[i + 3] ?? 0) > 250) for (const [k, channel] of channels.entries()) channel.push(data[i + k] ?? 0);
  return `#${channels
    .map((channel) => (channel.sort((a, b) => a - b)[channel.length >> 1] ?? 0).toString(16).padStart(2, '0'))
    .join('')}`;
};
