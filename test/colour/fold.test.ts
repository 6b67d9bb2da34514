import { describe, expect, it } from 'vitest';
import { foldedByPiece } from '../../lib/colour/index.ts';
import type { Finding } from '../../lib/model/index.ts';
import { createFormats, english, phrase, say } from '../../lib/words/index.ts';

const pair = (one: string, two: string, vision: string, ...looks: readonly number[]): Finding => ({
  level: 'advice',
  rule: 'colour-hard-to-tell',
  message: phrase('colour', 'hard to tell', { one, two, visions: [vision] }),
  reason: phrase('colour', 'hard to tell in', { looks: looks.map(String) }),
  mend: phrase('colour', 'hard to tell mend', {}),
  about: [one, two],
});
const other: Finding = { level: 'advice', rule: 'other', message: phrase('guide', 'any day', {}), about: [] };
const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });

describe('pieces that are hard to tell apart, folded', () => {
  const folded = foldedByPiece([
    other,
    pair('Cords', 'Boots', 'protanopia', 2),
    pair('Scarf', 'Cords', 'protanopia', 11, 2),
    pair('Cords', 'Coat', 'deuteranopia', 3),
    pair('Scarf', 'Boots', 'protanopia', 2),
    other,
  ]);
  const said = folded.map(({ message, reason }) =>
    [message, ...(reason === undefined ? [] : [reason])].map((told) => say(english, formats, told)).join(' '),
  );

  it('are told in one line for the piece with most pairs, and a pair that is left in its own words', () => {
    expect(said.slice(1, -1)).toEqual([
      'Cords looks like Boots, Scarf and Coat to people with no red cones (protanopia) or no green cones (deuteranopia). They are worn together in looks 2, 3 and 11.',
      'Scarf and Boots look alike to people with no red cones (protanopia). They are worn together in look 2.',
    ]);
  });

  it('leave no pair untold, and other findings where they were', () => {
    expect(folded.map(({ rule }) => rule)).toEqual(['other', 'colour-hard-to-tell', 'colour-hard-to-tell', 'other']);
    expect(folded.flatMap(({ about }) => about)).toEqual(['Cords', 'Boots', 'Scarf', 'Coat', 'Scarf', 'Boots']);
    expect(foldedByPiece([other])).toEqual([other]);
  });
});
