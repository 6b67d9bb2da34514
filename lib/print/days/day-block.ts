import { skyOf } from '../../comfort/index.ts';
import { dampInWords } from '../../guide/damp.ts';
import { freeDay, inPlaceOfLook, placeOfDay, wayInWords } from '../../guide/day-words.ts';
import { piecesToName } from '../../guide/piece-names.ts';
import type { Look, Occasion, PlannedDay, PlannedOccasion } from '../../model/index.ts';
import { phrase } from '../../words/index.ts';
import { keyOf } from '../days-strip.ts';
import type { Job } from '../job.ts';
import { journeyWord } from '../packing/lines.ts';
import type { Area } from '../paper.ts';
import { type Block, drawn, padded, row, space, stack, tagged, unread } from '../set/block.ts';
import { button } from '../set/ornament.ts';
import { sign } from '../set/signs.ts';
import { text } from '../set/text.ts';
import { inked, resized } from '../types.ts';
import { type Cautions, cautionsOf, cautionText } from './cautions.ts';
import { lookRail } from './rail.ts';
import { weatherCell } from './weather.ts';

/** Widths of the columns of a day, millimetres. */
const DATE = 24;
const WEATHER = 20;
const WORDS = { share: 1 };
/** The rail is no wider than a look needs. */
const WIDEST_RAIL = 105;
const RAIL_SHARE = 0.555;
const GAP = 2.5;
const CAUTION_GAP = 2;

/** Space above and below a day, and between its lines, millimetres. */
export interface DayAir {
  readonly day: number;
  readonly line: number;
}

/** The date of a day and where it is spent. */
export const dayHeading = (job: Job, day: PlannedDay): string =>
  [job.formats.date(day.date), placeOfDay(day, job.sayPhrase)].filter((words) => words !== '').join(', ');

/** The weather of the whole day, in the words of its page. */
const weatherOfDay = ({ press, types, sayPhrase }: Job, { weather, homeward }: PlannedDay): readonly Block[] => {
  if (weather === undefined || homeward === true) return [];
  const told = { low: weather.lowC, high: weather.highC, sky: skyOf(weather.rainPercent) };
  const words = sayPhrase(phrase('site', 'weather of a day', told));
  return [space(0.8), tagged('P', text(press.setter, words, types.key))];
};

const dateCell = (job: Job, day: PlannedDay, showPlace: boolean, transit: boolean): Block => {
  const { setter } = job.press;
  const { types, inks, formats } = job;
  const weekday = formats.weekdayShort(day.date);
  const month = formats.dateShort(day.date).replace(/[\d.\s]+/gu, '');
  const where = placeOfDay(day, job.sayPhrase);
  const number = row(
    [
      { width: 13, block: text(setter, String(Number(day.date.slice(8))), resized(types.title, 25)) },
      {
        width: { share: 1 },
        block: stack(
          [text(setter, weekday, { ...types.keyStrong, points: 8 }), text(setter, month, { ...types.key, points: 8 })],
          0.9,
        ),
        stand: 'middle',
      },
    ],
    { gap: 0 },
  );
  const place = showPlace && where !== '' ? [text(setter, where, inked(resized(types.kind, 10), inks.ink))] : [];
  return stack([
    tagged('H2', stack([number, ...place], 0.6), { actualText: dayHeading(job, day) }),
    ...weatherOfDay(job, day),
    ...(transit ? [space(2), journeyMark(job)] : []),
  ]);
};

/** The mark of a journey, as on the packing list, and its word. */
const journeyMark = (job: Job): Block =>
  tagged(
    'P',
    keyOf(
      (surface, x, y) => button(surface, x + 1.15, y + 1.2, 1.15, job.inks.thread),
      text(job.press.setter, journeyWord(job), inked(job.types.key, job.inks.thread)),
    ),
  );

export const when = (job: Job, { part, at, dress }: Occasion): string =>
  [at === undefined ? job.say(`part ${part}`) : job.formats.time(at), job.say('dress code', { dress })].join(', ');

/** The names of what hangs on the rail, where its colours alone do not tell it apart for everyone. */
const namesOf = (job: Job, look: Look): readonly string[] => {
  const shown = job.guide.looks.find((candidate) => candidate.look.id === look.id);
  const names = shown === undefined ? [] : job.names(piecesToName(shown));
  return names.length === 0 ? [] : [job.say('on the rail', { pieces: names })];
};

const wordsCell = (job: Job, occasion: Occasion, planned: PlannedOccasion, cautions: Cautions): Block => {
  const { setter } = job.press;
  const { types, inks, guide } = job;
  const line = (words: string, type = types.text): Block => tagged('P', text(setter, words, type));
  const said: Block[] = [];
  if (planned.look === undefined) {
    const [none = '', ...nearest] = inPlaceOfLook(guide.plan, occasion.id, (id) => job.piece(id).name).map(
      job.sayPhrase,
    );
    said.push(line(none, inked(types.text, inks.thread)), ...nearest.map((words) => line(words)));
  } else if (planned.change === 'goes on') said.push(line(job.say('goes on')));
  else if (planned.change === 'layers only') said.push(line(job.say('add or drop')));
  else said.push(...namesOf(job, planned.look).map((names) => line(names, types.key)));
  if (planned.layersOn.length > 0) said.push(line(job.say('layers on', { pieces: job.names(planned.layersOn) })));
  said.push(...wayInWords(planned, (id) => job.names([id])[0] ?? id).map((words) => line(job.sayPhrase(words))));
  if (cautions.fresh.length === 0 && cautions.before.length > 0) said.push(cautionText(job, cautions.before));
  return stack(
    [
      tagged('H3', text(setter, occasion.what, resized(types.panel, 11.5))),
      line(when(job, occasion), types.key),
      ...(said.length > 0 ? [space(0.2), ...said] : []),
    ],
    0.8,
  );
};

