import { expect, it } from 'vitest';
import { planTrip } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { watchWasmMemory } from '../solver/wasm-memory.ts';
import { brief, capsule, occasion, piece, sourceOf } from './trip.ts';

/** Plans before memory is looked at, by when the solver has grown to what one plan needs, and after that. */
const FIRST = 6;
const MORE = 40;

it('the solver needs no more memory after many plans than after a few, mends and weak points among them', async () => {
  const bag = [
    piece('tee', 't-shirt', { worn: 1, dries: 30 }),
    piece('jeans', 'jeans'),
    piece('loafers', 'loafers'),
    piece('swimsuit', 'swimsuit', { dries: 20 }),
  ];
  const owned = [...bag, piece('shirt', 'shirt'), piece('chinos', 'chinos'), piece('bikini', 'bikini')];
  const swim = {
    needs: ['swim'] as const,
    activity: 'swimming' as const,
    setting: { where: 'indoors', airC: 28 } as const,
  };
  const trip = brief({
    occasions: [
      occasion('2027-10-02', 'Museum'),
      occasion('2027-10-03', 'Walk'),
      occasion('2027-10-03', 'Early swim', { ...swim, at: '08:00' }),
      occasion('2027-10-03', 'Late swim', { ...swim, at: '18:00' }),
      occasion('2027-10-04', 'Dinner', { dress: 'business' }),
    ],
  });
  const watch = watchWasmMemory();
  const solver = await loadSolver();
  watch.end();
  let solved = 0;
  const counted: typeof solver = {
    solve: (programme) => {
      solved += 1;
      return solver.solve(programme);
    },
  };
  const plan = () =>
    planTrip({
      brief: trip,
      traveller: 'Ada',
      capsule: capsule(),
      pieces: bag,
      engine: sourceOf(bag),
      solver: counted,
      wardrobe: { pieces: owned, engine: sourceOf(owned) },
    });
  for (let round = 0; round < FIRST; round += 1) await plan();
  const before = watch.bytes();
  for (let round = 0; round < MORE; round += 1) {
    const { unserved } = await plan();
    expect(unserved.some(({ mends }) => mends.length > 0)).toBe(true);
  }
  // the solver was at work, and WebAssembly gives no memory back: what is not freed shows
  expect(solved).toBeGreaterThan(FIRST + MORE);
  expect(watch.bytes()).toBe(before);
});
