import { describe, expect, it } from 'vitest';
import {
  airOf,
  cautionsFor,
  hoursOf,
  normalWeather,
  parseNormals,
  placeOf,
  sunDuring,
  sunNeverRises,
  temperaturesDuring,
  uvIndex,
} from '../../lib/comfort/index.ts';
import type { Occasion, TripPlace, Weather } from '../../lib/model/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { lookOf } from './garments.ts';

const weather = (lowC: number, highC: number): Weather => ({
  lowC,
  highC,
  windMs: 3,
  humidityPercent: 70,
  rainPercent: 20,
  source: 'test',
});
const vienna: TripPlace = {
  name: 'Vienna',
  from: '2027-10-02',
  to: '2027-10-05',
  at: { latitude: 48.21, longitude: 16.37 },
  timeZone: 'Europe/Vienna',
  weather: weather(7, 14),
  days: { '2027-10-04': weather(4, 9) },
};
const trieste: TripPlace = { name: 'Trieste', from: '2027-10-05', to: '2027-10-08', days: {} };
const occasion = (change: Partial<Occasion>): Occasion => ({
  id: 'o',
  what: 'Walk',
  on: '2027-10-03',
  part: 'day',
  dress: 'casual',
  setting: { where: 'outdoors', sun: 'sun' },
  activity: 'strolling',
  needs: [],
  transit: false,
  travellers: [],
  ...change,
});

describe('weather of an occasion', () => {
  it('rises to the afternoon and falls to the night', () => {
    expect(temperaturesDuring(weather(7, 14), { part: 'day' }).high).toBe(14);
    expect(temperaturesDuring(weather(7, 14), { part: 'night' }).low).toBe(7);
    const evening = temperaturesDuring(weather(7, 14), { part: 'evening' });
    expect(evening.low).toBeGreaterThan(7);
    expect(evening.high).toBeLessThan(14);
    expect(temperaturesDuring(weather(7, 14), { part: 'morning', at: '05:00' }).low).toBe(7);
  });

  it('lasts until its end, a long walk five hours and all else two', () => {
    expect(hoursOf({ part: 'morning', at: '10:00' })).toEqual([10, 12]);
    expect(hoursOf({ part: 'morning', at: '10:00', needs: ['long walking'] })).toEqual([10, 15]);
    expect(hoursOf({ part: 'morning', at: '10:00', until: '17:30', needs: ['long walking'] })).toEqual([10, 17.5]);
    expect(hoursOf({ part: 'night', at: '23:15', until: '05:30' })).toEqual([23.25, 29.5]);
    // The coldest hour is shortly before sunrise, common practice, no source: a night bus goes through it.
    expect(temperaturesDuring(weather(-3, 3), { part: 'night', at: '23:15', until: '06:00' }).low).toBe(-3);
    expect(temperaturesDuring(weather(-3, 3), { part: 'evening', at: '16:00', until: '22:00' }).low).toBeLessThan(
      temperaturesDuring(weather(-3, 3), { part: 'evening', at: '16:00' }).low,
    );
  });

  it('takes the day where it is known better, the room indoors, and nothing where nothing is known', () => {
    expect(airOf(occasion({ on: '2027-10-04' }), vienna)?.highC).toBe(9);
    expect(airOf(occasion({ setting: { where: 'indoors', airC: 21 } }), undefined)).toMatchObject({
      lowC: 21,
      highC: 21,
    });
    expect(airOf(occasion({ on: '2027-10-07' }), trieste)).toBeUndefined();
  });

  const whereIs = (asked: Occasion, ...journeys: readonly Occasion[]): string | undefined =>
    placeOf({ places: [trieste, vienna], occasions: [...journeys, asked] }, asked)?.name;
  const train = (at: string, change: Partial<Occasion> = {}): Occasion =>
    occasion({ id: at, on: '2027-10-05', at, transit: true, ...change });

  it('gives the evening of a day of travel to the later stay where no journey is written', () => {
    expect(whereIs(occasion({ on: '2027-10-05' }))).toBe('Vienna');
    expect(whereIs(occasion({ on: '2027-10-05', part: 'evening' }))).toBe('Trieste');
    expect(whereIs(occasion({ on: '2027-11-05' }))).toBeUndefined();
  });

  it('follows the journey on a day of travel', () => {
    const market = occasion({ on: '2027-10-05', at: '16:00' });
    expect(whereIs(market, train('07:58'))).toBe('Trieste');
    expect(whereIs(market, train('17:30'))).toBe('Vienna');
    expect(whereIs(occasion({ on: '2027-10-05', at: '18:00', part: 'evening' }), train('21:10'))).toBe('Vienna');
    expect(whereIs(train('07:58'))).toBe('Vienna');
    expect(whereIs({ ...market, travellers: ['Bo'] }, train('07:58', { travellers: ['Ada'] }))).toBe('Vienna');
  });
});

