import type { Guide } from '../../guide/record.ts';
import type { IsoDate } from '../../model/index.ts';
import { phrase } from '../../words/index.ts';
import { daysBetween, keyOf } from '../days-strip.ts';
import { finishJob, type Job, type PaperChoice, type Printed, type PrintSources, startJob } from '../job.ts';
import { journeyDates, journeyWord } from '../packing/lines.ts';
import { PAPERS, turn } from '../paper.ts';
import type { Surface } from '../pdf/surface.ts';
import { type Block, type Cell, row, type SharedTag, space, stack, tagged } from '../set/block.ts';
import { flow } from '../set/flow.ts';
import { button, stitch } from '../set/ornament.ts';
import { sign } from '../set/signs.ts';
import { text, widthOf } from '../set/text.ts';
import { bodyArea, runningHead, sheetFurniture, sheetHead } from '../sheet-head.ts';
import {
  daysFrom,
  WEAR_WORDS,
  type WearColumns,
  wearColumns,
  wearDot,
  wearGroupHead,
  wearHead,
  wearRow,
} from './wear-rows.ts';
import { type WearGroup, wearGroups } from './wearings.ts';

const HEAD_GAP = 3;
/** Rows that are tried, millimetres, from roomy to close. */
const ROWS = Array.from({ length: 62 }, (_, step) => 9.4 - step * 0.1);
const ROW_OF_MANY_PAGES = 6.6;
const AIR = 2;

const totalsRow = (job: Job, groups: readonly WearGroup[], days: readonly IsoDate[], columns: WearColumns): Block => {
  const { setter } = job.press;
  const { types } = job;
  const lines = groups.flatMap((group) => group.lines);
  const cells: Cell[] = [
    {
      width: daysFrom(columns),
      block: tagged('TH', text(setter, job.say('pieces used'), types.key, { align: 'right' }), { scope: 'Row' }),
      stand: 'middle',
    },
    ...days.map((date): Cell => {
      const used = lines.filter(({ worn }) => (worn.get(date) ?? 'not') !== 'not').length;
      return {
        width: columns.day,
        block: tagged(
          'TD',
          text(
            setter,
            used === 0 ? '–' : job.formats.count(used),
            { ...types.factStrong, points: columns.points },
            { align: 'centre' },
          ),
        ),
        stand: 'middle',
      };
    }),
    { width: { share: 1 }, block: tagged('TD', space(0)) },
    { width: columns.figure, block: tagged('TD', space(0)) },
  ];
  return tagged('TR', row(cells, { least: 6 }));
};

const keyRow = (job: Job): Block => {
  const { setter } = job.press;
  const { types, inks } = job;
  const type = { ...types.key, points: 7.5 };
  const item = (words: string, paint: (surface: Surface, x: number, y: number) => void): Cell => ({
    width: widthOf(setter, words, type) + 4.2,
    block: keyOf(paint, text(setter, words, type)),
  });
  const cells: Cell[] = [
    ...(['day', 'evening', 'carried'] as const).map((how) =>
      item(job.say(WEAR_WORDS[how]), (surface, x, y) =>
        wearDot(surface, { x: x + 1.3, y: y + 1.2, radius: 1.3 }, how, inks),
      ),
    ),
    ...(journeyDates(job.guide).length === 0
      ? []
      : [
          item(job.say('journey key', { word: journeyWord(job) }), (surface, x, y) =>
            button(surface, x + 1.15, y + 1.2, 1.15, inks.thread),
          ),
        ]),
    ...(washDates(job).length === 0
      ? []
      : [
          item(job.say('wash line key'), (surface, x, y) =>
            sign(surface, 'wash', { x, y: y - 0.9, size: 3.6, colour: inks.water }),
          ),
        ]),
  ];
  return tagged('P', row([...cells, { width: { share: 1 }, block: space(0) }], { gap: 6 }));
};

/** The wash days on which something is washed. */
const washDates = ({ guide }: Job): readonly IsoDate[] =>
  guide.plan.days.filter(({ wash }) => wash.length > 0).map(({ date }) => date);

