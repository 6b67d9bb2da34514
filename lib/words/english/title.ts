import type { Formats } from '../formats.ts';
import { capital } from '../letters.ts';

/** Patterns as one says them of clothes: "stripes and charcoal". */
const PATTERNS: Readonly<Record<string, string>> = {
  stripe: 'stripes',
  check: 'checks',
  dot: 'dots',
  floral: 'flowers',
  animal: 'animal print',
  abstract: 'print',
  geometric: 'geometric print',
};

const when = (weather: string, time: string): string => {
  if (weather === 'water') return ' for the water';
  if (weather === 'none') return time === 'evening' ? ' for an evening' : '';
  return ` for a ${weather} ${time}`;
};

interface InColours {
  colours: string[];
  weather: string;
  time: string;
}

/** English names of looks that nobody has named. */
export const title = {
  colour: (v: { colour: string }) => v.colour,
  pattern: (v: { pattern: string }) => PATTERNS[v.pattern] ?? v.pattern,
  'in colours': (v: InColours, f: Formats) => capital(`${f.list(v.colours)}${when(v.weather, v.time)}`),
  'in colours with': (v: InColours & { piece: string }, f: Formats) =>
    capital(`${f.list(v.colours)}${when(v.weather, v.time)}, with ${v.piece}`),
  'of pieces': (v: { pieces: string[] }, f: Formats) => f.list(v.pieces),
} satisfies Record<string, (values: never, formats: Formats) => string>;
