import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listFromTraits, traitsOf } from '../../lib/capsule/index.ts';
import type { Brief } from '../../lib/model/index.ts';
import { KIND_IDS } from '../../lib/vocabulary/index.ts';
import { createFormats, english, type Phrase, say } from '../../lib/words/index.ts';
import { brief, occasion, weather } from '../plan/trip.ts';
import { table } from '../reference/table.ts';

/** Facts of the trade: common practice, no source (test/reference/common_practice.csv). */
const fact = (text: string): number => Number(table('common_practice').find(({ rule }) => rule?.includes(text))?.value);

const tripIn = (lowC: number, highC: number, change: Partial<Brief> = {}): Brief =>
  brief({
    from: '2027-07-01',
    to: '2027-07-07',
    places: [{ name: 'Place', from: '2027-07-01', to: '2027-07-07', weather: weather(lowC, highC, 10), days: {} }],
    ...change,
  });
const swim = occasion('2027-07-02', 'Swim', { needs: ['swim'], at: '09:00' });
const swimAgain = occasion('2027-07-02', 'Swim again', { needs: ['swim'], at: '17:00' });
const gala = occasion('2027-07-03', 'Gala', { dress: 'formal' });
const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
const reasonText = (reason: Phrase | undefined): string => (reason === undefined ? '' : say(english, formats, reason));
const countOf = (trip: Brief, what: RegExp): number =>
  listFromTraits(trip)
    .list.lines.filter((line) => what.test(line.what))
    .reduce((sum, { count }) => sum + count, 0);
const kindsOf = (trip: Brief): readonly string[] => listFromTraits(trip).list.lines.flatMap(({ kinds }) => kinds);

