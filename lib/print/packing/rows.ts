import type { IsoDate } from '../../model/index.ts';
import { phrase } from '../../words/index.ts';
import type { Job } from '../job.ts';
import { type Area, inset } from '../paper.ts';
import type { Surface } from '../pdf/surface.ts';
import { type Block, type Cell, drawn, padded, row, space, tagged, unread } from '../set/block.ts';
import { button, estimateMark } from '../set/ornament.ts';
import { sign } from '../set/signs.ts';
import { text, widthOf } from '../set/text.ts';
import { paintIcon, paintThumbnail } from '../thumbnail.ts';
import { inked, resized } from '../types.ts';
import type { Density } from './fit.ts';
import type { Fold, PackLine, PackSection } from './lines.ts';

/** The journeys of the trip, as columns of a list. */
export interface Journeys {
  readonly word: string;
  readonly dates: readonly IsoDate[];
}

/** The journeys to show beside these lines: none when nothing of them is worn on any. */
export const journeysBeside = (lines: readonly PackLine[], journeys: Journeys): Journeys =>
  lines.some(({ wornOn }) => wornOn.length > 0) ? journeys : { ...journeys, dates: [] };

/** More journeys than this are counted instead of shown one by one. */
export const MOST_JOURNEY_COLUMNS = 6;

export const JOURNEY_COLUMN = 3.3;
export const GAP = 1.6;
/** How the piece goes in, then how many there are of it. */
export const COUNT = 7.4;
export const MILLILITRES = 8;
/** Figures with the estimate's mark after them. */
export const GRAMS = 11.4;
/** What the mark takes of it. */
const MARK = 3;
const MARK_GAP = 0.7;
/** A side of the sign, millimetres. */
export const FOLD_SIGN = 3.2;
/** Above and below a name of several lines, together. */
const LEAST_AIR = 1.2;
/** A picture may reach a little into the air of its row. */
const ART_REACH = 0.3;

export const artWidth = ({ row: height }: Density): number => Math.min(9, height * 1.2);

const gramsText = (job: Job, grams: number): string =>
  job.guide.studio.weight === 'lb' ? job.formats.number(grams / 28.349523125, 1) : job.formats.number(grams, 0);

export const journeyWidth = (job: Job, journeys: Journeys): number =>
  journeys.dates.length > MOST_JOURNEY_COLUMNS
    ? widthOf(job.press.setter, job.say('times journeys', { word: journeys.word }), job.types.key) + 1
    : journeys.dates.length * JOURNEY_COLUMN;

/** A long coat fills a row; an icon is drawn on a square of 2.4 cm. */
const COAT = 70;
const ICON = 2.4;
const ICON_SHARE = 0.86;

const paintArt = (job: Job, line: PackLine, density: Density, surface: Surface, area: Area): void => {
  const box = inset(area, { top: -ART_REACH, bottom: -ART_REACH });
  if (line.art.is === 'piece') {
    paintThumbnail(surface, job.art(job.piece(line.art.piece), 'small', density.row / COAT), box);
    return;
  }
  const icon = job.sundryArt(line.art.packed.sundry, density.row / ICON);
  const spare = (box.height * (1 - ICON_SHARE)) / 2;
  if (icon !== undefined) paintIcon(surface, icon, inset(box, { top: spare, bottom: spare }));
};

const figure = (alt: string, height: number, paint: Parameters<typeof drawn>[1]): Block =>
  tagged('Figure', drawn(height, paint), { alt });

const journeyCell = (job: Job, line: PackLine, { word, dates }: Journeys, density: Density): Block => {
  const { setter } = job.press;
  if (dates.length > MOST_JOURNEY_COLUMNS) {
    const times = line.wornOn.length === 0 ? '' : `${job.formats.count(line.wornOn.length)} ×`;
    return times === ''
      ? space(0)
      : text(setter, times, inked(resized(job.types.fact, density.points), job.inks.thread), { align: 'right' });
  }
  if (line.wornOn.length === 0) return space(0);
  const radius = Math.min(1.15, density.row * 0.16);
  const alt = job.say('worn on', { word, dates: line.wornOn.map(job.formats.dateShort) });
  return figure(alt, radius * 2, (surface, { x, y }) => {
    dates.forEach((date, index) => {
      if (line.wornOn.includes(date))
        button(surface, x + (index + 0.5) * JOURNEY_COLUMN, y + radius, radius, job.inks.thread);
    });
  });
};

