import { piecesToName } from '../../guide/piece-names.ts';
import type { NamedColour } from '../../model/index.ts';
import type { Job } from '../job.ts';
import { layPicture } from '../lay-picture.ts';
import type { Area, Size } from '../paper.ts';
import type { Surface } from '../pdf/surface.ts';
import { type Block, drawn, grid, space, stack, tagged } from '../set/block.ts';
import type { FlowItem } from '../set/flow.ts';
import { prose } from '../set/markdown.ts';
import { stitch } from '../set/ornament.ts';
import { text } from '../set/text.ts';
import { paintThumbnail } from '../thumbnail.ts';
import { inked, resized } from '../types.ts';
import { type BookPage, bookArea, flowingPart, roomiest } from './pages.ts';

import { proseTypes } from './prose-types.ts';

/** The colours of the mood, or those of the pieces when the stylist named none. */
const paletteOf = ({ guide }: Job): readonly NamedColour[] =>
  guide.capsule.mood.palette.length > 0
    ? guide.capsule.mood.palette
    : guide.palette.colours.map(({ colour }) => colour);

const BAND = 22;
const COVER_GAP = 7;
/** A picture lower than this on a cover is left out, millimetres. */
const LEAST_HERO = 45;

/** The palette in one band, over the edge of the paper where the page is trimmed. */
const paletteBand = (job: Job, surface: Surface, area: Area): void => {
  const palette = paletteOf(job);
  if (palette.length === 0) return;
  surface.tag('Figure', { alt: job.say('palette of', { colours: palette.map(({ name }) => name) }) }, () => {
    const step = area.width / palette.length;
    palette.forEach(({ hex }, index) => {
      const last = index === palette.length - 1;
      surface.rectangle(
        { x: area.x + index * step, y: area.y, width: step + (last ? 0 : 0.05), height: area.height },
        { fill: hex },
      );
    });
  });
};

/** `fold` is true when the left edge is a fold: nothing may run over it. */
export const coverPage = (job: Job, size: Size, bleed: number, fold: boolean): BookPage => ({
  bare: true,
  bookmark: { title: job.guide.brief.title, level: 1 },
  paint: (surface, page) => {
    const { setter } = job.press;
    const { types, inks, guide } = job;
    const area = bookArea(size, page);
    const head = stack([
      tagged(
        'P',
        text(setter, job.say('booklet title', { traveller: guide.capsule.traveller }), inked(types.text, inks.soft)),
      ),
      space(9),
      tagged('H1', text(setter, guide.brief.title, resized(types.title, 32), { balance: true })),
      space(4),
      tagged(
        'P',
        text(setter, guide.capsule.title, inked({ ...resized(types.title, 15), style: 'title italic' }, inks.thread)),
      ),
      space(6),
      drawn(1, (on, { x, y, width }) => on.artifact(() => stitch(on, [x, y], [x + width, y], { colour: inks.thread }))),
      space(4),
      tagged('P', text(setter, job.say('dates of trip', { from: guide.brief.from, to: guide.brief.to }), types.fact)),
      space(1.4),
      tagged('P', text(setter, job.say('by studio', { studio: guide.studio.name }), inked(types.text, inks.soft))),
    ]);
    head.paint(surface, area);
    const hero = guide.looks.find(({ favourite }) => favourite) ?? guide.looks[0];
    const top = area.y + head.height(area.width) + COVER_GAP;
    const names = hero === undefined ? [] : job.names(piecesToName(hero));
    const caption = stack(
      names.length === 0 ? [] : [space(1), tagged('P', text(setter, job.formats.list(names), types.key)), space(1)],
    );
    const below = caption.height(area.width);
    const frame = { width: area.width, height: size.height - BAND - COVER_GAP - top - below };
    if (hero !== undefined && frame.height > LEAST_HERO) {
      layPicture(job, hero, frame).paint(surface, { ...area, y: top, height: frame.height });
      caption.paint(surface, { ...area, y: top + frame.height, height: below });
    }
    const left = fold ? 0 : bleed;
    paletteBand(job, surface, {
      x: -left,
      y: size.height - BAND,
      width: size.width + left + bleed,
      height: BAND + bleed,
    });
  },
});

/** Round the pieces on the back, millimetres. */
const BACK_GAP = 8;
/** A cell of them is so much taller than wide, and a piece fills a share of it. */
const UPRIGHT = 1.15;
const PIECE_SHARE = 0.82;
/** Columns: on an upright page a little fewer than rows. */
const LEAST_ACROSS = 3;
const ACROSS_OF_SQUARE = 0.9;

