import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Piece } from '../../lib/model/index.ts';
import { createWardrobeEngine, HOUSE_RULES, LEVELS, type Restriction } from '../../lib/outfit/index.ts';
import { DRESS_CODES, type Need } from '../../lib/vocabulary/index.ts';
import { oracleLooks } from './oracle.ts';
import { wardrobes } from './random-wardrobe.ts';

const NEEDS: readonly Need[] = [
  'swim',
  'uneven ground',
  'long walking',
  'rain',
  'snow',
  'shoulders covered',
  'knees covered',
  'head covered',
  'sun',
];
const restrictionFor = (pieces: readonly Piece[]): fc.Arbitrary<Restriction> => {
  const some = fc.uniqueArray(fc.constantFrom(...pieces.map(({ id }) => id)), { maxLength: 2 });
  return fc.record(
    {
      pieces: some,
      without: some,
      dress: fc.constantFrom(...DRESS_CODES),
      needs: fc.uniqueArray(fc.constantFrom(...NEEDS), { maxLength: 2 }),
      clo: fc
        .tuple(fc.integer({ min: 0, max: 120 }), fc.integer({ min: 20, max: 150 }))
        .map(([min, max]) => ({ min: min / 100, max: max / 100 })),
      heelCmAtMost: fc.integer({ min: 0, max: 6 }),
    },
    { requiredKeys: [] },
  );
};
const cases = wardrobes.chain((wardrobe) =>
  fc.record({ wardrobe: fc.constant(wardrobe), asked: restrictionFor(wardrobe.pieces) }),
);

describe('enumerate, count and brute force', () => {
  it.each(LEVELS)('agree on random wardrobes, rules, sets and questions: %s looks, in order', (level) => {
    fc.assert(
      fc.property(cases, ({ wardrobe, asked }) => {
        const engine = createWardrobeEngine(wardrobe);
        const expected = oracleLooks(wardrobe, level, asked);
        const listed = [...engine.enumerate({ level, restriction: asked })].map(({ id }) => id);
        expect(listed).toEqual(expected);
        expect(engine.count(asked)[level]).toBe(BigInt(expected.length));
      }),
      { numRuns: 400, seed: 7 },
    );
  });

  it('goes on behind any look, also one that is no look of the question', () => {
    fc.assert(
      fc.property(cases, fc.nat(), ({ wardrobe, asked }, pick) => {
        const engine = createWardrobeEngine(wardrobe);
        const all = oracleLooks(wardrobe, 'complete', {});
        const wanted = [...engine.enumerate({ restriction: asked })].map(({ id }) => id);
        if (all.length === 0) return;
        const after = all[pick % all.length] as string;
        const behind = new Set(all.slice(all.indexOf(after) + 1));
        const anywhere = new Set(all);
        const rest = [...engine.enumerate({ restriction: asked, after })].map(({ id }) => id);
        expect(rest.filter((id) => anywhere.has(id))).toEqual(wanted.filter((id) => behind.has(id)));
      }),
      { numRuns: 300, seed: 11 },
    );
  });

  it('give each piece the looks that contain it', () => {
    fc.assert(
      fc.property(wardrobes, (wardrobe) => {
        const engine = createWardrobeEngine(wardrobe);
        for (const level of LEVELS) {
          const looks = [...engine.enumerate({ level })];
          for (const contribution of engine.contributions()) {
            const containing = looks.filter(({ worn }) => worn.some((seat) => seat.piece === contribution.piece));
            expect(contribution[level]).toBe(BigInt(containing.length));
            expect(engine.count({ pieces: [contribution.piece] })[level]).toBe(contribution[level]);
            const without = engine.count({ without: [contribution.piece] })[level];
            // whoever must be worn with it stays at home too
            if (wardrobe.always.length === 0) expect(without).toBe(BigInt(looks.length - containing.length));
          }
        }
      }),
      { numRuns: 120, seed: 3 },
    );
  });

  it('give each piece the looks of a question that contain it', () => {
    fc.assert(
      fc.property(cases, ({ wardrobe, asked }) => {
        const engine = createWardrobeEngine(wardrobe);
        const told = engine.contributions(asked);
        for (const level of LEVELS) {
          const looks = [...engine.enumerate({ level, restriction: asked })];
          for (const contribution of told) {
            const containing = looks.filter(({ worn }) => worn.some((seat) => seat.piece === contribution.piece));
            expect(contribution[level]).toBe(BigInt(containing.length));
          }
        }
      }),
      { numRuns: 150, seed: 13 },
    );
  });

  it('explain every look as going, and what is not a look as not going', () => {
    fc.assert(
      fc.property(cases, ({ wardrobe, asked }) => {
        const engine = createWardrobeEngine(wardrobe);
        const bySet = new Set(oracleLooks(wardrobe, 'complete', asked).map((id) => setOf(id)));
        const any = oracleLooks({ ...wardrobe, rules: OFF, never: [], always: [] }, 'complete', {}).slice(0, 150);
        for (const id of any) {
          const pieces = id.split('+').map((part) => part.split('@')[0] as string);
          expect(engine.explain(pieces, asked).goes).toBe(bySet.has(setOf(id)));
        }
      }),
      { numRuns: 120, seed: 5 },
    );
  });
});

const setOf = (id: string): string =>
  id
    .split('+')
    .map((part) => part.split('@')[0])
    .toSorted()
    .join();
const OFF = Object.fromEntries(HOUSE_RULES.map(({ id }) => [id, { severity: 'off' as const }]));
