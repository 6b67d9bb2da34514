import { expect, test } from 'vitest';
import { freeDay, placeOfDay } from '../../lib/guide/index.ts';
import type { PlannedDay } from '../../lib/model/index.ts';
import { createFormats, english, type Phrase, say } from '../../lib/words/index.ts';

const DAY: PlannedDay = { date: '2026-10-05', occasions: [], wash: [] };
const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const spoken = (phrase: Phrase): string => say(english, formats, phrase);

test('a day is spent where the brief says, or on the way home, or nobody knows where', () => {
  expect(placeOfDay({ ...DAY, place: 'Tarn' }, spoken)).toBe('Tarn');
  expect(placeOfDay({ ...DAY, place: 'Tarn', homeward: true }, spoken)).toBe('Homeward');
  expect(placeOfDay(DAY, spoken)).toBe('');
});

test('a day without occasions is free, and the way home asks for nothing more', () => {
  expect(spoken(freeDay(DAY))).toContain('wear what you like best');
  expect(spoken(freeDay({ ...DAY, homeward: true }))).toContain('on the way');
});
