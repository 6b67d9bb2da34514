import { placeOfDay } from '../guide/day-words.ts';
import type { IsoDate } from '../model/index.ts';
import type { Job } from './job.ts';
import { journeyDates, journeyWord } from './packing/lines.ts';
import { type Block, drawn, row, space, stack, tagged } from './set/block.ts';
import { button } from './set/ornament.ts';
import { sign } from './set/signs.ts';
import { text, widthOf } from './set/text.ts';
import { inked } from './types.ts';

const DAY = 86_400_000;
/** More days than this do not fit side by side. */
const MOST_DAYS = 24;

export const daysBetween = (from: IsoDate, to: IsoDate): readonly IsoDate[] => {
  const start = Date.parse(`${from}T00:00:00Z`);
  const count = Math.round((Date.parse(`${to}T00:00:00Z`) - start) / DAY) + 1;
  return Array.from({ length: Math.max(0, count) }, (_, day) => new Date(start + day * DAY).toISOString().slice(0, 10));
};

/** Stretches of days in one place, in order. */
export const stays = (
  job: Job,
  days: readonly IsoDate[],
): readonly { readonly place: string; readonly from: number; readonly to: number }[] => {
  const places = days.map((date) => {
    const planned = job.guide.plan.days.find((day) => day.date === date);
    const said = planned === undefined ? '' : placeOfDay(planned, job.sayPhrase);
    if (said !== '') return said;
    return job.guide.brief.places.filter(({ from, to }) => from <= date && date <= to).at(-1)?.name ?? '';
  });
  const found: { place: string; from: number; to: number }[] = [];
  places.forEach((place, index) => {
    const last = found.at(-1);
    if (last?.place === place) last.to = index;
    else found.push({ place, from: index, to: index });
  });
  return found;
};

/** The days side by side: where, on which a journey is made, on which there is a wash. */
export const daysPanel = (job: Job): Block => {
  const { setter } = job.press;
  const { types, inks, guide, formats } = job;
  const days = daysBetween(guide.brief.from, guide.brief.to);
  const journeys = journeyDates(guide);
  const washes = guide.brief.washDays;
  const heading = tagged(
    'H2',
    text(setter, job.say('days and washes', { days: days.length, washes: washes.length }), types.panel),
  );
  const alt = job.say('days described', {
    days: formats.dateRange(guide.brief.from, guide.brief.to),
    journeys: journeys.map(formats.dateShort),
    washes: washes.map(formats.dateShort),
  });
  if (days.length > MOST_DAYS)
    return tagged('Sect', stack([heading, space(1.5), tagged('P', text(setter, alt, types.key))]));
  const narrow = days.length > 12;
  const strip = drawn(20.5, (surface, { x, y, width }) => {
    const step = width / days.length;
    const centred = (words: string, at: number, base: number, type = types.key): void => {
      const line = setter.line([{ text: words, type }]);
      surface.text(line.runs, at - line.width / 2, base);
    };
    days.forEach((date, index) => {
      const left = x + index * step;
      const middle = left + step / 2;
      surface.line(left, y, left, y + 11.5, { colour: inks.faint, width: 0.5 });
      const weekday = narrow ? formats.weekdayNarrow(date) : formats.weekdayShort(date);
      centred(weekday, middle, y + 2.2);
      centred(String(Number(date.slice(8))), middle, y + 6, { ...types.factStrong, points: narrow ? 7.6 : 9 });
      if (journeys.includes(date)) button(surface, middle, y + 9.2, Math.min(1.15, step * 0.3), inks.thread);
      if (washes.includes(date)) sign(surface, 'wash', { x: middle - 1.9, y: y + 10, size: 3.8, colour: inks.water });
    });
    surface.line(x + width, y, x + width, y + 11.5, { colour: inks.faint, width: 0.5 });
    let free = x;
    const found = stays(job, days);
    for (const stay of found) {
      const { place, from, to } = stay;
      if (place === '') continue;
      const [left, right] = [x + from * step, x + (to + 1) * step];
      surface.line(left + 0.8, y + 15.2, right - 0.8, y + 15.2, { colour: inks.hair, width: 0.4 });
      const type = inked({ ...types.kind, points: 7.6 }, inks.ink);
      const whole = setter.line([{ text: place, type }]);
      // the last may begin before its own days, where the one before leaves room
      const isLast = stay === found.at(-1);
      const fits = whole.width <= right - left + step * 0.3 || (isLast && right - whole.width >= free + 1);
      const shown = fits
        ? whole
        : setter.line([
            { text: `${[...place].slice(0, Math.max(1, Math.floor((right - left) / 1.6))).join('')}.`, type },
          ]);
      const at = Math.min((left + right) / 2 - shown.width / 2, x + width - shown.width);
      surface.text(shown.runs, at, y + 18.6);
      free = at + shown.width;
    }
  });
  const buttonWords = job.say('button key', { word: journeyWord(job) });
  const washWords = job.say('wash key');
  const key = row(
    [
      {
        width: widthOf(setter, buttonWords, types.key) + 4,
        block: keyOf(
          (surface, x, y) => button(surface, x + 1.15, y + 1.2, 1.15, inks.thread),
          text(setter, buttonWords, types.key),
        ),
      },
      {
        width: { share: 1 },
        block:
          washes.length === 0
            ? space(0)
            : keyOf(
                (surface, x, y) => sign(surface, 'wash', { x, y: y - 1, size: 3.6, colour: inks.water }),
                text(setter, washWords, types.key),
              ),
      },
    ],
    { gap: 5 },
  );
  return tagged(
    'Sect',
    stack([
      heading,
      space(2.6),
      tagged('Figure', strip, { alt }),
      space(0.4),
      tagged('P', journeys.length === 0 && washes.length === 0 ? space(0) : key),
    ]),
  );
};

/** A sign and what it means. */
export const keyOf = (
  paint: (surface: Parameters<Block['paint']>[0], x: number, y: number) => void,
  words: Block,
): Block =>
  row(
    [
      { width: 3, block: drawn(2.4, (surface, { x, y }) => surface.artifact(() => paint(surface, x, y))) },
      { width: { share: 1 }, block: words },
    ],
    { gap: 1 },
  );
