import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dressSpanOf, dressSpanPhrases } from '../../lib/outfit/index.ts';
import { DRESS_CODES } from '../../lib/vocabulary/index.ts';
import { createFormats, english, LANGUAGES, say } from '../../lib/words/index.ts';
import { pieceOf } from './wardrobe.ts';

const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const worn = (id: string, low: number, high: number) => pieceOf(id, 'shirt', 'black', { dress: { low, high } });
const said = (...pieces: readonly ReturnType<typeof worn>[]): readonly string[] =>
  dressSpanPhrases(dressSpanOf(pieces), (id) => pieces.find((piece) => piece.id === id)?.name ?? id).map((phrase) =>
    say(english, formats, phrase),
  );

describe('the dress codes of a look', () => {
  it('are the codes that lie in the interval of every piece, each end set by pieces that end there', () => {
    const ends = fc.tuple(fc.nat(4), fc.nat(4)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
    fc.assert(
      fc.property(fc.array(ends, { minLength: 1, maxLength: 6 }), (intervals) => {
        const pieces = intervals.map(([low, high], index) => worn(`p${index}`, low, high));
        const common = DRESS_CODES.map((_, code) => code).filter((code) =>
          intervals.every(([low, high]) => low <= code && code <= high),
        );
        const span = dressSpanOf(pieces);
        expect(span.meets).toBe(common.length > 0);
        if (span.meets) expect([span.low, span.high]).toEqual([common[0], common.at(-1)]);
        // without the pieces that set an end, that end moves
        const rest = pieces.filter(({ id }) => !span.lowSetBy.includes(id));
        if (span.lowSetBy.length > 0) expect(dressSpanOf(rest).low).toBeLessThan(span.low);
        const others = pieces.filter(({ id }) => !span.highSetBy.includes(id));
        if (span.highSetBy.length > 0) expect(dressSpanOf(others).high).toBeGreaterThan(span.high);
      }),
      { numRuns: 300, seed: 2 },
    );
  });

  it('are told with the pieces that set their ends', () => {
    expect(said(worn('blazer', 1, 3), worn('chinos', 0, 2), worn('scarf', 0, 4))).toEqual([
      'Dress codes: smart casual to business.',
      'No plainer than smart casual: Blazer.',
      'No dressier than business: Chinos.',
    ]);
    expect(said(worn('scarf', 0, 4))).toEqual(['Dress codes: casual to formal.']);
  });

  it('where none is common, the two pieces that stand furthest apart are named', () => {
    expect(said(worn('jeans', 0, 1), worn('fleece', 0, 0), worn('gown', 3, 4), worn('blazer', 1, 3))).toEqual([
      'Fleece (up to casual) and Gown (from cocktail) have no dress code in common.',
    ]);
  });

  it('are told in German as well', () => {
    const pieces = [worn('blazer', 1, 3), worn('chinos', 0, 2)];
    const sentences = dressSpanPhrases(dressSpanOf(pieces), (id) => id).map((phrase) =>
      say(
        LANGUAGES.de ?? {},
        createFormats({ language: 'de-DE', temperature: 'C', length: 'cm', weight: 'kg' }),
        phrase,
      ),
    );
    expect(sentences.join(' ')).not.toMatch(/smart casual to|plainer|dressier/);
    expect(sentences).toHaveLength(3);
  });
});
