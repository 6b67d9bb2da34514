import { describe, expect, it } from 'vitest';
import { parseColour } from '../../lib/colour/index.ts';
import { lookComfort } from '../../lib/comfort/index.ts';
import { createNamer } from '../../lib/guide/titles.ts';
import { createSuitsTrip, type TripAir, tripAirOf } from '../../lib/guide/trip-air.ts';
import { isForWater } from '../../lib/guide/wear-it.ts';
import type { DressInterval, Plan, Weather } from '../../lib/model/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import { createFormats, english, say } from '../../lib/words/index.ts';
import { piece } from '../plan/trip.ts';

const named = (name: string) => {
  const colour = parseColour(name);
  if (colour === undefined) throw new Error(name);
  return { ...colour, name, share: 1 };
};
const pieces = [
  piece('t-shirt', 't-shirt', { name: 'White T-shirt', colours: [named('white')] }),
  piece('shirt', 'shirt', { name: 'Blue shirt', colours: [named('navy')] }),
  piece('shorts', 'shorts', { name: 'Stone shorts', colours: [named('stone')] }),
  piece('trousers', 'wide trousers', { name: 'Grey trousers', colours: [named('mid grey')] }),
  piece('dress', 'slip dress', { name: 'Copper dress', colours: [named('copper')] }),
  piece('jumper', 'crew-neck jumper', { name: 'Oatmeal jumper', places: ['mid layer'], colours: [named('oatmeal')] }),
  piece('coat', 'wool coat', { name: 'Charcoal coat', colours: [named('charcoal')] }),
  piece('raincoat', 'raincoat', { name: 'Raincoat', colours: [named('olive')] }),
  piece('loafers', 'loafers', { name: 'Loafers', colours: [named('chestnut')] }),
  piece('swimsuit', 'swimsuit', { name: 'Swimsuit', colours: [named('navy')] }),
];
const byId = new Map(pieces.map((one) => [one.id, one]));
const engine = createWardrobeEngine({ pieces, rules: {}, never: [], always: [] });
const all = [...engine.enumerate({ level: 'complete' })];

const SNOW: TripAir = { lowC: -3, highC: 6, wet: false };
const HEAT: TripAir = { lowC: 20, highC: 33, wet: true };
const DRESS: DressInterval = { low: 0, high: 1 };
const titlesOn = (trip: TripAir | undefined, dress = DRESS): readonly string[] => {
  const formats = createFormats({ language: 'en-GB', temperature: 'C', length: 'cm', weight: 'kg' });
  const nameOf = createNamer(byId, trip);
  return all.map((look) =>
    say(english, formats, nameOf({ look, dress, outdoors: lookComfort(look, byId, 'strolling', 'outdoors') })),
  );
};

describe('the weather of a trip', () => {
  it('is that of all its days, and unknown where none has any', () => {
    const weather = (lowC: number, highC: number, rainPercent: number): Weather => ({
      lowC,
      highC,
      rainPercent,
      windMs: 2,
      humidityPercent: 60,
      source: 'test',
    });
    const day = { date: '2027-03-01', occasions: [], wash: [] } as const;
    const days: Plan['days'] = [{ ...day, weather: weather(-3, 3, 10) }, { ...day, weather: weather(0, 6, 50) }, day];
    expect(tripAirOf({ days })).toEqual({ lowC: -3, highC: 6, wet: true });
    expect(tripAirOf({ days: [day] })).toBeUndefined();
  });

  it('suits the looks whose comfortable degrees reach it, as the page of a look gives them', () => {
    for (const trip of [SNOW, HEAT, { lowC: 10, highC: 18, wet: false }]) {
      const suits = createSuitsTrip(trip, byId);
      let some = 0;
      for (const look of all.filter((each) => !isForWater(each))) {
        const { lowC, highC } = lookComfort(look, byId, 'strolling', 'outdoors');
        // a look's degrees are whole
        if (Math.min(Math.abs(lowC - trip.highC), Math.abs(highC - trip.lowC)) <= 1) continue;
        expect(suits(look), `${look.id} ${lowC} to ${highC}`).toBe(lowC <= trip.highC && highC >= trip.lowC);
        some += 1;
      }
      expect(some).toBeGreaterThan(15);
    }
  });

  it('gives titles no weather that the trip has not', () => {
    const cold = titlesOn(SNOW);
    expect(cold.filter((title) => /hot|warm|mild|wet/.test(title))).toEqual([]);
    expect(cold.some((title) => /for a (cool|cold) day/.test(title))).toBe(true);
    expect(cold).toContain('White and stone');
    expect(titlesOn(HEAT).filter((title) => /cold|cool|mild/.test(title))).toEqual([]);
    expect(titlesOn(undefined).some((title) => title.includes('wet'))).toBe(true);
  });

  it('says of a dressy look for no weather of the trip that it is for an evening', () => {
    expect(titlesOn(SNOW, { low: 2, high: 3 })).toContain('White and stone for an evening');
  });

  it('tells looks of the same colours apart by a piece, before a third colour is named', () => {
    const titles = titlesOn(SNOW);
    expect(new Set(titles).size).toBe(titles.length);
    expect(titles.some((title) => /, with (Oatmeal jumper|Charcoal coat|Raincoat)$/.test(title))).toBe(true);
    // a third colour only after every piece has been named
    const third = titles.findIndex((title) => title.startsWith('White, stone and'));
    const piece = titles.findIndex((title) => title.startsWith('White and stone, with'));
    expect(piece).toBeGreaterThan(0);
    expect(third === -1 || third > piece).toBe(true);
  });
});

describe('looks shown', () => {
  it('are of the weather of the trip before others', () => {
    const suits = createSuitsTrip(SNOW, byId);
    const shareOf = (looks: readonly { readonly look: (typeof all)[number] }[]): number =>
      looks.filter(({ look }) => suits(look)).length / looks.length;
    const few = engine.varied(8, { suits });
    expect(shareOf(few)).toBeGreaterThan(shareOf(engine.varied(8)));
    // all pieces are shown still
    const shown = new Set(few.flatMap(({ look }) => look.worn.map(({ piece: id }) => id)));
    expect([...byId.keys()].filter((id) => !shown.has(id))).toEqual([]);
  });
});
