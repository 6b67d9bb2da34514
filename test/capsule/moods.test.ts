import path from 'node:path';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { combineMoods, compareMoods, type Mood, planQuality } from '../../lib/capsule/index.ts';
import { type Content, readContent } from '../../lib/content/index.ts';
import { planGuide } from '../../lib/guide/index.ts';
import type { LookCounts, Piece, Plan } from '../../lib/model/index.ts';
import { createWardrobeEngine, LEVELS } from '../../lib/outfit/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import type { KindId } from '../../lib/vocabulary/index.ts';
import { pieceOf } from '../outfit/wardrobe.ts';
import { capsule } from '../plan/trip.ts';
import { table } from '../reference/table.ts';

/** Facts of the trade: common practice, no source (test/reference/common_practice.csv). */
const fact = (text: string): number => Number(table('common_practice').find(({ rule }) => rule?.includes(text))?.value);

const KINDS_WORN: readonly KindId[] = [
  'shirt',
  't-shirt',
  'cardigan',
  'chinos',
  'midi skirt',
  'trench coat',
  'loafers',
];
const COLOURS = ['white', 'navy', 'rust', 'bottle green', 'plum'] as const;
const some = fc
  .array(fc.tuple(fc.constantFrom(...KINDS_WORN), fc.constantFrom(...COLOURS)), { minLength: 4, maxLength: 10 })
  .map((made) => made.map(([kind, name], at) => pieceOf(`${at}-${kind}-${name}`.replaceAll(' ', '-'), kind, name)));

/** Every look of each level, one by one. */
const looksOf = (pieces: readonly Piece[]): Readonly<Record<keyof LookCounts, readonly (readonly string[])[]>> => {
  const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
  const [core, layered, complete] = LEVELS.map((level) =>
    [...engine.enumerate({ level })].map(({ worn }) => worn.map(({ piece }) => piece)),
  );
  return { core: core ?? [], layered: layered ?? [], complete: complete ?? [] };
};

describe('two capsules in one bag', () => {
  it('counts the union and what neither makes alone, as listing every look does', () => {
    fc.assert(
      fc.property(some, fc.integer({ min: 1, max: 9 }), fc.integer({ min: 0, max: 4 }), (pieces, at, back) => {
        const a = pieces.slice(0, Math.max(1, Math.min(at, pieces.length)));
        const b = pieces.slice(Math.max(0, a.length - back));
        const combined = combineMoods({ capsule: capsule(), pieces: a }, { capsule: capsule(), pieces: b }, {});
        const onlyA = new Set(a.filter((piece) => !b.includes(piece)).map(({ id }) => id));
        const onlyB = new Set(b.filter((piece) => !a.includes(piece)).map(({ id }) => id));
        const looks = looksOf(combined.pieces);
        expect(combined.pieces).toHaveLength(pieces.length);
        for (const level of LEVELS) {
          expect(combined.counts[level]).toBe(BigInt(looks[level].length));
          const across = looks[level].filter(
            (ids) => ids.some((id) => onlyA.has(id)) && ids.some((id) => onlyB.has(id)),
          );
          expect(combined.cross[level]).toBe(BigInt(across.length));
        }
        expect(combined.crossLooks.length > 0).toBe(combined.cross.complete > 0n);
        for (const { look } of combined.crossLooks) {
          const ids = look.worn.map(({ piece }) => piece);
          expect(ids.some((id) => onlyA.has(id)) && ids.some((id) => onlyB.has(id))).toBe(true);
        }
      }),
      { numRuns: 60, seed: 7 },
    );
  });

  it('shows the best looks first, each with a core of its own', () => {
    const a = ['white', 'navy'].map((name) => pieceOf(`${name}-shirt`, 'shirt', name));
    const b = ['charcoal', 'camel'].map((name) => pieceOf(`${name}-chinos`, 'chinos', name));
    const shoes = pieceOf('loafers', 'loafers');
    const { crossLooks, cross, shared } = combineMoods(
      { capsule: capsule(), pieces: [...a, shoes] },
      { capsule: capsule(), pieces: [...b, shoes] },
      {},
    );
    expect(shared).toEqual(['loafers']);
    expect(cross.core).toBe(4n);
    expect(crossLooks).toHaveLength(4);
    expect(crossLooks.map(({ score }) => score)).toEqual(
      crossLooks.map(({ score }) => score).toSorted((x, y) => y - x),
    );
  });

  it('keeps the vetoes of both', () => {
    const shirt = pieceOf('shirt', 'shirt', 'white');
    const chinos = pieceOf('chinos', 'chinos', 'navy');
    const one = { capsule: capsule({ never: [['shirt', 'chinos']] }), pieces: [shirt] };
    const two = { capsule: capsule(), pieces: [chinos] };
    expect(combineMoods(one, two, {}).counts.core).toBe(0n);
    expect(combineMoods(two, one, {}).counts.core).toBe(0n);
    expect(combineMoods({ ...one, capsule: capsule() }, two, {}).counts.core).toBe(1n);
  });
});

