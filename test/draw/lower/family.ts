import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CUTS, type Cut, KINDS, type KindId, LENGTHS } from '../../../lib/vocabulary/index.ts';
import {
  type Artists,
  difference,
  drawn,
  faults,
  kilobytes,
  kindsOf,
  medianColour,
  pieceOf,
  unlikeness,
} from './picture.ts';

const GROUNDS = ['#f1ebde', '#7a2f3c', '#6b7257', '#1f1f24'];

/** What every family of drawings owes: all kinds of its group, sound data, true colour, light weight, one look a piece. */
export const familyTests = (
  artists: Artists,
  group: string,
  limits: { readonly kilobytes: number; readonly alike: number; readonly lengths: readonly [number, number] },
): void => {
  const kinds = kindsOf(group);

  describe(`the group ${group}`, () => {
    test('every kind has its drawing', () => {
      expect(Object.keys(artists).sort()).toEqual([...kinds].sort());
    });

    test.each(kinds)('%s: colour, weight, sound data', (kind) => {
      for (const hex of GROUNDS) {
        const piece = pieceOf(kind, { hex: [hex] });
        for (const detail of ['full', 'small'] as const) {
          const drawing = drawn(artists, piece, detail);
          expect(faults(drawing)).toEqual([]);
          // the issue: median colour of the body within CIEDE2000 6 of the piece's colour
          expect(difference(medianColour(drawing), hex), `${kind} ${hex} ${detail}`).toBeLessThan(6);
        }
      }
      const piece = pieceOf(kind);
      const [full, small] = [kilobytes(drawn(artists, piece)), kilobytes(drawn(artists, piece, 'small'))];
      expect(full).toBeLessThan(limits.kilobytes);
      expect(small).toBeLessThan(full * 0.6);
    });

    test('the same piece is always the same, another piece of the kind is not', () => {
      for (const kind of kinds) {
        const one = JSON.stringify(drawn(artists, pieceOf(kind)));
        expect(JSON.stringify(drawn(artists, pieceOf(kind)))).toBe(one);
        expect(JSON.stringify(drawn(artists, pieceOf(kind, { id: 'other' })))).not.toBe(one);
        expect(JSON.stringify(drawn(artists, pieceOf(kind, { wardrobe: 'ben' })))).not.toBe(one);
      }
    });

    test('no two kinds look alike in the same cloth', () => {
      const pictures = kinds.map((kind) => ({
        kind,
        drawing: drawn(artists, pieceOf(kind, { fabric: 'cotton twill' }), 'small'),
      }));
      for (const [i, one] of pictures.entries())
        for (const other of pictures.slice(i + 1))
          expect(unlikeness(one.drawing, other.drawing), `${one.kind} and ${other.kind}`).toBeGreaterThan(limits.alike);
    });

    test('any cut, word and number of centimetres gives a sound drawing', () => {
      fc.assert(
        fc.property(
          fc.constantFrom<KindId>(...kinds),
          fc.constantFrom(...(Object.keys(CUTS) as Cut[])),
          fc.constantFrom(...LENGTHS),
          fc.option(fc.double({ min: -1e6, max: 1e6 }), { nil: undefined }),
          fc.constantFrom('full' as const, 'small' as const),
          (kind, cut, length, lengthCm, detail) => {
            const drawing = drawn(
              artists,
              pieceOf(kind, { cut, length, ...(lengthCm !== undefined && { lengthCm }) }),
              detail,
            );
            expect(faults(drawing)).toEqual([]);
            expect(Math.max(drawing.box.width, drawing.box.height)).toBeLessThan(180);
          },
        ),
        { numRuns: 120 },
      );
    });

    test('a length given in centimetres is seen', () => {
      for (const kind of kinds) {
        if (KINDS[kind].length === 'none') continue;
        const heights = limits.lengths.map((lengthCm) => drawn(artists, pieceOf(kind, { lengthCm })).box.height);
        expect((heights[1] ?? 0) - (heights[0] ?? 0), kind).toBeGreaterThan(4);
      }
    });
  });
};
