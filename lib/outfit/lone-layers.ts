import type { Slot } from '../vocabulary/places.ts';
import type { Seat } from './grammar/seats.ts';
import type { Ground } from './ground.ts';

/** The two places that look the same when only one of them is filled. */
const LAYERS: readonly Slot[] = ['mid layer', 'outer layer'];

const moved = (seat: Seat, seats: readonly Seat[]): Seat | undefined =>
  LAYERS.includes(seat.slot)
    ? seats.find(
        (other) => other.piece.id === seat.piece.id && LAYERS.includes(other.slot) && other.choice < seat.choice,
      )
    : undefined;

type Judged = Pick<Ground, 'seats' | 'goes' | 'allowed' | 'empty' | 'hardCaps'>;

/** True when every look with the seat, the other layer left empty, is a look with the other seat too. */
const isAsGood = (one: Seat, other: Seat, { seats, goes, allowed, empty, hardCaps }: Judged): boolean =>
  allowed[other.index] === 1 &&
  hardCaps.every(({ members }) => members[one.index] === members[other.index]) &&
  [...empty].every(([slot, { forbids }]) =>
    LAYERS.includes(slot) ? forbids[other.index] !== 1 : (forbids[other.index] ?? 0) <= (forbids[one.index] ?? 0),
  ) &&
  seats.every(
    ({ slot, index }) =>
      LAYERS.includes(slot) ||
      (goes[one.index * seats.length + index] ?? 0) <= (goes[other.index * seats.length + index] ?? 0),
  );

/**
 * A jacket that can be the middle or the outer layer and is worn without the other is one outfit, not two: it stands in
 * the place it is made for, and its other place needs the first one filled. Where a rule tells the two places apart,
 * both stand. Gives, by layer, the seats that may not stand beside it left empty.
 */
export const loneLayers = (judged: Judged): ReadonlyMap<Slot, readonly Seat[]> => {
  const { seats } = judged;
  const found = seats.flatMap((seat) => {
    const home = moved(seat, seats);
    return home !== undefined && isAsGood(seat, home, judged) ? [{ seat, home }] : [];
  });
  return new Map(LAYERS.map((slot) => [slot, found.filter(({ home }) => home.slot === slot).map(({ seat }) => seat)]));
};
