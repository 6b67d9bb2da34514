import { describe, expect, it } from 'vitest';
import { COLOUR_NAMES } from '../../lib/colour/names/index.ts';
import { english } from '../../lib/words/english/index.ts';
import { colourWord } from '../../lib/words/german/colours.ts';
import { german } from '../../lib/words/german/index.ts';
import { createFormats, type Formats, LANGUAGES, languageOf, speaks } from '../../lib/words/index.ts';
import type { PhraseValue, Sentence } from '../../lib/words/phrase.ts';

const UNITS = { temperature: 'C', length: 'cm', weight: 'kg' } as const;
const inEnglish = createFormats({ language: 'en-GB', ...UNITS });
const inGerman = createFormats({ language: 'de', ...UNITS });

/** Values whose sort cannot be told by how a sentence uses them, by name. */
const BY_NAME: Readonly<Record<string, PhraseValue>> = {
  on: '2027-10-03',
  date: '2027-10-03',
  read: '2026-11',
  dryBy: '2027-10-04',
  at: '18:00',
  dryAt: '18:00',
  hung: '22:00',
  day: '2027-10-05',
  latest: '2027-10-03',
  until: '21:00',
  starts: '20:00',
  part: 'day',
  from: '2027-10-02',
  to: '2027-10-10',
  washDays: ['2027-10-06'],
  firstDays: ['2027-10-02', '2027-10-06'],
  lastDays: ['2027-10-04', '2027-10-06'],
  dress: 'cocktail',
  asked: 'cocktail',
  ends: 'casual',
  begins: 'business',
  need: 'rain',
  needs: ['rain', 'snow'],
  place: 'top',
  as: 'top',
  activity: 'walking',
  time: '19:30',
  direction: 'darker',
  colour: 'rust',
  currency: 'EUR',
  colours: ['rust', 'navy'],
  type: 'V',
  scheme: 'triad',
  role: 'accent',
  relation: 'clash',
  vision: 'protanopia',
  rule: 'colour',
  family: 'red',
};
const SHAPES: readonly (() => PhraseValue)[] = [() => 3, () => 'Loafer', () => ['Loafer', 'Weste'], () => '7'];

const listed = (items: readonly string[]): string => {
  if (!Array.isArray(items)) throw new TypeError('not a list');
  return inEnglish.list(items);
};
/** Intl takes a word for a list of letters; here a list has to be one. */
const strict: Formats = { ...inEnglish, list: listed, either: listed };

/** Tries each sort of value for what a sentence reads, until the English sentence can be said; then both are said. */
const samples = (sentence: Sentence): readonly Readonly<Record<string, PhraseValue>>[] => {
  const sound = (values: Record<string, PhraseValue>): boolean => {
    try {
      const text: unknown = sentence(values, strict);
      return typeof text === 'string' && !/undefined|NaN|\[object/.test(text);
    } catch {
      return false;
    }
  };
  // Names come up one by one, as earlier values let the sentence go on; grow until nothing new is read.
  const found: Record<string, PhraseValue>[] = [];
  const grow = (values: Record<string, PhraseValue>): boolean => {
    const missing: string[] = [];
    const reader = new Proxy(values, {
      get: (target, name) => {
        if (typeof name !== 'string') return undefined;
        if (name in target) return target[name];
        missing.push(name);
        return undefined;
      },
    });
    try {
      sentence(reader, inEnglish);
    } catch {
      // what is missing is tried below
    }
    const next = missing[0];
    if (next === undefined) {
      if (sound(values)) found.push({ ...values });
      return sound(values);
    }
    const tries = next in BY_NAME ? [() => BY_NAME[next] as PhraseValue, ...SHAPES] : SHAPES;
    return tries.some((shape) => grow({ ...values, [next]: shape() }));
  };
  grow({});
  return found;
};

/** The same in both languages: units, dates, the stylist's own words, loan words of the trade. */
const SAME: Partial<Record<keyof typeof english, readonly string[]>> = {
  guide: ['as written'],
  outfit: ['unit clo'],
  site: ['nav label', 'nav looks', 'looks heading', 'look number', 'warmth of a piece'],
  title: ['pattern'],
};

const rooms = Object.keys(english) as (keyof typeof english)[];
const said = (sentence: Sentence, values: unknown, formats: Formats): string => sentence(values, formats);

const letters = (text: string): boolean => /\p{L}{3,}/u.test(text);

describe('German', () => {
  it('has the keys of English, room by room', () => {
    expect(Object.keys(german).sort()).toEqual(Object.keys(english).sort());
    for (const room of rooms) expect(Object.keys(german[room]).sort(), room).toEqual(Object.keys(english[room]).sort());
  });

  it.each(rooms)('says every sentence of %s', (room) => {
    const same: string[] = [];
    for (const [key, sentence] of Object.entries<Sentence>(english[room])) {
      const translated = (german[room] as Readonly<Record<string, Sentence>>)[key] as Sentence;
      const [values] = samples(sentence);
      expect(values, `${room}/${key} can be said with sample values`).toBeDefined();
      const one = said(sentence, values, inEnglish);
      const other = said(translated, values, inGerman);
      expect(other, `${room}/${key}`).not.toMatch(/undefined|NaN|\[object|\$\{|\.\.|#/);
      if (one !== '') expect(other, `${room}/${key}`).not.toBe('');
      if (one === other && letters(one)) same.push(key);
    }
    expect(same).toEqual(SAME[room] ?? []);
  });

  it('has a word for every colour of the dictionary, and leaves made-up names alone', () => {
    const words = COLOUR_NAMES.filter((name) => colourWord(name) === name);
    expect(words).toEqual([]);
    expect(colourWord('wet slate')).toBe('wet slate');
  });

  it('is chosen by the language tag, with or without a region', () => {
    expect(languageOf('de')).toBe(german);
    expect(languageOf('de-AT')).toBe(german);
    expect(languageOf('fr')).toBe(english);
    expect(Object.keys(LANGUAGES).every(speaks)).toBe(true);
    expect(speaks('fr')).toBe(false);
  });
});

describe('journeys', () => {
  const word = (...journeys: string[]) => german.print['journey word']({ journeys });
  it('knows trains, flights and ferries by their German names', () => {
    expect(word('Frühzug nach Wien', 'Nachtzug')).toBe('Zug');
    expect(word('Bahnfahrt', 'Zug über den Pass')).toBe('Zug');
    expect(word('Hinflug', 'Rückflug')).toBe('Flug');
    expect(word('Nachtfähre', 'Schiff nach Split')).toBe('Fähre');
  });
  it('takes no longer word for one, and says the general word for a mixture', () => {
    expect(word('Anzug anprobieren')).toBe('Fahrt');
    expect(word('Über die Autobahn')).toBe('Fahrt');
    expect(word('Zug', 'Flug')).toBe('Fahrt');
    expect(word()).toBe('Fahrt');
  });
});
