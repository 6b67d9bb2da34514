import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkList, findingsOfList, tradeFindings } from '../../lib/capsule/index.ts';
import type { PackingListPlan, Piece } from '../../lib/model/index.ts';
import type { KindId } from '../../lib/vocabulary/index.ts';
import { pieceOf } from '../outfit/wardrobe.ts';
import { brief, occasion } from '../plan/trip.ts';

const listOf = (...lines: readonly (readonly [number, readonly KindId[]])[]): PackingListPlan => ({
  id: 'list',
  file: '',
  title: 'List',
  note: '',
  lines: lines.map(([count, kinds], at) => ({ what: `line ${at}`, count, kinds })),
});
const rulesOf = (pieces: readonly Piece[], trip = brief()): readonly string[] =>
  tradeFindings(pieces, trip).map(({ rule }) => rule);

describe('pieces against a list', () => {
  it('says which pieces fill a line, what is missing, what is beyond it, and what no line names', () => {
    const pieces = [pieceOf('a', 'shirt'), pieceOf('b', 'shirt'), pieceOf('c', 'chinos'), pieceOf('d', 'tote')];
    const check = checkList(pieces, listOf([1, ['shirt', 't-shirt']], [2, ['chinos']]));
    expect(check.lines).toEqual([
      { what: 'line 0', wanted: 1, pieces: ['a'], under: 0, over: ['b'] },
      { what: 'line 1', wanted: 2, pieces: ['c'], under: 1, over: [] },
    ]);
    expect(check.unlisted).toEqual(['d']);
    expect(check.filled).toBe(false);
    const findings = findingsOfList(check, pieces);
    expect(findings.map(({ rule, level }) => [rule, level])).toEqual([
      ['list-overfilled', 'advice'],
      ['list-underfilled', 'warning'],
      ['list-unlisted', 'advice'],
    ]);
    expect(findings.map(({ about }) => about)).toEqual([['b'], ['c'], ['d']]);
  });

  it('moves a piece to another line where that fills more', () => {
    const pieces = [pieceOf('a', 'cardigan'), pieceOf('b', 'blazer')];
    const either = listOf([1, ['cardigan', 'blazer']], [1, ['cardigan']]);
    expect(checkList(pieces, either)).toMatchObject({ filled: true, unlisted: [] });
    expect(findingsOfList(checkList(pieces, either), pieces)).toEqual([]);
  });

  it('fills as many places as trying every way of seating fills, and counts every piece once', () => {
    const KINDS_USED = ['shirt', 'chinos', 'cardigan', 'tote'] as const;
    const kind = fc.constantFrom<KindId>(...KINDS_USED);
    const lines = fc.array(
      fc.tuple(fc.integer({ min: 1, max: 2 }), fc.uniqueArray(kind, { minLength: 1, maxLength: 3 })),
      {
        minLength: 1,
        maxLength: 3,
      },
    );
    const most = (pieces: readonly Piece[], places: readonly (readonly KindId[])[]): number => {
      const [piece, ...rest] = pieces;
      if (piece === undefined) return 0;
      const seated = places.flatMap((kinds, at) =>
        kinds.includes(piece.kind)
          ? [
              1 +
                most(
                  rest,
                  places.filter((_, other) => other !== at),
                ),
            ]
          : [],
      );
      return Math.max(most(rest, places), ...seated);
    };
    fc.assert(
      fc.property(fc.array(kind, { maxLength: 6 }), lines, (kinds, made) => {
        const pieces = kinds.map((one, at) => pieceOf(`p${at}`, one));
        const check = checkList(pieces, listOf(...made));
        const places = made.flatMap(([count, some]) => Array.from({ length: count }, () => some));
        const filling = check.lines.flatMap((line) => line.pieces);
        expect(filling).toHaveLength(most(pieces, places));
        const all = [...filling, ...check.lines.flatMap(({ over }) => over), ...check.unlisted];
        expect(all.toSorted()).toEqual(pieces.map(({ id }) => id).toSorted());
      }),
      { numRuns: 200, seed: 9 },
    );
  });
});

