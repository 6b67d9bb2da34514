import type { Wearing } from '../../guide/wearing.ts';
import type { IsoDate } from '../../model/index.ts';
import { stays } from '../days-strip.ts';
import type { Inks } from '../ink.ts';
import type { Job } from '../job.ts';
import { nums } from '../pdf/numbers.ts';
import type { Surface } from '../pdf/surface.ts';
import { type Block, banded, type Cell, drawn, row, space, stack, tagged, unread } from '../set/block.ts';
import { button } from '../set/ornament.ts';
import { text } from '../set/text.ts';
import { paintThumbnail } from '../thumbnail.ts';
import { inked, resized } from '../types.ts';
import type { WearLine } from './wearings.ts';

/** How the table is divided at a width; millimetres. */
export interface WearColumns {
  readonly art: number;
  readonly name: number;
  readonly day: number;
  readonly figure: number;
  readonly row: number;
  readonly points: number;
}

const FIGURES = 2;
const NAME_LEAST = 30;
const DAY_LEAST = 6.2;
const DAY_MOST = 17;
const GAP = 1.5;
/** Above and below a name, together. */
const ROW_AIR = 0.8;
/** Rows at least so high are set in this many points. */
const SIZES = [
  { from: 6.6, points: 8.8 },
  { from: 5.2, points: 8 },
  { from: 4.8, points: 7.5 },
  { from: 0, points: 7 },
] as const;

/** Divides the table: names get what the longest needs, the days what is left, all within reason. */
export const wearColumns = (
  width: number,
  days: number,
  rowHeight: number,
  longestName: (points: number) => number,
): WearColumns => {
  const points = SIZES.find(({ from }) => rowHeight >= from)?.points ?? 7;
  const art = Math.min(11, rowHeight * 1.2);
  const figure = 13;
  const free = width - art - FIGURES * figure - 2 * GAP;
  const widest = Math.max(NAME_LEAST, free - DAY_LEAST * days);
  const name = Math.min(widest, Math.max(NAME_LEAST, longestName(points) + 0.5));
  const day = Math.max(2, Math.min(DAY_MOST, (free - name) / Math.max(1, days)));
  return { art, name, day, figure, row: rowHeight, points };
};

/** Left edge of the days, and their step, from the left edge of the table. */
export const daysFrom = ({ art, name }: WearColumns): number => art + name + 2 * GAP;

/** A ring with its right half filled: evening only. */
const halfDot = (surface: Surface, x: number, y: number, radius: number, ink: string): void => {
  surface.circle(x, y, radius, { stroke: { colour: ink, width: 0.6 } });
  const q = radius * 0.5523;
  const right = `${nums(x + q, y - radius, x + radius, y - q, x + radius, y)} c ${nums(x + radius, y + q, x + q, y + radius, x, y + radius)} c`;
  surface.shape(`${nums(x, y - radius)} m ${right} h`, { fill: ink });
};

/** The sign of a wearing: full by day, half in the evening only, a ring for what is taken along, a speck for none. */
export const wearDot = (
  surface: Surface,
  { x, y, radius }: { readonly x: number; readonly y: number; readonly radius: number },
  worn: Wearing,
  { ink, hair }: Pick<Inks, 'ink' | 'hair'>,
): void => {
  if (worn === 'not') surface.circle(x, y, 0.22, { fill: hair });
  else if (worn === 'day') surface.circle(x, y, radius, { fill: ink });
  else if (worn === 'evening') halfDot(surface, x, y, radius, ink);
  else surface.circle(x, y, radius * 0.86, { stroke: { colour: ink, width: 0.6 } });
};

export const WEAR_WORDS = { day: 'worn all day', evening: 'worn evening', carried: 'worn carried' } as const;

const dayCell = (job: Job, worn: Wearing, columns: WearColumns): Block => {
  const radius = Math.min(1.75, columns.day * 0.3, columns.row * 0.28);
  const paint = (surface: Surface, x: number, y: number): void => wearDot(surface, { x, y, radius }, worn, job.inks);
  const cell = drawn(radius * 2, (surface, { x, y, width }) => {
    if (worn === 'not') surface.artifact(() => paint(surface, x + width / 2, y + radius));
    else surface.tag('Figure', { alt: job.say(WEAR_WORDS[worn]) }, () => paint(surface, x + width / 2, y + radius));
  });
  return tagged('TD', cell);
};

const gramsAWear = (job: Job, { piece, times }: WearLine): string => {
  if (times === 0) return '–';
  const grams = piece.grams.value / times;
  return job.guide.studio.weight === 'lb' ? job.formats.number(grams / 28.349523125, 1) : job.formats.number(grams, 0);
};

