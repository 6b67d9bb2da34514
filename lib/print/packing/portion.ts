import { LIQUIDS } from '../../bag/index.ts';
import type { Job } from '../job.ts';
import { type Block, banded, type Cell, drawn, row, stack, tagged } from '../set/block.ts';
import { text, widthOf } from '../set/text.ts';
import { inked, resized } from '../types.ts';
import type { Density, Portion } from './fit.ts';
import { linesOf, type PackGroup, type PackSection } from './lines.ts';

import {
  artWidth,
  COUNT,
  figures,
  GAP,
  GRAMS,
  JOURNEY_COLUMN,
  type Journeys,
  journeysBeside,
  journeyWidth,
  lineBlock,
  MILLILITRES,
  MOST_JOURNEY_COLUMNS,
} from './rows.ts';

const columnHeads = (
  job: Job,
  section: PackSection,
  title: string,
  journeys: Journeys,
  density: Density,
  full: boolean,
): Block => {
  const { setter } = job.press;
  const { types, inks } = job;
  const kind = text(setter, title, resized(types.kind, density.row >= 6.4 ? 8.6 : 7.6));
  if (!full)
    return tagged(
      'TR',
      banded(
        tagged('TH', kind, { scope: 'Column', columnSpan: journeys.dates.length > 0 ? 5 : 4 }),
        density.kind,
        'bottom',
      ),
    );
  const heads: Cell[] = [
    { width: { share: 1 }, block: tagged('TH', kind, { scope: 'Column', columnSpan: 2 }), stand: 'bottom' },
  ];
  if (journeys.dates.length > 0) {
    const type = inked(types.key, inks.thread);
    const many = journeys.dates.length > MOST_JOURNEY_COLUMNS;
    const word = many ? job.say('times journeys', { word: journeys.word }) : journeys.word;
    const width = widthOf(setter, word, type) + (many ? 0 : 1.2);
    const dates = drawn(2.4, (surface, { x, y }) => {
      journeys.dates.forEach((date, index) => {
        const day = setter.line([{ text: `${index === 0 ? '' : ' '}${Number(date.slice(8))}`, type }]);
        const lead = index === 0 ? 0 : setter.line([{ text: ' ', type }]).width;
        surface.text(day.runs, x + (index + 0.5) * JOURNEY_COLUMN - (day.width - lead) / 2 - lead, y + 1.83);
      });
    });
    const both = many
      ? text(setter, word, type, { align: 'right' })
      : row([
          { width, block: text(setter, `${word} `, type) },
          { width: { share: 1 }, block: dates },
        ]);
    heads.push({
      width: journeyWidth(job, journeys) + (many ? 0 : width),
      block: tagged('TH', both, { scope: 'Column' }),
      stand: 'bottom',
    });
  }
  const unit = job.guide.studio.weight === 'lb' ? job.say('head ounces') : job.say('head grams');
  heads.push(
    {
      width: section.liquids ? MILLILITRES : COUNT,
      block: tagged(
        'TH',
        text(setter, section.liquids ? job.say('head millilitres') : job.say('head number'), types.key, {
          align: 'right',
        }),
        { scope: 'Column' },
      ),
      stand: 'bottom',
    },
    {
      width: GRAMS,
      block: tagged('TH', figures(text(setter, unit, types.key, { align: 'right' })), { scope: 'Column' }),
      stand: 'bottom',
    },
  );
  return tagged('TR', banded(row(heads, { gap: GAP }), density.kind, 'bottom'));
};

const underlined = (job: Job, block: Block, last: boolean, density: Density): Block => ({
  height: block.height,
  paint: (surface, area) => {
    block.paint(surface, area);
    if (last) return;
    const x = area.x + density.tick + artWidth(density) + 2 * GAP;
    const y = area.y + area.height;
    surface.artifact(() => surface.line(x, y, area.x + area.width, y, { colour: job.inks.faint, width: 0.35 }));
  },
});

const groupBlocks = (
  job: Job,
  portion: Portion,
  group: PackGroup,
  first: boolean,
  journeys: Journeys,
  density: Density,
): readonly Block[] => [
  padBelow(columnHeads(job, portion.section, group.title, journeys, density, first), density),
  ...group.lines.map((line, index) =>
    underlined(
      job,
      lineBlock(job, line, portion.section, journeys, density),
      index === group.lines.length - 1,
      density,
    ),
  ),
];

/** Heads stand a little above the first line, inside their own height. */
const padBelow = (block: Block, { kind }: Density): Block => ({
  height: () => kind,
  paint: (surface, area) => block.paint(surface, { ...area, height: kind - (kind >= 5.5 ? 0.9 : 0.4) }),
});

