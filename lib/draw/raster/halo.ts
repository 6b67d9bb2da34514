import { type Layer, pixelWords, type Veil } from './layers.ts';

/** Pixels along the side of a cell: what is soft needs no more. */
const STEP = 2;
/** What a cell holds that is covered wholly: the alphas of its pixels. */
const COVERED = 255 * STEP * STEP;
/** Times a field is summed up along rows and columns: twice is near to a Gaussian. */
const TIMES = 2;

/** Sums of alphas, a cell at a time; around them so many empty cells that no sum reaches over the edge. */
interface Field {
  readonly values: Int32Array;
  readonly width: number;
  readonly height: number;
}

/** A halo starts this many pixels above and left of the layer it belongs to. */
export interface Halo extends Veil {
  readonly margin: number;
}

/** What a layer covers, with `margin` empty cells around it. */
const coverage = ({ data, width, height }: Layer, margin: number): Field => {
  const across = Math.ceil(width / STEP) + 2 * margin;
  const down = Math.ceil(height / STEP) + 2 * margin;
  const values = new Int32Array(across * down);
  const pixels = pixelWords(data);
  for (let y = 0, at = 0; y < height; y++) {
    const row = ((y >> 1) + margin) * across + margin;
    for (let x = 0; x < width; x++, at++) {
      const alpha = (pixels[at] ?? 0) >>> 24;
      if (alpha > 0) values[row + (x >> 1)] = (values[row + (x >> 1)] ?? 0) + alpha;
    }
  }
  return { values, width: across, height: down };
};

/** Each cell with its `radius` neighbours on either side; rows may run into each other, since they begin and end empty. */
const sumAlongRows = (from: Int32Array, to: Int32Array, radius: number): void => {
  let sum = 0;
  for (let at = radius + 1; at < from.length - radius; at++) {
    sum += (from[at + radius] ?? 0) - (from[at - radius - 1] ?? 0);
    to[at] = sum;
  }
};

const sumAlongColumns = (from: Int32Array, to: Int32Array, width: number, radius: number): void => {
  const [ahead, behind] = [radius * width, (radius + 1) * width];
  for (let at = behind; at < from.length - ahead; at++) {
    to[at] = (to[at - width] ?? 0) + (from[at + ahead] ?? 0) - (from[at - behind] ?? 0);
  }
};

/** A field softened by repeated sums over squares of `2 × radius + 1` cells; the given one stays as it is. */
const softened = ({ values, width }: Field, radius: number): { readonly sums: Int32Array; readonly most: number } => {
  const [rows, sums] = [new Int32Array(values.length), new Int32Array(values.length)];
  for (let time = 0; time < TIMES; time++) {
    sumAlongRows(time === 0 ? values : sums, rows, radius);
    sumAlongColumns(rows, sums, width, radius);
  }
  return { sums, most: COVERED * (2 * radius + 1) ** (2 * TIMES) };
};

/** Contact: near and dark. Air: wide and faint. In centimetres, the light from the upper left. */
const CONTACT = { away: 0.24, spread: 0.22, strength: 0.3 };
const AIR = { away: 0.66, spread: 0.72, strength: 0.22 };
const LEAN = 0.62;

/** How dark each cell is, 0 to 1: two soft fields, moved; what one lets through, the other may darken. */
const darkness = (field: Field, unit: number): Float32Array => {
  const dark = new Float32Array(field.values.length);
  for (const { away, spread, strength } of [AIR, CONTACT]) {
    const { sums, most } = softened(field, Math.max(1, Math.round((unit * spread) / STEP)));
    const across = Math.round((away * LEAN * unit) / STEP);
    const moved = Math.max(1, Math.round((away * unit) / STEP)) * field.width + across;
    const share = strength / most;
    for (let at = moved; at < dark.length; at++) {
      const before = dark[at] ?? 0;
      dark[at] = before + (sums[at - moved] ?? 0) * share * (1 - before);
    }
  }
  return dark;
};

/** Shares of the four nearest cells in a pixel that lies a quarter of a cell from the middle of the nearest one. */
const [NEAREST, BESIDE, ACROSS] = [0.5625, 0.1875, 0.0625];
/** Shares below this are not seen. */
const UNSEEN = 0.002;

/** The darkness at full size, each pixel from the four nearest cells; nothing where the layer hides it. */
const haloOf = (layer: Layer, { values, width: across, height: down }: Field, dark: Float32Array): Halo => {
  const margin = (across - Math.ceil(layer.width / STEP)) >> 1;
  const [width, height] = [across * STEP, down * STEP];
  const alpha = new Uint8Array(width * height);
  const pixels = pixelWords(layer.data);
  const hides = (x: number, y: number): boolean =>
    x >= 0 && x < layer.width && y >= 0 && y < layer.height && (pixels[y * layer.width + x] ?? 0) >>> 24 === 255;
  for (let row = 1; row < down - 1; row++) {
    for (let column = 1, at = row * across + 1; column < across - 1; column++, at++) {
      const own = dark[at] ?? 0;
      if (own < UNSEEN || values[at] === COVERED) continue;
      for (let corner = 0; corner < STEP * STEP; corner++) {
        const [right, low] = [corner & 1, corner >> 1];
        const [x, y] = [STEP * column + right, STEP * row + low];
        if (hides(x - STEP * margin, y - STEP * margin)) continue;
        const aside = at + (right === 1 ? 1 : -1);
        const far = low === 1 ? across : -across;
        const share =
          NEAREST * own + BESIDE * ((dark[aside] ?? 0) + (dark[at + far] ?? 0)) + ACROSS * (dark[aside + far] ?? 0);
        alpha[y * width + x] = Math.round(share * 255);
      }
    }
  }
  return { alpha, width, height, margin: STEP * margin };
};

/** Soft shade on what lies below a layer; `unit` is pixels a centimetre. */
export const shadeOf = (layer: Layer, unit: number): Halo => {
  // reaches over the widest sums and the farthest move
  const field = coverage(layer, Math.ceil(unit * 1.4 + 3));
  return haloOf(layer, field, darkness(field, unit));
};
