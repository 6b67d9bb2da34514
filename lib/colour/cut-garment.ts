import { cutGround, frameOf } from './ground.ts';
import { linearPlanes, type Pixels } from './pixels.ts';

/** Where a garment lies in a picture. */
export interface GarmentCut {
  /** 1 on the garment, 0 on the ground, a byte a pixel. */
  readonly mask: Uint8Array;
  /** The smallest box round it, pixels. */
  readonly box: { readonly left: number; readonly top: number; readonly width: number; readonly height: number };
}

/** A garment that runs out of the picture on one side takes no more of the frame than this. Own choice. */
const FRAME_AT_MOST = 0.25;
/** Specks on a plain cloth take less of a side of the frame than this. Own choice. */
const SIDE_AT_MOST = 0.02;

/**
 * True when the frame does not show one plain ground: much of it looks like garment, or some of it on every side, as on
 * tiles, a carpet or the edge of a bed.
 */
const isRestless = (garment: Uint8Array, width: number, height: number): boolean => {
  const frame = frameOf(width, height);
  const share = (pixels: readonly number[]): number =>
    pixels.filter((pixel) => garment[pixel] === 1).length / Math.max(1, pixels.length);
  const [middleX, middleY] = [width / 2, height / 2];
  // a side is what of the frame is nearest to it
  const sideOf = (pixel: number): number => {
    const [x, y] = [(pixel % width) - middleX, Math.floor(pixel / width) - middleY];
    const across = Math.abs(x) / width > Math.abs(y) / height;
    return across ? (x < 0 ? 0 : 1) : y < 0 ? 2 : 3;
  };
  const sides = [0, 1, 2, 3].map((side) => frame.filter((pixel) => sideOf(pixel) === side));
  return share(frame) > FRAME_AT_MOST || sides.every((side) => share(side) > SIDE_AT_MOST);
};

/** The garment told from its plain ground; undefined when the two cannot be told apart or the ground is not plain. */
export const cutGarment = (pixels: Pixels): GarmentCut | undefined => {
  const { garment } = cutGround(pixels, linearPlanes(pixels), 'to the edge');
  const { width, height } = pixels;
  if (isRestless(garment, width, height)) return undefined;
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
  if (right < left) return undefined;
  return { mask: garment, box: { left, top, width: right - left + 1, height: bottom - top + 1 } };
};
