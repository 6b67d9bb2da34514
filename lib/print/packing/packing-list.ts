import type { Guide } from '../../guide/record.ts';
import { phrase } from '../../words/index.ts';
import { finishJob, type Job, type PaperChoice, type Printed, type PrintSources, startJob } from '../job.ts';
import { type Orientation, PAPERS, type Size, turn } from '../paper.ts';
import { type Block, type Cell, row, stack, tagged } from '../set/block.ts';
import { text } from '../set/text.ts';
import { bodyArea, GUTTER, MARGINS, runningHead, sheetFurniture, sheetHead } from '../sheet-head.ts';
import { DENSITIES, type Density, densityOf, fillColumns, type Heights, levelColumns, type Portion } from './fit.ts';
import { listFoot } from './foot.ts';
import { journeyDates, journeyWord, linesOf, type PackSection, packSections } from './lines.ts';
import { portionBlock, tailHeight } from './portion.ts';
import { type Journeys, journeysBeside, lineBlock } from './rows.ts';

const COLUMNS: Readonly<Record<Orientation, number>> = { portrait: 2, landscape: 3 };
const HEAD_GAP = 3;
const FOOT_GAP = 2;
/** Rows of a list that no longer fits one page: there is no reason to crowd it. */
const ROWS_OF_MANY_PAGES = [7.6, 7.2, 6.8, 6.4, 6, 5.6];
const MOST_PAGES = 500;

const head = (job: Job, sections: readonly PackSection[], width: number): Block => {
  const { brief, capsule } = job.guide;
  const lines = sections.flatMap(linesOf);
  const pieces = lines.filter(({ art }) => art.is === 'piece').length;
  return sheetHead(
    job,
    {
      eyebrow: job.say('packing title', { traveller: capsule.traveller }),
      title: brief.title,
      facts: [
        job.say('dates of trip', { from: brief.from, to: brief.to }),
        job.say('list counts', { pieces, things: lines.length - pieces }),
      ],
    },
    width,
  );
};

const heightsIn = (job: Job, sections: readonly PackSection[], journeys: Journeys, width: number): Heights => {
  const known = new Map<string, number>();
  const owner = new Map(sections.flatMap((section) => linesOf(section).map((line) => [line, section] as const)));
  return {
    line: (line, density) => {
      const section = owner.get(line);
      if (section === undefined) return density.row;
      const key = `${section.id} ${line.id} ${density.row}`;
      const height =
        known.get(key) ??
        lineBlock(job, line, section, journeysBeside(linesOf(section), journeys), density).height(width);
      known.set(key, height);
      return height;
    },
    tail: tailHeight,
  };
};

interface Fitted {
  readonly density: Density;
  readonly pages: readonly (readonly (readonly Portion[])[])[];
}

/** One page at the roomiest density that holds everything, else as many pages as it takes. */
const fitPages = (
  sections: readonly PackSection[],
  columns: number,
  room: { first: number; begin: number; next: number; last: number },
  heights: Heights,
): Fitted => {
  for (const how of DENSITIES) {
    const filled = levelColumns(sections, how, columns, room.first, heights);
    if (filled !== undefined) return { density: how.density, pages: [filled] };
  }
  for (let pages = 2; ; pages++) {
    const rooms = Array.from({ length: pages * columns }, (_, column) => {
      const page = Math.floor(column / columns);
      return page === pages - 1 ? room.last : page === 0 ? room.begin : room.next;
    });
    for (const row of ROWS_OF_MANY_PAGES) {
      const density = densityOf(row);
      const filled = fillColumns(sections, { density, whole: false }, rooms, heights);
      if (filled === undefined) continue;
      return {
        density,
        pages: Array.from({ length: pages }, (_, page) => filled.slice(page * columns, (page + 1) * columns)),
      };
    }
    if (pages > MOST_PAGES) throw new Error('a line of the packing list is higher than a page');
  }
};

/** Most that the space between bags opens to level a shorter column, millimetres. */
const MOST_LEVELLING = 6;

