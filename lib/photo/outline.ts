import { contours } from 'd3-contour';
import sharp from 'sharp';

/** Closed rings, in shares of the picture's width and height; holes run the other way round. */
export type Outline = readonly (readonly (readonly [x: number, y: number])[])[];

/** Longer side of the picture the outline is traced on: its steps stay well under a centimetre of cloth. */
const TRACED = 240;
/** Specks smaller than this share of the picture are not cloth. */
const SPECK = 0.001;

const areaOf = (ring: readonly (readonly number[])[]): number =>
  ring.reduce((sum, [x = 0, y = 0], index) => {
    const [nextX = 0, nextY = 0] = ring[(index + 1) % ring.length] ?? [];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);

/** The outline of what is more than half opaque in a PNG with transparency. */
export const outlineOf = async (png: Uint8Array): Promise<Outline> => {
  const { data, info } = await sharp(png)
    .extractChannel('alpha')
    .resize({ width: TRACED, height: TRACED, fit: 'inside', withoutEnlargement: true })
    .raw()
    .toBuffer({ resolveWithObject: true });
  const { width, height, channels } = info;
  const values = Array.from({ length: width * height }, (_, pixel) => data[pixel * channels] ?? 0);
  const { coordinates } = contours().size([width, height]).contour(values, 127.5);
  return coordinates
    .flat()
    .filter((ring) => Math.abs(areaOf(ring)) > SPECK * width * height)
    .map((ring) => ring.slice(0, -1).map(([x = 0, y = 0]) => [x / width, y / height] as const));
};
