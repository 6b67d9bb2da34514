import { cautionsOfTrip, isMark, isOfTheSun, isOfTheTrip, ofOccasion } from '../../comfort/index.ts';
import type { PlannedDay, PlannedOccasion } from '../../model/index.ts';
import type { Phrase } from '../../words/index.ts';
import type { Job } from '../job.ts';
import { type Block, tagged } from '../set/block.ts';
import { text } from '../set/text.ts';
import { inked } from '../types.ts';

export interface Cautions {
  /** Said here for the first time, in full. */
  readonly fresh: readonly string[];
  /** Pointers to the days that said the others. */
  readonly before: readonly string[];
}

/** What is said under an occasion: its own cautions, and those of the trip under the first that one of them is about. */
const saidUnder = ({ guide: { plan } }: Job, planned: PlannedOccasion): readonly Phrase[] => {
  // the index of a day stands beside its weather
  const own = ofOccasion(planned.cautions).filter((caution) => !isOfTheSun(caution));
  const first = plan.days.flatMap(({ occasions }) => occasions).find(({ cautions }) => cautions.some(isOfTheTrip));
  // its first day has them in full
  return first === planned ? [...cautionsOfTrip(plan.days), ...own.filter((caution) => !isMark(caution))] : own;
};

/** Cautions of an occasion; those said in full on an earlier day are pointed to, since the sheet is read as a whole. */
export const cautionsOf = (job: Job, day: PlannedDay, planned: PlannedOccasion): Cautions => {
  const said = new Map<string, string>();
  for (const { date, occasions } of job.guide.plan.days.filter((earlier) => earlier.date < day.date)) {
    const pointedTo = occasions.flatMap((earlier) => saidUnder(job, earlier)).filter((caution) => !isMark(caution));
    for (const caution of pointedTo.map(job.sayPhrase)) {
      if (!said.has(caution)) said.set(caution, date);
    }
  }
  const cautions = saidUnder(job, planned).map(job.sayPhrase);
  const dates = new Set(cautions.flatMap((caution) => said.get(caution) ?? []));
  return {
    fresh: cautions.filter((caution) => !said.has(caution)),
    before: [...dates].map((date) => job.say('cautions as on', { date: job.formats.dateShort(date) })),
  };
};

export const cautionText = (job: Job, sentences: readonly string[]): Block =>
  tagged(
    'P',
    text(
      job.press.setter,
      sentences.join(' '),
      inked({ ...job.types.key, points: 7.5, leading: 3.3 }, job.inks.thread),
    ),
  );
