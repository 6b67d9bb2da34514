import { describe, expect, it } from 'vitest';
import { createUnserved, leaveOutUntilFits } from '../../lib/bag/index.ts';
import { leaveOutForLightness } from '../../lib/bag/leave-out.ts';
import type { Piece } from '../../lib/model/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import type { KindId } from '../../lib/vocabulary/index.ts';
import { brief, occasion, piece } from '../plan/trip.ts';

const KINDS: readonly KindId[] = [
  't-shirt',
  'shirt',
  'crew-neck jumper',
  'chinos',
  'jeans',
  'midi skirt',
  'cardigan',
  'trench coat',
  'blouse',
  'ankle boots',
  'loafers',
];

/** A small seeded generator, so that the capsules stay the same (Park and Miller 1988). */
const chanceFrom = (seed: number) => {
  let state = seed;
  return (): number => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
};

const trip = brief({
  occasions: [
    occasion('2027-10-02', 'Train', { transit: true, activity: 'travelling' }),
    occasion('2027-10-03', 'Market', { setting: { where: 'outdoors', sun: 'shade' }, activity: 'strolling' }),
    occasion('2027-10-04', 'Lunch', {}),
  ],
});

interface Choice {
  readonly unserved: number;
  readonly looks: number;
}

const cases = Array.from({ length: 12 }, (_, index) => {
  const chance = chanceFrom(index + 1);
  const pieces: readonly Piece[] = KINDS.filter((_kind, at) => at < 2 || at === 3 || chance() < 0.8).map((kind, at) => {
    const value = Math.round(100 + chance() * 900);
    return piece(`p${at}`, kind, { grams: { value, low: value, high: value, basis: 'given', source: 'test' } });
  });
  const all = pieces.reduce((sum, { grams }) => sum + grams.value, 0);
  return { pieces, tooMany: Math.round(all * (0.1 + chance() * 0.4)) };
});

/** The best of all sets of pieces that free so much: fewest occasions lost, then most looks left. */
const bestOf = (
  pieces: readonly Piece[],
  frees: (without: readonly string[]) => boolean,
  lossOf: { looks(without: readonly string[]): number; unserved(without: readonly string[]): number },
): Choice => {
  let best: Choice = { unserved: Number.POSITIVE_INFINITY, looks: 0 };
  for (let set = 0; set < 2 ** pieces.length; set += 1) {
    const without = pieces.filter((_piece, at) => (set & (1 << at)) !== 0).map(({ id }) => id);
    if (!frees(without)) continue;
    const looks = lossOf.looks(without);
    if (best.unserved === 0 && looks <= best.looks) continue;
    const unserved = lossOf.unserved(without);
    if (unserved < best.unserved || (unserved === best.unserved && looks > best.looks)) best = { unserved, looks };
  }
  return best;
};

describe('what to leave at home until it fits', () => {
  it('is as good as the best of all sets of pieces, in a dozen small capsules', async () => {
    for (const { pieces, tooMany } of cases) {
      const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
      const unserved = createUnserved(trip, 'Ada', engine, pieces, { fixed: [] });
      const gramsOf = (ids: readonly string[]): number =>
        pieces.filter(({ id }) => ids.includes(id)).reduce((sum, { grams }) => sum + grams.value, 0);
      const over = async (without: readonly string[]) => ({
        grams: Math.max(0, tooMany - gramsOf(without)),
        litres: 0,
      });
      const { steps, fits } = await leaveOutUntilFits(pieces, engine, unserved, over);
      const last = steps.at(-1);
      const best = bestOf(pieces, (without) => gramsOf(without) >= tooMany, {
        looks: (without) => Number(engine.count({ without }).layered),
        unserved: (without) => unserved(without).length,
      });
      expect(fits).toBe(true);
      expect({ unserved: last?.unserved.length, looks: last?.looksLeft }, `over by ${tooMany} g`).toEqual(best);
    }
  }, 120_000);
});

describe('what to leave at home first to carry less', () => {
  it('is what no occasion of the plan wears, even where that costs more looks', () => {
    const heavy = { value: 500, low: 500, high: 500, basis: 'given', source: 'test' } as const;
    const pieces = [
      piece('tee', 't-shirt', { grams: heavy }),
      piece('shirt', 'shirt', { grams: heavy }),
      piece('coat', 'trench coat', { grams: heavy }),
      piece('jeans', 'jeans', { grams: heavy }),
      piece('loafers', 'loafers', { grams: heavy }),
    ];
    const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
    const first = (worn: readonly string[]): readonly string[] =>
      leaveOutForLightness(pieces, engine, () => [], new Set(worn), 2).map((step) => step.piece);
    const all = pieces.map(({ id }) => id);
    const [least, next] = first(all);
    for (const unworn of all) {
      expect(first(all.filter((id) => id !== unworn))).toEqual([unworn, unworn === least ? next : expect.any(String)]);
    }
  });
});
