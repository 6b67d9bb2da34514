import { describe, expect, it } from 'vitest';
import { type ImproveQuestion, improve } from '../../lib/capsule/index.ts';
import type { PackingListPlan, Piece } from '../../lib/model/index.ts';
import { momentsOf } from '../../lib/plan/index.ts';
import type { KindId } from '../../lib/vocabulary/index.ts';
import { pieceOf } from '../outfit/wardrobe.ts';
import { brief, occasion, weather } from '../plan/trip.ts';

const listOf = (kinds: readonly KindId[]): PackingListPlan => ({
  id: 'list',
  file: '',
  title: 'List',
  note: '',
  lines: [{ what: 'all', count: 9, kinds }],
});
const own: readonly Piece[] = [
  pieceOf('white-shirt', 'shirt', 'white'),
  pieceOf('grey-jumper', 'crew-neck jumper', 'mid grey'),
  pieceOf('navy-chinos', 'chinos', 'navy'),
  pieceOf('brown-boots', 'lace-up boots', 'dark brown'),
];
const others: readonly Piece[] = [
  pieceOf('beige-shorts', 'shorts', 'beige'),
  pieceOf('olive-rain-jacket', 'rain jacket', 'olive'),
  pieceOf('black-coat', 'wool coat', 'black'),
  pieceOf('tan-sandals', 'sandals', 'tan'),
];
const tripAt = (lowC: number, changes: Parameters<typeof occasion>[2] = {}) => {
  const [place] = brief().places;
  if (place === undefined) throw new Error('no place');
  return brief({
    places: [{ ...place, weather: weather(lowC, lowC + 6) }],
    occasions: [
      occasion('2027-10-02', 'Flight', { activity: 'travelling', transit: true }),
      occasion('2027-10-03', 'Museum', { activity: 'strolling indoors', ...changes }),
    ],
  });
};
const askAt = (trip: ImproveQuestion['brief'], kinds: readonly KindId[]): ImproveQuestion => ({
  brief: trip,
  traveller: 'Ada',
  pieces: own,
  wardrobe: [...own, ...others],
  list: listOf(kinds),
  palette: [],
  rules: {},
});
const KINDS_ASKED: readonly KindId[] = ['shorts', 'rain jacket', 'down jacket', 'wool coat', 'sandals'];

/** Nobody goes out in shorts, open shoes or a thin shell in frost: common practice, no source. */
describe('one piece better, by the weather of the trip', () => {
  it('adds and buys no shorts, open shoes or thin coats for rooms in frost, and does in warmth', () => {
    const cold = improve(askAt(tripAt(-9), KINDS_ASKED));
    const warm = improve(askAt(tripAt(16), KINDS_ASKED));
    const added = (found: typeof cold): readonly string[] => found.additions.map(({ piece }) => piece.id);
    const bought = (found: typeof cold): readonly KindId[] => found.purchases.map(({ piece }) => piece.kind);
    expect(added(cold)).toContain('black-coat');
    for (const thin of ['beige-shorts', 'olive-rain-jacket', 'tan-sandals']) expect(added(cold)).not.toContain(thin);
    expect(added(warm)).toEqual(expect.arrayContaining(['beige-shorts', 'olive-rain-jacket']));
    expect(bought(cold)).toContain('down jacket');
    expect(bought(cold).some((kind) => kind === 'shorts' || kind === 'rain jacket' || kind === 'sandals')).toBe(false);
    expect(bought(warm)).toContain('shorts');
  });

  it('takes nothing thinner, or unfit for snow where snow is asked for, for as good as a purchase', () => {
    const insteadOf = (trip: ImproveQuestion['brief'], kind: KindId, wardrobe: readonly Piece[]) =>
      improve({ ...askAt(trip, [kind]), wardrobe: [...own, ...wardrobe] }).purchases.find(
        ({ piece }) => piece.kind === kind,
      )?.instead?.piece.id;
    const coat = pieceOf('black-coat', 'wool coat', 'black');
    const shell = pieceOf('shell', 'cape', 'black');
    expect(insteadOf(tripAt(16), 'wool coat', [shell])).toBe('shell');
    expect(insteadOf(tripAt(-9), 'wool coat', [shell])).toBeUndefined();
    expect(insteadOf(tripAt(-9), 'down jacket', [coat])).toBe('black-coat');
    const snow = brief({
      ...tripAt(-9),
      occasions: [
        ...tripAt(-9).occasions,
        occasion('2027-10-04', 'Sled', { needs: ['snow'], setting: { where: 'outdoors', sun: 'shade' } }),
      ],
    });
    expect(insteadOf(snow, 'down jacket', [coat])).toBeUndefined();
  });

  it('buys nothing for cold beyond travel clothes, of which the plan says that it asks for clothing made for it', () => {
    const sky = brief({
      ...tripAt(-16),
      occasions: [
        occasion('2027-10-03', 'Night sky', {
          activity: 'standing',
          setting: { where: 'outdoors', sun: 'shade' },
        }),
      ],
    });
    const [moment] = momentsOf(sky, 'Ada');
    const asked = moment?.restriction.clo?.min ?? 0;
    expect(moment?.beyondClothes).toBeDefined();
    // clothes that are so warm that a parka more would do by the figures
    const heavy = own.map((piece) => ({ ...piece, clo: { ...piece.clo, value: (asked - 0.3) / own.length } }));
    const kinds: readonly KindId[] = ['parka', 'overshirt'];
    const found = improve({ ...askAt(sky, kinds), pieces: heavy, wardrobe: heavy });
    expect(found.purchases.length).toBeGreaterThan(0);
    expect(found.purchases.flatMap(({ serves, wornFor }) => [...serves, ...wornFor])).toEqual([]);
  });
});
