import { randomUUID } from 'node:crypto';
import { renderAsync } from '@resvg/resvg-js';
import { type CardInput, type CardPiece, drawCard } from '../../lib/draw/card/index.ts';
import { drawPiece } from '../../lib/draw/garment.ts';
import { createRasteriser, type Rasteriser } from '../../lib/draw/raster/index.ts';
import { type Fonts, loadFonts } from '../../lib/type/index.ts';
import type { KindId, Slot } from '../../lib/vocabulary/index.ts';
import { launchBrowser } from '../browser/chromium.ts';
import { samplePiece } from '../specimen/sample.ts';
import { medianSpent, type Spent, spentOn } from './spent.ts';

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

/** A piece that is drawn when the first card asks for it. */
const asked = (kind: KindId, slot: Slot): (() => CardPiece) => {
  let drawn: CardPiece | undefined;
  return () => {
    drawn ??= pieceOf(kind, slot);
    return drawn;
  };
};

/** A capsule of 17 pieces and 24 of its looks, five to eight pieces each; each card is put together when it is its turn. */
const capsule = (): readonly (() => CardInput)[] => {
  const all = (slot: Slot, ...kinds: readonly KindId[]) => kinds.map((kind) => asked(kind, slot));
  const tops = all('top', 'boat-neck top', 'shirt', 'roll-neck', 'blouse', 't-shirt');
  const bottoms = all('bottom', 'pleated skirt', 'jeans', 'wide trousers');
  const mids = all('mid layer', 'cardigan', 'overshirt');
  const coats = all('outer layer', 'wool coat', 'trench coat');
  const shoes = all('shoes', 'lace-up boots', 'loafers');
  const bags = all('bag', 'flap bag');
  const ears = all('jewellery ears', 'hoop earrings');
  const scarves = all('scarf', 'neckerchief');
  const at = (list: readonly (() => CardPiece)[], index: number): readonly CardPiece[] => {
    const found = list[Math.floor(index) % list.length];
    return found === undefined ? [] : [found()];
  };
  return Array.from(
    { length: 24 },
    (_, look) => () =>
      cardOf(
        [
          ...at(tops, look),
          ...at(bottoms, look / 2),
          ...(look % 3 === 0 ? at(mids, look / 3) : []),
          ...(look % 4 === 1 ? [] : at(coats, look / 5)),
          ...at(shoes, look / 3),
          ...at(bags, 0),
          ...(look % 2 === 0 ? at(ears, 0) : []),
          ...(look % 3 === 1 ? at(scarves, 0) : []),
        ],
        look + 1,
      ),
  );
};

const pngOf = async (input: CardInput, fonts: Fonts, rasteriser: Rasteriser): Promise<Buffer> => {
  const card = await drawCard(input, fonts, { onLaid: rasteriser.prepare });
  return rasteriser.png(await rasteriser.laid(card, { ground: 'paper', sheet: card.sheet }));
};

/** Cards under way at once, as when a guide is built. */
const AT_ONCE = 4;
const inTurn = async (
  inputs: readonly (() => CardInput)[],
  work: (input: CardInput) => Promise<unknown>,
): Promise<void> => {
  let next = 0;
  const hand = async (): Promise<void> => {
    for (let input = inputs[next++]; input !== undefined; input = inputs[next++]) await work(input());
  };
  await Promise.all(Array.from({ length: AT_ONCE }, hand));
};

/** Untimed, so that the code is compiled and the fonts are read: nothing of a card is kept from one round to the next. */
const WARM_UP = 4;
const ROUNDS = 9;
const WARM_UP_BATCHES = 2;
const BATCHES = 5;

const repeated = async (times: number, task: () => Promise<void>): Promise<void> => {
  for (let round = 0; round < times; round++) await task();
};

/** What cards drawn from data take, and the least there is to do for them, turn by turn. */
const timeCards = async (whole: () => Promise<unknown>, floor: () => Promise<unknown>) => {
  const [cards, floors]: [Spent[], Spent[]] = [[], []];
  await repeated(WARM_UP, async () => {
    await whole();
    await floor();
  });
  await repeated(ROUNDS, async () => {
    cards.push(await spentOn(whole));
    floors.push(await spentOn(floor));
  });
  return { card: medianSpent(cards), floor: medianSpent(floors) };
};

