import { describe, expect, it } from 'vitest';
import { createWardrobeEngine, dressSpanOf } from '../../lib/outfit/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { pieceOf } from './wardrobe.ts';

/** What is taken off at the door is not judged by the host. Common practice, no source. */
const parka = pieceOf('parka', 'parka', 'navy', { dress: { low: 0, high: 0 } });
const coat = pieceOf('coat', 'wool coat', 'navy', { dress: { low: 2, high: 4 } });
const gloves = pieceOf('gloves', 'leather gloves', 'black', { dress: { low: 1, high: 4 } });
const blazer = pieceOf('blazer', 'blazer', 'navy', { dress: { low: 2, high: 3 } });
const shirt = pieceOf('shirt', 'dress shirt', 'white', { dress: { low: 2, high: 4 } });
const trousers = pieceOf('trousers', 'tailored trousers', 'navy', { dress: { low: 2, high: 4 } });
const derbies = pieceOf('derbies', 'derby shoes', 'black', { dress: { low: 2, high: 3 } });
const jeans = pieceOf('jeans', 'jeans', 'navy', { dress: { low: 0, high: 1 } });
const pieces = [parka, coat, gloves, blazer, shirt, trousers, derbies, jeans];
const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
const suit = ['shirt', 'trousers', 'derbies'];

describe('what is left at the door', () => {
  it('keeps no look from a dress code, dressier or plainer than it', () => {
    const cocktail = [...engine.enumerate({ restriction: { dress: 'cocktail', pieces: [...suit, 'parka'] } })];
    expect(cocktail.length).toBeGreaterThan(0);
    expect(engine.explain([...suit, 'parka']).goes).toBe(true);
    expect(engine.explain(['shirt', 'jeans', 'derbies']).goes).toBe(false);
    expect(dressSpanOf([shirt, trousers, derbies, parka, gloves])).toMatchObject({ low: 2, high: 3, meets: true });
    expect(dressSpanOf([jeans, coat, gloves])).toMatchObject({ low: 0, high: 1 });
    expect(dressSpanOf([jeans, blazer]).meets).toBe(false);
  });

  it('is about as dressy as the rest where there is a choice', () => {
    const softly = (...ids: string[]): readonly string[] =>
      engine.explain(ids).reasons.flatMap(({ rule, severity }) => (severity === 'lowers the score' ? [rule] : []));
    expect(softly(...suit, 'parka')).toContain('on-the-way');
    // once, however many pieces it is plainer than, and as what it is: no fault
    expect(softly(...suit, 'parka').filter((rule) => rule === 'on-the-way')).toHaveLength(1);
    const [told] = engine.explain([...suit, 'parka']).reasons.filter(({ rule }) => rule === 'on-the-way');
    expect(told?.pieces.toSorted()).toEqual([...suit, 'parka'].toSorted());
    expect(
      told &&
        say(english, createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' }), told.message),
    ).toBe('Parka is plainer than what is worn with it: fine on the way, since it comes off at the door.');
    expect(softly(...suit, 'coat')).not.toContain('on-the-way');
  });
});
