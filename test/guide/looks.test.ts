import { describe, expect, it } from 'vitest';
import { parseColour } from '../../lib/colour/index.ts';
import { describeLooks } from '../../lib/guide/looks.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { createFormats, english, languageOf, say } from '../../lib/words/index.ts';
import { brief, capsule, piece } from '../plan/trip.ts';

/** A ground colour as a piece's file has it. */
const named = (name: string) => {
  const colour = parseColour(name);
  if (colour === undefined) throw new Error(name);
  return { ...colour, name, share: 1 };
};

const UNITS = { language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' } as const;

const pieces = [
  piece('shirt', 'shirt', { name: 'White shirt', colours: [named('white')] }),
  piece('skirt', 'wrap skirt', {
    name: 'Green skirt',
    colours: [named('bottle green')],
    pattern: { type: 'tartan', scale: 'medium' },
  }),
  piece('dress', 'slip dress', { name: 'Copper dress', colours: [named('copper')] }),
  piece('jumper', 'crew-neck jumper', { name: 'Oatmeal jumper', places: ['mid layer'], colours: [named('oatmeal')] }),
  piece('coat', 'wool coat', { name: 'Grey coat', colours: [named('mid grey')] }),
  piece('raincoat', 'raincoat', { name: 'Raincoat', colours: [named('olive')] }),
  piece('loafers', 'loafers', { name: 'Loafers', colours: [named('chestnut')] }),
  piece('boots', 'chelsea boots', { name: 'Boots', colours: [named('black')] }),
  piece('tote', 'tote', { name: 'Tote', colours: [named('tan')] }),
  piece('swimsuit', 'swimsuit', { name: 'Swimsuit', colours: [named('navy')] }),
];
const plan = {
  traveller: 'Ada',
  days: [],
  served: 0,
  of: 0,
  proven: true,
  unserved: [],
  weakPoints: [],
  wears: {},
} as const;

describe('names of looks that nobody has named', () => {
  const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
  const formats = createFormats(UNITS);
  const shown = [...engine.enumerate({ level: 'complete' })].map((look) => ({ look, favourite: false }));
  const byId = new Map(pieces.map((one) => [one.id, one]));
  const looks = describeLooks(shown, capsule(), brief(), plan, byId, engine, new Set());
  const titles = looks.map(({ title }) => say(english, formats, title));
  const titleWith = (...ids: readonly string[]): string | undefined =>
    titles[shown.findIndex(({ look }) => look.worn.map(({ piece: id }) => id).join() === ids.join())];

  it('tell its colours and the day it is for', () => {
    expect(titleWith('shirt', 'skirt', 'loafers')).toMatch(/^White and tartan for a (warm|mild) day$/);
    expect(titleWith('dress', 'jumper', 'loafers')).toMatch(/^Copper and oatmeal for a \w+ day$/);
    expect(titleWith('swimsuit')).toBe('Navy for the water');
  });

  it('say that a coat is for rain, and that layers are for a day that changes', () => {
    const wet = titles.filter((_, at) => shown[at]?.look.worn.some(({ piece: id }) => id === 'raincoat'));
    expect(wet.length).toBeGreaterThan(0);
    expect(wet.filter((title) => !title.includes('for a wet day'))).toEqual([]);
    const wide = looks.filter(
      ({ outdoors, look }) => outdoors.highC - outdoors.lowC >= 14 && !look.id.includes('raincoat'),
    );
    expect(wide.length).toBeGreaterThan(0);
    for (const { title } of wide) expect(say(english, formats, title)).toContain('changeable');
  });

  it('are each given once, whatever the number of looks', () => {
    expect(titles.length).toBeGreaterThan(20);
    expect(new Set(titles).size).toBe(titles.length);
  });

  it('are said in German as well', () => {
    const inGermany = createFormats({ ...UNITS, language: 'de' });
    const inGerman = looks.map(({ title }) => say(languageOf('de'), inGermany, title));
    expect(inGerman).toContain('Marineblau fürs Wasser');
    expect(inGerman.some((title) => /^Weiß und Schottenkaro für einen \S+en Tag$/.test(title))).toBe(true);
    expect(new Set(inGerman).size).toBe(inGerman.length);
  });
});