describe('monthly normals', () => {
  const header = 'place,month,low C,high C,wind m/s,humidity %,rain %,source';

  it('reads a table', () => {
    const { normals, problems } = parseNormals(
      `\uFEFF${header}\r\n"Lisbon, centre",6,16,26,4,65,10,"a service, 1991–2020"\r\n\r\n`,
      'normals.csv',
    );
    expect(problems).toEqual([]);
    expect(normalWeather(normals, 'lisbon, CENTRE', '2027-06-12')).toEqual({
      lowC: 16,
      highC: 26,
      windMs: 4,
      humidityPercent: 65,
      rainPercent: 10,
      source: 'monthly normal, a service, 1991–2020',
    });
    expect(normalWeather(normals, 'Lisbon, centre', '2027-07-12')).toBeUndefined();
  });

  it.each([
    ['place;month', 1, /header/],
    [`${header}\nVienna,13,7,14,3,75,40,x`, 2, /month is "13"/],
    [`${header}\nVienna,10,,14,3,75,40,x`, 2, /low C is ""/],
    [`${header}\nVienna,10,15,14,3,75,40,x`, 2, /low is above/],
    [`${header}\nVienna,10,7,14,3,75`, 2, /6 fields/],
    [`${header}\nVienna,10,7,14,3,75,140,x`, 2, /rain %/],
    [`${header}\n"Vienna,10,7,14,3,75,40,x`, 2, /quotation/],
    [`${header}\nVienna,10,7,14,3,75,40,x\nvienna,10,7,14,3,75,40,x`, 3, /twice/],
    [`${header}\n,10,7,14,3,75,40,x`, 2, /place is empty/],
    [`${header}\nVienna,1.5,7,14,3,75,40,x`, 2, /month is "1.5"/],
  ])('reports what is wrong in %j', (text, line, wrong) => {
    const { problems } = parseNormals(text, 'normals.csv');
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ file: 'normals.csv', line });
    expect(problems[0]?.wrong).toMatch(wrong);
  });
});

describe('sun', () => {
  it('knows clock time in a zone', () => {
    // Solar noon in Vienna in early October is near 12:43 summer time, elevation near 38°. Source: NOAA equations (from memory, to a degree)
    const noon = sunDuring(occasion({ at: '12:00' }), vienna) ?? 0;
    expect(Math.abs(noon - 38)).toBeLessThan(1.5);
    expect(sunDuring(occasion({ part: 'night' }), vienna)).toBeLessThan(0);
    expect(sunDuring(occasion({}), trieste)).toBeUndefined();
  });

  it('knows polar night', () => {
    const tromso: TripPlace = {
      name: 'Tromsø',
      from: '2027-12-15',
      to: '2027-12-22',
      at: { latitude: 69.65, longitude: 18.96 },
      timeZone: 'Europe/Oslo',
      days: {},
    };
    expect(sunNeverRises('2027-12-18', tromso)).toBe(true);
    expect(uvIndex(sunDuring(occasion({ on: '2027-12-18' }), tromso) ?? 0)).toBe(0);
    expect(sunNeverRises('2027-10-03', vienna)).toBe(false);
  });
});