/** Columns side by side; the shorter ones open between their bags to end about level with the longest. */
const columnsBlock = (
  job: Job,
  columns: readonly (readonly Portion[])[],
  count: number,
  journeys: Journeys,
  density: Density,
): Block => {
  const blocks = columns.map((portions) => portions.map((portion) => portionBlock(job, portion, journeys, density)));
  const cells = (width: number): readonly Cell[] => {
    const heights = blocks.map((column) => stack(column, density.gap).height(width));
    const longest = Math.max(0, ...heights);
    return Array.from({ length: count }, (_, index): Cell => {
      const column = blocks[index] ?? [];
      const missing = (longest - (heights[index] ?? 0)) / Math.max(1, column.length - 1);
      return { width: { share: 1 }, block: stack(column, density.gap + Math.min(MOST_LEVELLING, missing)) };
    });
  };
  const across = (width: number): Block => row(cells((width - GUTTER * (count - 1)) / count), { gap: GUTTER });
  return {
    height: (width) => across(width).height(width),
    paint: (surface, area) => across(area.width).paint(surface, area),
  };
};

/** The packing list: what is packed where, to tick on paper or on screen. One page for up to some sixty lines. */
export const packingListPdf = async (
  guide: Guide,
  sources: PrintSources,
  choice: PaperChoice = {},
): Promise<Printed> => {
  const job = await startJob(guide, sources, 'packing title');
  const orientation = choice.orientation ?? 'portrait';
  const size: Size = turn(PAPERS[choice.paper ?? guide.studio.paper], orientation);
  const count = COLUMNS[orientation];
  const body = bodyArea(size);
  const sections = packSections(job);
  const journeys: Journeys = { word: journeyWord(job), dates: journeyDates(guide) };
  const header = head(job, sections, body.width);
  const running = runningHead(job, job.say('packing title', { traveller: guide.capsule.traveller }));
  const footer = listFoot(job, sections, count);
  const above = (page: number): number => (page === 0 ? header : running).height(body.width) + HEAD_GAP;
  const below = footer.height(body.width) + FOOT_GAP;
  const width = (body.width - GUTTER * (count - 1)) / count;
  const room = {
    first: body.height - above(0) - below,
    begin: body.height - above(0),
    next: body.height - above(1),
    last: body.height - above(1) - below,
  };
  const { density, pages } = fitPages(sections, count, room, heightsIn(job, sections, journeys, width));
  pages.forEach((columns, page) => {
    const surface = job.press.addPage(size);
    const last = page === pages.length - 1;
    const top = page === 0 ? header : running;
    top.paint(surface, { ...body, height: top.height(body.width) });
    const y = body.y + above(page);
    job.press.bookmark(
      page === 0
        ? job.say('packing title', { traveller: guide.capsule.traveller })
        : job.say('page of', { page: page + 1, pages: pages.length }),
      1,
      surface,
      0,
    );
    if (page === 0)
      for (const section of sections)
        if (pageOf(pages, section) === 0) job.press.bookmark(section.title, 2, surface, y);
    if (sections.length === 0)
      tagged('P', text(job.press.setter, job.say('nothing packed'), job.types.fact)).paint(surface, {
        ...body,
        y: y + 4,
      });
    columnsBlock(job, columns, count, journeys, density).paint(surface, { ...body, y, height: room.first });
    if (last)
      footer.paint(surface, { ...body, y: size.height - MARGINS.bottom - footer.height(body.width), height: below });
    sheetFurniture(job, surface, page + 1, pages.length);
  });
  if (pages.length > 1) {
    const lines = sections.flatMap(linesOf).length;
    job.findings.push({
      level: 'advice',
      rule: 'print-list-pages',
      message: phrase('print', 'list pages', { lines, pages: pages.length }),
      mend: phrase('print', 'list pages mend', {}),
      about: [],
    });
  }
  return finishJob(job);
};

const pageOf = (pages: Fitted['pages'], section: PackSection): number =>
  pages.findIndex((columns) => columns.some((portions) => portions.some((portion) => portion.section === section)));