/** Broken lines down the table after each day of washing. */
const washLines = (
  job: Job,
  surface: Surface,
  days: readonly IsoDate[],
  columns: WearColumns,
  area: { x: number; y: number; height: number },
): void => {
  const { inks } = job;
  const washes = washDates(job);
  surface.artifact(() => {
    for (const [index, date] of days.entries()) {
      if (!washes.includes(date)) continue;
      const x = area.x + daysFrom(columns) + (index + 1) * columns.day;
      stitch(surface, [x, area.y], [x, area.y + area.height], { colour: inks.water, width: 0.7, pitch: 2.2 });
      sign(surface, 'wash', { x: x - 2.1, y: area.y + area.height + 0.2, size: 4.2, colour: inks.water });
    }
  });
};

/** Every piece against every day: what works hard, what is idle, where the washes fall. One page for up to some fifty pieces. */
export const wearTablePdf = async (guide: Guide, sources: PrintSources, choice: PaperChoice = {}): Promise<Printed> => {
  const job = await startJob(guide, sources, 'wear table title');
  const size = turn(PAPERS[choice.paper ?? guide.studio.paper], choice.orientation ?? 'portrait');
  const body = bodyArea(size);
  const days = daysBetween(guide.brief.from, guide.brief.to);
  const journeys = journeyDates(guide);
  const groups = wearGroups(job);
  const eyebrow = job.say('wear table title', { traveller: guide.capsule.traveller });
  const wearings = groups.flatMap(({ lines }) => lines).reduce((sum, { times }) => sum + times, 0);
  const header = sheetHead(
    job,
    {
      eyebrow,
      title: job.say('pieces and days', { pieces: guide.pieces.length, days: days.length }),
      facts: [job.say('wearings', { count: wearings }), job.say('sorted by use')],
    },
    body.width,
  );
  const running = runningHead(job, eyebrow);
  const key = keyRow(job);
  const above = (page: number): number => (page === 0 ? header : running).height(body.width) + HEAD_GAP;
  const longest = new Map<number, number>();
  const longestName = (points: number): number => {
    const known = longest.get(points);
    if (known !== undefined) return known;
    const type = { ...job.types.fact, points };
    const found = Math.max(0, ...guide.pieces.map(({ name }) => widthOf(job.press.setter, name, type)));
    longest.set(points, found);
    return found;
  };
  const rowsAt = (height: number) => {
    const columns = wearColumns(body.width, days.length, height, longestName);
    const head = wearHead(job, days, journeys, columns);
    const items = groups.flatMap((group) => [
      {
        block: wearGroupHead(job, group.title, Math.max(5.2, Math.min(6, height * 0.8)), days.length + 3),
        withNext: true,
      },
      ...group.lines.map((line) => ({ block: wearRow(job, line, days, columns) })),
    ]);
    const foot = totalsRow(job, groups, days, columns).height(body.width) + key.height(body.width) + 5 + AIR;
    const room = (page: number): number => body.height - above(page) - head.height(body.width) - foot;
    return { columns, head, pages: flow(items, body.width, room) };
  };
  const height = ROWS.find((tried) => rowsAt(tried).pages.length <= 1) ?? ROW_OF_MANY_PAGES;
  const { columns, head, pages } = rowsAt(height);
  const shown = pages.length > 0 ? pages : [undefined];
  const shared: SharedTag = {};
  shown.forEach((page, index) => {
    const surface = job.press.addPage(size);
    job.press.bookmark(
      index === 0 ? eyebrow : job.say('page of', { page: index + 1, pages: shown.length }),
      1,
      surface,
      0,
    );
    const top = index === 0 ? header : running;
    top.paint(surface, { ...body, height: top.height(body.width) });
    const y = body.y + above(index);
    if (page === undefined)
      tagged('P', text(job.press.setter, job.say('no pieces'), job.types.fact)).paint(surface, { ...body, y });
    else {
      const last = index === shown.length - 1;
      const table = stack([head, page, ...(last ? [totalsRow(job, groups, days, columns)] : [])]);
      const tall = table.height(body.width);
      tagged('Table', table, {}, shared).paint(surface, { ...body, y, height: tall });
      washLines(job, surface, days, columns, { x: body.x, y: y + 7, height: tall - 7 });
      if (last) key.paint(surface, { ...body, y: y + tall + 5, height: 3 });
    }
    sheetFurniture(job, surface, index + 1, shown.length);
  });
  if (shown.length > 1) {
    job.findings.push({
      level: 'advice',
      rule: 'print-table-pages',
      message: phrase('print', 'table pages', { pages: shown.length }),
      mend: phrase('print', 'table pages mend', { orientation: choice.orientation ?? 'portrait' }),
      about: [],
    });
  }
  return finishJob(job);
};
