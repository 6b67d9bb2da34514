import { type Layer, pixelWords, type Veil } from './layers.ts';

/** A layer and where its upper left corner lies, pixels. */
export interface LaidLayer {
  readonly layer: Layer;
  readonly x: number;
  readonly y: number;
}

/** Warm lamplight on a dark table. */
export const LAMP_RGB = [196, 178, 152] as const;
/** Shade on that table: the light comes from one lamp, so it is deep. */
export const NIGHT_SHADE_RGB = [10, 8, 7] as const;

/** Pixels to a cell at most, and cells to the spread of the light at least: light is softer than that. */
const CELL = { most: 8, inSpread: 3 };
/** How far the light spreads beyond the clothes, a share of the picture's shorter side. */
const SPREAD = 0.095;
/** And a share of the room around a piece shown alone. */
const SPREAD_IN_ROOM = 0.45;
/** How far above the clothes the light falls, of that spread. */
const FROM_ABOVE = 0.2;
/** Even thin and small things stand in full light. */
const GAIN = 3.4;
/** How much of the lamp's colour the table takes where it is brightest. */
const STRENGTH = 0.33;
/** Steps in which the light fades, of 255: finer ones are not seen and cost a fifth of the file. */
const STEP = 2;
/** Share of the shorter side along the border in which the light dies away: a picture has no edge. */
const BORDER = 0.1;

interface Grid {
  readonly values: Float32Array;
  /** Pixels to a cell. */
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
}

/** Cells whose middle a layer covers. */
const covered = (width: number, height: number, laid: readonly LaidLayer[], cell: number): Grid => {
  const [columns, rows] = [Math.ceil(width / cell), Math.ceil(height / cell)];
  const values = new Float32Array(columns * rows);
  for (const { layer, x, y } of laid) {
    const pixels = pixelWords(layer.data);
    for (let row = 0; row < rows; row++) {
      const down = Math.floor((row + 0.5) * cell) - y;
      if (down < 0 || down >= layer.height) continue;
      for (let column = 0; column < columns; column++) {
        const across = Math.floor((column + 0.5) * cell) - x;
        if (across < 0 || across >= layer.width) continue;
        const alpha = (pixels[down * layer.width + across] ?? 0) >>> 24;
        const at = row * columns + column;
        values[at] = Math.max(values[at] ?? 0, alpha / 255);
      }
    }
  }
  return { values, cell, columns, rows };
};

/** Mean over `2 × radius + 1` cells, along rows when `step` is 1 and along columns when it is the number of columns. */
const meanAlong = (from: Float32Array, step: number, runs: number, length: number, radius: number): Float32Array => {
  const to = new Float32Array(from.length);
  const next = step === 1 ? length : 1;
  for (let run = 0; run < runs; run++) {
    const start = run * next;
    let sum = 0;
    for (let ahead = 0; ahead < Math.min(radius, length); ahead++) sum += from[start + ahead * step] ?? 0;
    for (let at = 0; at < length; at++) {
      if (at + radius < length) sum += from[start + (at + radius) * step] ?? 0;
      if (at > radius) sum -= from[start + (at - radius - 1) * step] ?? 0;
      to[start + at * step] = sum / (2 * radius + 1);
    }
  }
  return to;
};

const softened = ({ values, cell, columns, rows }: Grid, radius: number): Grid => {
  let soft = values;
  for (let time = 0; time < 3; time++) {
    soft = meanAlong(soft, 1, rows, columns, radius);
    soft = meanAlong(soft, columns, columns, rows, radius);
  }
  return { values: soft, cell, columns, rows };
};

/** The grid between the middles of its four nearest cells. */
const between = ({ values, cell, columns, rows }: Grid, x: number, y: number): number => {
  const across = Math.min(columns - 1, Math.max(0, x / cell - 0.5));
  const down = Math.min(rows - 1, Math.max(0, y / cell - 0.5));
  const [left, top] = [Math.floor(across), Math.floor(down)];
  const [right, bottom] = [Math.min(columns - 1, left + 1), Math.min(rows - 1, top + 1)];
  const [u, v] = [across - left, down - top];
  const upper = (values[top * columns + left] ?? 0) * (1 - u) + (values[top * columns + right] ?? 0) * u;
  const lower = (values[bottom * columns + left] ?? 0) * (1 - u) + (values[bottom * columns + right] ?? 0) * u;
  return upper * (1 - v) + lower * v;
};

/** From 0 at the border to 1 where it is `reach` away. */
const fade = (distance: number, reach: number): number => {
  const share = Math.min(1, Math.max(0, distance / reach));
  return share * share * (3 - 2 * share);
};

/**
 * The pool of light in which clothes lie on a dark page, so that dark cloth is seen without an outline. `room` is the
 * pixels around a piece shown alone, which hold its light; undefined where the picture is wider than that.
 */
export const lampLight = (width: number, height: number, laid: readonly LaidLayer[], room?: number): Veil => {
  const side = Math.min(width, height);
  const spread = room === undefined ? SPREAD * side : room * SPREAD_IN_ROOM;
  const cell = Math.max(1, Math.min(CELL.most, Math.floor(spread / CELL.inSpread)));
  const grid = softened(covered(width, height, laid, cell), Math.max(1, Math.round(spread / cell)));
  const lit = Array.from(grid.values, (value) => 1 - Math.exp(-value * GAIN));
  const light: Grid = { ...grid, values: Float32Array.from(lit) };
  const reach = room ?? BORDER * side;
  const alpha = new Uint8Array(width * height);
  for (let y = 0, at = 0; y < height; y++) {
    const ends = fade(Math.min(y, height - 1 - y), reach);
    for (let x = 0; x < width; x++, at++) {
      const sides = fade(Math.min(x, width - 1 - x), reach);
      const share = ends * sides * between(light, x, y + spread * FROM_ABOVE);
      alpha[at] = STEP * Math.round((share * STRENGTH * 255) / STEP);
    }
  }
  return { alpha, width, height };
};

/** Lays a flat colour beneath a picture of straight colours, as strongly as the veil of its size says, in place. */
export const layBeneath = (
  { data }: Layer,
  { alpha: veil }: Veil,
  colour: readonly [red: number, green: number, blue: number],
): void => {
  for (let pixel = 0, at = 0; pixel < veil.length; pixel++, at += 4) {
    const over = data[at + 3] ?? 0;
    const under = ((veil[pixel] ?? 0) * (255 - over)) / 255;
    if (under === 0) continue;
    const both = over + under;
    for (const [channel, value] of colour.entries()) {
      data[at + channel] = Math.round(((data[at + channel] ?? 0) * over + value * under) / both);
    }
    data[at + 3] = Math.round(both);
  }
};
