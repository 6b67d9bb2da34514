import { describe, expect, it } from 'vitest';
import {
  createUnserved,
  leaveOutForLightness,
  leaveOutUntilFits,
  looksAgainstGrams,
  transitSavings,
  type Unserved,
} from '../../lib/bag/index.ts';
import type { Piece } from '../../lib/model/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { momentsOf } from '../../lib/plan/index.ts';
import { brief, occasion, piece } from '../plan/trip.ts';

const pieces: readonly Piece[] = [
  piece('tee', 't-shirt'),
  piece('shirt', 'shirt'),
  piece('jumper', 'crew-neck jumper'),
  piece('chinos', 'chinos'),
  piece('jeans', 'jeans'),
  piece('skirt', 'midi skirt'),
  piece('cardigan', 'cardigan'),
  piece('trench', 'trench coat'),
  piece('boots', 'ankle boots'),
  piece('loafers', 'loafers'),
];
const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
const gramsOf = (ids: readonly string[]): number =>
  pieces.filter(({ id }) => ids.includes(id)).reduce((sum, { grams }) => sum + grams.value, 0);
const all = gramsOf(pieces.map(({ id }) => id));

const pieceGrams = { basis: 'given', source: 'test' } as const;

const subsets = (ids: readonly string[]): readonly (readonly string[])[] =>
  Array.from({ length: 2 ** ids.length }, (_, set) => ids.filter((_id, index) => (set & (1 << index)) !== 0));

describe('looks against grams', () => {
  it('is the front of every set of pieces, counted one by one', () => {
    const inLooks = pieces.filter(({ places }) => !places.includes('shoes')).map(({ id }) => id);
    const weighed = subsets(inLooks).map((without) => ({
      grams: Math.round(all - gramsOf(without)),
      looks: Number(engine.count({ without }).layered),
    }));
    weighed.sort((a, b) => a.grams - b.grams || b.looks - a.looks);
    let most = 0;
    const brute = weighed.filter(({ looks }) => {
      if (looks <= most) return false;
      most = looks;
      return true;
    });
    const { points, proven } = looksAgainstGrams(pieces, engine);
    expect(proven).toBe(true);
    expect(brute.length).toBeGreaterThan(3);
    expect(points.map(({ grams, looks }) => ({ grams, looks }))).toEqual(brute);
    for (const point of points) {
      expect(Number(engine.count({ without: point.without }).layered)).toBe(point.looks);
      expect(Math.round(all - gramsOf(point.without))).toBe(point.grams);
    }
  });

  it('says so when pieces are only taken out one by one, and still beats nothing twice', () => {
    const many = Array.from({ length: 22 }, (_, index) =>
      piece(`p${index}`, index % 2 === 0 ? 't-shirt' : 'chinos', {
        colours: [{ name: 'navy', hex: '#1f2a44', oklch: { l: 0.3, c: 0.05, h: 265 }, share: 1 }],
      }),
    );
    const large = createWardrobeEngine({ pieces: many, rules: {}, never: [], always: [] });
    const { points, proven } = looksAgainstGrams(many, large);
    expect(proven).toBe(false);
    expect(points.at(-1)?.without).toEqual([]);
    points.slice(1).forEach((point, index) => {
      expect(point.looks).toBeGreaterThan(points[index]?.looks ?? 0);
      expect(point.grams).toBeGreaterThanOrEqual(points[index]?.grams ?? 0);
    });
  });

  it('has no points where there are no looks', () => {
    const only = [piece('boots', 'ankle boots')];
    const none = createWardrobeEngine({ pieces: only, rules: {}, never: [], always: [] });
    expect(looksAgainstGrams(only, none).points).toEqual([]);
  });
});

const trip = brief({
  occasions: [
    occasion('2027-10-02', 'Train', { transit: true, activity: 'travelling' }),
    occasion('2027-10-03', 'Market', { setting: { where: 'outdoors', sun: 'shade' }, activity: 'strolling' }),
  ],
});