describe('cautions', () => {
  const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
  const said = (...args: Parameters<typeof cautionsFor>) => cautionsFor(...args).map((p) => say(english, formats, p));
  const sandals = lookOf(['sundress', 'one-piece'], ['loafers', 'shoes']);

  it('speaks of sun, hat and bare skin, and defers', () => {
    const cautions = said({
      occasion: occasion({}),
      air: { lowC: 24, highC: 31, windMs: 2, humidityPercent: 50 },
      uvIndex: 9.2,
      ...sandals,
    });
    expect(cautions.join('\n')).toMatch(/UV index up to 9 \(very high\)/);
    expect(cautions.join('\n')).toMatch(/brim/);
    expect(cautions.join('\n')).toMatch(/upper arms/);
    expect(cautions.join('\n')).toMatch(/heat warnings.*doctor/);
  });

  it('tells the index of a clear sky as what it is: at most, where clouds are likelier', () => {
    const under = (rainPercent: number, uvIndex: number, needs: Occasion['needs'] = []): string =>
      said({
        occasion: occasion({ needs }),
        weather: { ...weather(12, 20), rainPercent },
        uvIndex,
        ...sandals,
      }).join('\n');
    expect(under(10, 4.4)).toMatch(/^UV index up to 4 \(moderate\) under a clear sky/);
    expect(under(40, 4.4)).toMatch(/^UV index at most 4 \(moderate\) if the sky clears[\s\S]*brim/);
    expect(under(80, 4.4)).toMatch(/^UV index at most 4 \(moderate\) if the sky clears\.\nThe ground may be wet/);
    expect(under(10, 4.4, ['rain'])).toMatch(/^UV index at most 4 .*clears\.\nThe ground/);
    expect(under(80, 8.1)).toMatch(/^UV index at most 8 \(very high\) if the sky clears[\s\S]*brim/);
    expect(under(80, 1.2)).not.toMatch(/UV/);
  });

  it('names the hat and glasses of the bag that a look leaves there', () => {
    const { pieces } = lookOf(['sun hat', 'headwear'], ['sunglasses', 'eyewear']);
    const bag = new Map([...sandals.pieces, ...pieces]);
    const cautions = said({ occasion: occasion({}), uvIndex: 7, look: sandals.look, pieces: bag }).join('\n');
    expect(cautions).toContain('Take sun hat and sunglasses for the sun.');
    expect(cautions).not.toMatch(/brim|Take sunglasses/);
  });

  it('speaks of cold and of cold beyond clothes', () => {
    const cold = (lowC: number, beyondClothes?: 'keeping still' | 'altogether') =>
      said({
        occasion: occasion({ activity: 'standing' }),
        air: { lowC, highC: lowC + 3, windMs: 2, humidityPercent: 50 },
        ...sandals,
        beyondClothes,
      }).join('\n');
    expect(cold(-4)).toMatch(/-4.*doctor/);
    expect(cold(-40, 'altogether')).toMatch(/no clothes in a travel bag are enough/);
    expect(cold(-12, 'keeping still')).toMatch(/-12.*warm enough for standing\. Keep it short.*doctor/);
    expect(cold(8)).toBe('');
  });

  it('speaks of cold water at a swim in the open, in mild air as in frost, and not of head and hands', () => {
    const swim = (lowC: number, change: Partial<Occasion> = {}): string =>
      said({
        occasion: occasion({ needs: ['swim'], activity: 'swimming', ...change }),
        air: { lowC, highC: lowC + 2, windMs: 2, humidityPercent: 70 },
        ...lookOf(['swimsuit', 'swim']),
      }).join('\n');
    for (const lowC of [-8, 7]) {
      expect(swim(lowC)).toMatch(/open water will be cold.*lifeguards.*never alone.*doctor/);
      expect(swim(lowC)).not.toContain('Keep head, hands and feet');
    }
    // Source: lifeguards speak of cold water below 15 °C (from memory)
    expect(swim(20)).toBe('');
    expect(swim(7, { setting: { where: 'indoors', airC: 28 } })).toBe('');
  });

  it('tells of a day without sun', () => {
    const asked = { occasion: occasion({}), ...sandals };
    expect(said({ ...asked, isPolarNight: true }).join()).toMatch(/sun does not rise.*reflective.*carry a light/);
    expect(said(asked)).toEqual([]);
  });

  it('says nothing indoors', () => {
    expect(said({ occasion: occasion({ setting: { where: 'indoors', airC: 21 } }), ...sandals })).toEqual([]);
  });

  it('warns of heels on wet, uneven ground', () => {
    const heels = lookOf(['sundress', 'one-piece'], ['loafers', 'shoes']);
    const high = new Map([...heels.pieces].map(([id, piece]) => [id, { ...piece, heelCm: 8 }]));
    expect(
      said({ occasion: occasion({ needs: ['rain', 'uneven ground'] }), look: heels.look, pieces: high }).join('\n'),
    ).toMatch(/turn back[\s\S]*heels/);
  });
});
