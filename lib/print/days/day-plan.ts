import { feelsInWords } from '../../comfort/index.ts';
import { piecesToName } from '../../guide/piece-names.ts';
import type { Guide } from '../../guide/record.ts';
import { finishJob, type Job, type PaperChoice, type Printed, type PrintSources, startJob } from '../job.ts';
import { journeyDates } from '../packing/lines.ts';
import { PAPERS, turn } from '../paper.ts';
import { type Block, drawn, stack, tagged, unread } from '../set/block.ts';
import { type FlowItem, flow, levelFlow } from '../set/flow.ts';
import { stitch } from '../set/ornament.ts';
import { text } from '../set/text.ts';
import { bodyArea, runningHead, sheetFurniture, sheetHead } from '../sheet-head.ts';
import { type DayAir, dayBlock } from './day-block.ts';

const HEAD_GAP = 0.5;
/** Heights of the rails that are tried, millimetres, first with air between the days and then with less. */
const RAILS = [34, 32, 30, 28, 26, 24, 22, 20, 18];
const AIRS: readonly DayAir[] = [
  { day: 3, line: 2.6 },
  { day: 2, line: 1.6 },
];
/** The first of these that takes no page more than the least is used. */
const TRIES = AIRS.flatMap((air) => RAILS.map((rail) => ({ rail, air })));

/** A rule above a day, but not under the head of a page, which has its own. */
const ruled = (job: Job, block: Block, arrives: boolean, heads: readonly number[]): Block => {
  const rule = unread(
    drawn(0, (surface, { x, y, width }) => {
      if (arrives) stitch(surface, [x, y], [x + width, y], { colour: job.inks.thread, width: 0.7 });
      else surface.line(x, y, x + width, y, { colour: job.inks.faint, width: 0.4 });
    }),
  );
  return {
    height: block.height,
    split: (width, room) => {
      const halves = block.split?.(width, room);
      return halves === undefined ? undefined : [ruled(job, halves[0], arrives, heads), halves[1]];
    },
    paint: (surface, area) => {
      if (!heads.some((head) => Math.abs(head - area.y) < 0.1)) rule.paint(surface, area);
      block.paint(surface, area);
    },
  };
};

const items = (job: Job, { rail, air }: (typeof TRIES)[number], heads: readonly number[]): readonly FlowItem[] => {
  const journeys = journeyDates(job.guide);
  return job.guide.plan.days.map((day, index, days) => {
    const before = days[index - 1];
    const arrives = index === 0 || before?.place !== day.place;
    const block = dayBlock(job, { day, arrives, transit: journeys.includes(day.date), railHeight: rail, air });
    return { block: index === 0 ? block : ruled(job, block, arrives, heads) };
  });
};

const facts = (job: Job): readonly string[] => {
  const { plan, brief, capsule } = job.guide;
  return [
    job.say('dates of trip', { from: brief.from, to: brief.to }),
    plan.unserved.length > 0
      ? job.say('plan unserved', { count: plan.unserved.length })
      : job.say('plan served', { served: plan.served, of: plan.of }),
    ...feelsInWords(brief, capsule.traveller, 'short').map(job.sayPhrase),
  ];
};

/** The day plan: one line an occasion, with its weather, its look on a rail, and the layers. */
export const dayPlanPdf = async (guide: Guide, sources: PrintSources, choice: PaperChoice = {}): Promise<Printed> => {
  const job = await startJob(guide, sources, 'day plan title');
  const size = turn(PAPERS[choice.paper ?? guide.studio.paper], choice.orientation ?? 'portrait');
  const body = bodyArea(size);
  const eyebrow = job.say('day plan title', { traveller: guide.capsule.traveller });
  const header = sheetHead(job, { eyebrow, title: job.say('what to wear'), facts: facts(job) }, body.width);
  const running = runningHead(job, eyebrow);
  const named = guide.looks.some((look) => look.occasions.length > 0 && piecesToName(look).length > 0);
  const notes = [job.say('rail note'), ...(named ? [job.say('on the rail note')] : [])];
  const note = tagged('P', text(job.press.setter, notes.join(' '), job.types.key));
  const above = (page: number): number => (page === 0 ? header : running).height(body.width) + HEAD_GAP;
  const room = (page: number): number => body.height - above(page) - note.height(body.width) - 1;
  const heads = [0, 1].map((page) => body.y + above(page));
  const tries = TRIES.map((how) => flow(items(job, how, heads), body.width, room));
  const least = Math.min(...tries.map(({ length }) => length));
  const best = TRIES.find((_, index) => tries[index]?.length === least);
  const pages = best === undefined ? [] : levelFlow(items(job, best, heads), body.width, room);
  const shown =
    pages.length > 0 ? pages : [stack([tagged('P', text(job.press.setter, job.say('plan empty'), job.types.fact))])];
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
    page.paint(surface, { ...body, y, height: room(index) });
    if (index === shown.length - 1 && pages.length > 0)
      note.paint(surface, {
        ...body,
        y: body.y + body.height - note.height(body.width),
        height: note.height(body.width),
      });
    sheetFurniture(job, surface, index + 1, shown.length);
  });
  return finishJob(job);
};
