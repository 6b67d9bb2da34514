import { randomUUID } from 'node:crypto';
import { renderAsync } from '@resvg/resvg-js';
import { type CardInput, drawCard } from '../../lib/draw/card/index.ts';
import { drawPiece } from '../../lib/draw/garment.ts';
import { createRasteriser } from '../../lib/draw/raster/index.ts';
import { loadFonts } from '../../lib/type/index.ts';
import type { Slot } from '../../lib/vocabulary/index.ts';
import { launchBrowser } from '../browser/chromium.ts';
import { samplePiece } from '../specimen/sample.ts';

/** One look as a stylist would lay it; a new id each time, so that nothing is drawn twice. */
const look = (): CardInput => {
  const seed = randomUUID();
  const pieces = (
    [
      ['boat-neck top', 'top'],
      ['pleated skirt', 'bottom'],
      ['wool coat', 'outer layer'],
      ['lace-up boots', 'shoes'],
      ['flap bag', 'bag'],
      ['hoop earrings', 'jewellery ears'],
    ] as const satisfies readonly (readonly [string, Slot])[]
  ).map(([kind, slot]) => {
    const piece = { ...samplePiece(kind), id: `${kind} ${seed}` };
    return {
      id: piece.id,
      slot,
      picture: drawPiece(piece),
      name: piece.name,
      colour: piece.colours[0]?.hex ?? '#888888',
    };
  });
  return {
    format: 'portrait',
    number: '7',
    title: 'A long walk, then the library',
    eyebrow: 'Thursday, 7 °C, dry with wind',
    wear: 'For the two museums; the coat comes off indoors.',
    studio: 'The studio',
    footer: 'Nine days by rail',
    note: '',
    pieces,
    accent: '#2c5745',
    tape: { unit: 'cm', label: 'cm' },
    grain: 'straight grain',
  };
};

const timed = async (task: () => Promise<unknown>): Promise<number> => {
  const start = performance.now();
  await task();
  return performance.now() - start;
};
const median = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;

const ROUNDS = 9;

/** Ratios of one run: a whole card (draw, lay, set, rasterise, grain, encode) against the floor and against a browser. */
export const benchCards = async (): Promise<Readonly<Record<string, number>>> => {
  const fonts = loadFonts();
  const rasteriser = createRasteriser();
  const whole = async (): Promise<string> => {
    const { svg } = await drawCard(look(), fonts);
    await rasteriser.png(await rasteriser.pixels(svg));
    return svg;
  };
  const svg = await whole();
  const browser = await launchBrowser();
  const page = await browser.newPage({ viewport: { width: 1080, height: 1350 } });
  const cards: number[] = [];
  const drawn: number[] = [];
  const floors: number[] = [];
  const shots: number[] = [];
  const screenshot = async (): Promise<void> => {
    await page.setContent(`<body style="margin:0">${svg}</body>`);
    await page.screenshot();
  };
  // the least there is to do: rasterise the finished SVG, encode the finished picture
  const finished = await rasteriser.pixels(svg);
  const floor = async (): Promise<void> => {
    await renderAsync(svg, { font: { loadSystemFonts: false } });
    await rasteriser.png(finished);
  };
  await screenshot();
  for (let round = 0; round < ROUNDS; round++) {
    cards.push(await timed(whole));
    drawn.push(await timed(() => drawCard(look(), fonts)));
    floors.push(await timed(floor));
    shots.push(await timed(screenshot));
  }
  await browser.close();
  const batch = await timed(() => Promise.all(Array.from({ length: 12 }, whole)));
  const shotBatch = median(shots) * 12;
  return {
    'one card against the floor (at most 1.3)': median(cards) / median(floors),
    'browser screenshot against one card': median(shots) / median(cards),
    'twelve browser screenshots against twelve cards (at least 3)': shotBatch / batch,
    'drawing, laying and setting, as a share of a card': median(drawn) / median(cards),
    'milliseconds a card': median(cards),
    'kilobytes of SVG': svg.length / 1000,
  };
};
