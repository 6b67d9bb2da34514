import { describe, expect, it } from 'vitest';
import { KIND_IDS, KINDS, type KindId, type Slot, tucksOf } from '../../lib/vocabulary/index.ts';

const worn = (...pieces: readonly (readonly [KindId, Slot])[]) =>
  tucksOf(pieces.map(([kind, slot]) => ({ kind, slot })));

// habits of dress: common practice, no source
describe('tucking in', () => {
  it('tucks a dress shirt into whatever it is worn with, and a shirt into tailoring', () => {
    expect(worn(['dress shirt', 'top'], ['chinos', 'bottom'])).toEqual(['in', 'around']);
    expect(worn(['suit trousers', 'bottom'], ['derby shoes', 'shoes'], ['shirt', 'top'])).toEqual([
      'around',
      undefined,
      'in',
    ]);
    expect(worn(['blouse', 'top'], ['pencil skirt', 'bottom'])).toEqual(['in', 'around']);
    expect(worn(['camisole', 'top'], ['midi skirt', 'bottom'])).toEqual(['in', 'around']);
  });

  it('lets a shirt hang over chinos, unless a belt or a tie asks for it', () => {
    expect(worn(['shirt', 'top'], ['chinos', 'bottom'])).toEqual([undefined, undefined]);
    expect(worn(['shirt', 'top'], ['chinos', 'bottom'], ['belt', 'belt'])).toEqual(['in', 'around', undefined]);
    expect(worn(['t-shirt', 'top'], ['chinos', 'bottom'], ['belt', 'belt'])).toEqual(['in', 'around', undefined]);
    expect(worn(['t-shirt', 'top'], ['jeans', 'bottom'])).not.toContain('in');
    expect(worn(['shirt', 'top'], ['chinos', 'bottom'], ['tie', 'tie'])).toEqual(['in', 'around', undefined]);
  });

  it('tucks in nothing knitted thick, nothing without a bottom, and nothing where two tops are worn', () => {
    expect(worn(['crew-neck jumper', 'top'], ['suit trousers', 'bottom'], ['belt', 'belt'])).not.toContain('in');
    expect(worn(['dress shirt', 'top'])).toEqual([undefined]);
    expect(worn(['dress shirt', 'top'], ['t-shirt', 'top'], ['chinos', 'bottom'])).not.toContain('in');
    for (const kind of KIND_IDS) {
      if (!KINDS[kind].places.includes('top')) continue;
      const [top, bottom] = worn([kind, 'top'], ['pencil skirt', 'bottom']);
      expect(bottom === 'around', kind).toBe(top === 'in');
    }
  });
});