/** What a browser's pictures of finished SVGs take, of one and of all of them: in a page that stays open, and in a page each. */
const timeBrowser = async (svg: string, svgs: readonly string[]) => {
  const browser = await launchBrowser();
  const size = { viewport: { width: 1080, height: 1350 } };
  const shootIn = async (page: Awaited<ReturnType<typeof browser.newPage>>, picture: string): Promise<void> => {
    await page.setContent(`<body style="margin:0">${picture}</body>`);
    await page.screenshot();
  };
  const page = await browser.newPage(size);
  const [warm, all, afresh, allAfresh]: [Spent[], Spent[], Spent[], Spent[]] = [[], [], [], []];
  await repeated(WARM_UP, () => shootIn(page, svg));
  await repeated(ROUNDS, async () => {
    warm.push(await spentOn(() => shootIn(page, svg)));
  });
  const shootAll = async (): Promise<void> => {
    for (const each of svgs) await shootIn(page, each);
  };
  await repeated(WARM_UP_BATCHES, shootAll);
  await repeated(BATCHES, async () => {
    all.push(await spentOn(shootAll));
  });
  const shootAfresh = async (picture: string): Promise<void> => {
    const own = await browser.newPage(size);
    await shootIn(own, picture);
    await own.close();
  };
  await repeated(ROUNDS, async () => {
    afresh.push(await spentOn(() => shootAfresh(svg)));
  });
  await repeated(BATCHES, async () => {
    allAfresh.push(
      await spentOn(async () => {
        for (const each of svgs) await shootAfresh(each);
      }),
    );
  });
  await browser.close();
  return {
    warm: medianSpent(warm),
    afresh: medianSpent(afresh),
    all: medianSpent(all),
    allAfresh: medianSpent(allAfresh),
  };
};

/**
 * Ratios of one run, on the clock and of processor time, which a busy machine distorts less. The floor is what there is to do
 * at least: rasterise the finished SVG at once, encode its pixels. Cards are timed before a browser runs, which would go on
 * working beside them. It has been started when it is timed, and takes pictures of the same finished SVGs one after the other:
 * what it took to draw them is not counted against it, and its pictures have no grain and no palette.
 */
export const benchCards = async (): Promise<Readonly<Record<string, number>>> => {
  const fonts = loadFonts();
  const rasteriser = createRasteriser();
  const { svg, ...card } = await drawCard(oneLook(), fonts);
  const finished = await rasteriser.laid(card, { ground: 'paper', sheet: card.sheet });
  const one = await timeCards(
    () => pngOf(oneLook(), fonts, rasteriser),
    async () => {
      await renderAsync(svg, { font: { loadSystemFonts: false } });
      await rasteriser.png(finished);
    },
  );
  const batches: Spent[] = [];
  const makeAll = (): Promise<void> => {
    const fresh = createRasteriser();
    return inTurn(capsule(), (input) => pngOf(input, fonts, fresh));
  };
  await repeated(WARM_UP_BATCHES, makeAll);
  await repeated(BATCHES, async () => {
    batches.push(await spentOn(makeAll));
  });
  const looks = capsule();
  const svgs = await Promise.all(looks.map(async (look) => (await drawCard(look(), fonts)).svg));
  const shots = await timeBrowser(svg, svgs);
  const batch = medianSpent(batches);
  return {
    'one card, cold, against the floor (at most 1.3)': one.card.clock / one.floor.clock,
    'one card, cold, against the floor, in processor time': one.card.processor / one.floor.processor,
    'one browser screenshot against one card, cold': shots.warm.clock / one.card.clock,
    'one browser screenshot in a page of its own against one card, cold': shots.afresh.clock / one.card.clock,
    'screenshots of a capsule’s 24 cards, each in a page of its own, against making them, cold (at least 3)':
      shots.allAfresh.clock / batch.clock,
    'screenshots of the 24 in one page that stays open, against making them': shots.all.clock / batch.clock,
    'screenshots in that page against making them, in processor time': shots.all.processor / batch.processor,
    'milliseconds a card of the capsule': batch.clock / looks.length,
    'milliseconds of processor time a card of the capsule': batch.processor / looks.length,
    'milliseconds one card, cold': one.card.clock,
    'kilobytes of SVG': svg.length / 1000,
  };
};
