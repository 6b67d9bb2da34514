/** Cells of the colour cube: six bits of each channel are kept while colours are counted. */
const CELLS = 1 << 18;
/** How much a channel counts: the eye tells greens best, blues least. */
export const SENSE = [0.75, 1, 0.65] as const;
/** Below 1, so that a small piece keeps colours of its own beside much paper. */
const CROWD = 0.7;
/** Reds, greens and blues. */
export type Channels = readonly [Float32Array, Float32Array, Float32Array];

/** Colours that occur, one a cell of the colour cube, in the eye's measure. */
export interface Cells {
  /** Keys that occur. */
  readonly used: readonly number[];
  /** Mean colour of each used cell, a list a channel. */
  readonly channels: Channels;
  readonly weights: Float32Array;
}

/** The cell of the colour cube a pixel (red in the lowest byte) falls into. */
export const keyOf = (pixel: number): number =>
  ((pixel & 0xfc) << 10) | ((pixel >>> 4) & 0xfc0) | ((pixel >>> 18) & 0x3f);

/** Every how many pixels and rows one is counted: grain repeats every colour often enough. */
const SAMPLE = 2;

/** What is found out about each cell of the cube, kept between pictures: a cleared list of this size costs more than a count. */
export interface Cube {
  /** Four numbers a cell, side by side, since cells are met at random: pixels, and the sums of their reds, greens and blues. */
  readonly sums: Int32Array;
  /** The colour each cell takes. */
  readonly taken: Int16Array;
}

/** A cell of which no colour is known. */
export const UNKNOWN = -1;

export const emptyCube = (): Cube => ({ sums: new Int32Array(4 * CELLS), taken: new Int16Array(CELLS).fill(UNKNOWN) });

/** Counts a picture in an empty cube, and leaves it empty. */
export const cellsOf = (pixels: Int32Array, width: number, { sums }: Cube): Cells => {
  for (let row = 0; row < pixels.length; row += SAMPLE * width) {
    for (let at = row; at < row + width; at += SAMPLE) {
      const pixel = pixels[at] ?? 0;
      const cell = keyOf(pixel) << 2;
      sums[cell] = (sums[cell] ?? 0) + 1;
      sums[cell | 1] = (sums[cell | 1] ?? 0) + (pixel & 255);
      sums[cell | 2] = (sums[cell | 2] ?? 0) + ((pixel >>> 8) & 255);
      sums[cell | 3] = (sums[cell | 3] ?? 0) + ((pixel >>> 16) & 255);
    }
  }
  const used: number[] = [];
  for (let key = 0; key < CELLS; key++) if ((sums[key << 2] ?? 0) > 0) used.push(key);
  const channels = [0, 1, 2].map(() => new Float32Array(used.length));
  const weights = new Float32Array(used.length);
  used.forEach((key, cell) => {
    const count = sums[key << 2] ?? 1;
    weights[cell] = count ** CROWD;
    channels.forEach((values, channel) => {
      values[cell] = ((sums[(key << 2) + channel + 1] ?? 0) / count) * (SENSE[channel] ?? 1);
    });
    sums.fill(0, key << 2, (key + 1) << 2);
  });
  return { used, channels: channels as unknown as Channels, weights };
};
