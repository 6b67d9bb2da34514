import { describe, expect, it } from 'vitest';
import { cautionsOfDay, cautionsOfTrip, strongestCautions } from '../../lib/comfort/index.ts';
import { german } from '../../lib/words/german/index.ts';
import { createFormats, english, type Phrase, phrase, say } from '../../lib/words/index.ts';

const heat = (high: number) => phrase('comfort', 'heat caution', { high });
const cold = (low: number) => phrase('comfort', 'cold caution', { low });
const sun = (index: number, band: string) => phrase('comfort', 'uv index', { index, band });
const bare = (...parts: string[]) => phrase('comfort', 'bare to the sun', { parts });
const hat = phrase('comfort', 'take a hat', {});

describe('the cautions of a day', () => {
  it('are told once a kind, by the hottest, the coldest and the strongest sun', () => {
    const said = [heat(32), sun(5, 'moderate'), hat, heat(33), sun(11, 'extreme'), cold(-2), cold(-9), hat];
    expect(strongestCautions(said)).toEqual([heat(33), sun(11, 'extreme'), hat, cold(-9)]);
  });

  it('keep apart what names other parts of the body', () => {
    const said = [bare('forearms'), bare('calves'), bare('forearms')];
    expect(strongestCautions(said)).toEqual([bare('forearms'), bare('calves')]);
  });

  it('are none when there are none', () => {
    expect(strongestCautions([])).toEqual([]);
  });

  it('stand for the day where occasions share them, and else by their own occasion', () => {
    const wet = phrase('comfort', 'wet ground', {});
    const { day, occasions } = cautionsOfDay([
      [],
      [heat(32), sun(5, 'moderate'), bare('forearms')],
      [heat(33), bare('calves')],
      [wet],
    ]);
    expect(day).toEqual([heat(33)]);
    expect(occasions).toEqual([[], [sun(5, 'moderate'), bare('forearms')], [bare('calves')], [wet]]);
  });
});

describe('the sun of a trip', () => {
  const day = (date: string, ...cautions: readonly (readonly Phrase[])[]) => ({
    date,
    occasions: cautions.map((told) => ({ cautions: told })),
  });
  const days = [
    day('2027-06-11', [sun(8, 'very high'), hat]),
    day('2027-06-12', [heat(33)], [sun(9, 'very high'), hat]),
    day('2027-06-13', []),
    day('2027-06-14', [sun(4, 'moderate'), hat]),
  ];
  const told = cautionsOfTrip(days);

  it('is told once, by its highest index, with its days in stretches', () => {
    expect(told.map(({ key }) => key)).toEqual(['sun on the trip', 'take a hat']);
    expect(told[0]?.values).toEqual({
      index: 9,
      band: 'very high',
      firstDays: ['2027-06-11', '2027-06-14'],
      lastDays: ['2027-06-12', '2027-06-14'],
    });
  });

  it('defers to the local warning in every language, and names the days', () => {
    for (const [words, format] of [
      [english, 'en-GB'],
      [german, 'de-DE'],
    ] as const) {
      const formats = createFormats({ language: format, temperature: 'C', length: 'cm', weight: 'kg' });
      const said = told.map((caution) => say(words, formats, caution)).join(' ');
      expect(said).toMatch(/warning|UV-Warnung/i);
      expect(said).toMatch(/11.*12.*14/);
    }
  });

  it('tells the dark of the whole day, though it has one occasion', () => {
    const dark = phrase('comfort', 'dark all day', {});
    expect(cautionsOfDay([[dark, cold(-2)]])).toEqual({ day: [dark], occasions: [[cold(-2)]] });
  });

  it('leaves a day its index and what is bare, and no more', () => {
    const { occasions } = cautionsOfDay([[sun(8, 'very high'), hat, bare('calves')]]);
    expect(occasions).toEqual([[sun(8, 'very high'), bare('calves')]]);
  });

  it('is not told of a trip without', () => {
    expect(cautionsOfTrip([day('2027-06-11', [heat(33)])])).toEqual([]);
  });
});
