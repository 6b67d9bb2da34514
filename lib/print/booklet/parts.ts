import type { NamedColour, Piece } from '../../model/index.ts';
import type { Job } from '../job.ts';
import type { Area, Size } from '../paper.ts';
import { fitIn, type Picture } from '../pdf/pictures.ts';
import type { Surface } from '../pdf/surface.ts';
import { type Block, type Cell, drawn, grid, row, type SharedTag, space, stack, tagged } from '../set/block.ts';
import type { FlowItem } from '../set/flow.ts';
import { type ProseTypes, prose } from '../set/markdown.ts';
import { stitch } from '../set/ornament.ts';
import { text } from '../set/text.ts';
import { paintThumbnail } from '../thumbnail.ts';
import { inked, resized } from '../types.ts';
import { layPicture, smallLook, wideLook } from './look-block.ts';
import { type BookPage, bookArea, bookMeasure, flowingPart, partHead } from './pages.ts';

export const proseTypes = (job: Job, points: number): ProseTypes => {
  const roman = resized(job.types.prose, points);
  return {
    roman,
    italic: { ...roman, style: 'title italic' },
    strong: { ...roman, style: 'serif' },
    heading: resized(job.types.panel, points + 1.5),
  };
};

const smallProse = (job: Job): ProseTypes => {
  const roman = resized(job.types.text, 7.8);
  return {
    roman,
    italic: { ...roman, style: 'text italic' },
    strong: { ...roman, style: 'text medium' },
    heading: { ...roman, style: 'text semibold' },
  };
};

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
    const frame = { width: area.width, height: size.height - BAND - COVER_GAP - top };
    if (hero !== undefined && frame.height > LEAST_HERO) {
      layPicture(job, hero, frame).paint(surface, { ...area, y: top, height: frame.height });
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

export const backPage = (job: Job, size: Size): BookPage => ({
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
    block.paint(surface, { ...area, y: area.y + area.height - height, height });
  },
});

const swatches = (job: Job): Block => {
  const { setter } = job.press;
  const palette = paletteOf(job);
  const cells = palette.map(
    ({ name, hex }): Block =>
      stack([
        drawn(15, (surface, { x, y, width }) =>
          surface.artifact(() =>
            surface.rectangle(
              { x, y, width, height: 15 },
              { fill: hex, stroke: { colour: job.inks.hair, width: 0.25 } },
            ),
          ),
        ),
        space(1.4),
        tagged('P', text(setter, name, inked(resized(job.types.kind, 8.4), job.inks.ink))),
      ]),
  );
  return grid(cells, 5, { across: 2, down: 3 });
};

