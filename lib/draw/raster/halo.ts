import { type Layer, pixelWords, type Veil } from './layers.ts';

/** Shares from 0 to 1, two pixels to a cell: what is soft needs no more. */
interface Field {
  readonly values: Float32Array;
  readonly width: number;
  readonly height: number;
}

const STEP = 2;

/** What a layer covers, with an even `margin` of pixels around it. */
const coverage = ({ data, width, height }: Layer, margin: number): Field => {
  const across = ((width + 1) >> 1) + margin;
  const down = ((height + 1) >> 1) + margin;
  const values = new Float32Array(across * down);
  const share = 1 / (255 * STEP * STEP);
  for (let y = 0; y < height; y++) {
    const row = ((y + margin) >> 1) * across;
    for (let x = 0, at = y * width * 4 + 3; x < width; x++, at += 4) {
      const alpha = data[at] ?? 0;
      if (alpha === 0) continue;
      const cell = row + ((x + margin) >> 1);
      values[cell] = (values[cell] ?? 0) + alpha * share;
    }
  }
  return { values, width: across, height: down };
};

/** Mean over `2 × radius + 1` cells along the rows. */
const meanAlongRows = (from: Float32Array, to: Float32Array, { width, height }: Field, radius: number): void => {
  const share = 1 / (2 * radius + 1);
  for (let row = 0; row < height; row++) {
    const start = row * width;
    let sum = 0;
    for (let ahead = 0; ahead < Math.min(radius, width); ahead++) sum += from[start + ahead] ?? 0;
    for (let at = 0; at < width; at++) {
      if (at + radius < width) sum += from[start + at + radius] ?? 0;
      if (at > radius) sum -= from[start + at - radius - 1] ?? 0;
      to[start + at] = sum * share;
    }
  }
};

/** The same along the columns, a row at a time. */
const meanAlongColumns = (from: Float32Array, to: Float32Array, { width, height }: Field, radius: number): void => {
  const share = 1 / (2 * radius + 1);
  const sums = new Float32Array(width);
  const nothing = new Float32Array(width);
  const rowOf = (values: Float32Array, row: number): Float32Array =>
    row < 0 || row >= height ? nothing : values.subarray(row * width, (row + 1) * width);
  // rows before the first only fill the sums
  for (let row = -radius; row < height; row++) {
    const [enters, leaves] = [rowOf(from, row + radius), rowOf(from, row - radius - 1)];
    for (let at = 0; at < width; at++) sums[at] = (sums[at] ?? 0) + (enters[at] ?? 0) - (leaves[at] ?? 0);
    if (row < 0) continue;
    const mean = rowOf(to, row);
    for (let at = 0; at < width; at++) mean[at] = (sums[at] ?? 0) * share;
  }
};

/** Softened by repeated means, near to a Gaussian; the given field stays as it is. */
const softened = (field: Field, radius: number, times: number): Field => {
  const values = field.values.slice();
  const other = new Float32Array(values.length);
  for (let time = 0; time < times; time++) {
    meanAlongRows(values, other, field, radius);
    meanAlongColumns(other, values, field, radius);
  }
  return { ...field, values };
};

/** Adds a field, moved by whole cells and `strength` strong; what one lets through, the other may darken. */
const addMoved = (sum: Field, { values, width, height }: Field, dx: number, dy: number, strength: number): void => {
  for (let row = Math.max(0, dy); row < Math.min(height, height + dy); row++) {
    for (let column = Math.max(0, dx); column < Math.min(width, width + dx); column++) {
      const share = (values[(row - dy) * width + column - dx] ?? 0) * strength;
      const at = row * width + column;
      const before = sum.values[at] ?? 0;
      sum.values[at] = before + share * (1 - before);
    }
  }
};

/** A halo starts this many pixels above and left of the layer it belongs to. */
export interface Halo extends Veil {
  readonly margin: number;
}

/** A cell this much covered has four opaque pixels. */
const COVERED = 0.9995;
/** Shares below this are not seen. */
const UNSEEN = 0.002;

/** The field at full size, each pixel from the four nearest cells; nothing where the layer hides it. */
const haloOf = (layer: Layer, covered: Field, { values, width: across, height: down }: Field, margin: number): Halo => {
  const width = layer.width + 2 * margin;
  const height = layer.height + 2 * margin;
  const alpha = new Uint8Array(width * height);
  const pixels = pixelWords(layer.data);
  for (let y = 0; y < height; y++) {
    const row = y >> 1;
    const near = row * across;
    const far = Math.min(down - 1, Math.max(0, row + (y % 2 === 0 ? -1 : 1))) * across;
    const onLayer = y >= margin && y < margin + layer.height;
    const first = (y - margin) * layer.width - margin;
    for (let x = 0; x < width; x++) {
      const column = x >> 1;
      if ((covered.values[near + column] ?? 0) > COVERED) continue;
      const beside = Math.min(across - 1, Math.max(0, column + (x % 2 === 0 ? -1 : 1)));
      const share =
        0.5625 * (values[near + column] ?? 0) +
        0.1875 * ((values[near + beside] ?? 0) + (values[far + column] ?? 0)) +
        0.0625 * (values[far + beside] ?? 0);
      if (share < UNSEEN) continue;
      const hidden = onLayer && x >= margin && x < margin + layer.width && (pixels[first + x] ?? 0) >>> 24 === 255;
      if (!hidden) alpha[y * width + x] = Math.round(share * 255);
    }
  }
  return { alpha, width, height, margin };
};

/** Contact: near and dark. Air: wide and faint. In centimetres, the light from the upper left. */
const CONTACT = { away: 0.24, spread: 0.22, strength: 0.3 };
const AIR = { away: 0.66, spread: 0.72, strength: 0.22 };
const LEAN = 0.62;

/** Soft shade on what lies below a layer; `unit` is pixels a centimetre. */
export const shadeOf = (layer: Layer, unit: number): Halo => {
  const margin = 2 * Math.ceil(unit * 1.4 + 1);
  const field = coverage(layer, margin);
  const sum: Field = { ...field, values: new Float32Array(field.values.length) };
  for (const { away, spread, strength } of [AIR, CONTACT]) {
    const soft = softened(field, Math.max(1, Math.round((unit * spread) / STEP)), 2);
    addMoved(
      sum,
      soft,
      Math.round((away * LEAN * unit) / STEP),
      Math.max(1, Math.round((away * unit) / STEP)),
      strength,
    );
  }
  return haloOf(layer, field, sum, margin);
};