describe('a plan in short', () => {
  it('counts changes of clothes, different looks and pieces never worn', () => {
    const look = (id: string) => ({ id, worn: [{ piece: id, slot: 'one-piece' as const }] });
    const planned = { layersOn: [], layersCarried: [], reasons: [], cautions: [] };
    const plan: Plan = {
      traveller: 'Ada',
      served: 3,
      of: 4,
      proven: true,
      unserved: [],
      weakPoints: [],
      wears: { a: 2, b: 1 },
      days: [
        {
          date: '2027-10-02',
          wash: [],
          occasions: [
            { ...planned, occasion: '1', look: look('a'), change: 'first' },
            { ...planned, occasion: '2', look: look('b'), change: 'changes clothes' },
            { ...planned, occasion: '3', change: 'goes on' },
          ],
        },
        { date: '2027-10-03', wash: [], occasions: [{ ...planned, occasion: '4', look: look('a'), change: 'first' }] },
      ],
    };
    const pieces = ['a', 'b', 'c'].map((id) => pieceOf(id, 'slip dress'));
    expect(planQuality({ plan, pieces })).toEqual({
      served: 3,
      of: 4,
      proven: true,
      changes: 1,
      looks: 2,
      unworn: ['c'],
    });
  });
});

describe('the two moods of the demo', () => {
  let content: Content;
  let moods: readonly Mood[];
  beforeAll(async () => {
    const read = await readContent(path.join(import.meta.dirname, '..', '..', 'content'));
    if (read.content === undefined) throw new Error('no content');
    content = read.content;
    const trip = content.trips.find(({ brief }) => brief.id === 'october-by-rail');
    const made: Mood[] = [];
    for (const one of trip?.capsules ?? []) {
      const wardrobe = content.wardrobes.get(one.wardrobe) ?? [];
      if (trip === undefined) throw new Error('no trip');
      const solver = await loadSolver();
      const question = { brief: trip.brief, capsule: one, wardrobe, houseRules: content.houseRules, solver };
      const { pieces, plan, engine } = await planGuide(question);
      made.push({ capsule: one, pieces, plan, counts: engine.count() });
    }
    moods = made;
  }, 60_000);
  const two = (): readonly [Mood, Mood] => {
    const [a, b] = moods;
    if (a === undefined || b === undefined) throw new Error('no moods');
    return [a, b];
  };

  it('are 19 and 19 pieces that share some and are 34 together', () => {
    const [a, b] = two();
    const { pieces, shared } = combineMoods(a, b, content.houseRules);
    expect([a.pieces.length, b.pieces.length]).toEqual([19, 19]);
    expect(pieces).toHaveLength(fact('pieces when two such capsules'));
    expect(shared).toHaveLength(19 + 19 - fact('pieces when two such capsules'));
    expect(new Set(pieces.map(({ id }) => id)).size).toBe(pieces.length);
  });

  it('make at least the looks that are quoted for the two combined, each of them counted once', () => {
    const [a, b] = two();
    const { counts, cross, pieces } = combineMoods(a, b, content.houseRules);
    expect(Number(counts.layered)).toBeGreaterThanOrEqual(fact('looks quoted for the two combined'));
    const listed = [
      ...createWardrobeEngine({
        pieces,
        rules: { ...content.houseRules, ...b.capsule.rules, ...a.capsule.rules },
        never: [...a.capsule.never, ...b.capsule.never],
        always: [],
      }).enumerate({ level: 'layered' }),
    ];
    expect(BigInt(listed.length)).toBe(counts.layered);
    expect(cross.layered).toBeLessThan(counts.layered);
  });

  it('fill the same list line by line', () => {
    const [a, b] = two();
    const list = content.lists.find(({ id }) => id === a.capsule.list);
    const { lines, sides, shared } = compareMoods(a, b, list);
    expect(lines.map(({ what }) => what)).toEqual(list?.lines.map(({ what }) => what));
    for (const line of lines) for (const side of line.sides) expect(side.pieces).toHaveLength(line.wanted);
    expect(shared).toEqual(a.pieces.map(({ id }) => id).filter((id) => b.capsule.pieces.includes(id)));
    for (const side of sides) {
      expect(side.grams.value).toBeCloseTo(
        side.pieces.reduce((sum, { grams }) => sum + grams.value, 0),
        6,
      );
      expect(side.plan).toMatchObject({ served: 17, of: 17 });
    }
    expect(compareMoods(a, b).lines).toEqual([]);
  });
});
