import { type Cells, type Channels, type Cube, cellsOf, emptyCube, keyOf, SENSE, UNKNOWN } from './colour-cube.ts';
import { aligned, pixelWords } from './layers.ts';
import type { Pixels } from './rasteriser.ts';

/** A picture in at most 256 colours: each pixel's place in the list of colours. */
export interface Indexed {
  /** A row starts with a byte 0, the filter PNG asks for, then a byte a pixel. */
  readonly rows: Uint8Array;
  /** Red, green and blue of each colour. */
  readonly colours: Uint8Array;
}

const MOST_COLOURS = 256;
/** Rounds in which each colour moves to the middle of the cells that are nearest to it. */
const ROUNDS = 2;

/** Some cells, from one place in the order up to another, and along which channel they spread most. */
interface Group {
  readonly from: number;
  readonly to: number;
  readonly mean: readonly number[];
  readonly widest: number;
  /** Sum of squared distances from the mean. */
  readonly spread: number;
}

const groupOf = ({ channels, weights }: Cells, order: Uint32Array, from: number, to: number): Group => {
  let weight = 0;
  for (let at = from; at < to; at++) weight += weights[order[at] ?? 0] ?? 0;
  const spreads = channels.map((values) => {
    let [sum, squares] = [0, 0];
    for (let at = from; at < to; at++) {
      const cell = order[at] ?? 0;
      const value = values[cell] ?? 0;
      const share = value * (weights[cell] ?? 0);
      sum += share;
      squares += share * value;
    }
    return { mean: sum / weight, spread: squares - (sum * sum) / weight };
  });
  const widest = spreads.reduce((best, { spread }, index) => (spread > (spreads[best]?.spread ?? 0) ? index : best), 0);
  const spread = spreads.reduce((sum, each) => sum + each.spread, 0);
  return { from, to, mean: spreads.map(({ mean }) => mean), widest, spread: to - from < 2 ? 0 : spread };
};

/** Brings the cells below the mean of the widest channel to the front; says where the others start. */
const part = ({ channels }: Cells, order: Uint32Array, { from, to, mean, widest }: Group): number => {
  const values = channels[widest] ?? channels[1];
  const middle = mean[widest] ?? 0;
  let [low, high] = [from, to - 1];
  while (low <= high) {
    const cell = order[low] ?? 0;
    if ((values[cell] ?? 0) <= middle) {
      low++;
    } else {
      order[low] = order[high] ?? 0;
      order[high--] = cell;
    }
  }
  return low;
};

/** First colours: the group that spreads most is parted at its mean, again and again. */
const cut = (cells: Cells): readonly (readonly number[])[] => {
  const order = Uint32Array.from(cells.used, (_, index) => index);
  const groups = [groupOf(cells, order, 0, order.length)];
  while (groups.length < MOST_COLOURS) {
    const most = groups.reduce((best, { spread }, at) => (spread > (groups[best]?.spread ?? 0) ? at : best), 0);
    const group = groups[most];
    if (group === undefined || group.spread <= 0) break;
    const middle = part(cells, order, group);
    if (middle === group.from || middle === group.to) {
      groups[most] = { ...group, spread: 0 };
      continue;
    }
    groups[most] = groupOf(cells, order, group.from, middle);
    groups.push(groupOf(cells, order, middle, group.to));
  }
  return groups.map(({ mean }) => mean);
};

/** Colours in the order of their greens, in which a search can stop early. */
const ordered = (means: readonly (readonly number[])[]): Channels => {
  const sorted = [...means].sort((one, other) => (one[1] ?? 0) - (other[1] ?? 0));
  const channel = (index: number): Float32Array => Float32Array.from(sorted, (mean) => mean[index] ?? 0);
  return [channel(0), channel(1), channel(2)];
};

/** Where the first of rising values stands that is not below `value`; their count when all are. */
const placeOf = (rising: Float32Array, value: number): number => {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] ?? 0) < value) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** The colour nearest to another, looked for up and down from the nearest green until greens alone are too far. */
const nearestTo = (r: number, g: number, b: number, [red, green, blue]: Channels): number => {
  const start = placeOf(green, g);
  let best = Math.min(start, green.length - 1);
  let least = Number.POSITIVE_INFINITY;
  for (const step of [1, -1]) {
    for (let colour = step > 0 ? start : start - 1; colour >= 0 && colour < green.length; colour += step) {
      const away = ((green[colour] ?? 0) - g) ** 2;
      if (away >= least) break;
      const all = away + ((red[colour] ?? 0) - r) ** 2 + ((blue[colour] ?? 0) - b) ** 2;
      if (all < least) {
        least = all;
        best = colour;
      }
    }
  }
  return best;
};

