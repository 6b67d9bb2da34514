/** Pixels of one layer, RGBA, premultiplied. */
export interface Layer {
  readonly data: Uint8Array;
  readonly width: number;
  readonly height: number;
}

/** The same bytes where they can be read four at a time: a copy when they do not begin at such a place. */
export const aligned = (data: Uint8Array): Uint8Array => (data.byteOffset % 4 === 0 ? data : data.slice());

/**
 * Aligned RGBA data as a word a pixel, in the same memory. Red is the lowest byte: every machine Node runs on is little endian.
 * With a sign, so that a pixel is a small integer to the engine, not a double.
 */
export const pixelWords = (data: Uint8Array): Int32Array =>
  new Int32Array(data.buffer, data.byteOffset, data.length >> 2);

/** How strongly a flat colour covers each pixel, 0 to 255. */
export interface Veil {
  readonly alpha: Uint8Array;
  readonly width: number;
  readonly height: number;
}

export const emptyLayer = (width: number, height: number): Layer => ({
  data: new Uint8Array(width * height * 4),
  width,
  height,
});

/** Rows and columns of a picture of this size, laid with its corner at `x`, `y`, that fall on the ground. */
const overlap = (ground: Layer, over: { readonly width: number; readonly height: number }, x: number, y: number) => ({
  left: Math.max(0, -x),
  right: Math.min(over.width, ground.width - x),
  top: Math.max(0, -y),
  bottom: Math.min(over.height, ground.height - y),
});

/** `value` × `share` ÷ 255, rounded; exact for all bytes. */
const part = (value: number, share: number): number => {
  const product = value * share + 128;
  return (product + (product >> 8)) >> 8;
};

/** All four bytes of a pixel × `share` ÷ 255. */
const faded = (pixel: number, share: number): number =>
  part(pixel & 255, share) |
  (part((pixel >>> 8) & 255, share) << 8) |
  (part((pixel >>> 16) & 255, share) << 16) |
  (part(pixel >>> 24, share) << 24);

/** Lays a layer over the ground (source-over), in place. */
export const paintOver = (ground: Layer, layer: Layer, x: number, y: number): void => {
  const { left, right, top, bottom } = overlap(ground, layer, x, y);
  const [to, from] = [pixelWords(ground.data), pixelWords(layer.data)];
  for (let row = top; row < bottom; row++) {
    let at = row * layer.width + left;
    let put = (row + y) * ground.width + x + left;
    for (let column = left; column < right; column++, at++, put++) {
      const over = from[at] ?? 0;
      const alpha = over >>> 24;
      if (alpha === 255) to[put] = over;
      else if (alpha > 0) to[put] = (over + faded(to[put] ?? 0, 255 - alpha)) | 0;
    }
  }
};

/** Lays a flat colour over the ground as strongly as the veil says, in place. */
export const paintVeil = (
  ground: Layer,
  veil: Veil,
  [red, green, blue]: readonly [number, number, number],
  x: number,
  y: number,
): void => {
  const { left, right, top, bottom } = overlap(ground, veil, x, y);
  const to = pixelWords(ground.data);
  const tint = Int32Array.from(
    { length: 256 },
    (_, alpha) => part(red, alpha) | (part(green, alpha) << 8) | (part(blue, alpha) << 16) | (alpha << 24),
  );
  for (let row = top; row < bottom; row++) {
    let at = row * veil.width + left;
    let put = (row + y) * ground.width + x + left;
    for (let column = left; column < right; column++, at++, put++) {
      const alpha = veil.alpha[at] ?? 0;
      if (alpha > 0) to[put] = ((tint[alpha] ?? 0) + faded(to[put] ?? 0, 255 - alpha)) | 0;
    }
  }
};
