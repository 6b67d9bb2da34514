import type { english } from '../english/index.ts';
import type { Translation } from '../translation.ts';
import { colourWord } from './colours.ts';
import { lookUp } from './glossary.ts';
import { quoted } from './sentence.ts';

/** Patterns as one says them of clothes, nouns without an article. */
const pattern = lookUp({
  stripe: 'Streifen',
  pinstripe: 'Nadelstreifen',
  gingham: 'Vichykaro',
  check: 'Karo',
  tartan: 'Schottenkaro',
  houndstooth: 'Hahnentritt',
  herringbone: 'Fischgrat',
  dot: 'Punkte',
  floral: 'Blumen',
  animal: 'Tierdruck',
  abstract: 'Druck',
  geometric: 'Grafikdruck',
  paisley: 'Paisley',
});

const weather = lookUp({
  wet: 'nassen',
  changeable: 'wechselhaften',
  hot: 'heißen',
  warm: 'warmen',
  mild: 'milden',
  cool: 'kühlen',
  cold: 'kalten',
});

const when = (v: { weather: string; time: string }): string => {
  if (v.weather === 'water') return ' fürs Wasser';
  if (v.weather === 'none') return v.time === 'evening' ? ' für einen Abend' : '';
  return ` für einen ${weather(v.weather)} ${v.time === 'evening' ? 'Abend' : 'Tag'}`;
};

/** German names of looks that nobody has named. */
export const title = {
  colour: (v) => colourWord(v.colour),
  pattern: (v) => pattern(v.pattern),
  'in colours': (v, f) => `${f.list(v.colours)}${when(v)}`,
  'in colours with': (v, f) => `${f.list(v.colours)}${when(v)}, mit ${quoted(v.piece)}`,
  'of pieces': (v, f) => f.list(v.pieces),
} satisfies Translation<typeof english.title>;
