import fc from 'fast-check';
import type { Brief, Capsule, Look, Occasion, Piece } from '../../lib/model/index.ts';
import { allLooks, type Clashes } from './look-source.ts';
import { brief, capsule, occasion, piece, weather } from './trip.ts';

const CODES = [
  { low: 0, high: 1 },
  { low: 0, high: 2 },
  { low: 1, high: 3 },
] as const;
const ANY = { low: 0, high: 3 };
const indoors = (airC: number) => ({ where: 'indoors', airC }) as const;
const OUTDOORS = { where: 'outdoors', sun: 'shade' } as const;

const KINDS: Readonly<Record<string, Partial<Occasion>>> = {
  museum: { setting: indoors(23) },
  dinner: { setting: indoors(23), dress: 'smart casual' },
  supper: { setting: indoors(21), dress: 'smart casual', activity: 'sitting' },
  garden: { setting: OUTDOORS, dress: 'smart casual', activity: 'strolling' },
  opera: { setting: indoors(23), dress: 'business' },
  stroll: { setting: OUTDOORS, activity: 'strolling' },
  hill: { setting: OUTDOORS, activity: 'walking', needs: ['uneven ground'] },
  shower: { setting: OUTDOORS, activity: 'walking', needs: ['rain'] },
  chapel: { setting: indoors(22), needs: ['knees covered', 'shoulders covered'] },
  train: { setting: indoors(22), activity: 'travelling', transit: true },
  swim: { setting: indoors(28), needs: ['swim'], activity: 'swimming' },
};

const garment = fc.record({
  worn: fc.integer({ min: 1, max: 2 }),
  dries: fc.constantFrom(6, 14, 30),
  dress: fc.constantFrom(...CODES),
  bare: fc.boolean(),
});
const days = fc.integer({ min: 0, max: 3 });

/** Bags of up to a dozen pieces and trips of four days, with all that a plan has to keep to. */
export const smallTrips = (occasionsAtMost: number) =>
  fc.record({
    tops: fc.array(garment, { minLength: 1, maxLength: 3 }),
    bottoms: fc.array(garment, { minLength: 1, maxLength: 2 }),
    onePieces: fc.array(garment, { maxLength: 1 }),
    swims: fc.array(fc.constantFrom(6, 12, 20), { maxLength: 2 }),
    others: fc.subarray(['jumper', 'coat', 'rain', 'boots'] as const),
    clash: fc.boolean(),
    whens: fc.array(
      fc.record({
        day: days,
        part: fc.constantFrom('morning' as const, 'day' as const, 'evening' as const),
        kind: fc.constantFrom(...Object.keys(KINDS)),
        degreesOff: fc.option(fc.integer({ min: 1, max: 3 }), { freq: 6 }),
      }),
      { minLength: 1, maxLength: occasionsAtMost },
    ),
    washes: fc.uniqueArray(days, { maxLength: 2 }),
    lowC: fc.integer({ min: 6, max: 20 }),
    fixed: fc.option(fc.record({ occasion: fc.nat(), look: fc.nat() }), { freq: 3 }),
    favourite: fc.option(fc.nat(), { freq: 3 }),
  });
export type SmallTrip = ReturnType<typeof smallTrips> extends fc.Arbitrary<infer T> ? T : never;

export interface MadeTrip {
  readonly trip: Brief;
  readonly pieces: readonly Piece[];
  readonly looks: readonly Look[];
  readonly clashes: Clashes;
  readonly capsule: Capsule;
}

const OTHERS: Readonly<Record<string, Piece>> = {
  jumper: piece('jumper', 'crew-neck jumper', { worn: 2, dries: 20, places: ['mid layer'], dress: ANY }),
  coat: piece('coat', 'wool coat'),
  rain: piece('rain', 'rain jacket', { suits: ['rain'] }),
  boots: piece('boots', 'lace-up boots', { dress: ANY, suits: ['uneven ground'] }),
};

export const made = (random: SmallTrip): MadeTrip => {
  const { tops, bottoms, onePieces, swims, others, clash, whens, washes, lowC } = random;
  const pieces = [
    ...tops.map(({ bare, ...rest }, i) => piece(`top${i}`, 'shirt', { ...rest, covers: bare ? [] : ['shoulders'] })),
    ...bottoms.map(({ bare, ...rest }, i) =>
      piece(`bottom${i}`, 'chinos', { ...rest, covers: bare ? [] : ['knees', 'calves'] }),
    ),
    ...onePieces.map(({ bare, ...rest }, i) =>
      piece(`dress${i}`, 'tea dress', { ...rest, covers: bare ? ['shoulders'] : ['shoulders', 'knees'] }),
    ),
    ...swims.map((dries, i) => piece(`swim${i}`, 'swimsuit', { dries, dress: ANY })),
    piece('loafers', 'loafers', { dress: ANY, suits: [] }),
    ...others.flatMap((name) => OTHERS[name] ?? []),
  ];
  const on = (day: number): string => `2027-10-0${2 + day}`;
  const clashes: Clashes = new Set(clash ? ['top0+bottom0', 'bottom0+top0'] : []);
  const looks = allLooks(pieces, clashes);
  const piecesOf = (index: number): readonly string[] =>
    looks[index % looks.length]?.worn.map(({ piece: id }) => id) ?? [];
  return {
    pieces,
    looks,
    clashes,
    trip: brief({
      occasions: whens.map(({ day, part, kind, degreesOff }, index) => ({
        ...occasion(on(day), kind),
        ...KINDS[kind],
        ...(degreesOff === null ? {} : { degreesOff }),
        id: `o${index}`,
        part,
      })),
      washDays: washes.toSorted().map(on),
      places: [{ name: 'Here', from: on(0), to: on(5), weather: weather(lowC, lowC + 6), days: {} }],
    }),
    capsule: capsule({
      never: clash ? [['top0', 'bottom0']] : [],
      fixed:
        random.fixed === null
          ? []
          : [{ occasion: `o${random.fixed.occasion % whens.length}`, pieces: piecesOf(random.fixed.look) }],
      favourites: random.favourite === null ? [] : [{ pieces: piecesOf(random.favourite) }],
    }),
  };
};
