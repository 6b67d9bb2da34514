import { describe, expect, it } from 'vitest';
import { cautionsOfDay, strongestCautions } from '../../lib/comfort/index.ts';
import { phrase } from '../../lib/words/index.ts';

const heat = (high: number) => phrase('comfort', 'heat caution', { high });
const cold = (low: number) => phrase('comfort', 'cold caution', { low });
const sun = (index: number, band: string) => phrase('comfort', 'sun caution', { index, band });
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
      [heat(32), sun(5, 'moderate'), hat],
      [heat(33), bare('calves')],
      [wet],
    ]);
    expect(day).toEqual([heat(33)]);
    expect(occasions).toEqual([[], [sun(5, 'moderate'), hat], [bare('calves')], [wet]]);
  });
});
