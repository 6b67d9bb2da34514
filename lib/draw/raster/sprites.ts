import { bareMarkup, type LayItem, type Placed } from '../flat-lay/index.ts';
import { shortNumber } from '../svg-path.ts';
import { type Halo, shadeOf } from './halo.ts';
import type { Layer } from './layers.ts';

/** A piece as pixels, turned and scaled as it lies; its extent begins `pad` pixels from the corner. */
export interface Sprite extends Layer {
  readonly pad: number;
  shade(): Halo;
}

export interface Sprites {
  /** `zoom` is the pixels of the picture a pixel of the lay takes, `scale` the lay's pixels a centimetre. */
  spriteOf(placed: Placed, scale: number, zoom: number): Promise<Sprite>;
}

/** Sprites kept at a time, bytes; the least recently used go first. */
const KEPT_BYTES = 200_000_000;
/** Paper around a piece for what is drawn a little beyond its outline, centimetres. */
const PAD_CM = 1.2;
/** On a larger scale, pixels a centimetre, a shade stays as narrow as on this one. */
const USUAL_SCALE = 6;

const spriteSvg = ({ item, transform, extent }: Placed, zoom: number, pad: number): string => {
  const [width, height] = [extent.width, extent.height].map((side) => Math.ceil(side * zoom) + 2 * pad);
  const [a, b, c, d] = transform.slice(0, 4).map((value) => Math.round(value * zoom * 1e4) / 1e4);
  const x = (transform[4] - extent.x) * zoom + pad;
  const y = (transform[5] - extent.y) * zoom + pad;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}"><g transform="matrix(${a} ${b} ${c} ${d} ${shortNumber(x)} ${shortNumber(y)})">${bareMarkup(item, 's-')}</g></svg>`;
};

const once = <T>(make: () => T): (() => T) => {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
};

/** Paints each piece once for each turn and scale at which it lies, for all the pictures that show it. */
export const createSprites = (rasterise: (svg: string) => Promise<Layer>): Sprites => {
  const kept = new Map<string, { readonly sprite: Promise<Sprite>; readonly bytes: number }>();
  const names = new WeakMap<LayItem['picture'], number>();
  let named = 0;
  let bytes = 0;
  const nameOf = (picture: LayItem['picture']): number => {
    const name = names.get(picture) ?? named++;
    names.set(picture, name);
    return name;
  };
  const paint = async (placed: Placed, scale: number, zoom: number, pad: number): Promise<Sprite> => {
    const layer = await rasterise(spriteSvg(placed, zoom, pad));
    return {
      ...layer,
      pad,
      shade: once(() => shadeOf(layer, Math.min(scale, USUAL_SCALE) * zoom)),
    };
  };
  return {
    spriteOf: (placed, scale, zoom) => {
      const turn = placed.transform.slice(0, 4).map((value) => Math.round(value * zoom * 1e4));
      const key = `${nameOf(placed.item.picture)} ${turn.join(' ')} ${zoom}`;
      const known = kept.get(key);
      if (known !== undefined) {
        kept.delete(key);
        kept.set(key, known);
        return known.sprite;
      }
      const pad = Math.ceil(PAD_CM * scale * zoom) + 1;
      const size = 6 * (placed.extent.width * zoom + 2 * pad) * (placed.extent.height * zoom + 2 * pad);
      const sprite = paint(placed, scale, zoom, pad);
      kept.set(key, { sprite, bytes: size });
      bytes += size;
      for (const [oldest, { bytes: freed }] of kept) {
        if (bytes <= KEPT_BYTES || oldest === key) break;
        kept.delete(oldest);
        bytes -= freed;
      }
      return sprite;
    },
  };
};
