import { type ResvgRenderOptions, renderAsync } from '@resvg/resvg-js';
import sharp from 'sharp';
import { type FlatLay, SHADE } from '../flat-lay/index.ts';
import { layGrain, paperGrain, softLightTable } from './grain.ts';
import { LAMP_RGB, lampLight, layBeneath, NIGHT_SHADE_RGB } from './lamp.ts';
import { aligned, emptyLayer, type Layer, paintOver, paintVeil } from './layers.ts';
import { limitTo } from './limit.ts';
import { createIndexer } from './palette.ts';
import type { LaidPicture, PictureGround } from './picture.ts';
import { pngOf } from './png.ts';
import { createSprites } from './sprites.ts';

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

export interface LaidOptions {
  readonly ground: PictureGround;
  /** An opaque SVG document that the pieces are laid on, of the picture's own size; undefined for clear paper. */
  readonly sheet?: string;
  /** Pixels of the result for one of the picture's. Default 1. */
  readonly zoom?: number;
}

export interface Rasteriser {
  pixels(svg: string, options?: RasterOptions): Promise<Pixels>;
  /** Begins to paint the pieces of a lay that will be asked for. */
  prepare(lay: FlatLay): void;
  /** A laid picture with grain. Each piece is painted once for each scale at which it lies, and shared by all pictures. */
  laid(picture: LaidPicture, options: LaidOptions): Promise<Pixels>;
  /** The same picture at another width. */
  narrower(pixels: Pixels, width: number): Promise<Pixels>;
  /** PNG to download, of an opaque picture: a palette of at most 256 colours, under 700 kB for a card. */
  png(pixels: Pixels): Promise<Buffer>;
  /** WebP for pages; keeps transparency. */
  webp(pixels: Pixels, options?: Partial<WebpOptions>): Promise<Buffer>;
}

/** Qualities from 1 to 100, effort from 0 to 6. */
export interface WebpOptions {
  readonly quality: number;
  readonly alphaQuality: number;
  readonly effort: number;
}

const WEBP: WebpOptions = { quality: 82, alphaQuality: 90, effort: 2 };

/** Holds every card and picture of a guide. */
const USUAL_SHEET = { width: 1200, height: 1350 };
const NO_FONTS = { font: { loadSystemFonts: false } } as const;

const bytesOf = (hex: string): [number, number, number] => [
  Number.parseInt(hex.slice(1, 3), 16),
  Number.parseInt(hex.slice(3, 5), 16),
  Number.parseInt(hex.slice(5, 7), 16),
];
const SHADE_RGB = bytesOf(SHADE);

/** Undoes premultiplied alpha in place. */
const straighten = (data: Uint8Array): void => {
  for (let at = 3; at < data.length; at += 4) {
    const alpha = data[at] ?? 255;
    if (alpha === 255 || alpha === 0) continue;
    for (let channel = at - 3; channel < at; channel++) {
      data[channel] = Math.min(255, Math.round(((data[channel] ?? 0) * 255) / alpha));
    }
  }
};

/**
 * Turns SVG into pixels and files, at most three rasterised at a time, all processor cores used. Holds a sheet
 * of the paper's grain. The same SVG gives the same bytes. No system font is ever used: text must be paths.
 */
export const createRasteriser = (inFlight = 3): Rasteriser => {
  const limited = limitTo(inFlight);
  let sheet: { readonly width: number; readonly height: number; readonly grain: Uint8Array } = {
    width: 0,
    height: 0,
    grain: new Uint8Array(),
  };
  let table: Uint8Array | undefined;
  const indexed = createIndexer();

  /** Large enough for every picture so far; its upper left part is the same whatever its size. */
  const grainSheet = (width: number, height: number): typeof sheet => {
    if (width > sheet.width || height > sheet.height) {
      const [across, down] = [Math.max(width, USUAL_SHEET.width), Math.max(height, USUAL_SHEET.height)];
      sheet = { width: across, height: down, grain: paperGrain(across, down) };
    }
    return sheet;
  };
  const withGrain = (layer: Layer): Pixels => {
    table ??= softLightTable();
    const { grain, width } = grainSheet(layer.width, layer.height);
    layGrain(layer, grain, width, table);
    return layer;
  };
  const rasterise = (svg: string, options?: Pick<ResvgRenderOptions, 'fitTo'>): Promise<Layer> =>
    limited(async () => {
      const image = await renderAsync(svg, { ...NO_FONTS, ...options });
      return { data: aligned(image.pixels), width: image.width, height: image.height };
    });
  const sprites = createSprites((svg) => rasterise(svg));
  const raw = ({ width, height }: Pixels) => ({ raw: { width, height, channels: 4 as const } });

  return {
    pixels: async (svg, { width, grain = true } = {}) => {
      const layer = await rasterise(svg, width === undefined ? {} : { fitTo: { mode: 'width', value: width } });
      straighten(layer.data);
      return grain ? withGrain(layer) : layer;
    },
    prepare: ({ placed, scale }) => {
      // what fails here fails again where it is asked for
      for (const each of placed) sprites.spriteOf(each, scale, 1).catch(() => undefined);
    },
    laid: async ({ lay, width, height, room }, { ground, sheet, zoom = 1 }) => {
      const night = ground === 'night';
      const [base, ...laid] = await Promise.all([
        sheet === undefined ? emptyLayer(Math.round(width * zoom), Math.round(height * zoom)) : rasterise(sheet),
        ...lay.placed.map(async (placed) => {
          const sprite = await sprites.spriteOf(placed, lay.scale, zoom);
          // softened here, while the others are still being painted
          const [x, y] = [placed.extent.x, placed.extent.y].map((from) => Math.round(from * zoom) - sprite.pad);
          return { layer: sprite, halo: sprite.shade(), x: x ?? 0, y: y ?? 0 };
        }),
      ]);
      for (const { layer, halo, x, y } of laid) {
        paintVeil(base, halo, night ? NIGHT_SHADE_RGB : SHADE_RGB, x - halo.margin, y - halo.margin);
        paintOver(base, layer, x, y);
      }
      // a sheet is opaque: nothing to straighten
      if (sheet === undefined) straighten(base.data);
      const grained = withGrain(base);
      // light has no grain: flat colour keeps the file small
      if (night) {
        const light = lampLight(base.width, base.height, laid, room === undefined ? undefined : room * zoom);
        layBeneath(grained, light, LAMP_RGB);
      }
      return grained;
    },
    narrower: async (pixels, width) => {
      const { data, info } = await sharp(pixels.data, raw(pixels))
        .resize({ width })
        .raw()
        .toBuffer({ resolveWithObject: true });
      return { data, width: info.width, height: info.height };
    },
    png: (pixels) => pngOf(indexed(pixels), pixels.width, pixels.height),
    webp: (pixels, options = {}) =>
      sharp(pixels.data, raw(pixels))
        .webp({ ...WEBP, ...options })
        .toBuffer(),
  };
};
