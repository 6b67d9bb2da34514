import type { Point } from '../drawing.ts';
import { thin } from '../kit/silhouette.ts';

/** A closed ring with fewer points, nowhere further than `stray` centimetres from the given one. */
export const thinRing = (ring: readonly Point[], stray: number): readonly Point[] => {
  const half = ring.length >> 1;
  const back = [...ring.slice(half), ...ring.slice(0, 1)];
  return [...thin(ring.slice(0, half + 1), stray).slice(0, -1), ...thin(back, stray).slice(0, -1)];
};
