import type { Formats } from '../formats.ts';
import { capital, lower } from '../letters.ts';
import { doingThere } from './doing.ts';

/** English sentences of the guide itself: names of looks and when to wear them. */
export const guide = {
  'as written': (v: { text: string }) => v.text,
  'wear it for': (v: { occasions: string[] }, f: Formats) => `${f.list(v.occasions)}.`,
  'wear it also for': (v: { occasions: string[] }, f: Formats) => `Also for ${f.list(v.occasions)}.`,
  'wear it anywhere': (v: { low: string; high: string }) =>
    capital(v.low === v.high ? `${v.low}.` : `${v.low} to ${v.high}.`),
  'wear it outdoors': (v: { low: number; high: number; activity: string }, f: Formats) =>
    `Outdoors while ${doingThere(v.activity)} ${f.celsiusRange(v.low, v.high)}, layers on or off.`,
  'wear it indoors': (v: { low: number; high: number; activity: string }, f: Formats) =>
    `Indoors while ${doingThere(v.activity)} ${f.celsiusRange(v.low, v.high)}.`,
  'also on the way': (v: { pieces: readonly string[] }, f: Formats) => `On the way also: ${f.list(v.pieces)}.`,
  'dry afterwards': (v: { pieces: readonly string[] }, f: Formats) =>
    `To put on dry at once afterwards: ${f.list(v.pieces)}.`,
  'wear it by water': () => 'For swimming and by the water.',
  'letters lacking': (v: { text: string; shown: string; characters: string[]; more: number }, f: Formats) =>
    `Our fonts for cards and paper do not have ${f.list([...v.characters, ...(v.more > 0 ? [`${v.more} more`] : [])])} of “${v.text}”: they show “${v.shown}”.`,
  'letters lacking mend': () =>
    'Write it in Latin, Greek or Cyrillic letters, or leave it so: the pages show it whole where the reader’s own fonts have it.',
  'photo not used': (v: { piece: string; why: string }) => `The photo of the ${lower(v.piece)} is not used: ${v.why}.`,
  /** The air an occasion was dressed for, so that nobody takes it for what the look is good for. */
  'day outdoors': (v: { date: string; low: number; high: number }, f: Formats) =>
    `${f.date(v.date)}, ${f.celsiusRange(v.low, v.high)} expected outdoors`,
  'day indoors': (v: { date: string; low: number; high: number }, f: Formats) =>
    `${f.date(v.date)}, ${f.celsiusRange(v.low, v.high)} indoors`,
  'day without weather': (v: { date: string }, f: Formats) => f.date(v.date),
  'any day': () => 'For any day it suits',
  'straight grain': () => 'straight grain',
} satisfies Record<string, (values: never, formats: Formats) => string>;
