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
  'wear it outdoors': (v, f) => `Draußen zu Fuß, ${f.celsiusRange(v.low, v.high)}.`,
  'wear it indoors': (v, f) => `Drinnen im Sitzen, ${f.celsiusRange(v.low, v.high)}.`,
  'photo not used': (v) => `Foto nicht verwendet: ${quoted(v.piece)} (${v.why}).`,
  'card for a day': (v, f) => `${f.date(v.date)}, ${f.celsiusRange(v.low, v.high)}`,
  'card for any day': (v, f) => `Jeden Tag, ${f.celsiusRange(v.low, v.high)}`,
  'straight grain': () => 'Fadenlauf',
} satisfies Translation<typeof english.guide>;
