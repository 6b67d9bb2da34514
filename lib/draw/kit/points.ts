import type { Node } from './geometry.ts';

/** Nodes written as a line of text: `x y` pairs set off by commas, `!` after a pair that stays a corner. */
export const points = (text: string): Node[] =>
  text.split(',').map((pair) => {
    const [x, y] = pair.replace('!', '').trim().split(/\s+/).map(Number);
    if (x === undefined || y === undefined || Number.isNaN(x + y)) throw new RangeError(`not a point: "${pair}"`);
    return pair.includes('!') ? [x, y, 'corner'] : [x, y];
  });
