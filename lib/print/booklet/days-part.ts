import { freeDay, inPlaceOfLook } from '../../guide/day-words.ts';
import type { PlannedOccasion } from '../../model/index.ts';
import { dayHeading, when } from '../days/day-block.ts';
import type { Job } from '../job.ts';
import type { Size } from '../paper.ts';
import { type Block, drawn, row, space, stack, tagged, unread } from '../set/block.ts';
import type { FlowItem } from '../set/flow.ts';
import { text } from '../set/text.ts';
import { paintThumbnail } from '../thumbnail.ts';
import { inked, resized } from '../types.ts';
import { type BookPage, flowingPart, roomiest } from './pages.ts';

/** A long coat fills the height of a piece, centimetres. */
const LONG_PIECE = 110;
/** Pieces of one look that are shown; the look's own page has them all. */
const MOST_HANGERS = 8;
/** A piece in the line of its day, millimetres. */
const HANGER = { width: 7.6, height: 10.5, gap: 0.8 };
/** Between days, millimetres, as far as the pages have room. */
const DAY_GAPS = [11, 10, 9, 8, 7, 6, 5, 4.5];

/** What is worn, small, at the right of its occasion; unread, since the words or the look's page say it. */
const wornRow = (job: Job, planned: PlannedOccasion, most: number): Block => {
  const pieces = (planned.look?.worn ?? []).map(({ piece }) => job.piece(piece)).slice(0, most);
  return unread(
    drawn(HANGER.height, (surface, { x, y }) => {
      pieces.forEach((piece, index) => {
        paintThumbnail(surface, job.art(piece, 'small', HANGER.height / LONG_PIECE), {
          x: x + index * (HANGER.width + HANGER.gap),
          y,
          width: HANGER.width,
          height: HANGER.height,
        });
      });
    }),
  );
};

/** Which look on which occasion: the plan in a few lines, each with what is worn. */
export const daysPart = (job: Job, size: Size): readonly BookPage[] => {
  if (job.guide.plan.days.length === 0) return [];
  return roomiest(DAY_GAPS, (gap) => daysApart(job, size, gap));
};

const daysApart = (job: Job, size: Size, above: number): readonly BookPage[] => {
  const { guide, types } = job;
  const { setter } = job.press;
  const most = Math.max(
    0,
    ...guide.plan.days.flatMap(({ occasions }) => occasions.map(({ look }) => look?.worn.length ?? 0)),
  );
  const shown = Math.min(most, MOST_HANGERS);
  const items = guide.plan.days.map((day): FlowItem => {
    const lines = day.occasions.map((planned): Block => occasionLine(job, planned, shown));
    return {
      block: stack([
        tagged('H3', text(setter, dayHeading(job, day), resized(types.kind, 9.5))),
        space(1.4),
        lines.length > 0
          ? tagged('L', stack(lines, 1.4))
          : tagged('P', text(setter, job.sayPhrase(freeDay(day)), types.text)),
      ]),
      above,
    };
  });
  return flowingPart(job, size, job.say('the days'), items, { level: true });
};

/** One occasion: the number of its look, what and when, and what is worn. */
const occasionLine = (job: Job, planned: PlannedOccasion, hangers: number): Block => {
  const { guide, types, inks, formats } = job;
  const { setter } = job.press;
  const number = guide.looks.find(({ look }) => look.id === planned.look?.id)?.number;
  const occasion = guide.brief.occasions.find(({ id }) => id === planned.occasion);
  const numeral = inked({ ...resized(types.title, 13), style: 'title italic' }, inks.thread);
  const unnumbered =
    planned.look === undefined
      ? inPlaceOfLook(guide.plan, planned.occasion, (id) => job.piece(id).name)
          .map(job.sayPhrase)
          .join(' ')
      : formats.list(job.names(planned.look.worn.map(({ piece }) => piece)));
  const words = stack(
    [
      tagged('P', text(setter, occasion?.what ?? planned.occasion, types.text)),
      ...(occasion === undefined ? [] : [tagged('P', text(setter, when(job, occasion), types.key))]),
      ...(number === undefined ? [tagged('P', text(setter, unnumbered, types.key))] : []),
    ],
    0.8,
  );
  return tagged(
    'LI',
    row(
      [
        {
          width: 8,
          block: tagged('Lbl', text(setter, number === undefined ? '–' : String(number), numeral)),
          stand: 'middle',
        },
        { width: { share: 1 }, block: tagged('LBody', words), stand: 'middle' },
        { width: hangers * (HANGER.width + HANGER.gap), block: wornRow(job, planned, hangers), stand: 'middle' },
      ],
      { gap: 1 },
    ),
  );
};
