import type { Slot } from '../vocabulary/places.ts';
import type { Seat } from './grammar/seats.ts';
import type { Ground } from './ground.ts';

/** The two places that look the same when only one of them is filled. */
const LAYERS: readonly Slot[] = ['mid layer', 'outer layer'];

/** Layers out of the place they are made for: each needs that place filled by another, or one of `unless` worn. */
export interface LoneLayers {
  readonly home: Slot;
  readonly seats: readonly Seat[];
  /** What goes with the layer there and not at home: beside it the two places are not the same look. */
  readonly unless: readonly Seat[];
}

type Judged = Pick<Ground, 'seats' | 'goes' | 'allowed' | 'empty' | 'hardCaps'>;

const homeOf = (seat: Seat, seats: readonly Seat[]): Seat | undefined =>
  LAYERS.includes(seat.slot)
    ? seats.find(
        (other) => other.piece.id === seat.piece.id && LAYERS.includes(other.slot) && other.choice < seat.choice,
      )
    : undefined;

/** True when the seats differ only in what they go with. */
const isAlike = (one: Seat, home: Seat, { allowed, empty, hardCaps }: Judged): boolean =>
  allowed[home.index] === 1 &&
  hardCaps.every(({ members }) => members[one.index] === members[home.index]) &&
  [...empty].every(([slot, { forbids }]) =>
    LAYERS.includes(slot) ? forbids[home.index] !== 1 : (forbids[home.index] ?? 0) <= (forbids[one.index] ?? 0),
  );

/**
 * A jacket that can be the middle or the outer layer and is worn without the other is one outfit, not two: it stands in
 * the place it is made for. Said look by look, so that a look counts the same whatever else the wardrobe holds. Layers
 * with the same exceptions stand together.
 */
export const loneLayers = (judged: Judged): readonly LoneLayers[] => {
  const { seats, goes } = judged;
  const found = new Map<string, { home: Slot; seats: Seat[]; unless: readonly Seat[] }>();
  for (const seat of seats) {
    const home = homeOf(seat, seats);
    if (home === undefined || !isAlike(seat, home, judged)) continue;
    const goesWith = (one: Seat, { index }: Seat): boolean => goes[one.index * seats.length + index] === 1;
    const unless = seats.filter(
      (other) => !LAYERS.includes(other.slot) && goesWith(seat, other) && !goesWith(home, other),
    );
    const key = `${home.slot}:${unless.map(({ index }) => index).join()}`;
    const same = found.get(key);
    if (same === undefined) found.set(key, { home: home.slot, seats: [seat], unless });
    else same.seats.push(seat);
  }
  return [...found.values()];
};
