import type { Occasion, Piece } from '../../lib/model/index.ts';
import type { Trip } from './exhaustive.ts';
import { allLooks } from './look-source.ts';
import { brief, capsule, occasion, weather } from './trip.ts';

/** When a random occasion is, and which of the given kinds. */
export interface When {
  /** 0 to 2. */
  readonly day: number;
  readonly part: 'morning' | 'evening';
  readonly kind: string;
}

export const THREE_DAYS = ['2027-10-02', '2027-10-03', '2027-10-04'] as const;

/** Three days in one place of one air, its occasions drawn at random, with a wash day on the first evening or none. */
export const threeDays = (
  pieces: readonly Piece[],
  { whens, washes }: { readonly whens: readonly When[]; readonly washes: boolean },
  kinds: Readonly<Record<string, Partial<Occasion>>>,
  air: readonly [lowC: number, highC: number],
): Trip => {
  const [from, , to] = THREE_DAYS;
  return {
    pieces,
    looks: allLooks(pieces),
    capsule: capsule(),
    brief: brief({
      to,
      washDays: washes ? [from] : [],
      places: [{ name: 'Graz', from, to, weather: weather(...air), days: {} }],
      occasions: whens.map(({ day, part, kind }, index) => ({
        ...occasion(THREE_DAYS[day] ?? '', kind),
        ...kinds[kind],
        id: `o${index}`,
        part,
      })),
    }),
  };
};
