import { describe, expect, it } from 'vitest';
import type { Piece } from '../../lib/model/index.ts';
import { createWardrobeEngine, HOUSE_RULES } from '../../lib/outfit/index.ts';
import type { KindId } from '../../lib/vocabulary/index.ts';
import { table } from '../reference/table.ts';
import { pieceOf } from './wardrobe.ts';

/**
 * Facts of the trade: common practice, no source (test/reference/common_practice.csv). The trade does not say what it
 * counts. They hold for *layered looks without swimwear*: top + bottom or a dress, with nothing, the short or the long
 * outer layer over it, when everything goes with everything.
 */
const fact = (text: string): number => Number(table('common_practice').find(({ rule }) => rule?.includes(text))?.value);
const OFF = Object.fromEntries(HOUSE_RULES.map(({ id }) => [id, { severity: 'off' as const }]));
const many = (prefix: string, kind: KindId, count: number): readonly Piece[] =>
  Array.from({ length: count }, (_, index) => pieceOf(`${prefix}-${kind.replaceAll(' ', '-')}-${index}`, kind));
const dressed = { cores: ['separates', 'one-piece'] } as const;
const engineOf = (pieces: readonly Piece[]) => createWardrobeEngine({ pieces, rules: OFF, never: [], always: [] });

/** The list of common practice: 5 tops, 3 bottoms, 1 dress, 2 swimwear, 2 outer layers, 2 pairs of shoes, 3 accessories: 18, and a watch makes 19. */
const capsule = (prefix: string): readonly Piece[] => [
  ...many(prefix, 't-shirt', fact('of these tops')),
  ...many(prefix, 'jeans', fact('of these bottoms')),
  ...many(prefix, 'wrap dress', fact('of these dresses')),
  ...many(prefix, 'swimsuit', fact('of these swimwear')),
  ...many(prefix, 'short coat', fact('of these outer layers') / 2),
  ...many(prefix, 'trench coat', fact('of these outer layers') / 2),
  ...many(prefix, 'ankle boots', fact('of these pairs of shoes')),
  pieceOf(`${prefix}-tote`, 'tote'),
  pieceOf(`${prefix}-hat`, 'sun hat'),
  pieceOf(`${prefix}-scarf`, 'scarf'),
  pieceOf(`${prefix}-watch`, 'watch'),
];

describe('facts of the trade', () => {
  const engine = engineOf(capsule('a'));

  it('the list is of 18 pieces, and 19 are quoted with it', () => {
    expect(capsule('a')).toHaveLength(fact('carry-on list') + 1);
  });

  it('a capsule on the list has 5 × 3 + 1 = 16 core looks, swim looks apart', () => {
    expect(engine.count(dressed).core).toBe(16n);
    expect(engine.countByForm().swim.core).toBe(2n);
    expect(engine.count().core).toBe(18n);
  });

  it('with nothing, a short or a long outer layer 48 layered looks: "about 40" is quoted', () => {
    const { layered } = engine.count(dressed);
    expect(layered).toBe(48n);
    const quoted = fact('capsule of 19 pieces');
    expect(Math.abs(Number(layered) - quoted) / quoted).toBeLessThanOrEqual(0.25);
  });

  it('a blazer worn without another layer is one look, wherever it may be worn: common practice, no source', () => {
    const lone = engineOf([...many('a', 't-shirt', 2), pieceOf('jeans', 'jeans'), pieceOf('blazer', 'blazer')]);
    expect(lone.count().layered).toBe(2n * 2n);
    const withCoat = engineOf([
      ...many('a', 't-shirt', 2),
      pieceOf('jeans', 'jeans'),
      pieceOf('blazer', 'blazer'),
      pieceOf('coat', 'wool coat'),
    ]);
    expect(withCoat.count().layered).toBe(2n * 2n * 2n);
  });

  it('finished with two pairs of shoes, three accessories and a watch, each worn or not: 48 × 2 × 2⁴', () => {
    expect(engine.count(dressed).complete).toBe(48n * 2n * 16n);
  });

  it('two such capsules combined to 34 pieces make at least 100 looks', () => {
    const two = [...capsule('a'), ...capsule('b')];
    // four pieces are shared: a swimsuit, a pair of boots and two accessories
    const shared = new Set(['b-swimsuit-0', 'b-ankle-boots-0', 'b-tote', 'b-hat']);
    const combined = two.filter(({ id }) => !shared.has(id));
    expect(combined).toHaveLength(fact('pieces when two such capsules'));
    expect(Number(engineOf(combined).count(dressed).layered)).toBeGreaterThanOrEqual(fact('two combined, at least'));
  });
});

