/** Pixels of one layer, RGBA, premultiplied. */
export interface Layer {
  readonly data: Uint8Array;
  readonly width: number;
  readonly height: number;
}

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

/** Lays a layer over the ground (source-over), in place. */
export const paintOver = (ground: Layer, layer: Layer, x: number, y: number): void => {
  const { left, right, top, bottom } = overlap(ground, layer, x, y);
  const [to, from] = [ground.data, layer.data];
  for (let row = top; row < bottom; row++) {
    let at = (row * layer.width + left) * 4;
    let put = ((row + y) * ground.width + x + left) * 4;
    for (let column = left; column < right; column++, at += 4, put += 4) {
      const alpha = from[at + 3] ?? 0;
      if (alpha === 0) continue;
      if (alpha === 255) {
        to[put] = from[at] ?? 0;
        to[put + 1] = from[at + 1] ?? 0;
        to[put + 2] = from[at + 2] ?? 0;
        to[put + 3] = 255;
        continue;
      }
      const rest = 255 - alpha;
      to[put] = (from[at] ?? 0) + part(to[put] ?? 0, rest);
      to[put + 1] = (from[at + 1] ?? 0) + part(to[put + 1] ?? 0, rest);
      to[put + 2] = (from[at + 2] ?? 0) + part(to[put + 2] ?? 0, rest);
      to[put + 3] = alpha + part(to[put + 3] ?? 0, rest);
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
  const to = ground.data;
  for (let row = top; row < bottom; row++) {
    let at = row * veil.width + left;
    let put = ((row + y) * ground.width + x + left) * 4;
    for (let column = left; column < right; column++, at++, put += 4) {
      const alpha = veil.alpha[at] ?? 0;
      if (alpha === 0) continue;
      const rest = 255 - alpha;
      to[put] = part(red, alpha) + part(to[put] ?? 0, rest);
      to[put + 1] = part(green, alpha) + part(to[put + 1] ?? 0, rest);
      to[put + 2] = part(blue, alpha) + part(to[put + 2] ?? 0, rest);
      to[put + 3] = alpha + part(to[put + 3] ?? 0, rest);
    }
  }
};