describe('leaving out', () => {
  const unserved = createUnserved(trip, 'Ada', engine, pieces, { fixed: [] });

  it('finds the occasions that lose their last look as asking for each does', () => {
    for (const without of subsets(['chinos', 'jeans', 'skirt', 'trench', 'boots'])) {
      const asked = momentsOf(trip, 'Ada')
        .filter(({ restriction }) => engine.rank(1, restriction).length > 0)
        .filter(({ restriction }) => engine.rank(1, { ...restriction, without }).length === 0)
        .map(({ occasion: { id } }) => id);
      expect(unserved(without)).toEqual(asked);
    }
  });

  it('stops as soon as it fits, and counts what remains', async () => {
    const tooMany = 700;
    const over = async (without: readonly string[]) => ({ grams: Math.max(0, tooMany - gramsOf(without)), litres: 0 });
    const { steps, fits } = await leaveOutUntilFits(pieces, engine, unserved, over);
    const out = steps.map((step) => step.piece);
    expect(fits).toBe(true);
    expect(gramsOf(out)).toBeGreaterThanOrEqual(tooMany);
    expect(gramsOf(out.slice(0, -1))).toBeLessThan(tooMany);
    expect(steps.at(-1)?.looksLeft).toBe(Number(engine.count({ without: out }).layered));
  });

  it('leaves the fewest pieces: one heavy one that no look needs, before trifles', async () => {
    const bag = piece('bag', 'tote', { grams: { ...pieceGrams, value: 400, low: 400, high: 400 } });
    const hoops = piece('hoops', 'hoop earrings', { grams: { ...pieceGrams, value: 9, low: 9, high: 9 } });
    const more = [hoops, bag, ...pieces];
    const all = createWardrobeEngine({ pieces: more, rules: {}, never: [], always: [] });
    const lost = createUnserved(trip, 'Ada', all, more, { fixed: [] });
    const over = async (without: readonly string[]) => ({ grams: without.includes('bag') ? 0 : 300, litres: 0 });
    expect((await leaveOutUntilFits(more, all, lost, over)).steps.map((step) => step.piece)).toEqual(['bag']);
    expect(leaveOutForLightness(more, all, lost, new Set(), 2).map((step) => step.piece)).toEqual(['boots', 'bag']);
    expect(leaveOutForLightness(more, all, lost, new Set(), 99).map((step) => step.piece)).not.toContain('hoops');
  });

  it('leaves nothing that could have stayed: without any one step it would not fit', async () => {
    for (const tooMany of [250, 700, 1500]) {
      const over = async (without: readonly string[]) => ({
        grams: Math.max(0, tooMany - gramsOf(without)),
        litres: 0,
      });
      const { steps } = await leaveOutUntilFits(pieces, engine, unserved, over);
      const out = steps.map((step) => step.piece);
      for (const kept of out) {
        const fewer = out.filter((id) => id !== kept);
        expect((await over(fewer)).grams, `${kept} could stay, over by ${tooMany} g`).toBeGreaterThan(0);
      }
    }
  });

  it('counts an occasion as lost with any piece of the look that was fixed to it', () => {
    const fixed = createUnserved(trip, 'Ada', engine, pieces, {
      fixed: [{ occasion: 'Market', title: 'At the stalls', pieces: ['tee', 'jeans', 'boots'] }],
    });
    expect(fixed(['boots'])).toEqual(['2027-10-03-market']);
    expect(fixed(['shirt'])).toEqual([]);
  });

  it('ends and says that it does not fit when nothing helps', async () => {
    const { steps, fits } = await leaveOutUntilFits(pieces, engine, unserved, async () => ({
      grams: 99_999,
      litres: 0,
    }));
    expect(fits).toBe(false);
    expect(steps).toHaveLength(pieces.length);
  });
});

describe('leaving swimwear at home', () => {
  // Dry by eight o'clock as the estimate has it, and perhaps not: the long end counts.
  const dryHours = { value: 12, low: 8, high: 16, basis: 'estimated', source: 'own' } as const;
  const suits = ['red', 'blue'].map((id) => piece(id, 'swimsuit', { care: { wash: 30, dryHours } }));
  const swims = (second: string): Unserved => {
    const week = brief({
      occasions: [
        occasion('2027-10-02', 'Baths', { needs: ['swim'], setting: { where: 'indoors', airC: 29 }, at: '16:00' }),
        occasion(second, 'Swim', { needs: ['swim'], setting: { where: 'indoors', airC: 29 }, at: '08:00' }),
      ],
    });
    const both = createWardrobeEngine({ pieces: suits, rules: {}, never: [], always: [] });
    return createUnserved(week, 'Ada', both, suits, { fixed: [] });
  };

  // A wet swimsuit is not put on again before it is dry, so two are packed: common practice, no source
  it('loses the next morning, when the only one left is still wet', () => {
    expect(swims('2027-10-03')(['red'])).toEqual(['2027-10-03-swim']);
    expect(swims('2027-10-03')(['blue'])).toEqual(['2027-10-03-swim']);
    expect(swims('2027-10-03')([])).toEqual([]);
  });

  it('loses nothing when there is time to dry, and both when none is left', () => {
    expect(swims('2027-10-05')(['red'])).toEqual([]);
    expect(swims('2027-10-05')(['red', 'blue'])).toEqual(['2027-10-02-baths', '2027-10-05-swim']);
  });
});

describe('worn in transit', () => {
  it('is the heaviest of all looks that suit', () => {
    const train = momentsOf(trip, 'Ada')[0];
    if (train === undefined) throw new Error('no journey');
    const weights = [...engine.enumerate({ restriction: train.restriction })].map(({ worn }) =>
      gramsOf(worn.map((seat) => seat.piece)),
    );
    const journeys = [{ occasion: train.occasion, on: train.occasion.on, worn: new Set(['tee']) }];
    const [saving] = transitSavings(trip, 'Ada', journeys, pieces, engine);
    expect(weights.length).toBeGreaterThan(3);
    expect(saving?.proven).toBe(true);
    expect(saving?.grams).toBe(Math.max(...weights));
    expect(saving?.moreGrams).toBe(Math.max(...weights) - gramsOf(['tee']));
  });
});