/** Palette, the mood in words, and why it was chosen. */
export const palettePart = (job: Job, size: Size): readonly BookPage[] => {
  const { setter } = job.press;
  const { types, inks, guide } = job;
  const { words } = guide.capsule.mood;
  const items: FlowItem[] = [
    { block: swatches(job) },
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

const PICTURE = { width: 21, height: 25 };

const pieceCell = (job: Job, piece: Piece, photo: Picture | undefined): Block => {
  const { setter } = job.press;
  const { types } = job;
  const colour = job.formats.list(piece.colours.map(({ name }) => name));
  const alt =
    photo === undefined
      ? job.say('piece drawing', { name: piece.name, colour })
      : job.say('piece photo', { name: piece.name });
  const picture = drawn(PICTURE.height, (surface, area) =>
    surface.tag('Figure', { alt }, () => {
      if (photo === undefined) paintThumbnail(surface, job.art(piece, 'full', 0.3), area);
      else surface.picture(photo.ref, fitIn(photo.size, area));
    }),
  );
  const note = prose(setter, piece.note, smallProse(job)).map(({ block }) => block);
  const words = stack(
    [
      tagged('P', text(setter, piece.name, resized(types.panel, 9.6))),
      tagged('P', text(setter, `${colour}, ${piece.fabricText}`, types.key)),
      ...note,
    ],
    1,
  );
  return tagged(
    'LI',
    tagged(
      'LBody',
      row(
        [
          { width: PICTURE.width, block: picture },
          { width: { share: 1 }, block: words, stand: 'middle' },
        ],
        { gap: 2.5 },
      ),
    ),
  );
};

/** Every piece with its picture, colour, cloth and the stylist's note. */
export const piecesPart = (job: Job, size: Size, photos: ReadonlyMap<string, Picture>): readonly BookPage[] => {
  const { pieces } = job.guide;
  const rows: FlowItem[] = [];
  const list: SharedTag = {};
  for (let at = 0; at < pieces.length; at += 2) {
    const pair = pieces.slice(at, at + 2);
    const cells = [0, 1].map((index): Cell => {
      const piece = pair[index];
      return {
        width: { share: 1 },
        block: piece === undefined ? space(0) : pieceCell(job, piece, photos.get(piece.id)),
        stand: 'middle',
      };
    });
    rows.push({ block: tagged('L', row(cells, { gap: 4 }), {}, list), above: 3 });
  }
  const empty: FlowItem = { block: tagged('P', text(job.press.setter, job.say('no pieces'), job.types.fact)) };
  return flowingPart(job, size, job.say('the pieces'), rows.length > 0 ? rows : [empty]);
};

const LOOK_GAP = 6;

/** The looks, two or four to a page. */
export const looksPart = (job: Job, size: Size, aPage: 2 | 4): readonly BookPage[] => {
  const { looks } = job.guide;
  const { setter } = job.press;
  const measure = bookMeasure(size);
  const title = job.say('the looks');
  const head = partHead(job, title);
  if (looks.length === 0) {
    return flowingPart(job, size, title, [{ block: tagged('P', text(setter, job.say('no looks'), job.types.fact)) }]);
  }
  return Array.from({ length: Math.ceil(looks.length / aPage) }, (_, index): BookPage => {
    const some = looks.slice(index * aPage, (index + 1) * aPage);
    return {
      ...(index === 0 ? { bookmark: { title, level: 1 } } : {}),
      paint: (surface, page) => {
        const area = bookArea(size, page);
        const taken = index === 0 ? head.height(measure.width) : 0;
        if (index === 0) head.paint(surface, area);
        const height = (measure.height - taken - LOOK_GAP) / 2;
        const cell: Size = { width: aPage === 2 ? measure.width : (measure.width - LOOK_GAP) / 2, height };
        const blocks = some.map((look): Block => {
          if (aPage === 4) return smallLook(job, look, cell);
          const note = prose(setter, look.note, smallProse(job)).map(({ block }) => block);
          return wideLook(job, look, cell, note.length > 0 ? stack(note, 1) : undefined);
        });
        grid(blocks, aPage === 2 ? 1 : 2, { across: LOOK_GAP, down: LOOK_GAP }).paint(surface, {
          ...area,
          y: area.y + taken,
          height: measure.height - taken,
        });
      },
    };
  });
};

/** Which look on which occasion: the plan in a few lines. */
export const daysPart = (job: Job, size: Size): readonly BookPage[] => {
  const { guide, types, inks, formats } = job;
  const { setter } = job.press;
  const numbers = new Map(guide.looks.map(({ look, number }) => [look.id, number]));
  const occasions = new Map(guide.brief.occasions.map((occasion) => [occasion.id, occasion]));
  if (guide.plan.days.length === 0) return [];
  const items = guide.plan.days.map((day): FlowItem => {
    const lines = day.occasions.map((planned): Block => {
      const number = planned.look === undefined ? undefined : numbers.get(planned.look.id);
      const worn =
        planned.look === undefined
          ? job.say('no look')
          : formats.list(job.names(planned.look.worn.map(({ piece }) => piece)));
      const shown = number === undefined ? '–' : String(number);
      return tagged(
        'LI',
        row(
          [
            {
              width: 8,
              block: tagged(
                'Lbl',
                text(setter, shown, inked({ ...resized(types.title, 13), style: 'title italic' }, inks.thread)),
              ),
            },
            {
              width: { share: 1 },
              block: tagged(
                'LBody',
                stack(
                  [
                    tagged('P', text(setter, occasions.get(planned.occasion)?.what ?? planned.occasion, types.text)),
                    ...(number === undefined || planned.look === undefined
                      ? [tagged('P', text(setter, worn, types.key))]
                      : []),
                  ],
                  0.8,
                ),
              ),
            },
          ],
          { gap: 1 },
        ),
      );
    });
    const heading = [formats.date(day.date), ...(day.place === undefined ? [] : [day.place])].join(', ');
    return {
      block: stack([
        tagged('H3', text(setter, heading, resized(types.kind, 9.5))),
        space(1.4),
        lines.length > 0 ? tagged('L', stack(lines, 1.4)) : tagged('P', text(setter, job.say('free day'), types.text)),
      ]),
      above: 4.5,
    };
  });
  return flowingPart(job, size, job.say('the days'), items);
};

const RULE_STEP = 8.4;

/** Lines to write on. */
const ruledLines = (job: Job, height: number): Block =>
  drawn(height, (surface, { x, y, width }) =>
    surface.artifact(() => {
      for (let at = RULE_STEP; at <= height; at += RULE_STEP) {
        surface.line(x, y + at, x + width, y + at, { colour: job.inks.hair, width: 0.3 });
      }
    }),
  );

/** A page to write on, where folding leaves one over. */
export const notesPage = (job: Job, size: Size): BookPage => ({
  paint: (surface, page) => {
    const area = bookArea(size, page);
    const head = partHead(job, job.say('notes'));
    const taken = head.height(area.width);
    head.paint(surface, area);
    ruledLines(job, area.height - taken).paint(surface, { ...area, y: area.y + taken, height: area.height - taken });
  },
});

/** Cautions of the brief and the plan, each once, and the usual deferral. */
export const cautionsPart = (job: Job, size: Size): readonly BookPage[] => {
  const { guide, types } = job;
  const { setter } = job.press;
  const said = [
    ...guide.brief.cautions,
    ...guide.plan.days.flatMap(({ occasions }) => occasions.flatMap(({ cautions }) => cautions.map(job.sayPhrase))),
    ...guide.packing.notes.map(job.sayPhrase),
  ];
  const rows = [...new Set(said)].map((caution) =>
    tagged(
      'LI',
      row([
        { width: 4, block: tagged('Lbl', text(setter, '–', types.text)) },
        { width: { share: 1 }, block: tagged('LBody', text(setter, caution, types.text)) },
      ]),
    ),
  );
  const shared: SharedTag = {};
  const list: FlowItem[] = rows.map((block) => ({ block: tagged('L', block, {}, shared), above: 2 }));
  return flowingPart(job, size, job.say('cautions'), [
    ...list,
    { block: tagged('P', text(setter, job.say('cautions closing'), types.key)), above: 5 },
    { block: tagged('H3', text(setter, job.say('own notes'), types.panel)), above: 9, withNext: true },
    { block: ruledLines(job, 42) },
  ]);
};
