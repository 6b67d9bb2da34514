import { describe, expect, it } from 'vitest';
import type { Piece } from '../../lib/model/index.ts';
import { createGround } from '../../lib/outfit/ground.ts';
import { createWardrobeEngine, type WardrobeRules } from '../../lib/outfit/index.ts';
import { pointsOf } from '../../lib/outfit/judge/points.ts';
import { DRESS_CODES, type KindId } from '../../lib/vocabulary/index.ts';
import { pieceOf } from './wardrobe.ts';

const COLOURS = ['black', 'navy', 'white', 'rust', 'olive', 'mustard', 'teal', 'pink', 'camel', 'grey'];
const KINDS_WORN: readonly KindId[] = [
  't-shirt',
  'shirt',
  'roll-neck',
  'blouse',
  'jeans',
  'pencil skirt',
  'wide trousers',
  'wrap dress',
  'cardigan',
  'blazer',
  'wool coat',
  'rain jacket',
  'ankle boots',
  'pumps',
  'trainers',
  'tote',
  'scarf',
  'tights',
  'hoop earrings',
  'belt',
];
const wardrobe = (turn: number, change: Partial<WardrobeRules> = {}): WardrobeRules => ({
  pieces: KINDS_WORN.map(
    (kind, index): Piece =>
      pieceOf(kind.replaceAll(' ', '-'), kind, COLOURS[(index * 7 + turn * 3) % COLOURS.length], {
        statement: index % 9 === 0,
      }),
  ),
  rules: {},
  never: [],
  always: [],
  ...change,
});

describe('rank', () => {
  it.each([0, 1, 2, 3, 4])('is the best k of all looks scored one by one (wardrobe %i)', (turn) => {
    for (const rules of [
      {},
      { 'hue-families': { severity: 'lowers the score' as const, threshold: 1 }, ornaments: { threshold: 1 } },
      {
        colour: { severity: 'lowers the score' as const },
        'always-together': { severity: 'lowers the score' as const },
      },
    ]) {
      const asked = wardrobe(turn, { rules, always: [['shirt', 'blazer']] });
      const engine = createWardrobeEngine(asked);
      const ground = createGround(asked);
      const all = [...engine.enumerate()].map((look) => {
        const seats = look.worn.map(({ piece, slot }) => {
          const seat = ground.seats.find((candidate) => candidate.piece.id === piece && candidate.slot === slot);
          if (seat === undefined) throw new Error('no seat');
          return seat;
        });
        const form = seats.some(({ slot }) => slot === 'one-piece') ? 'one-piece' : 'separates';
        return { id: look.id, score: pointsOf(ground, form, seats) };
      });
      const expected = all.toSorted((a, b) => b.score - a.score).slice(0, 25);
      expect(engine.rank(25).map(({ look, score }) => ({ id: look.id, score }))).toEqual(expected);
    }
  });

  it('refuses a number of looks that is none', () => {
    expect(() => createWardrobeEngine(wardrobe(0)).rank(-1)).toThrow(RangeError);
    expect(() => createWardrobeEngine(wardrobe(0)).rank(1.5)).toThrow(RangeError);
  });
});

describe('a varied few', () => {
  const engine = createWardrobeEngine(wardrobe(1));
  const pieces = (id: string): Set<string> => new Set(id.split('+'));

  it('shows every piece that is in any look', () => {
    const idle = new Set(engine.idle());
    const shown = new Set(engine.varied(12).flatMap(({ look }) => look.worn.map(({ piece }) => piece)));
    expect([...shown].toSorted()).toEqual(
      wardrobe(1)
        .pieces.map(({ id }) => id)
        .filter((id) => !idle.has(id))
        .toSorted(),
    );
  });

  it('has no two looks that differ by one small piece, and is the same every time', () => {
    const looks = engine.varied(10).map(({ look }) => look.id);
    expect(new Set(looks).size).toBe(looks.length);
    looks.forEach((a, index) => {
      for (const b of looks.slice(index + 1)) {
        const different =
          [...pieces(a)].filter((id) => !pieces(b).has(id)).length +
          [...pieces(b)].filter((id) => !pieces(a).has(id)).length;
        expect(different).toBeGreaterThan(1);
      }
    });
    expect(
      createWardrobeEngine(wardrobe(1))
        .varied(10)
        .map(({ look }) => look.id),
    ).toEqual(looks);
  });

  it('serves every occasion that can be served, and keeps the favourites in front', () => {
    const occasions = DRESS_CODES.slice(0, 3).map((dress) => ({ dress }));
    const [favourite] = engine.rank(1, { pieces: ['jeans'] });
    if (favourite === undefined) throw new Error('no look with jeans');
    const few = engine.varied(8, { occasions, keep: [favourite.look] });
    expect(few[0]?.look.id).toBe(favourite.look.id);
    for (const occasion of occasions) {
      if (engine.count(occasion).complete === 0n) continue;
      expect(
        few.some(
          ({ look }) =>
            engine.explain(
              look.worn.map(({ piece }) => piece),
              occasion,
            ).goes,
        ),
      ).toBe(true);
    }
  });
});
