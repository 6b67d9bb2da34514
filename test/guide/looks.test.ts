import { describe, expect, it } from 'vitest';
import { describeLooks } from '../../lib/guide/looks.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { brief, capsule, piece } from '../plan/trip.ts';

const pieces = [
  piece('shirt', 'shirt', { name: 'White shirt' }),
  piece('skirt', 'a-line skirt', { name: 'Green skirt' }),
  piece('jumper', 'crew-neck jumper', { name: 'Oatmeal jumper', places: ['mid layer'] }),
  piece('coat', 'wool coat', { name: 'Grey coat' }),
  piece('loafers', 'loafers', { name: 'Loafers' }),
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

describe('names of looks', () => {
  const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
  const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
  const shown = [...engine.enumerate({ level: 'layered' })].map((look) => ({ look, favourite: false }));
  const byId = new Map(pieces.map((one) => [one.id, one]));
  const titles = describeLooks(shown, capsule(), brief(), plan, byId, engine, new Set()).map(({ title }) =>
    say(english, formats, title),
  );

  it('start with the core, and name what sets a look apart when the core was named before', () => {
    expect(titles.length).toBeGreaterThan(2);
    expect(titles[0]).toBe('White shirt, green skirt');
    expect(titles).toContain('Oatmeal jumper, green skirt');
    expect(titles).toContain('Grey coat, green skirt');
  });

  it('are each given once while there is a piece to tell the looks apart', () => {
    expect(new Set(titles.slice(0, 3)).size).toBe(3);
  });
});
