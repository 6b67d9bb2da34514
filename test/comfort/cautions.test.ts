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
    const mark = phrase('comfort', 'wet mark', {});
    expect(occasions).toEqual([[], [sun(5, 'moderate'), bare('forearms')], [bare('calves')], [mark]]);
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
    expect(cautionsOfDay([[dark, cold(-2)]])).toEqual({
      day: [phrase('comfort', 'dark mark', {})],
      occasions: [[cold(-2)]],
    });
  });

  it('leaves a day its index and what is bare, and no more', () => {
    const { occasions } = cautionsOfDay([[sun(8, 'very high'), hat, bare('calves')]]);
    expect(occasions).toEqual([[sun(8, 'very high'), bare('calves')]]);
  });

  it('is told with the dark and the wet ground, each once with its days, though the sun is not worth a word', () => {
    const dark = phrase('comfort', 'dark all day', {});
    const wet = phrase('comfort', 'wet ground', {});
    const winter = [
      day('2027-01-09', [dark, wet], [dark]),
      day('2027-01-10', [dark, cold(-9)]),
      day('2027-01-13', [wet]),
    ];
    const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
    const said = cautionsOfTrip(winter).map((caution) => say(english, formats, caution));
    expect(said).toHaveLength(2);
    expect(said[0]).toMatch(/^On 9\s?–\s?10 Jan the sun does not rise: .*carry a light/u);
    expect(said[1]).toMatch(/^On 9 Jan and 13 Jan the ground may be wet and slippery: /u);
    const marks = winter.flatMap(({ occasions }) => {
      const told = cautionsOfDay(occasions.map(({ cautions }) => cautions));
      return [...told.day, ...told.occasions.flat()].map((caution) => say(english, formats, caution));
    });
    expect(marks.filter((mark) => mark.includes('grip') || mark.includes('carry a light'))).toEqual([]);
    expect(marks).toEqual(expect.arrayContaining(['No sunrise.', 'Wet ground.']));
  });

  it('is not told of a trip without', () => {
    expect(cautionsOfTrip([day('2027-06-11', [heat(33)])])).toEqual([]);
  });
});
