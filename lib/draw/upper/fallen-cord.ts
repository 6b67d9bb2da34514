import type { Node } from '../kit/index.ts';

/** Cords lie where they fall: up from the front, over in a loop and down behind the back, one a little further than the other. */
const FALL = { left: { out: 3.2, up: 8.8 }, right: { out: 5, up: 6.6 } };

/** One half of a cord sewn on at `x` from the middle and height `y`: in front of the garment, or behind it. Centimetres. */
export const fallenCord = (side: 1 | -1, x: number, y: number, behind: boolean): Node[] => {
  const { out, up } = side === 1 ? FALL.right : FALL.left;
  const at = (beyond: number, over: number): Node => [side * (x + beyond), y - over];
  const top = at(out * 0.62, up);
  if (behind)
    return [at(out * 0.5, -6.5), at(out * 1.5, up * 0.18), at(out * 1.55, up * 0.66), at(out * 1.2, up * 0.93), top];
  return [at(0, -0.6), at(-0.5, up * 0.36), at(-0.2, up * 0.74), at(out * 0.22, up * 0.95), top];
};
