import { lookSourceOf } from '../../lib/capsule/index.ts';
import type { Brief, Capsule, Occasion, Piece, Weather } from '../../lib/model/index.ts';
import { createWardrobeEngine } from '../../lib/outfit/index.ts';
import type { LookSource } from '../../lib/plan/index.ts';
import type { KindId } from '../../lib/vocabulary/index.ts';
import { pieceOfKind } from '../comfort/garments.ts';

export const weather = (lowC: number, highC: number, rainPercent = 20): Weather => ({
  lowC,
  highC,
  windMs: 2,
  humidityPercent: 60,
  rainPercent,
  source: 'test',
});

export const occasion = (on: string, what: string, change: Partial<Occasion> = {}): Occasion => ({
  id: `${on}-${what.toLowerCase().replaceAll(' ', '-')}`,
  what,
  on,
  part: 'day',
  dress: 'casual',
  setting: { where: 'indoors', airC: 22 },
  activity: 'strolling indoors',
  needs: [],
  transit: false,
  travellers: [],
  ...change,
});

export const brief = (change: Partial<Brief> = {}): Brief => ({
  file: 'trips/test/brief.md',
  id: 'test',
  title: 'Test',
  from: '2027-10-02',
  to: '2027-10-05',
  travellers: [{ name: 'Ada', wardrobe: 'test' }],
  places: [
    {
      name: 'Vienna',
      from: '2027-10-02',
      to: '2027-10-12',
      at: { latitude: 48.21, longitude: 16.37 },
      timeZone: 'Europe/Vienna',
      weather: weather(12, 19),
      days: {},
    },
  ],
  occasions: [],
  bags: [],
  washDays: [],
  avoid: { colours: [], fabrics: [] },
  cautions: [],
  introduction: '',
  ...change,
});

export const capsule = (change: Partial<Capsule> = {}): Capsule => ({
  file: 'trips/test/quiet.md',
  id: 'quiet',
  trip: 'test',
  title: 'Quiet',
  traveller: 'Ada',
  wardrobe: 'test',
  list: 'list',
  mood: { palette: [], words: [] },
  pieces: [],
  never: [],
  always: [],
  favourites: [],
  fixed: [],
  rules: {},
  rationale: '',
  ...change,
});

/** A piece with a name of its own; `dryHours` and `wears` as plain numbers. */
export const piece = (
  id: string,
  kind: KindId,
  change: Partial<Piece> & { readonly dries?: number; readonly worn?: number } = {},
): Piece => {
  const { dries, worn, ...rest } = change;
  const made = pieceOfKind(kind, { id, name: id, ...rest });
  const measure = (value: number) => ({ value, low: value, high: value, basis: 'given', source: 'test' }) as const;
  return {
    ...made,
    ...(worn === undefined ? {} : { wears: measure(worn) }),
    ...(dries === undefined ? {} : { care: { ...made.care, dryHours: measure(dries) } }),
  };
};

/** Looks of these pieces by the studio's own rules. */
export const sourceOf = (pieces: readonly Piece[]): LookSource =>
  lookSourceOf(createWardrobeEngine({ pieces, rules: {}, never: [], always: [] }));
