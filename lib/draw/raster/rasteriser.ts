import { renderAsync } from '@resvg/resvg-js';
import sharp from 'sharp';
import { layGrain, paperGrain, softLightTable } from './grain.ts';
import { limitTo } from './limit.ts';

export interface RasterOptions {
  /** Pixels; undefined takes the SVG's own. */
  readonly width?: number;
  /** Paper grain over everything that is not transparent. Default true. */
  readonly grain?: boolean;
}

/** Pixels of a picture, RGBA, not premultiplied. */
export interface Pixels {
  readonly data: Uint8Array;
  readonly width: number;
  readonly height: number;
}

export interface Rasteriser {
  pixels(svg: string, options?: RasterOptions): Promise<Pixels>;
  /** PNG to download: a palette of at most 256 colours, under 700 kB for a card. */
  png(pixels: Pixels): Promise<Buffer>;
  /** WebP for pages; keeps transparency. */
  webp(pixels: Pixels): Promise<Buffer>;
}

/** Largest PNG to download, bytes, with some room below 700 kB. */
const PNG_BYTES = 690_000;
/** No dither: spread errors pile up into stains on pale paper, and the grain does its work. Palette qualities, tried in turn until the file is small enough: below 94 a pale cloth may lose its own colour in places. */
const PNG_QUALITIES = [100, 94, 88, 76] as const;

/** Undoes premultiplied alpha in place; says whether every pixel is opaque. */
const straighten = (data: Uint8Array): boolean => {
  let opaque = true;
  for (let at = 3; at < data.length; at += 4) {
    const alpha = data[at] ?? 255;
    if (alpha === 255) continue;
    opaque = false;
    if (alpha === 0) continue;
    for (let channel = at - 3; channel < at; channel++) {
      data[channel] = Math.min(255, Math.round(((data[channel] ?? 0) * 255) / alpha));
    }
  }
  return opaque;
};

/**
 * Turns SVG into pixels and files, at most three rasterised at a time, all processor cores used. Holds the paper's grain
 * for each size it has met. The same SVG gives the same bytes. No system font is ever used: text must be paths.
 */
export const createRasteriser = (inFlight = 3): Rasteriser => {
  const limited = limitTo(inFlight);
  const grains = new Map<string, Uint8Array>();
  let table: Uint8Array | undefined;

  const grainFor = (width: number, height: number): Uint8Array => {
    const key = `${width} ${height}`;
    const known = grains.get(key) ?? paperGrain(width, height);
    grains.set(key, known);
    return known;
  };
  const raw = ({ width, height }: Pixels) => ({ raw: { width, height, channels: 4 as const } });

  return {
    pixels: (svg, { width, grain = true } = {}) =>
      limited(async () => {
        const image = await renderAsync(svg, {
          font: { loadSystemFonts: false },
          ...(width === undefined ? {} : { fitTo: { mode: 'width' as const, value: width } }),
        });
        const data = image.pixels;
        straighten(data);
        if (grain) {
          table ??= softLightTable();
          layGrain(data, grainFor(image.width, image.height), table);
        }
        return { data, width: image.width, height: image.height };
      }),
    png: async (pixels) => {
      let file: Buffer | undefined;
      for (const quality of PNG_QUALITIES) {
        file = await sharp(pixels.data, raw(pixels))
          .png({ palette: true, quality, dither: 0, effort: 1, compressionLevel: 5 })
          .toBuffer();
        if (file.length <= PNG_BYTES) break;
      }
      return file ?? Buffer.alloc(0);
    },
    webp: (pixels) => sharp(pixels.data, raw(pixels)).webp({ quality: 82, alphaQuality: 90, effort: 2 }).toBuffer(),
  };
};