/** For every cell the colour nearest to it. */
const nearest = ({ channels: [reds, greens, blues], used }: Cells, colours: Channels): Uint8Array => {
  const taken = new Uint8Array(used.length);
  for (let cell = 0; cell < used.length; cell++) {
    taken[cell] = nearestTo(reds[cell] ?? 0, greens[cell] ?? 0, blues[cell] ?? 0, colours);
  }
  return taken;
};

const nearestToPixel = (pixel: number, colours: Channels): number =>
  nearestTo((pixel & 255) * SENSE[0], ((pixel >>> 8) & 255) * SENSE[1], ((pixel >>> 16) & 255) * SENSE[2], colours);

/** Each colour in the middle of the cells that take it. */
const settled = (
  { channels, weights }: Cells,
  colours: Channels,
  taken: Uint8Array,
): readonly (readonly number[])[] => {
  const count = colours[0].length;
  const sums = [0, 1, 2].map(() => new Float64Array(count));
  const totals = new Float64Array(count);
  taken.forEach((colour, cell) => {
    const weight = weights[cell] ?? 0;
    totals[colour] = (totals[colour] ?? 0) + weight;
    sums.forEach((sum, index) => {
      sum[colour] = (sum[colour] ?? 0) + (channels[index]?.[cell] ?? 0) * weight;
    });
  });
  return Array.from({ length: count }, (_, colour) =>
    sums.map((sum, index) => {
      const total = totals[colour] ?? 0;
      return total > 0 ? (sum[colour] ?? 0) / total : (colours[index]?.[colour] ?? 0);
    }),
  );
};

/** Each pixel's colour, from what the cells take and, for those that no counted pixel fell into, from the nearest; the cube is left empty. */
const mapped = (
  { pixels, width, height }: { readonly pixels: Int32Array; readonly width: number; readonly height: number },
  { used }: Cells,
  nearestOfCell: Uint8Array,
  colours: Channels,
  { taken }: Cube,
): Uint8Array => {
  const strangers: number[] = [];
  used.forEach((key, cell) => {
    taken[key] = nearestOfCell[cell] ?? 0;
  });
  const rows = new Uint8Array((width + 1) * height);
  for (let y = 0, at = 0, put = 0; y < height; y++) {
    put++;
    for (const end = at + width; at < end; at++, put++) {
      const pixel = pixels[at] ?? 0;
      const key = keyOf(pixel);
      let colour = taken[key] ?? 0;
      if (colour === UNKNOWN) {
        colour = nearestToPixel(pixel, colours);
        taken[key] = colour;
        strangers.push(key);
      }
      rows[put] = colour;
    }
  }
  for (const key of used) taken[key] = UNKNOWN;
  for (const key of strangers) taken[key] = UNKNOWN;
  return rows;
};

/**
 * Finds the 256 colours that suit an opaque picture best: cells of the colour cube are parted at their means, then each
 * colour settles in the middle of its cells (k-means). Without dither: spread errors pile up into stains on pale paper,
 * and the grain does its work. What one picture left in the cube is never seen by the next.
 */
export const createIndexer = (): ((picture: Pixels) => Indexed) => {
  const cube = emptyCube();
  return ({ data, width, height }) => {
    const pixels = pixelWords(aligned(data));
    const cells = cellsOf(pixels, width, cube);
    let colours = ordered(cut(cells));
    for (let round = 0; round < ROUNDS; round++) colours = ordered(settled(cells, colours, nearest(cells, colours)));
    const rows = mapped({ pixels, width, height }, cells, nearest(cells, colours), colours, cube);
    const list = Uint8Array.from({ length: colours[0].length * 3 }, (_, at) => {
      const channel = (at % 3) as 0 | 1 | 2;
      return Math.round((colours[channel][Math.floor(at / 3)] ?? 0) / SENSE[channel]);
    });
    return { rows, colours: list };
  };
};