/** Cautions in full run under the words and the rail, where they take the fewest lines. */
const cautionRow = (job: Job, { fresh, before }: Cautions): readonly Block[] =>
  fresh.length === 0 ? [] : [padded(cautionText(job, [...fresh, ...before]), { left: WEATHER + GAP })];

const occasionRow = (job: Job, day: PlannedDay, planned: PlannedOccasion, railHeight: number): Block => {
  const occasion = job.guide.brief.occasions.find(({ id }) => id === planned.occasion);
  if (occasion === undefined)
    throw new Error(`the plan names the occasion "${planned.occasion}" and the brief does not hold it`);
  const cautions = cautionsOf(job, day, planned);
  const hung = planned.look !== undefined && planned.change !== 'goes on' && planned.change !== 'layers only';
  const across = (width: number): Block =>
    stack(
      [
        row(
          [
            { width: WEATHER, block: weatherCell(job, occasion, planned, day.weather) },
            { width: WORDS, block: wordsCell(job, occasion, planned, cautions) },
            ...(hung && planned.look !== undefined
              ? [
                  {
                    width: Math.min(WIDEST_RAIL, (width - WEATHER - 2 * GAP) * RAIL_SHARE),
                    block: lookRail(job, planned.look, railHeight),
                  },
                ]
              : []),
          ],
          { gap: GAP },
        ),
        ...cautionRow(job, cautions),
      ],
      CAUTION_GAP,
    );
  return {
    height: (width) => across(width).height(width),
    paint: (surface, area) => across(area.width).paint(surface, area),
  };
};

/** Washing that travels damp that day. */
const dampRows = (job: Job, { date }: PlannedDay): readonly Block[] => {
  const { plan, brief } = job.guide;
  const type = inked(job.types.text, job.inks.water);
  return dampInWords(plan, brief, (piece) => job.names([piece]).join())
    .filter(({ on }) => on === date)
    .map(({ said }) => padded(tagged('P', text(job.press.setter, job.sayPhrase(said), type)), { left: WEATHER + GAP }));
};

const washRow = (job: Job, day: PlannedDay): readonly Block[] => {
  if (day.wash.length === 0) return [];
  const { types, inks } = job;
  const words = job.say('wash that night', { pieces: job.names(day.wash.map(({ piece }) => piece)) });
  return [
    row(
      [
        {
          width: WEATHER,
          block: unread(
            drawn(3.4, (surface, { x, y }) =>
              sign(surface, 'wash', { x: x - 0.4, y: y - 0.9, size: 4.6, colour: inks.water }),
            ),
          ),
        },
        { width: { share: 1 }, block: tagged('P', text(job.press.setter, words, inked(types.text, inks.water))) },
      ],
      { gap: GAP },
    ),
  ];
};

export interface DayPlace {
  readonly day: PlannedDay;
  /** The first day in a place: its name is shown. */
  readonly arrives: boolean;
  readonly transit: boolean;
  readonly railHeight: number;
  readonly air: DayAir;
}

/** A day: its date at the left, a line for each occasion. Breaks between occasions, the date shown again. */
export const dayBlock = (job: Job, { day, arrives, transit, railHeight, air }: DayPlace): Block => {
  const { types } = job;
  const empty =
    day.occasions.length === 0 ? [tagged('P', text(job.press.setter, job.sayPhrase(freeDay(day)), types.text))] : [];
  const lines = [
    ...dampRows(job, day),
    ...day.occasions.map((planned) => occasionRow(job, day, planned, railHeight)),
    ...empty,
    ...washRow(job, day),
  ];
  const of = (rows: readonly Block[], again: boolean): Block => {
    const whole = padded(
      row(
        [
          { width: DATE, block: dateCell(job, day, arrives || again, transit && !again) },
          { width: { share: 1 }, block: stack(rows, air.line) },
        ],
        { gap: GAP },
      ),
      { top: air.day, bottom: air.day },
    );
    return {
      height: whole.height,
      paint: (surface, area: Area) => surface.tag('Sect', {}, () => whole.paint(surface, area)),
      split: (width, room) => {
        const inner = width - DATE - GAP;
        for (let kept = rows.length - 1; kept >= 1; kept--) {
          const first = of(rows.slice(0, kept), again);
          if (first.height(width) <= room && stack(rows.slice(0, kept), air.line).height(inner) > 0)
            return [first, of(rows.slice(kept), true)];
        }
        return undefined;
      },
    };
  };
  return of(lines, false);
};
