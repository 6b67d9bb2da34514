import { renderAsync } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { layFlat, type Placed, VISIBLE_AT_LEAST } from '../../../lib/draw/flat-lay/index.ts';
import { drawnLook } from './drawn-looks.ts';

const FRAMES = [
  { x: 72, y: 180, width: 936, height: 880 },
  { x: 470, y: 30, width: 704, height: 574 },
] as const;
const LOOKS = 1000;
/** Pixels measured for one of the card's. */
const ZOOM = 0.4;
/** A tiny thing's share is known to so many pixels of its edge only. */
const EDGE = 1.5;

/** A piece's own outline as one flat colour, without soft edges. */
const flat = ({ item, transform }: Placed, colour: string): string => {
  const rings = item.picture.outline.map((ring) => `M${ring.map(([x, y]) => `${x} ${y}`).join('L')}Z`).join('');
  return `<path transform="matrix(${transform.join(' ')})" d="${rings}" fill="${colour}" shape-rendering="crispEdges"/>`;
};

/** Counts pixels by the red they were painted in; resvg, a renderer that knows nothing of layouts. */
const redsOf = async (paths: string): Promise<Uint32Array> => {
  const [width, height] = [1200 * ZOOM, 1350 * ZOOM];
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 1200 1350">${paths}</svg>`;
  const { pixels } = await renderAsync(svg, { font: { loadSystemFonts: false } });
  const counts = new Uint32Array(256);
  for (let at = 0; at < pixels.length; at += 4) counts[pixels[at] ?? 0] = (counts[pixels[at] ?? 0] ?? 0) + 1;
  return counts;
};

const redOf = (index: number): number => 20 * (index + 1);

describe('flat lays of drawn pieces, measured in pixels', () => {
  it(`shows 55 % of every piece and keeps each in the frame, on ${LOOKS} random looks of every kind there is`, async () => {
    const drawn = new Set<unknown>();
    const counts = new Set<number>();
    let least = 1;
    for (let number = 0; number < LOOKS; number++) {
      const frame = FRAMES[number % 4 === 3 ? 1 : 0];
      const { placed } = layFlat(drawnLook(number), frame);
      counts.add(placed.length);
      const together = await redsOf(placed.map((each, index) => flat(each, `rgb(${redOf(index)},0,0)`)).join(''));
      for (const [index, each] of placed.entries()) {
        const { item, transform } = each;
        drawn.add(item.picture);
        const [a, b, c, d, e, f] = transform;
        for (const [x, y] of item.picture.outline.flat()) {
          const [right, down] = [a * x + c * y + e - frame.x, b * x + d * y + f - frame.y];
          const beyond = Math.max(-right, -down, right - frame.width, down - frame.height);
          expect(beyond, `${item.id} leaves the frame`).toBeLessThan(0.01);
        }
        const seen = together[redOf(index)] ?? 0;
        const alone = placed.length === 1 ? seen : ((await redsOf(flat(each, 'rgb(255,0,0)')))[255] ?? 0);
        expect(alone, `${item.id} is painted`).toBeGreaterThan(0);
        const share = (seen + EDGE * Math.sqrt(alone) * ZOOM) / alone;
        least = Math.min(least, seen / alone);
        expect(share, `${item.id} is hidden`).toBeGreaterThan(VISIBLE_AT_LEAST);
      }
    }
    expect([...counts].sort((one, other) => one - other)).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(drawn.size).toBeGreaterThan(160);
    expect(least, 'pieces do lie over each other').toBeLessThan(0.95);
  }, 400_000);
});