// Every rule here: common practice, no source (test/reference/common_practice.csv).
describe('what the trade would say', () => {
  it('silhouette-repeats: two pieces of one kind, cut and length', () => {
    const [one, two] = [pieceOf('a', 'shirt', 'white'), pieceOf('b', 'shirt', 'navy')];
    expect(rulesOf([one, two])).toContain('silhouette-repeats');
    expect(rulesOf([one, { ...two, cut: 'relaxed' }])).not.toContain('silhouette-repeats');
    expect(rulesOf([one, { ...two, length: 'thigh' }])).not.toContain('silhouette-repeats');
    expect(rulesOf([pieceOf('a', 'tote'), pieceOf('b', 'tote')])).not.toContain('silhouette-repeats');
  });

  it('colour-variety: fewer than three colours, or more than six bright ones', () => {
    const kinds: readonly KindId[] = ['shirt', 'chinos', 'cardigan', 'blazer', 'wool coat', 'jeans', 'henley'];
    const inColours = (names: readonly string[]) =>
      kinds.map((kind, at) => pieceOf(kind, kind, names[at % names.length]));
    expect(rulesOf(inColours(['navy', 'white']))).toContain('colour-variety');
    expect(rulesOf(inColours(['navy', 'white', 'rust']))).not.toContain('colour-variety');
    const bright = ['rust', 'emerald', 'violet', 'mustard', 'fuchsia', 'turquoise', 'scarlet'];
    expect(rulesOf(inColours(bright))).toContain('colour-variety');
  });

  it('separates-share: more dresses than separates', () => {
    const dresses = ['slip dress', 'tea dress', 'shirt dress'] as const;
    const some = dresses.map((kind) => pieceOf(kind, kind, 'rust'));
    expect(rulesOf([...some, pieceOf('s', 'shirt')])).toContain('separates-share');
    expect(
      rulesOf([...some.slice(1), pieceOf('s', 'shirt'), pieceOf('c', 'chinos'), pieceOf('j', 'jeans')]),
    ).not.toContain('separates-share');
  });

  it('pattern-or-statement: all neutral and plain, with nothing bold in its stead', () => {
    const plain = [pieceOf('a', 'shirt', 'white'), pieceOf('b', 'chinos', 'navy')];
    expect(rulesOf(plain)).toContain('pattern-or-statement');
    const bold = { ...pieceOf('n', 'necklace', 'gold'), statement: true };
    expect(rulesOf([...plain, bold])).not.toContain('pattern-or-statement');
    expect(rulesOf([...plain, pieceOf('r', 'cardigan', 'rust')])).not.toContain('pattern-or-statement');
  });

  it('short-and-long-outer: two coats of one length', () => {
    const [short, other, long] = [pieceOf('p', 'pea coat'), pieceOf('r', 'rain jacket'), pieceOf('t', 'trench coat')];
    expect(rulesOf([short, other])).toContain('short-and-long-outer');
    expect(rulesOf([short, long])).not.toContain('short-and-long-outer');
    expect(rulesOf([short])).not.toContain('short-and-long-outer');
  });

  it('flat-shoes and dressier-shoes: a pair to walk in, a pair to dress up', () => {
    const [trainers, pumps, canvas] = [pieceOf('t', 'trainers'), pieceOf('p', 'pumps'), pieceOf('c', 'canvas shoes')];
    expect(rulesOf([pumps, canvas])).toContain('flat-shoes');
    expect(rulesOf([trainers, pumps])).toEqual([]);
    expect(rulesOf([canvas, pieceOf('f', 'flip-flops')])).toContain('dressier-shoes');
  });

  it('two-swimsuits: where one would still be wet at the next swim', () => {
    const swim = occasion('2027-10-03', 'Swim', { needs: ['swim'] });
    const one = [pieceOf('s', 'swimsuit', 'rust')];
    const levelOf = (pieces: readonly Piece[], swims: number) =>
      tradeFindings(pieces, brief({ occasions: Array.from({ length: swims }, () => swim) })).find(
        ({ rule }) => rule === 'two-swimsuits',
      )?.level;
    expect(levelOf(one, 0)).toBeUndefined();
    expect(levelOf(one, 1)).toBeUndefined();
    expect(levelOf(one, 2)).toBe('warning');
    expect(levelOf([], 1)).toBe('warning');
    expect(levelOf([...one, pieceOf('b', 'bikini', 'navy')], 2)).toBeUndefined();
  });

  it('has nothing to say of nothing', () => {
    expect(tradeFindings([], brief())).toEqual([]);
  });
});
