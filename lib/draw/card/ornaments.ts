import type { Box } from '../drawing.ts';
import { random, seedOf } from '../kit/index.ts';
import { shortNumber } from '../svg-path.ts';
import type { Tick } from '../tape.ts';
import type { CardColours } from './palette.ts';

export const tapeMarkup = (ticks: readonly Tick[], colours: CardColours): string =>
  `<path d="${ticks.map(({ y, length }) => `M0 ${shortNumber(y)}h${length}`).join('')}" stroke="${colours.soft}" stroke-width=".8" stroke-opacity=".8" fill="none"/>`;

/** A running stitch, slightly wandering as a hand sews it. */
export const stitchMarkup = (box: Box, colour: string, seed: string): string => {
  const hand = random(seedOf(seed));
  const count = Math.max(1, Math.round((box.width - 9.6) / 15.5));
  const step = (box.width - 9.6) / count;
  const y = box.y + box.height / 2;
  const wander = (): string => shortNumber(Math.round((y + (hand() - 0.5) * 1.6) * 10) / 10);
  const stitches = Array.from({ length: count + 1 }, (_, index) => {
    const x = Math.round((box.x + index * step) * 10) / 10;
    return `M${shortNumber(x)} ${wander()}L${shortNumber(x + 9.6)} ${wander()}`;
  });
  return `<path d="${stitches.join('')}" stroke="${colour}" stroke-width="2.2" stroke-linecap="round" fill="none"/>`;
};

/** The grain line of a sewing pattern. */
export const grainMarkup = (x: number, top: number, bottom: number, colours: CardColours): string =>
  `<path d="M${x} ${top}V${bottom}M${x - 5} ${top + 13}L${x} ${top}L${x + 5} ${top + 13}M${x - 5} ${bottom - 13}L${x} ${bottom}L${x + 5} ${bottom - 13}" stroke="${colours.soft}" stroke-width=".9" stroke-opacity=".85" fill="none"/>`;

/** A hairline; with a pair of notches in its middle when it closes the card. */
export const ruleMarkup = (box: Box, colours: CardColours, notched: boolean): string => {
  const y = box.y + box.height / 2;
  const middle = box.x + box.width / 2;
  const line = notched
    ? `M${box.x} ${y}H${middle - 11}l5.5 -9 5.5 9 5.5 -9 5.5 9H${box.x + box.width}`
    : `M${box.x} ${y}H${box.x + box.width}`;
  return `<path d="${line}" fill="none" stroke="${colours.hairline}" stroke-width=".9" stroke-linejoin="round"/>`;
};
