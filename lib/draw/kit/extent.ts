import type { Box, Point } from '../drawing.ts';

/** The least upright box around all points; of no size at the origin when there are none. */
export const extentOf = (rings: readonly (readonly Point[])[]): Box => {
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const ring of rings) {
    for (const [x, y] of ring) {
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < top) top = y;
      if (y > bottom) bottom = y;
    }
  }
  return left > right
    ? { x: 0, y: 0, width: 0, height: 0 }
    : { x: left, y: top, width: right - left, height: bottom - top };
};

const hundredths = (value: number): number => Math.round(value * 100) / 100;

/** The box of a drawing: around its rings with a margin, in whole hundredths of a centimetre. */
export const boxAround = (rings: readonly (readonly Point[])[], margin: number): Box => {
  const { x, y, width, height } = extentOf(rings);
  if (width === 0 && height === 0) return { x: 0, y: 0, width: 0, height: 0 };
  return {
    x: hundredths(x - margin),
    y: hundredths(y - margin),
    width: hundredths(width + 2 * margin),
    height: hundredths(height + 2 * margin),
  };
};
