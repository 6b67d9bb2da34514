import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';
import { doing, doingThere, dress } from './glossary.ts';
import { quoted } from './sentence.ts';

/** German sentences of the guide itself. Nouns keep their capital, so names in a title stay as they are written. */
export const guide = {
  'as written': (v) => v.text,
  'wear it for': (v, f) => `${f.list(v.occasions.map(quoted))}.`,
  'wear it also for': (v, f) => `Auch für ${f.list(v.occasions.map(quoted))}.`,
  'wear it anywhere': (v) =>
    v.low === v.high ? `Dresscode ${dress(v.low)}.` : `Dresscode ${dress(v.low)} bis ${dress(v.high)}.`,
  'wear it outdoors': (v, f) => `Draußen beim ${doing(v.activity)} ${f.celsiusRange(v.low, v.high)}, je nach Lagen.`,
  'wear it indoors': (v, f) => `Drinnen beim ${doingThere(v.activity)} ${f.celsiusRange(v.low, v.high)}.`,
  'also on the way': (v, f) => `Unterwegs dazu: ${f.list(v.pieces)}.`,
  'dry afterwards': (v, f) => `Gleich danach trocken anziehen: ${f.list(v.pieces)}.`,
  'wear it by water': () => 'Zum Schwimmen und am Wasser.',
  'letters lacking': (v, f) =>
    `Unsere Schriften für Karten und Papier enthalten ${f.list([...v.characters, ...(v.more > 0 ? [`${v.more} weitere`] : [])])} aus ${quoted(v.text)} nicht: dort steht ${quoted(v.shown)}.`,
  'letters lacking mend': () =>
    'Lateinisch, griechisch oder kyrillisch schreiben oder es dabei lassen: Die Seiten zeigen es ganz, wo die eigenen Schriften es enthalten.',
  'photo not used': (v) => `Foto nicht verwendet: ${quoted(v.piece)} (${v.why}).`,
  'day outdoors': (v, f) => `${f.date(v.date)}, draußen ${f.celsiusRange(v.low, v.high)} erwartet`,
  'day indoors': (v, f) => `${f.date(v.date)}, drinnen ${f.celsiusRange(v.low, v.high)}`,
  'day without weather': (v, f) => f.date(v.date),
  'any day': () => 'Für jeden Tag, zu dem er passt',
  'straight grain': () => 'Fadenlauf',
} satisfies Translation<typeof english.guide>;