/** One piece and its days. */
export const wearRow = (job: Job, line: WearLine, days: readonly IsoDate[], columns: WearColumns): Block => {
  const { setter } = job.press;
  const { types, inks } = job;
  const fact = resized(types.fact, columns.points);
  const cells: Cell[] = [
    {
      width: columns.art,
      block: unread(
        drawn(columns.row - ROW_AIR, (surface, area) =>
          paintThumbnail(surface, job.art(line.piece, 'small', columns.row / 70), area),
        ),
      ),
      stand: 'middle',
    },
    { width: GAP, block: space(0) },
    {
      width: columns.name,
      block: tagged('TH', text(setter, line.piece.name, fact), { scope: 'Row' }),
      stand: 'middle',
    },
    { width: GAP, block: space(0) },
    ...days.map(
      (date): Cell => ({
        width: columns.day,
        block: dayCell(job, line.worn.get(date) ?? 'not', columns),
        stand: 'middle',
      }),
    ),
    {
      width: { share: 1 },
      block: tagged(
        'TD',
        text(setter, job.formats.count(line.times), { ...fact, style: 'text medium' }, { align: 'right' }),
      ),
      stand: 'middle',
    },
    {
      width: columns.figure,
      block: tagged('TD', text(setter, gramsAWear(job, line), fact, { align: 'right' })),
      stand: 'middle',
    },
  ];
  const inner = row(cells);
  const whole = tagged('TR', banded(inner, columns.row));
  return {
    height: (width) => Math.max(columns.row, inner.height(width) + ROW_AIR),
    paint: (surface, area) => {
      whole.paint(surface, area);
      const y = area.y + area.height;
      surface.artifact(() =>
        surface.line(area.x + columns.art + GAP, y, area.x + area.width, y, { colour: inks.faint, width: 0.3 }),
      );
    },
  };
};

export const wearGroupHead = (job: Job, title: string, height: number, columnCount: number): Block => {
  const heading = tagged('TH', text(job.press.setter, title, resized(job.types.kind, 9)), {
    scope: 'Column',
    columnSpan: columnCount,
  });
  const whole = tagged('TR', banded(heading, height, 'bottom'));
  return {
    height: () => height + 0.8,
    paint: (surface, area) => {
      whole.paint(surface, { ...area, height });
      const y = area.y + height + 0.6;
      surface.artifact(() => surface.line(area.x, y, area.x + area.width, y, { colour: job.inks.hair, width: 0.4 }));
    },
  };
};

const PLACES_HEIGHT = 6.2;
const DATES_HEIGHT = 12;

/** Places, weekdays and dates over the columns; a button on the days of a journey. */
export const wearHead = (
  job: Job,
  days: readonly IsoDate[],
  journeys: readonly IsoDate[],
  columns: WearColumns,
): Block => {
  const { setter } = job.press;
  const { types, inks, formats } = job;
  const places = drawn(PLACES_HEIGHT, (surface, { x, y }) => {
    const left = x + daysFrom(columns);
    const found = stays(job, days);
    for (const stay of found) {
      const { place, from, to } = stay;
      if (place === '') continue;
      const [start, end] = [left + from * columns.day + 0.8, left + (to + 1) * columns.day - 0.8];
      const type = inked(resized(types.kind, 9), inks.ink);
      const whole = setter.line([{ text: place, type }]);
      // the last may run on over the figures
      if (whole.width > end - start && stay === found.at(-1)) surface.text(whole.runs, start, y + 3.4);
      else {
        const first = setter.wrap([{ text: place, type }], Math.max(10, end - start), false)[0] ?? whole;
        surface.text(first.runs, (start + end) / 2 - Math.min(first.width, end - start + 6) / 2, y + 3.4);
      }
      surface.line(start, y + 5, end, y + 5, { colour: inks.ink, width: 0.4 });
    }
  });
  const dayHead = (date: IsoDate): Block => {
    const centred = { align: 'centre' } as const;
    const label = columns.day < 6 ? formats.weekdayNarrow(date) : formats.weekdayShort(date);
    const words = stack([
      text(setter, label, types.key, centred),
      space(0.6),
      text(setter, String(Number(date.slice(8))), { ...types.factStrong, points: columns.day < 6 ? 8 : 10 }, centred),
      space(0.8),
      unread(
        drawn(2.6, (surface, { x, y, width }) => {
          if (journeys.includes(date))
            button(surface, x + width / 2, y + 1.3, Math.min(1.1, columns.day * 0.3), inks.thread);
        }),
      ),
    ]);
    return tagged('TH', words, { scope: 'Column' });
  };
  const figureHead = (words: string): Block =>
    tagged('TH', text(setter, words, types.key, { align: 'right', balance: true }), { scope: 'Column' });
  const pounds = job.guide.studio.weight === 'lb';
  const cells: Cell[] = [
    {
      width: daysFrom(columns),
      block: tagged('TH', text(setter, job.say('head piece'), types.key), { scope: 'Column' }),
      stand: 'bottom',
    },
    ...days.map((date): Cell => ({ width: columns.day, block: dayHead(date), stand: 'bottom' })),
    { width: { share: 1 }, block: figureHead(job.say('head times worn')), stand: 'bottom' },
    {
      width: columns.figure,
      block: figureHead(job.say(pounds ? 'head ounces per wear' : 'head grams per wear')),
      stand: 'bottom',
    },
  ];
  return stack([unread(places), tagged('TR', banded(row(cells), DATES_HEIGHT, 'bottom')), space(0.8)]);
};