describe('a list from what the trip is like', () => {
  it('is the carry-on list of the trade for a warm week with swimming', () => {
    const trip = tripIn(15, 26, { occasions: [swim, swimAgain] });
    expect(countOf(trip, /^tops/)).toBe(fact('of these tops'));
    expect(countOf(trip, /^bottoms/)).toBe(fact('of these bottoms'));
    expect(countOf(trip, /^dress/)).toBe(fact('of these dresses'));
    expect(countOf(trip, /^swimwear/)).toBe(fact('of these swimwear'));
    expect(countOf(trip, /layers/)).toBe(fact('of these outer layers'));
    expect(countOf(trip, /^shoes/)).toBe(fact('of these pairs of shoes'));
    expect(countOf(trip, /^bag|^things|^hat/)).toBe(fact('of these accessories'));
    expect(countOf(trip, /./)).toBe(fact('warm-weather carry-on list'));
  });

  it('asks for no swimwear where nobody swims, and for two dresses where two evenings want one', () => {
    expect(countOf(tripIn(15, 26), /^swimwear/)).toBe(0);
    const galas = [gala, { ...gala, id: 'second' }];
    expect(countOf(tripIn(15, 26, { occasions: galas }), /^dress/)).toBe(2);
  });

  it('asks for one swimsuit unless it would still be wet at the next swim, and says which', () => {
    const trips = (...occasions: Brief['occasions']) => {
      const { list, reasons } = listFromTraits(tripIn(15, 26, { occasions }));
      const at = list.lines.findIndex(({ what }) => what === 'swimwear');
      return [list.lines[at]?.count, reasonText(reasons[at])];
    };
    expect(trips(swim)).toEqual([1, 'There is swimming once on this trip.']);
    expect(trips(swim, { ...swimAgain, on: '2027-07-04' })).toEqual([
      1,
      'There is swimming twice on this trip, with time to dry between.',
    ]);
    expect(trips(swim, swimAgain)).toEqual([2, expect.stringContaining('one dries while the other is worn')]);
  });

  it('covers legs, head, hands and neck in frost, and names nothing bare or for the summer', () => {
    const snowy = tripIn(-3, 3, { occasions: [occasion('2027-07-02', 'Walk', { needs: ['snow'] })] });
    for (const what of [/^warm legwear/, /^hat/, /^gloves/, /^scarf/])
      expect(countOf(snowy, what), `${what}`).toBeGreaterThan(0);
    // what a stylist found on the list of a snowy week. common practice, no source
    const bare = [
      'sundress',
      'slip dress',
      'boat shoes',
      'ballet flats',
      'sandals',
      'short-sleeved shirt',
      'polo shirt',
      'bomber jacket',
    ];
    for (const kind of bare) expect(kindsOf(snowy), kind).not.toContain(kind);
    for (const kind of ['thermal leggings', 'thermal top', 'down jacket', 'cocktail dress'])
      expect(kindsOf(snowy), kind).toContain(kind);
    expect(kindsOf(tripIn(20, 35)).filter((kind) => /glove|mitten|thermal|beanie/.test(kind))).toEqual([]);
    expect(countOf(tripIn(12, 20), /^warm legwear|^gloves/)).toBe(0);
  });

  it('has room for boots for the snow beside shoes for town, and for a layer under another', () => {
    const walk = occasion('2027-07-02', 'Walk', { needs: ['snow'] });
    const frosty = tripIn(-3, 3);
    expect(countOf(tripIn(-3, 3, { occasions: [walk] }), /^shoes/)).toBe(3);
    expect(countOf(frosty, /^shoes/)).toBe(2);
    expect(countOf(frosty, /^tops/)).toBe(countOf(tripIn(12, 20), /^tops/) + 1);
    // thermal leggings under trousers, and two pairs for the feet
    expect(countOf(frosty, /^warm legwear/)).toBe(3);
  });

  it('asks for fewer clothes where there are wash days', () => {
    const long = { from: '2027-07-01', to: '2027-07-12' };
    expect(countOf(tripIn(15, 26, { ...long, washDays: ['2027-07-04', '2027-07-08'] }), /^tops/)).toBeLessThan(
      countOf(tripIn(15, 26, long), /^tops/),
    );
  });

  it('names nothing woollen or quilted in heat, and no bare shoes in the cold', () => {
    const hot = kindsOf(tripIn(20, 35));
    for (const kind of ['roll-neck', 'down jacket', 'wool coat', 'beanie', 'snow boots', 'hoodie'])
      expect(hot, kind).not.toContain(kind);
    for (const kind of ['sandals', 't-shirt', 'linen trousers', 'sun hat']) expect(hot, kind).toContain(kind);
    const cold = kindsOf(tripIn(-5, 4));
    for (const kind of ['sandals', 'tank top', 'shorts', 'linen trousers', 'basket bag'])
      expect(cold, kind).not.toContain(kind);
    for (const kind of ['down jacket', 'wool coat', 'ankle boots', 'beanie']) expect(cold, kind).toContain(kind);
    expect(cold).not.toContain('snow boots');
    const snowy = tripIn(-5, 4, { occasions: [occasion('2027-07-02', 'Snow', { needs: ['snow'] })] });
    expect(kindsOf(snowy)).toContain('snow boots');
  });

  it('asks for shade where an occasion asks for it, and for a third pair of shoes for rough ground and an evening', () => {
    const sunny = tripIn(20, 35, { occasions: [occasion('2027-07-02', 'Beach', { needs: ['sun'] })] });
    expect(countOf(sunny, /^hat and sunglasses/)).toBe(2);
    const hill = occasion('2027-07-02', 'Hill', { needs: ['uneven ground'] });
    expect(countOf(tripIn(5, 12, { occasions: [hill, gala] }), /^shoes/)).toBe(3);
    expect(countOf(tripIn(5, 12, { occasions: [hill] }), /^shoes/)).toBe(2);
  });

  it('says so when the weather is not known, and packs for both', () => {
    const { list, reasons } = listFromTraits(brief({ places: [] }));
    const outer = list.lines.findIndex(({ what }) => what === 'outer layers');
    expect(list.lines[outer]?.count).toBe(2);
    expect(reasons[outer]?.values.known).toBe(0);
    expect(traitsOf(brief({ places: [] }))).toMatchObject({ lowC: undefined, highC: undefined, rainPercent: 0 });
  });

  it('has a reason for every line, no empty line and no unknown kind, whatever the trip', () => {
    const trips = fc
      .tuple(fc.integer({ min: -20, max: 35 }), fc.nat(15), fc.nat(40), fc.boolean(), fc.boolean())
      .map(([lowC, warmer, days, swims, formal]) => {
        const to = new Date(Date.UTC(2027, 6, 1 + days)).toISOString().slice(0, 10);
        return tripIn(lowC, lowC + warmer, { to, occasions: [...(swims ? [swim] : []), ...(formal ? [gala] : [])] });
      });
    fc.assert(
      fc.property(trips, (trip) => {
        const { list, reasons } = listFromTraits(trip);
        expect(reasons).toHaveLength(list.lines.length);
        for (const { count, kinds } of list.lines) {
          expect(count).toBeGreaterThan(0);
          expect(kinds.length).toBeGreaterThan(0);
          expect(new Set(kinds).size).toBe(kinds.length);
          expect(kinds.every((kind) => KIND_IDS.includes(kind))).toBe(true);
        }
      }),
      { numRuns: 200, seed: 2 },
    );
  });
});
