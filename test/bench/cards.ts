import { randomUUID } from 'node:crypto';
import { renderAsync } from '@resvg/resvg-js';
import { type CardInput, type CardPiece, drawCard } from '../../lib/draw/card/index.ts';
import { drawPiece } from '../../lib/draw/garment.ts';
import { createRasteriser, type Rasteriser } from '../../lib/draw/raster/index.ts';
import { type Fonts, loadFonts } from '../../lib/type/index.ts';
import type { KindId, Slot } from '../../lib/vocabulary/index.ts';
import { launchBrowser } from '../browser/chromium.ts';
import { samplePiece } from '../specimen/sample.ts';

/** A new id each time, so that nothing is drawn twice unless it is the same piece. */
const pieceOf = (kind: KindId, slot: Slot): CardPiece => {
  const piece = { ...samplePiece(kind), id: `${kind} ${randomUUID()}` };
  const colour = piece.colours[0]?.hex ?? '#888888';
  return { id: piece.id, slot, picture: drawPiece(piece), name: piece.name, colour };
};

const cardOf = (pieces: readonly CardPiece[], number: number): CardInput => ({
  format: 'portrait',
  number: String(number),
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
});

/** One look as a stylist would lay it. */
const oneLook = (): CardInput =>
  cardOf(
    [
      pieceOf('boat-neck top', 'top'),
      pieceOf('pleated skirt', 'bottom'),
      pieceOf('wool coat', 'outer layer'),
      pieceOf('lace-up boots', 'shoes'),
      pieceOf('flap bag', 'bag'),
      pieceOf('hoop earrings', 'jewellery ears'),
    ],
    7,
  );

/** A capsule of 17 pieces and 24 of its looks, five to eight pieces each. */
const capsule = (): readonly CardInput[] => {
  const tops = (['boat-neck top', 'shirt', 'roll-neck', 'blouse', 't-shirt'] as const).map((kind) =>
    pieceOf(kind, 'top'),
  );
  const bottoms = (['pleated skirt', 'jeans', 'wide trousers'] as const).map((kind) => pieceOf(kind, 'bottom'));
  const mids = (['cardigan', 'overshirt'] as const).map((kind) => pieceOf(kind, 'mid layer'));
  const coats = (['wool coat', 'trench coat'] as const).map((kind) => pieceOf(kind, 'outer layer'));
  const shoes = (['lace-up boots', 'loafers'] as const).map((kind) => pieceOf(kind, 'shoes'));
  const [bag, ears, scarf] = [
    pieceOf('flap bag', 'bag'),
    pieceOf('hoop earrings', 'jewellery ears'),
    pieceOf('neckerchief', 'scarf'),
  ];
  const at = (list: readonly CardPiece[], index: number): readonly CardPiece[] => {
    const found = list[index % list.length];
    return found === undefined ? [] : [found];
  };
  return Array.from({ length: 24 }, (_, look) =>
    cardOf(
      [
        ...at(tops, look),
        ...at(bottoms, Math.floor(look / 2)),
        ...(look % 3 === 0 ? at(mids, look / 3) : []),
        ...(look % 4 === 1 ? [] : at(coats, Math.floor(look / 5))),
        ...at(shoes, Math.floor(look / 3)),
        bag,
        ...(look % 2 === 0 ? [ears] : []),
        ...(look % 3 === 1 ? [scarf] : []),
      ],
      look + 1,
    ),
  );
};

const timed = async (task: () => Promise<unknown>): Promise<number> => {
  const start = performance.now();
  await task();
  return performance.now() - start;
};
const median = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;

const pngOf = async (input: CardInput, fonts: Fonts, rasteriser: Rasteriser): Promise<Buffer> => {
  const card = await drawCard(input, fonts, { onLaid: rasteriser.prepare });
  return rasteriser.png(await rasteriser.laid(card, { ground: 'paper', sheet: card.sheet }));
};

/** Cards under way at once, as when a guide is built. */
const AT_ONCE = 4;
const inTurn = async (inputs: readonly CardInput[], work: (input: CardInput) => Promise<unknown>): Promise<void> => {
  let next = 0;
  const hand = async (): Promise<void> => {
    for (let input = inputs[next++]; input !== undefined; input = inputs[next++]) await work(input);
  };
  await Promise.all(Array.from({ length: AT_ONCE }, hand));
};

const ROUNDS = 9;
const BATCHES = 3;

/**
 * Ratios of one run. The floor is what there is to do at least: rasterise the finished SVG at once, encode its pixels. The
 * browser has been started before, and pictures of the same finished SVGs are asked of it one after the other; what it
 * took to draw them is not counted against it, and its pictures have no grain and no palette. Hold both to a quiet machine.
 */
export const benchCards = async (): Promise<Readonly<Record<string, number>>> => {
  const fonts = loadFonts();
  const rasteriser = createRasteriser();
  const whole = (): Promise<Buffer> => pngOf(oneLook(), fonts, rasteriser);
  await whole();
  const { svg, ...card } = await drawCard(oneLook(), fonts);
  const finished = await rasteriser.laid(card, { ground: 'paper', sheet: card.sheet });
  const floor = async (): Promise<void> => {
    await renderAsync(svg, { font: { loadSystemFonts: false } });
    await rasteriser.png(finished);
  };
  const browser = await launchBrowser();
  const page = await browser.newPage({ viewport: { width: 1080, height: 1350 } });
  const shoot = async (picture: string): Promise<void> => {
    await page.setContent(`<body style="margin:0">${picture}</body>`);
    await page.screenshot();
  };
  /** A page of its own for each card, as a script that is handed one SVG after another opens it. */
  const shootAfresh = async (picture: string): Promise<void> => {
    const own = await browser.newPage({ viewport: { width: 1080, height: 1350 } });
    await own.setContent(`<body style="margin:0">${picture}</body>`);
    await own.screenshot();
    await own.close();
  };
  await shoot(svg);
  const [cards, floors, shots]: [number[], number[], number[]] = [[], [], []];
  for (let round = 0; round < ROUNDS; round++) {
    cards.push(await timed(whole));
    floors.push(await timed(floor));
    shots.push(await timed(() => shoot(svg)));
  }
  const [ours, theirs, afresh]: [number[], number[], number[]] = [[], [], []];
  for (let batch = 0; batch < BATCHES; batch++) {
    ours.push(
      await timed(async () => {
        const fresh = createRasteriser();
        await inTurn(capsule(), (input) => pngOf(input, fonts, fresh));
      }),
    );
    const svgs = await Promise.all(capsule().map(async (input) => (await drawCard(input, fonts)).svg));
    theirs.push(
      await timed(async () => {
        for (const each of svgs) await shoot(each);
      }),
    );
    afresh.push(
      await timed(async () => {
        for (const each of svgs) await shootAfresh(each);
      }),
    );
  }
  await browser.close();
  return {
    'one card, cold, against the floor (at most 1.3)': median(cards) / median(floors),
    'one browser screenshot against one card, cold': median(shots) / median(cards),
    'screenshots of a capsule’s 24 cards, a page for each, against making them, cold (at least 3)':
      median(afresh) / median(ours),
    'the same, all in one warm page': median(theirs) / median(ours),
    'milliseconds a card of the capsule': median(ours) / 24,
    'milliseconds one card, cold': median(cards),
    'kilobytes of SVG': svg.length / 1000,
  };
};