describe('closed forms, every rule off', () => {
  it('counts exactly beyond 10^30, which no double holds', () => {
    const sizes: readonly (readonly [KindId, number])[] = [
      ['t-shirt', 97],
      ['jeans', 89],
      ['blazer', 0],
      ['ankle boots', 83],
      ['tote', 79],
      ['socks', 73],
      ['sunglasses', 71],
      ['beret', 67],
      ['scarf', 61],
      ['gloves', 59],
      ['belt', 53],
      ['tie', 47],
      ['hoop earrings', 43],
      ['necklace', 41],
      ['watch', 37],
      ['ring', 31],
      ['brooch', 29],
      ['wool coat', 23],
      ['slipover', 19],
    ];
    const pieces = sizes.flatMap(([kind, count]) => many('x', kind, count));
    const required = new Set<KindId>(['t-shirt', 'jeans', 'ankle boots']);
    const product = sizes.reduce((total, [kind, count]) => total * BigInt(required.has(kind) ? count : count + 1), 1n);
    expect(product > 10n ** 30n).toBe(true);
    expect(engineOf(pieces).count().complete).toBe(product);
    expect(engineOf(pieces).count().layered).toBe(97n * 89n * 24n * 20n);
  });

  it('lists more pieces in a place than a word has bits, whole and from any look on', () => {
    const engine = engineOf([
      ...many('x', 't-shirt', 1),
      ...many('x', 'jeans', 2),
      ...many('x', 'ankle boots', 1),
      ...many('x', 'beret', 40),
      ...many('x', 'scarf', 70),
    ]);
    const ids = [...engine.enumerate()].map(({ id }) => id);
    expect(ids).toHaveLength(2 * 41 * 71);
    expect(new Set(ids).size).toBe(ids.length);
    expect(BigInt(ids.length)).toBe(engine.count().complete);
    for (const place of [0, 31, 70, 71, 2271, 2272, 2910, 4500]) {
      const after = ids[place];
      if (after !== undefined)
        expect([...engine.enumerate({ after })].map(({ id }) => id)).toEqual(ids.slice(place + 1));
    }
  });

  it('prints under a cap of n: the sum of products of binomial choices', () => {
    // 4 plain and 3 printed pieces in each of four places, at most 2 prints a look
    const kinds: readonly KindId[] = ['t-shirt', 'jeans', 'ankle boots', 'slipover'];
    const pieces = kinds.flatMap((kind) =>
      Array.from({ length: 7 }, (_, index) =>
        pieceOf(`${kind.replaceAll(' ', '-')}-${index}`, kind, 'black', {
          pattern: { type: index < 3 ? 'stripe' : 'plain', scale: 'small' },
        }),
      ),
    );
    const rules = { ...OFF, 'pattern-count': { severity: 'rules out' as const, threshold: 2 } };
    // the slipover may be absent: 5 ways without a print
    const choose = (prints: number): number => {
      let total = 0;
      for (let mask = 0; mask < 16; mask += 1) {
        const bits = [0, 1, 2, 3].map((bit) => (mask >> bit) & 1);
        if (bits.reduce((a, b) => a + b, 0) !== prints) continue;
        total += bits.reduce((product, bit, place) => product * (bit === 1 ? 3 : place === 3 ? 5 : 4), 1);
      }
      return total;
    };
    const engine = createWardrobeEngine({ pieces, rules, never: [], always: [] });
    expect(engine.count().complete).toBe(BigInt(choose(0) + choose(1) + choose(2)));
  });
});
