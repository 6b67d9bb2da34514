import { convertLrgbToOklab, convertRgbToLrgb } from 'culori';

/** A small picture in sRGB, four bytes a pixel (red, green, blue, opacity), rows from the top. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

/** One number a pixel for each channel. */
export interface Planes {
  readonly one: Float64Array;
  readonly two: Float64Array;
  readonly three: Float64Array;
}

const emptyPlanes = (count: number): Planes => ({
  one: new Float64Array(count),
  two: new Float64Array(count),
  three: new Float64Array(count),
});

/** sRGB bytes as linear light, 0 to 1. */
const LINEAR: readonly number[] = Array.from({ length: 256 }, (_, byte) => {
  const { r } = convertRgbToLrgb({ r: byte / 255, g: 0, b: 0 });
  return r;
});

/** The linear light of a picture: red, green, blue. */
export const linearPlanes = ({ width, height, rgba }: Pixels): Planes => {
  const planes = emptyPlanes(width * height);
  for (let pixel = 0; pixel < width * height; pixel += 1) {
    planes.one[pixel] = LINEAR[rgba[pixel * 4] ?? 0] ?? 0;
    planes.two[pixel] = LINEAR[rgba[pixel * 4 + 1] ?? 0] ?? 0;
    planes.three[pixel] = LINEAR[rgba[pixel * 4 + 2] ?? 0] ?? 0;
  }
  return planes;
};

/** OKLab (lightness, a, b) of linear light. */
export const oklabPlanes = (light: Planes): Planes => {
  const planes = emptyPlanes(light.one.length);
  for (let pixel = 0; pixel < light.one.length; pixel += 1) {
    const lab = convertLrgbToOklab({
      r: light.one[pixel] ?? 0,
      g: light.two[pixel] ?? 0,
      b: light.three[pixel] ?? 0,
    });
    planes.one[pixel] = lab.l;
    planes.two[pixel] = lab.a;
    planes.three[pixel] = lab.b;
  }
  return planes;
};

/** Each pixel as the mean of itself and its neighbours: noise goes, edges widen by a pixel. */
export const smoothed = (planes: Planes, width: number, height: number): Planes => {
  const smooth = (plane: Float64Array): Float64Array => {
    const out = new Float64Array(plane.length);
    for (let y = 0; y < height; y += 1) {
      for (let x = 0; x < width; x += 1) {
        let sum = 0;
        let count = 0;
        for (let row = Math.max(0, y - 1); row <= Math.min(height - 1, y + 1); row += 1) {
          for (let column = Math.max(0, x - 1); column <= Math.min(width - 1, x + 1); column += 1) {
            sum += plane[row * width + column] ?? 0;
            count += 1;
          }
        }
        out[y * width + x] = sum / count;
      }
    }
    return out;
  };
  return { one: smooth(planes.one), two: smooth(planes.two), three: smooth(planes.three) };
};

/** Distance of two pixels, which may lie in different pictures of one size, in the space of the planes. */
export const pixelDistance = (a: Planes, at: number, b: Planes, bAt: number): number =>
  Math.hypot(
    (a.one[at] ?? 0) - (b.one[bAt] ?? 0),
    (a.two[at] ?? 0) - (b.two[bAt] ?? 0),
    (a.three[at] ?? 0) - (b.three[bAt] ?? 0),
  );

/** Indices of the up to four neighbours of a pixel. */
export const neighboursOf = (pixel: number, width: number, height: number): number[] => {
  const x = pixel % width;
  const found: number[] = [];
  if (x > 0) found.push(pixel - 1);
  if (x < width - 1) found.push(pixel + 1);
  if (pixel >= width) found.push(pixel - width);
  if (pixel < width * (height - 1)) found.push(pixel + width);
  return found;
};