const tickCell = (job: Job, line: PackLine, section: PackSection, { tick }: Density): Block =>
  drawn(tick, (surface, { x, y }) =>
    job.press.ticks.add(
      surface,
      { x, y, width: tick, height: tick },
      {
        name: `${section.id}-${line.id}`,
        label: job.say('tick label', { name: line.name, count: line.count }),
        ink: job.inks.ink,
        tick: job.inks.thread,
      },
    ),
  );

/** Figures of the last column: the estimate's mark keeps its room at the edge, so that all figures end level. */
export const figures = (block: Block): Block => padded(block, { right: MARK });

const gramsCell = (job: Job, line: PackLine, density: Density): Block => {
  const type = resized(job.types.fact, density.points);
  const grams = figures(text(job.press.setter, gramsText(job, line.grams.value), type, { align: 'right' }));
  if (line.grams.basis === 'given') return grams;
  return {
    height: grams.height,
    paint: (surface, area) => {
      grams.paint(surface, area);
      surface.tag('Figure', { alt: job.say('estimated') }, () =>
        estimateMark(surface, area.x + area.width - MARK + MARK_GAP, area.y + area.height - 0.85, job.inks.soft),
      );
    },
  };
};

export const foldWords = (job: Job, fold: Fold): string => job.sayPhrase(phrase('bag', `fold ${fold}`, {}));

export const foldSign = (job: Job, surface: Surface, fold: Fold, x: number, y: number): void =>
  sign(surface, fold, { x, y, size: FOLD_SIGN, colour: job.inks.soft, width: 0.55 });

/** How many, and before it the sign of how it goes in. */
const countCell = (job: Job, { fold }: PackLine, count: Block): Block => {
  if (fold === undefined) return count;
  return {
    height: count.height,
    paint: (surface, area) => {
      const y = area.y + (area.height - FOLD_SIGN) / 2;
      surface.tag('Figure', { alt: foldWords(job, fold) }, () => foldSign(job, surface, fold, area.x, y));
      count.paint(surface, area);
    },
  };
};

/** One line to tick. */
export const lineBlock = (
  job: Job,
  line: PackLine,
  section: PackSection,
  journeys: Journeys,
  density: Density,
): Block => {
  const { setter } = job.press;
  const fact = resized(job.types.fact, density.points);
  const shown = section.liquids ? line.millilitres : line.count;
  const strong = shown !== undefined && (shown > 1 || section.liquids);
  const artCell = unread(
    drawn(density.row - LEAST_AIR, (surface, area) => paintArt(job, line, density, surface, area)),
  );
  const name = tagged('TH', text(setter, line.name, fact), { scope: 'Row' });
  const count = shown === undefined ? '' : job.formats.number(shown, 0);
  const countType = strong ? resized(job.types.factStrong, density.points) : inked(fact, job.inks.soft);
  const cells: Cell[] = [
    { width: density.tick, block: tagged('TD', tickCell(job, line, section, density)), stand: 'middle' },
    { width: artWidth(density), block: artCell, stand: 'middle' },
    { width: { share: 1 }, block: name, stand: 'middle' },
    ...(journeys.dates.length > 0
      ? [
          {
            // A name may run on where no journey is marked.
            width: line.wornOn.length === 0 ? 0 : journeyWidth(job, journeys),
            block: tagged('TD', journeyCell(job, line, journeys, density)),
            stand: 'middle',
          } as const,
        ]
      : []),
    {
      width: section.liquids ? MILLILITRES : COUNT,
      block: tagged(
        'TD',
        countCell(job, line, text(setter, count === '' ? '–' : count, countType, { align: 'right' })),
      ),
      stand: 'middle',
    },
    { width: GRAMS, block: tagged('TD', gramsCell(job, line, density)), stand: 'middle' },
  ];
  const inner = row(cells, { gap: GAP });
  return {
    height: (width) => Math.max(density.row, inner.height(width) + LEAST_AIR),
    paint: (surface, area) => surface.tag('TR', {}, () => inner.paint(surface, area)),
  };
};
