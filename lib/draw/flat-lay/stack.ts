import type { Random } from '../kit/index.ts';
import type { Body } from './body.ts';

/** A body and where its upper left corner lies, centimetres. */
export interface Lain {
  readonly body: Body;
  readonly x: number;
  readonly y: number;
}

export interface Stack {
  readonly lain: readonly Lain[];
  readonly width: number;
  readonly height: number;
}

/** How far a hem lies over a waistband, centimetres; whole pixels move it by a fifth of one at most. */
const HEM_OVER_WAIST: readonly [number, number] = [6.2, 8.8];

const waistOf = (body: Body): readonly [number, number] => body.anchor('waist') ?? [body.width / 2, 0];
const hemOf = (body: Body): readonly [number, number] => body.anchor('hem') ?? [body.width / 2, body.height];

/** The outfit as worn: each piece's waistband tucked under the hem of the one above. */
export const stackOf = (worn: readonly Body[], random: Random): Stack => {
  const lain: Lain[] = [];
  const upper = worn.filter((body) => body.item.slot !== 'bottom');
  const ordered = [...upper, ...worn.filter((body) => body.item.slot === 'bottom')];
  for (const body of ordered) {
    const above = lain.at(-1);
    if (above === undefined) {
      lain.push({ body, x: 0, y: 0 });
      continue;
    }
    const [low, high] = HEM_OVER_WAIST;
    const tucked = Math.min(low + (high - low) * random(), body.height * 0.25);
    const [hemX, hemY] = hemOf(above.body);
    const [waistX, waistY] = waistOf(body);
    lain.push({ body, x: above.x + hemX - waistX, y: above.y + hemY - tucked - waistY });
  }
  const left = Math.min(0, ...lain.map(({ x }) => x));
  const top = Math.min(0, ...lain.map(({ y }) => y));
  return {
    lain: lain.map(({ body, x, y }) => ({ body, x: x - left, y: y - top })),
    width: Math.max(0, ...lain.map(({ body, x }) => x + body.width)) - left,
    height: Math.max(0, ...lain.map(({ body, y }) => y + body.height)) - top,
  };
};
