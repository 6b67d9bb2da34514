import { cutGround } from './ground.ts';
import { linearPlanes, type Pixels } from './pixels.ts';

/** Where a garment lies in a picture. */
export interface GarmentCut {
  /** 1 on the garment, 0 on the ground, a byte a pixel. */
  readonly mask: Uint8Array;
  /** The smallest box round it, pixels. */
  readonly box: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
}

/** The garment told from its plain ground; undefined when the two cannot be told apart. */
export const cutGarment = (pixels: Pixels): GarmentCut | undefined => {
  const { garment } = cutGround(pixels, linearPlanes(pixels), 'to the edge');
  const { width, height } = pixels;
  let [left, top, right, bottom] = [width, height, -1, -1];
  garment.forEach((inside, pixel) => {
    if (inside === 0) return;
    const x = pixel % width;
    const y = Math.floor(pixel / width);
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  });
  const everything = garment.every((inside) => inside === 1);
  if (right < left || everything) return undefined;
  return { mask: garment, box: { left, top, width: right - left + 1, height: bottom - top + 1 } };
};
