import { expect, it } from 'vitest';
import { lookSourceOf } from '../../lib/capsule/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { momentsOf, planTrip } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { brief, capsule, occasion, piece } from './trip.ts';
import { brokenPlan } from './validator/index.ts';

it('plans with the real engine what the validator accepts, finishing pieces and all', async () => {
  const neutral = (id: string, hex: string) => ({
    name: id,
    hex,
    oklch: { l: 0.4, c: 0.01, h: 0 },
    neutral: true,
    share: 1,
  });
  const pieces = [
    piece('tee', 't-shirt'),
    piece('shirt', 'shirt'),
    piece('jeans', 'jeans'),
    piece('chinos', 'chinos'),
    piece('cardigan', 'cardigan'),
    piece('coat', 'wool coat'),
    piece('loafers', 'loafers'),
    piece('swimsuit', 'swimsuit'),
    piece('bikini', 'bikini'),
    piece('bag', 'flap bag'),
  ].map((p, index) => ({ ...p, colours: [neutral(p.id, index % 2 === 0 ? '#1f2a44' : '#f4f1ea')] }));
  const swims = { needs: ['swim'], activity: 'swimming', setting: { where: 'indoors', airC: 28 } } as const;
  const trip = brief({
    washDays: ['2027-10-03'],
    occasions: [
      occasion('2027-10-02', 'Stroll', { setting: { where: 'outdoors', sun: 'shade' }, activity: 'strolling' }),
      occasion('2027-10-02', 'Dinner', { part: 'evening', dress: 'smart casual', activity: 'sitting' }),
      occasion('2027-10-03', 'Baths', { ...swims, at: '10:00' }),
      occasion('2027-10-03', 'Sauna', { ...swims, at: '16:00' }),
      occasion('2027-10-04', 'Museum', {}),
    ],
  });
  const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
  const plan = await planTrip({
    brief: trip,
    traveller: 'Ada',
    capsule: capsule(),
    pieces,
    engine: lookSourceOf(engine),
    solver: await loadSolver(),
  });
  expect(plan).toMatchObject({ served: 5, of: 5, proven: true });
  expect(brokenPlan(plan, trip, pieces)).toEqual([]);
  expect(plan.wears.bag).toBeGreaterThan(0);
});

it('keeps warm in a room by what one keeps on there, and takes the coat along: common practice, no source', async () => {
  const neutral = { name: 'navy', hex: '#1f2a44', oklch: { l: 0.3, c: 0.03, h: 260 }, neutral: true, share: 1 };
  const pieces = [
    piece('shirt', 'shirt'),
    piece('chinos', 'chinos'),
    piece('jumper', 'crew-neck jumper'),
    piece('cardigan', 'cardigan'),
    piece('rain', 'raincoat'),
    piece('loafers', 'loafers'),
  ].map((one) => ({ ...one, colours: [neutral] }));
  const dinner = occasion('2027-10-02', 'Dinner', {
    part: 'evening',
    dress: 'smart casual',
    activity: 'sitting',
    setting: { where: 'indoors', airC: 22 },
  });
  const trip = brief({ occasions: [dinner] });
  const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
  const plan = await planTrip({
    brief: trip,
    traveller: 'Ada',
    capsule: capsule(),
    pieces,
    engine: lookSourceOf(engine),
    solver: await loadSolver(),
  });
  const [planned] = plan.days.flatMap(({ occasions }) => occasions);
  expect(planned?.look).toBeDefined();
  expect(planned?.layersOn).not.toContain('rain');
  // with the raincoat on, the cardigan would have been warm enough
  const [moment] = momentsOf(trip, 'Ada');
  expect(engine.count({ ...moment?.restriction, without: ['jumper'] }).complete).toBeGreaterThan(0n);
});
