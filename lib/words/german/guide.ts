import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';
import { dress } from './glossary.ts';
import { quoted } from './sentence.ts';

/** German sentences of the guide itself. Nouns keep their capital, so names in a title stay as they are written. */
export const guide = {
  'as written': (v) => v.text,
  'wear it for': (v, f) => `Für ${f.list(v.occasions.map(quoted))}.`,
  'wear it also for': (v, f) => `Auch für ${f.list(v.occasions.map(quoted))}.`,
  'wear it anywhere': (v) =>
    v.low === v.high ? `Richtig beim Dresscode ${dress(v.low)}.` : `Richtig von ${dress(v.low)} bis ${dress(v.high)}.`,
  'wear it outdoors': (v, f) => `Draußen zu Fuß: gut bei ${f.celsiusRange(v.low, v.high)}.`,
  'wear it indoors': (v, f) => `Drinnen im Sitzen: gut bei ${f.celsiusRange(v.low, v.high)}.`,
  'wear it by water': () => 'Zum Schwimmen und am Wasser.',
  'photo not used': (v) => `Foto nicht verwendet: ${quoted(v.piece)} (${v.why}).`,
  'day outdoors': (v, f) => `${f.date(v.date)}, draußen ${f.celsiusRange(v.low, v.high)} erwartet`,
  'day indoors': (v, f) => `${f.date(v.date)}, in einem Raum mit ${f.celsiusRange(v.low, v.high)}`,
  'day without weather': (v, f) => f.date(v.date),
  'any day': () => 'Für jeden Tag, zu dem er passt',
  'straight grain': () => 'Fadenlauf',
} satisfies Translation<typeof english.guide>;
