import { describe, expect, it } from 'vitest';
import { findingsOfLetters } from '../../lib/guide/index.ts';
import { loadFonts } from '../../lib/type/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { brief, capsule, occasion, piece } from '../plan/trip.ts';

const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const studio = {
  name: 'Studio',
  line: '',
  language: 'en-GB',
  temperature: 'C',
  length: 'cm',
  weight: 'kg',
  paper: 'A4',
  looksShown: 12,
  note: '',
} as const;

describe('letters that our fonts lack', () => {
  const fonts = loadFonts();
  const told = (change: Partial<Parameters<typeof findingsOfLetters>[0]>) =>
    findingsOfLetters(
      { pieces: [piece('jumper', 'sweatshirt')], brief: brief(), capsule: capsule(), studio, ...change },
      fonts,
    );

  it('are told once a piece, with file, line and what is shown instead', () => {
    const pieces = [
      { ...piece('coat', 'wool coat', { name: 'Кашемировое пальто' }), lines: { name: 2 } },
      {
        ...piece('jumper', 'sweatshirt', { name: '毛衣 Grey jumper 🧥' }),
        file: 'wardrobes/a/jumper.md',
        lines: { name: 3 },
      },
    ];
    const [one, ...others] = told({ pieces });
    expect(others).toEqual([]);
    expect(one).toMatchObject({
      level: 'warning',
      rule: 'letters',
      file: 'wardrobes/a/jumper.md',
      line: 3,
      about: ['jumper'],
    });
    expect(one === undefined ? '' : say(english, formats, one.message)).toBe(
      'Our fonts for cards and paper do not have 毛, 衣 and 🧥 of “毛衣 Grey jumper 🧥”: they show “Grey jumper”.',
    );
  });

  it('are told of occasions at their line, of titles, and a few of many', () => {
    const named = brief({
      title: 'わたしのたびのきろく',
      occasions: [{ ...occasion('2027-10-02', 'ארוחה'), line: 12 }],
    });
    const found = told({ brief: named, capsule: capsule({ title: '旅' }) });
    expect(found.map(({ file, line }) => [file, line])).toEqual([
      ['trips/test/brief.md', 12],
      ['trips/test/brief.md', undefined],
      ['trips/test/quiet.md', undefined],
    ]);
    expect(found.map(({ message }) => say(english, formats, message))[1]).toContain(
      'わ, た, し, の, び, き and 2 more of',
    );
  });

  it('are told of nothing that can be set', () => {
    expect(told({})).toEqual([]);
  });
});
