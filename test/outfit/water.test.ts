import { describe, expect, it } from 'vitest';
import type { Piece } from '../../lib/model/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { pieceOf } from './wardrobe.ts';

const SWIMSUIT = pieceOf('swimsuit', 'swimsuit', 'rust');
const FLAP_BAG = pieceOf('flap-bag', 'flap bag', 'tan', { fabric: 'leather', dress: { low: 0, high: 3 } });
const CLUTCH = pieceOf('clutch', 'clutch', 'tan', { fabric: 'canvas', dress: { low: 0, high: 3 } });
const SHOPPER = pieceOf('shopper', 'canvas shopper', 'tan');
const SARONG = pieceOf('sarong', 'sarong', 'teal');

const best = (...pieces: readonly Piece[]): readonly string[] => {
  const engine = createWardrobeEngine({ pieces: [SWIMSUIT, ...pieces], rules: {}, never: [], always: [] });
  return engine.rank(1, { needs: ['swim'] }).flatMap(({ look }) => look.worn.map(({ piece }) => piece));
};

/** What goes to the water: common practice, no source. */
describe('a look for the water', () => {
  it('takes a cover-up and a bag of cloth where there are any', () => {
    expect(best(FLAP_BAG, SHOPPER, SARONG, CLUTCH).toSorted()).toEqual(['sarong', 'shopper', 'swimsuit']);
  });

  it('takes what is made for the water before a shawl', () => {
    const shawl = pieceOf('shawl', 'shawl', 'rust');
    expect(best(shawl)).toEqual(['swimsuit', 'shawl']);
    expect(best(shawl, SARONG).toSorted()).toEqual(['sarong', 'swimsuit']);
  });

  it('leaves a leather bag and a clutch behind, and invents nothing', () => {
    expect(best(FLAP_BAG, CLUTCH)).toEqual(['swimsuit']);
  });

  it('keeps them possible, with a word of advice', () => {
    const engine = createWardrobeEngine({ pieces: [SWIMSUIT, FLAP_BAG], rules: {}, never: [], always: [] });
    const { goes, reasons } = engine.explain(['swimsuit', 'flap-bag']);
    expect(goes).toBe(true);
    expect(reasons.map(({ rule }) => rule)).toContain('bag-by-the-water');
  });
});