/** Every piece once, small, over the back: what the booklet was about. */
const allPieces = (job: Job, surface: Surface, area: Area): void => {
  const { pieces } = job.guide;
  const across = Math.max(LEAST_ACROSS, Math.ceil(Math.sqrt(pieces.length * ACROSS_OF_SQUARE)));
  const rows = Math.ceil(pieces.length / across);
  const width = Math.min(area.width / across, area.height / rows / UPRIGHT);
  const height = width * UPRIGHT;
  surface.artifact(() => {
    pieces.forEach((piece, index) => {
      paintThumbnail(surface, job.art(piece, 'full', 0.3), {
        x: area.x + (index % across) * width,
        y: area.y + Math.floor(index / across) * height,
        width: width * PIECE_SHARE,
        height: height * PIECE_SHARE,
      });
    });
  });
};

/** The back: every piece once, who made it, and the palette as on the front. `fold` as there, at the right. */
export const backPage = (job: Job, size: Size, bleed: number, fold: boolean): BookPage => ({
  bare: true,
  paint: (surface, page) => {
    const { types, inks, guide } = job;
    const words = [guide.studio.name, guide.studio.line].filter((line) => line !== '');
    const block = stack(
      words.map((line, index) =>
        tagged('P', text(job.press.setter, line, index === 0 ? types.panel : inked(types.text, inks.soft))),
      ),
      1.5,
    );
    const area = bookArea(size, page);
    const height = block.height(area.width);
    const foot = size.height - BAND - BACK_GAP - height;
    block.paint(surface, { ...area, y: foot, height });
    if (guide.pieces.length > 0) allPieces(job, surface, { ...area, height: foot - BACK_GAP - area.y });
    paletteBand(job, surface, {
      x: -bleed,
      y: size.height - BAND,
      width: size.width + bleed + (fold ? 0 : bleed),
      height: BAND + bleed,
    });
  },
});

const swatches = (job: Job, high: number): Block => {
  const { setter } = job.press;
  const palette = paletteOf(job);
  const cells = palette.map(
    ({ name, hex }): Block =>
      stack([
        drawn(high, (surface, { x, y, width }) =>
          surface.artifact(() =>
            surface.rectangle(
              { x, y, width, height: high },
              { fill: hex, stroke: { colour: job.inks.hair, width: 0.25 } },
            ),
          ),
        ),
        space(1.4),
        tagged(
          'P',
          text(
            setter,
            job.say('colours of piece', { colours: [name] }),
            inked(resized(job.types.kind, 8.4), job.inks.ink),
          ),
        ),
      ]),
  );
  return grid(cells, 5, { across: 2, down: 3 });
};

/** Heights of a swatch, millimetres, as far as the page has room. */
const SWATCHES = [48, 44, 40, 36, 32, 28, 24, 20, 15];

/** Palette, the mood in words, and why it was chosen. */
export const palettePart = (job: Job, size: Size): readonly BookPage[] =>
  roomiest(SWATCHES, (high) => paletteWith(job, size, high));

const paletteWith = (job: Job, size: Size, high: number): readonly BookPage[] => {
  const { setter } = job.press;
  const { types, inks, guide } = job;
  const { words } = guide.capsule.mood;
  const items: FlowItem[] = [
    { block: swatches(job, high) },
    ...(words.length > 0
      ? [
          {
            block: tagged(
              'P',
              text(setter, `${job.formats.list(words)}.`, inked(resized(types.kind, 11), inks.thread)),
            ),
            above: 5,
          },
        ]
      : []),
    ...prose(setter, guide.brief.introduction, proseTypes(job, 10)),
    ...prose(setter, guide.capsule.rationale, proseTypes(job, 10)),
    ...guide.palette.summary.map(
      (sentence, index): FlowItem => ({
        block: tagged('P', text(setter, job.sayPhrase(sentence), resized(types.text, 8.2))),
        above: index === 0 ? 5 : 1.4,
      }),
    ),
    {
      block: tagged(
        'P',
        text(
          setter,
          job.say('looks counted', {
            layered: job.formats.count(guide.counts.layered),
            complete: job.formats.count(guide.counts.complete),
          }),
          types.key,
        ),
      ),
      above: 5,
    },
  ];
  return flowingPart(job, size, job.say('palette'), items);
};
