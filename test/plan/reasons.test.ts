import { beforeAll, describe, expect, it } from 'vitest';
import type { Brief, Piece } from '../../lib/model/index.ts';
import { planTrip, type Solver } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import type { Phrase } from '../../lib/words/index.ts';
import { brief, capsule, occasion, piece, sourceOf, weather } from './trip.ts';

let solver: Solver;
beforeAll(async () => {
  solver = await loadSolver();
});

const BAG = [
  piece('tee', 'long-sleeved tee'),
  piece('shirt', 'flannel shirt'),
  piece('knit', 'crew-neck jumper'),
  piece('trousers', 'chinos'),
  piece('jeans', 'jeans'),
  piece('boots', 'lace-up boots'),
  piece('coat', 'wool coat', { dress: { low: 0, high: 3 } }),
  piece('parka', 'parka'),
  piece('scarf', 'chunky scarf'),
  piece('gloves', 'gloves'),
  piece('beanie', 'beanie'),
  piece('leggings', 'thermal leggings'),
];

const trip = (lowC: number): Brief =>
  brief({
    places: brief().places.map((place) => ({ ...place, weather: weather(lowC, lowC + 5, 0) })),
    occasions: [
      occasion('2027-10-02', 'Train', { transit: true, activity: 'travelling', at: '08:00' }),
      occasion('2027-10-03', 'Walk', {
        setting: { where: 'outdoors', sun: 'shade' },
        activity: 'walking',
        at: '10:00',
        degreesOff: 5,
      }),
      occasion('2027-10-04', 'Cafe', { activity: 'sitting', at: '15:00' }),
    ],
  });

const reasonsOf = async (
  pieces: readonly Piece[],
  lowC: number,
): Promise<readonly { readonly worn: readonly string[]; readonly reasons: readonly Phrase[] }[]> => {
  const engine = sourceOf(pieces);
  const plan = await planTrip({ brief: trip(lowC), traveller: 'Ada', capsule: capsule(), pieces, engine, solver });
  return plan.days
    .flatMap(({ occasions }) => occasions)
    .map(({ look, reasons }) => ({ worn: look?.worn.map((seat) => seat.piece) ?? [], reasons }));
};
const keys = (reasons: readonly Phrase[] = []): readonly string[] => reasons.map(({ key }) => key);

describe('why a look', () => {
  it('is what is particular to it: the bag on a journey, the coat in frost, the change of clothes', async () => {
    const [train, walk, cafe] = await reasonsOf(BAG, -4);
    expect(keys(train?.reasons)).toContain('not in the bag');
    expect(keys(train?.reasons)).not.toContain('first worn');
    const grams = train?.worn.reduce((sum, id) => sum + (BAG.find((one) => one.id === id)?.grams.value ?? 0), 0);
    expect(train?.reasons.find(({ key }) => key === 'not in the bag')?.values.grams).toBe(grams);
    expect(walk?.reasons.find(({ key }) => key === 'the warmest coat')?.values.coat).toBe('parka');
    const before = new Set([...(train?.worn ?? []), ...(walk?.worn ?? [])]);
    const told = cafe?.reasons.find(({ key }) => key === 'first worn')?.values.pieces ?? [];
    const core = ['tee', 'shirt', 'knit', 'trousers', 'jeans'];
    expect(told).toEqual(cafe?.worn.filter((id) => core.includes(id) && !before.has(id)));
  });

  it('is no coat where it is mild, or where no other is packed', async () => {
    const [, mild] = await reasonsOf(BAG, 9);
    expect(keys(mild?.reasons)).not.toContain('the warmest coat');
    const [, alone] = await reasonsOf(
      BAG.filter(({ id }) => id !== 'coat'),
      -4,
    );
    expect(alone?.worn).toContain('parka');
    expect(keys(alone?.reasons)).not.toContain('the warmest coat');
  });

  it('is never that neutrals go together, which is true of nearly every look', async () => {
    const said = [...(await reasonsOf(BAG, -4)), ...(await reasonsOf(BAG, 9))].flatMap(({ reasons }) => keys(reasons));
    expect(said.length).toBeGreaterThan(6);
    for (const key of ['two neutrals', 'same', 'metal goes']) expect(said).not.toContain(key);
    const ranked = sourceOf(BAG).rank(20);
    expect(ranked.length).toBe(20);
    expect(ranked.flatMap(({ reasons }) => keys(reasons))).not.toContain('two neutrals');
  });

  it('names a colour that a neutral lets speak, once a look', () => {
    const rust = { name: 'rust', hex: '#a4502c', oklch: { l: 0.52, c: 0.12, h: 45 }, share: 1 };
    const bag = [piece('top', 'long-sleeved tee', { colours: [rust] }), ...BAG.slice(3, 7)];
    const [best] = sourceOf(bag).rank(1, { pieces: ['top'] });
    expect(keys(best?.reasons).filter((key) => key === 'neutral goes')).toHaveLength(1);
  });

  it('never is how dressy a coat is beside the rest, which comes off at the door', async () => {
    const bag = [
      piece('shirt', 'dress shirt'),
      piece('trousers', 'suit trousers'),
      piece('jacket', 'suit jacket'),
      piece('oxfords', 'oxford shoes'),
      piece('parka', 'parka'),
    ];
    const engine = sourceOf(bag);
    const dressed = ['shirt', 'trousers', 'jacket', 'oxfords', 'parka'];
    expect(keys(engine.rank(1, { pieces: dressed })[0]?.reasons)).toContain('plainer on the way');
    const told = brief({
      ...trip(-4),
      occasions: [occasion('2027-10-03', 'Concert', { dress: 'business', activity: 'sitting', at: '19:00' })],
    });
    const fixed = capsule({ favourites: [{ pieces: dressed }] });
    const plan = await planTrip({ brief: told, traveller: 'Ada', capsule: fixed, pieces: bag, engine, solver });
    const [concert] = plan.days.flatMap(({ occasions }) => occasions);
    expect(concert?.look?.worn.map((seat) => seat.piece)).toContain('parka');
    expect(keys(concert?.reasons)).not.toContain('plainer on the way');
  });
});
