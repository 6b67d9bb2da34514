import type { Formats } from '../formats.ts';

const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

/** English sentences of the guide itself: names of looks and when to wear them. */
export const guide = {
  'as written': (v: { text: string }) => v.text,
  'wear it for': (v: { occasions: string[] }, f: Formats) => `For ${f.list(v.occasions)}.`,
  'wear it also for': (v: { occasions: string[] }, f: Formats) => `Also for ${f.list(v.occasions)}.`,
  'wear it anywhere': (v: { low: string; high: string }) =>
    v.low === v.high ? `Right wherever the dress is ${v.low}.` : `Right from ${v.low} to ${v.high}.`,
  'wear it outdoors': (v: { low: number; high: number }, f: Formats) =>
    `Outdoors on foot, ${f.celsiusRange(v.low, v.high)}.`,
  'wear it indoors': (v: { low: number; high: number }, f: Formats) =>
    `Indoors, sitting, ${f.celsiusRange(v.low, v.high)}.`,
  'photo not used': (v: { piece: string; why: string }) => `The photo of the ${lower(v.piece)} is not used: ${v.why}.`,
  'card for a day': (v: { date: string; low: number; high: number }, f: Formats) =>
    `${f.date(v.date)}, ${f.celsiusRange(v.low, v.high)}`,
  'card for any day': (v: { low: number; high: number }, f: Formats) => `Any day, ${f.celsiusRange(v.low, v.high)}`,
  'straight grain': () => 'straight grain',
} satisfies Record<string, (values: never, formats: Formats) => string>;