/** A bag's name takes no more than this of its line, millimetres. */
const LONGEST_TITLE = 48;
/** Between a bag's name, its note and its weight. */
const HEAD_GAP = 3;

const sectionHead = (job: Job, { section, continued }: Portion, density: Density): Block => {
  const { setter } = job.press;
  const { types, inks } = job;
  const title = continued ? job.say('continued', { title: section.title }) : section.title;
  const type = resized(types.section, density.head >= 7.6 ? 14 : density.head >= 6.6 ? 12 : 11);
  const titleWidth = widthOf(setter, title, type);
  const kilograms = job.formats.kilograms(section.grams / 1000);
  const heading = tagged('H2', text(setter, title, type));
  const weightWidth = widthOf(setter, kilograms, types.factStrong) + 0.2;
  const noteIn = (width: number): string => {
    const room = width - Math.min(titleWidth + 0.5, LONGEST_TITLE) - weightWidth - 2 * HEAD_GAP;
    return widthOf(setter, section.note, types.key) <= room ? section.note : (section.shortNote ?? section.note);
  };
  const partsIn = (width: number): readonly Cell[] =>
    continued
      ? [{ width: { share: 1 }, block: heading, stand: 'bottom' }]
      : [
          { width: Math.min(titleWidth + 0.5, LONGEST_TITLE), block: heading, stand: 'bottom' },
          { width: { share: 1 }, block: padLift(tagged('P', text(setter, noteIn(width), types.key))), stand: 'bottom' },
          {
            width: weightWidth,
            block: padLift(tagged('P', text(setter, kilograms, types.factStrong))),
            stand: 'bottom',
          },
        ];
  return {
    height: () => density.head,
    paint: (surface, area) => {
      row(partsIn(area.width), { gap: HEAD_GAP }).paint(surface, { ...area, height: density.head - 1.4 });
      const y = area.y + density.head - 1;
      surface.artifact(() => surface.line(area.x, y, area.x + area.width, y, { colour: inks.ink, width: 0.6 }));
    },
  };
};

/** Small type on the baseline of the title beside it. */
const padLift = (block: Block): Block => ({
  height: (width) => block.height(width) + 0.55,
  paint: (surface, area) => block.paint(surface, area),
});

const LIQUID_SCALE = 8;

const liquidScale = (job: Job, section: PackSection): Block => {
  const { setter } = job.press;
  const { inks, types } = job;
  const filled = linesOf(section).reduce((sum, line) => sum + (line.millilitres ?? 0), 0);
  const label = job.say('millilitres filled', { filled, limit: LIQUIDS.bagMl });
  return {
    height: () => LIQUID_SCALE,
    paint: (surface, { x, y, width }) => {
      const top = y + 1.8;
      surface.artifact(() => {
        surface.line(x, top, x + width, top, { colour: inks.hair, width: 0.4 });
        for (let mark = 0; mark <= 10; mark++) {
          const at = x + (width * mark) / 10;
          surface.line(at, top, at, top + (mark % 5 === 0 ? 1.4 : 0.8), { colour: inks.hair, width: 0.3 });
        }
        const share = Math.min(1, filled / LIQUIDS.bagMl);
        if (share > 0)
          surface.line(x, top, x + width * share, top, {
            colour: filled > LIQUIDS.bagMl ? inks.thread : inks.water,
            width: 1.6,
          });
      });
      const type = inked(types.key, filled > LIQUIDS.bagMl ? inks.thread : inks.water);
      tagged('P', text(setter, label, type)).paint(surface, { x, y: top + 2.4, width, height: 3 });
    },
  };
};

/** Height of what stands under the last line of a section. */
export const tailHeight = (section: PackSection): number => (section.limited === true ? LIQUID_SCALE : 0);

/** A stretch of a section: its head, its groups with their lines, and the scale of its liquids. */
export const portionBlock = (job: Job, portion: Portion, all: Journeys, density: Density): Block => {
  const journeys = journeysBeside(
    portion.groups.flatMap(({ lines }) => lines),
    all,
  );
  const table = stack(
    portion.groups.flatMap((group, index) => groupBlocks(job, portion, group, index === 0, journeys, density)),
  );
  return tagged(
    'Sect',
    stack([
      sectionHead(job, portion, density),
      tagged('Table', table),
      ...(portion.section.limited === true && portion.last ? [liquidScale(job, portion.section)] : []),
    ]),
  );
};
