import { describe, expect, it } from 'vitest';
import type { Piece } from '../../lib/model/index.ts';
import { createWardrobeEngine, LEVELS, type WardrobeRules } from '../../lib/outfit/index.ts';
import { oracleLooks } from './oracle.ts';
import { pieceOf } from './wardrobe.ts';

const pieces: readonly Piece[] = [
  pieceOf('shirt', 'shirt', 'white'),
  pieceOf('overshirt', 'overshirt', 'olive'),
  pieceOf('jeans', 'jeans', 'navy'),
  pieceOf('denim-jacket', 'denim jacket', 'black', { fabric: 'cotton twill' }),
  pieceOf('blazer', 'blazer', 'grey'),
  pieceOf('coat', 'wool coat', 'black'),
  pieceOf('boots', 'ankle boots', 'black'),
  pieceOf('square', 'pocket square', 'white'),
];
const rulesOf = (some: readonly Piece[]): WardrobeRules => ({ pieces: some, rules: {}, never: [], always: [] });
const listed = (some: readonly Piece[], level: (typeof LEVELS)[number]): readonly string[] =>
  [...createWardrobeEngine(rulesOf(some)).enumerate({ level })].map(({ id }) => id);

describe('a layer worn without another', () => {
  it.each(LEVELS)('is one look where a rule tells its places apart as well: %s', (level) => {
    expect(listed(pieces, level)).toEqual(oracleLooks(rulesOf(pieces), level, {}));
  });

  it('is counted the same whatever else hangs in the wardrobe', () => {
    const without = pieces.filter(({ id }) => id !== 'square');
    const engine = createWardrobeEngine(rulesOf(pieces));
    for (const level of LEVELS) {
      expect(engine.count({ without: ['square'] })[level], level).toBe(BigInt(listed(without, level).length));
    }
  });
});
