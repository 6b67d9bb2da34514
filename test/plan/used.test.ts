import { describe, expect, it } from 'vitest';
import { findingsOfUse, planTrip, usedIn } from '../../lib/plan/index.ts';
import { loadSolver } from '../../lib/solver/index.ts';
import { createFormats, english, LANGUAGES, type Phrase, say } from '../../lib/words/index.ts';
import { brief, capsule, occasion, piece, sourceOf, weather } from './trip.ts';

const UNITS = { temperature: 'C', length: 'cm', weight: 'kg' } as const;
const inEnglish = (said: Phrase): string => say(english, createFormats({ ...UNITS, language: 'en-GB' }), said);
const inGerman = (said: Phrase): string =>
  say(LANGUAGES.de ?? {}, createFormats({ ...UNITS, language: 'de-DE' }), said);

const BAG = [
  piece('tee', 't-shirt'),
  piece('jeans', 'jeans'),
  piece('trainers', 'trainers'),
  piece('parka', 'parka'),
  piece('gown', 'evening gown'),
  piece('heels', 'heeled sandals'),
  piece('sarong', 'sarong'),
  piece('bikini', 'bikini'),
  piece('kaftan', 'kaftan'),
];

describe('pieces that no day of the plan wears', () => {
  it('are said in one finding with their number, and what would be nearest to wear is none of them', async () => {
    const trip = brief({
      places: brief().places.map((place) => ({ ...place, weather: weather(-12, -8) })),
      occasions: [
        occasion('2027-10-03', 'Cafe', { activity: 'sitting', at: '15:00' }),
        occasion('2027-10-04', 'Night sky', {
          activity: 'standing',
          at: '20:00',
          setting: { where: 'outdoors', sun: 'shade' },
        }),
      ],
    });
    const plan = await planTrip({
      brief: trip,
      traveller: 'Ada',
      capsule: capsule(),
      pieces: BAG,
      engine: sourceOf(BAG),
      solver: await loadSolver(),
    });
    expect(plan.unserved.map(({ nearest }) => nearest?.worn.some(({ piece: id }) => id === 'parka'))).toEqual([true]);
    expect(usedIn(plan).has('parka')).toBe(true);
    const [found, ...others] = findingsOfUse(plan, capsule(), BAG);
    expect(others).toEqual([]);
    expect(found?.about).toEqual(BAG.map(({ id }) => id).filter((id) => !usedIn(plan).has(id)));
    expect(found?.about).toContain('gown');
    if (found?.mend === undefined) throw new Error('nothing is said');
    const count = found.about.length;
    expect(inEnglish(found.message)).toMatch(
      new RegExp(`^${count} of 9 packed pieces are never worn in the plan: gown`),
    );
    expect(inEnglish(found.mend)).toContain('The wear table shows all of them');
    expect(inGerman(found.message)).toMatch(
      new RegExp(`^${count} von 9 gepackten Teilen werden nach Plan nie getragen`),
    );
    const worn = BAG.filter(({ id }) => usedIn(plan).has(id));
    expect(findingsOfUse(plan, capsule(), worn)).toEqual([]);
  });
});
